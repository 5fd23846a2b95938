"""What a student does on the page of a sheet, and what an inspector of it looks for."""

import re
from importlib import resources
from pathlib import Path

AXE = resources.files("axe_core_python").joinpath("axe.min.js").read_text(encoding="utf-8")


def box(page, number):
    return page.get_by_label(re.compile(rf"^Answer {number}\b")).first


def said(page, number):
    return page.locator(f"#said-{number}")


def state(page):
    return page.locator("#state")


def saved_file(page):
    with page.expect_download() as download:
        page.get_by_role("button", name="Save the file to hand in").click()
    assert download.value.suggested_filename == "lips-s07.hand-in.json"
    return Path(download.value.path()).read_bytes()


def open_file(page, data, name="lips-s07.hand-in.json"):
    page.get_by_label(re.compile("Open a file")).set_input_files(
        {"name": name, "mimeType": "application/json", "buffer": data}
    )


def violations(page):
    page.evaluate(AXE)
    found = page.evaluate("axe.run(document, {resultTypes: ['violations']}).then((r) => r.violations)")
    return [f"{rule['id']}: {node['html'][:120]}" for rule in found for node in rule["nodes"]]

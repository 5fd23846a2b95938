import webbrowser

import pytest

from drillpoint.setup import browser


class Found(webbrowser.BaseBrowser):
    def __init__(self, name: str, opens: bool = True) -> None:
        super().__init__(name)
        self.opens = opens
        self.shown: list[str] = []

    def open(self, url: str, new: int = 0, autoraise: bool = True) -> bool:  # noqa: ARG002
        self.shown.append(url)
        return self.opens


def install(monkeypatch: pytest.MonkeyPatch, found: Found) -> Found:
    monkeypatch.setattr(webbrowser, "get", lambda: found)
    return found


def test_none(monkeypatch: pytest.MonkeyPatch) -> None:
    def none() -> None:
        raise webbrowser.Error("could not locate runnable browser")

    monkeypatch.setattr(webbrowser, "get", none)
    assert browser.graphical() is None
    assert browser.show("http://127.0.0.1:8888/lab") is False


@pytest.mark.parametrize("name", ["lynx", "w3m", "/usr/bin/www-browser"])
def test_one_that_would_take_over_the_terminal_is_not_used(monkeypatch: pytest.MonkeyPatch, name: str) -> None:
    found = install(monkeypatch, Found(name))
    assert browser.show("http://127.0.0.1:8888/lab") is False
    assert found.shown == []


@pytest.mark.parametrize("opens", [True, False])
def test_the_users_own(monkeypatch: pytest.MonkeyPatch, opens: bool) -> None:
    found = install(monkeypatch, Found("firefox", opens))
    assert browser.show("http://127.0.0.1:8888/lab") is opens
    assert found.shown == ["http://127.0.0.1:8888/lab"]

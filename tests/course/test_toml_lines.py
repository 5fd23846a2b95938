"""Lines of entries in a TOML text."""

import tomllib

import pytest

from drillpoint.course.toml_lines import lines_of

TEXT = '''# first line
title = "x"  # with a comment
"quoted key" = 1
about = """
[[task]]
id = "not an entry"
"""

[[task]]
id = "a"
text = """one line"""
[task.givens]
diameter = [1,
  2]

[[task]]
  id = "b"
  [task.givens]
  web.unit = "mm"
  [[task.parts]]
  id = "b1"
  [[task.parts]]
  id = "b2"
'''


@pytest.mark.parametrize(
    ("path", "line"),
    [
        (("title",), 2),
        (("quoted key",), 3),
        (("about",), 4),
        (("task", 0), 9),
        (("task", 0, "id"), 10),
        (("task", 0, "givens", "diameter"), 13),
        (("task", 1), 16),
        (("task", 1, "id"), 17),
        (("task", 1, "givens", "web", "unit"), 19),
        (("task", 1, "parts", 1, "id"), 23),
    ],
)
def test_the_line_of_an_entry(path, line):
    assert lines_of(TEXT)[path] == line


def test_every_path_leads_to_something():
    content = tomllib.loads(TEXT)
    for path in lines_of(TEXT):
        found = content
        for part in path:
            found = found[part]


def test_text_of_several_lines_holds_no_entry():
    assert 5 not in lines_of(TEXT).values()
    assert 6 not in lines_of(TEXT).values()

"""Reading a printed page back: the straight strokes in a PDF, in millimetres on the paper."""

import re
import zlib

MM_PER_POINT = 25.4 / 72
IDENTITY = (1.0, 0.0, 0.0, 1.0, 0.0, 0.0)


def pages(pdf: bytes) -> list[tuple[float, float]]:
    """The size of every page in mm."""
    boxes = re.findall(rb"/MediaBox\s*\[\s*([\d.\s-]+)\]", pdf)
    sizes = ([float(n) for n in box.split()] for box in boxes)
    return [((x1 - x0) * MM_PER_POINT, (y1 - y0) * MM_PER_POINT) for x0, y0, x1, y1 in sizes]


def paths(pdf: bytes) -> list[list[tuple[float, float]]]:
    """Every path of straight lines on the page as its places in mm, upwards from the lower left corner."""
    found = []
    for stream in re.findall(rb"stream\r?\n(.*?)\r?\nendstream", pdf, re.DOTALL):
        try:
            text = zlib.decompress(stream)
        except zlib.error:
            continue
        if b" cm" in text and b" l" in text and b"beginbfchar" not in text:
            found += _paths(text.decode("latin-1"))
    return found


def _times(inner, outer):
    a, b, c, d, e, f = inner
    g, h, i, j, k, m = outer
    return (a * g + b * i, a * h + b * j, c * g + d * i, c * h + d * j, e * g + f * i + k, e * h + f * j + m)


def _paths(text):
    matrix, kept, numbers, path, found = IDENTITY, [], [], [], []
    for word in text.split():
        try:
            numbers.append(float(word))
            continue
        except ValueError:
            pass
        if word == "q":
            kept.append(matrix)
        elif word == "Q":
            matrix = kept.pop()
        elif word == "cm":
            matrix = _times(tuple(numbers[-6:]), matrix)
        elif word in ("m", "l"):
            if word == "m" and path:
                found.append(path)
                path = []
            x, y = numbers[-2:]
            a, b, c, d, e, f = matrix
            path.append(((a * x + c * y + e) * MM_PER_POINT, (b * x + d * y + f) * MM_PER_POINT))
        elif word in ("S", "s", "f", "n", "B", "b", "f*"):
            if path:
                found.append(path)
            path = []
        numbers = []
    return found

"""Triangles to grey pixels, hidden faces removed: a depth buffer in numpy, and its image as PNG."""

from __future__ import annotations

import struct
import zlib
from typing import Any

import numpy as np
import numpy.typing as npt
from attrs import frozen

Floats = npt.NDArray[np.float64]
Index = npt.NDArray[np.int64]


@frozen(eq=False)
class Pixels:
    """What is nearest to the eye at each pixel.

    depth: towards the eye, -inf where nothing is, shape (height, width). hit: numbers of the pixels, row by row, at
    which there is something; triangle: what there is, shares: of its three corners at the middle of the pixel.
    """

    depth: Floats
    hit: Index
    triangle: Index
    shares: Floats


def rasterised(places: Floats, triangles: Index, width: int, height: int) -> Pixels:
    """places: x to the right and y down in pixels, z towards the eye."""
    corner = places[triangles]
    which, y, x = _covered(corner, width, height)
    where, shares = y * width + x, _shares(corner[which], x + 0.5, y + 0.5)
    depth = (shares * corner[which, :, 2]).sum(axis=1)
    nearest = np.full(width * height, -np.inf)
    np.maximum.at(nearest, where, depth)
    first = np.full(width * height, -1)
    seen = np.flatnonzero(depth == nearest[where])
    first[where[seen]] = seen
    hit = np.flatnonzero(first >= 0)
    return Pixels(nearest.reshape(height, width), hit, which[first[hit]], shares[first[hit]])


def _covered(corner: Floats, width: int, height: int) -> tuple[Index, Index, Index]:
    """Triangle, row and column of every pixel whose middle lies in a triangle: row by row, as triangles are slender."""
    first, count = _steps(corner[:, :, 1].min(axis=1), corner[:, :, 1].max(axis=1), height)
    which, row = _counted(first, count)
    level = row + 0.5
    left, right = np.full(len(row), np.inf), np.full(len(row), -np.inf)
    for start, end in ((0, 1), (1, 2), (2, 0)):
        (ax, ay), (bx, by) = corner[which, start, :2].T, corner[which, end, :2].T
        crossed = (ay != by) & (level >= np.minimum(ay, by)) & (level <= np.maximum(ay, by))
        x = ax + (bx - ax) * (level - ay) / np.where(ay != by, by - ay, 1.0)
        left, right = np.where(crossed, np.minimum(left, x), left), np.where(crossed, np.maximum(right, x), right)
    met = left <= right
    first, count = _steps(left[met], right[met], width)
    span, column = _counted(first, count)
    return which[met][span], row[met][span], column


def _steps(low: Floats, high: Floats, most: int) -> tuple[Index, Index]:
    """The first whole number whose middle lies between two ends, and how many do."""
    first = np.ceil(low - 0.5).clip(0, most).astype(np.int64)
    last = np.floor(high - 0.5).clip(-1, most - 1).astype(np.int64)
    return first, (last - first + 1).clip(0)


def _counted(first: Index, count: Index) -> tuple[Index, Index]:
    """For counts of steps from a first one: whose step each is, and which."""
    which = np.repeat(np.arange(len(first)), count)
    return which, first[which] + np.arange(len(which)) - np.repeat(np.cumsum(count) - count, count)


def _shares(corner: Floats, x: Any, y: Any) -> Floats:
    """How much each corner of a triangle counts at a place in it; a flattened triangle is all its first corner."""
    ax, ay = corner[:, 0, 0], corner[:, 0, 1]
    bx, by, cx, cy = corner[:, 1, 0] - ax, corner[:, 1, 1] - ay, corner[:, 2, 0] - ax, corner[:, 2, 1] - ay
    area = bx * cy - cx * by
    area = np.where(area != 0, area, np.inf)
    second, third = ((x - ax) * cy - cx * (y - ay)) / area, (bx * (y - ay) - (x - ax) * by) / area
    return np.stack([1 - second - third, second, third], axis=1)


def png(grey: npt.NDArray[np.uint8], cover: npt.NDArray[np.uint8]) -> bytes:
    """A PNG image of greys and how far each pixel is covered (ISO/IEC 15948, greyscale with alpha)."""
    height, width = grey.shape
    pixels = np.stack([grey, cover], axis=2).reshape(height, 2 * width)
    # Each row as what it adds to the one above ("up"): smooth shading then packs to half.
    rows = np.diff(pixels.astype(np.int16), axis=0, prepend=0).astype(np.uint8)
    packed = zlib.compress(np.insert(rows, 0, 2, axis=1).tobytes(), 9)
    head = struct.pack(">IIBBBBB", width, height, 8, 4, 0, 0, 0)
    chunks = ((b"IHDR", head), (b"IDAT", packed), (b"IEND", b""))
    return b"\x89PNG\r\n\x1a\n" + b"".join(_chunk(kind, data) for kind, data in chunks)


def _chunk(kind: bytes, data: bytes) -> bytes:
    return struct.pack(">I", len(data)) + kind + data + struct.pack(">I", zlib.crc32(kind + data))

"""Labels keep apart and inside the frame wherever the sliders of an explorer may stand."""

import random
from itertools import product

import pytest

from drillpoint.errors import LearnerError
from drillpoint.explorers.answering import drawings
from drillpoint.explorers.find import EXPLORERS
from tests.drawing.labels import label_faults

MOST = 64  # more corners than this are thinned out


def corners(explorer):
    """States at the ends of the sliders, and with one slider at its end."""
    ends = list(product(*((s.low, s.high) for s in explorer.sliders)))
    if len(ends) > MOST:
        ends = random.Random(118).sample(ends, MOST)
    states = [explorer.start]
    for placed in ends:
        state = {s.name: at for s, at in zip(explorer.sliders, placed, strict=True) if not s.share_of}
        shares = {s.name: at * state[s.share_of] for s, at in zip(explorer.sliders, placed, strict=True) if s.share_of}
        states.append({**state, **shares})
    for slider in explorer.sliders:
        states += [explorer.state(**{slider.name: end}) for end in slider.limits(explorer.start)]
    return states


@pytest.mark.parametrize("explorer", EXPLORERS.values(), ids=EXPLORERS)
def test_labels_keep_apart_wherever_the_sliders_stand(browser, explorer):
    shown = []
    states = corners(explorer)
    for state in states:
        try:
            drawn = drawings(explorer, state, explorer.scenes)
        except LearnerError:
            continue
        shown += [(one, f"{name} {state}") for name, one in drawn.items()]
    assert len(shown) * 3 > len(states) * len(explorer.scenes), "most corners of the sliders are impossible"
    measured, faults = label_faults(browser, shown)
    assert measured >= 4 * len(shown)
    assert faults == []

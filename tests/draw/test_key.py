"""The sheet that explains the pictures."""

from draw.looking import Box, Seen, points

from seqplan.draw.cloth import Cloth, Stitch
from seqplan.draw.key import key_figure
from seqplan.draw.svg import svg
from seqplan.rehearse.edges import EdgeState, Kind
from seqplan.words.say import say


def seen():
    return Seen(svg(key_figure()))


def test_everything_stands_on_the_sheet_and_apart():
    picture = seen()
    assert not picture.overlapping()
    assert all(picture.canvas.holds(box) for _, box in picture.words())
    for path in picture.root.iter("{http://www.w3.org/2000/svg}path"):
        assert all(picture.canvas.holds(Box(x, y, x, y)) for x, y in points(path.get("d")))


def test_every_stitch_cloth_state_and_side_is_explained():
    told = " ".join(words for words, _ in seen().words("key"))
    for stitch in Stitch:
        assert say(f"picture-stitch-{stitch.value}") in told
    for cloth in Cloth:
        assert say(f"key-cloth-{cloth.value}") in told
    for side in ("right", "wrong"):
        assert say(f"picture-{side}-side") in told
    letters = [words for words, _ in seen().words("state")]
    wanted = {
        say(f"map-letter-{key}")
        for kind in Kind
        for is_finished in (False, True)
        for key in EdgeState(kind, is_finished).letters
    }
    assert set(letters) == wanted
    assert len(letters) == len(set(letters)), "each letter stands for one thing"


def test_it_is_the_same_each_time():
    assert key_figure() == key_figure()

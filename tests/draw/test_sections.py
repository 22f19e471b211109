"""What a needle meets in seams and edges that handbooks name, against a table written by hand."""

from pathlib import Path

import pytest
import yaml
from rules.reasoning import construction

from seqplan.draw.cloth import Section
from seqplan.draw.section import section
from seqplan.rehearse.work import Work

TABLE = yaml.safe_load(Path(__file__).with_name("sections.yaml").read_text("utf-8"))
CASES = TABLE["cases"]


def drawn(case) -> Section:
    parts = {**case["garment"], "operations": case["does"]}
    if "notions" in case:
        parts["notions"] = case["notions"]
    c = construction(yaml.safe_dump(parts, sort_keys=False))
    work = Work(c)
    for id_ in c.ids:
        work.do(c.op[id_])
        if id_ == case["after"]:
            found = section(c, work, c.op[id_])
            assert found is not None
            return found
    raise AssertionError(c.ids)


def said(pierced) -> str:
    side = {True: " R", False: " W", None: ""}[pierced.on_right]
    return f"{pierced.material.title.removesuffix(', the other one')}{side}"


@pytest.mark.parametrize("case", CASES, ids=lambda case: case["name"])
def test_rows_go_through_what_the_handbooks_say(case):
    found = drawn(case)
    rows = [f"{row.stitch.value}: {', '.join(map(said, found.through(row)))}" for row in found.rows]
    assert rows == case["rows"]


@pytest.mark.parametrize(
    ("case", "place"),
    [(case, place) for case in CASES for place in case.get("lies", {})],
    ids=lambda value: value["name"] if isinstance(value, dict) else str(value),
)
def test_layers_lie_as_the_handbooks_say(case, place):
    found = drawn(case)
    xs = [x for ply in found.plies for x, _ in ply.points]
    x = {"left": min(xs) + 0.5, "right": max(xs) - 0.5}.get(place, place)
    assert ", ".join(map(said, found.lying_at(x))) == case["lies"][place]


def test_the_table_names_its_sources_and_many_seams():
    assert len({case["name"] for case in CASES}) == len(CASES) >= 20
    assert all(case["source"] for case in CASES)


@pytest.mark.parametrize("case", CASES, ids=lambda case: case["name"])
def test_turning_a_section_over_twice_changes_nothing(case):
    found = drawn(case)
    assert found.upside_down().upside_down() == found
    assert found.the_other_way().the_other_way() == found

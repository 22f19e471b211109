"""Names for lists: operations, what is done, what hangs together, techniques."""

import pytest
from tell.sampler import built
from tell.test_verbs import FILES, verb_garment

from seqplan.model.operation import Action
from seqplan.plan.plan import Step
from seqplan.tell.deeds import in_plain_names, name_deed, name_deeds, name_done, name_unit
from seqplan.tell.skills import goes_wrong, skill_name, skills_of
from seqplan.words.say import has, say


def test_every_action_has_a_name_before_and_after():
    for action in Action:
        slug = action.value.replace(" ", "-")
        assert has(f"deed-{slug}"), slug
        assert has(f"done-{slug}"), slug


@pytest.mark.parametrize("path", FILES, ids=lambda path: path.stem)
def test_every_technique_of_every_verb_has_a_name_and_says_where_it_goes_wrong(path):
    c = verb_garment(path)
    for number, (entry, ops) in enumerate(c.of_entry.items(), 1):
        for skill in skills_of(c, Step(number, entry, ops), ()):
            assert skill_name(skill)
            assert goes_wrong(skill) or skill == "do"


def test_an_operation_is_named_by_the_title_of_its_entry():
    c = built("breakwater-skirt")
    assert name_deed(c, c.op["side-seams/press"]) == "Side seams: press"
    assert name_deed(c, c.op["closure"]) == "Closure"
    waist = [op.id for op in c.of_entry["waist"]]
    assert name_deeds(c, [*waist, "hem"]) == ("Waist", "Hem: sew the hem")
    assert name_done(c, waist[:2]) == ("Waist: sewn and trimmed",)


def test_what_hangs_together_is_named_as_people_carry_it():
    c = built("breakwater-skirt")
    assert name_unit(c, frozenset({"back"})) == "Back (all 2)"
    assert name_unit(c, frozenset({"back", "front"})) == "Front and back, in one"
    assert name_unit(c, frozenset(c.garment.piece)) == say("sheet-unit-whole")
    bag = built("chandlery-tote")
    assert name_unit(bag, frozenset({"lining"})) == "Lining (all 2)"


def test_a_reason_is_read_with_titles_and_not_with_names_of_the_file():
    c = built("breakwater-skirt")
    told = in_plain_names(c, "`waist/turn` needs `side-seams`, and `something`.")
    assert told == "“Waist: turn” needs “Side seams: sew”, and “something”."

import pytest
from tell.sampler import GARMENTS, SHIPPED, built, sentences, sheet, sheet_of

from seqplan.load.document import load_text
from seqplan.tell.material import tell_mark, tell_plans

ALL = (*SHIPPED, "dress", "tube")


def needs(made):
    return {need.title: need.lines for need in made.needs}


@pytest.mark.parametrize("name", ALL)
def test_every_station_that_is_used_has_its_key(name):
    assert {s.station for s in sentences(name)} == set(sheet(name).station)


@pytest.mark.parametrize("name", ALL)
def test_every_word_is_explained_once_and_stands_in_the_glossary(name):
    made = sheet(name)
    explained = [term for group in made.groups for step in group.steps for term in step.terms]
    assert len(explained) == len(set(explained))
    assert set(explained) == set(made.glossary)
    names = [term.name.casefold() for term in made.glossary]
    assert names == sorted(names)


def test_a_word_is_explained_where_it_first_stands():
    made = sheet("breakwater-skirt")
    first = made.groups[0].steps[0]
    assert "staystitch" in [term.name for term in first.terms]
    assert not [
        term.name
        for group in made.groups
        for step in group.steps[1:]
        for term in step.terms
        if term.name == "staystitch"
    ]


def test_what_is_needed_for_the_skirt():
    lines = needs(sheet("breakwater-skirt"))
    assert lines["Fabric"][0] == "Shell: woven, medium weight; cotton twill or light denim"
    assert lines["Fabric"][1:3] == (
        "Shell, 150 cm (60 in) wide: 80 cm (⅞ yd)",
        "or shell, 115 cm (45 in) wide: 1.35 m (1½ yd)",
    )
    assert lines["Interfacing"] == (
        "Fusible: interfacing, light weight",
        "Fusible, 90 cm (36 in) wide: 30 cm (⅜ yd)",
    )
    assert lines["Notions, the small things to buy"] == (
        "1 \N{MULTIPLICATION SIGN} invisible zip, 23 cm (9 in) long",
        "1 \N{MULTIPLICATION SIGN} hook and eye",
    )
    assert lines["Machines and feet"][0] == (
        "Sewing machine with standard foot, invisible zip foot and zip foot"
    )
    assert "New machine needles, about 80/12 for medium cloth" in lines["Thread and needles"]
    assert "Hand needles and a thimble" in lines["Tools"]


CLOTH = """
sizes: [S, M]
fabrics:
  shell: {kind: woven%s}
  felt:  {kind: felt%s}
pieces: {bag: {of: shell, edges: [top]}, dot: {of: felt, edges: [round]}}
operations: {it: {do: Sew, on: [bag, dot]}}
"""


def test_amounts_of_cloth_are_told_by_width_and_by_size():
    by_size = ", amounts: {150: {S: 1.2 m, M: 1 3/8 yd}, 60 in: 2 yd}"
    made = sheet_of(CLOTH % (by_size, ", amounts: {90: 12 cm}"))
    assert needs(made)["Fabric"][:-1] == (
        "Shell: woven",
        "Shell, 150 cm (60 in) wide: see the table of sizes",
        "or shell, 60 in (150 cm) wide: 2 yd (1.85 m)",
        "Felt: felt",
        "Felt, 90 cm (36 in) wide: 15 cm (¼ yd)",
    )
    assert made.measures.sizes == ("S", "M")
    assert made.measures.rows == (
        ("Shell, 150 cm (60 in) wide", ("1.2 m (1⅜ yd)", "1⅜ yd (1.3 m)")),
    )


def test_what_nobody_says_the_amount_of_is_left_to_the_reader():
    lines = needs(sheet_of(CLOTH % ("", "")))["Fabric"]
    assert "How much depends on your size" in lines[2]
    lines = needs(sheet_of(CLOTH % (", amounts: {150: {S: 1 m, M: 1 m}}", "")))["Fabric"]
    assert "Felt: how much depends on your size" in lines[3]


def test_date_and_terms_are_on_the_sheet_as_they_are_written():
    made = sheet("breakwater-skirt")
    assert made.date == "August 2026"
    assert made.terms[0] == (
        "Sew it for yourself, as a present or to sell, and change what you like."
    )
    assert (made.mark, made.plans) == (None, ())
    assert sheet("gull-skirt").date is None
    assert sheet("gull-skirt").terms == ()


def test_mark_and_lay_plans_are_on_the_sheet_with_their_words():
    made = sheet("chandlery-tote")
    assert made.mark.data == (GARMENTS / "makers-hall-mark.svg").read_bytes()
    assert made.mark[1:] == ("image/svg+xml", "The mark of Makers' Hall sewing room", "")
    (plan,) = made.plans
    assert plan.data == (GARMENTS / "chandlery-tote-canvas-150.svg").read_bytes()
    assert plan[1:] == ("image/svg+xml", *["Lay plan: Canvas, 150 cm (60 in) wide"] * 2)


@pytest.mark.parametrize(
    ("keys", "alt", "caption"),
    [
        ("", "Lay plan: Shell", "Lay plan: Shell"),
        (", size: M, alt: Two bags.", "Two bags.", "Lay plan: Shell, size M"),
        (", width: 115, size: S", *["Lay plan: Shell, 115 cm (45 in) wide, size S"] * 2),
    ],
)
def test_a_lay_plan_is_called_by_what_it_is_for(keys, alt, caption):
    text = f"garment: Try\nmark: makers-hall-mark.svg\n{CLOTH % ('', '')}"
    text += f"plans: [{{picture: makers-hall-mark.svg, fabric: shell{keys}}}]"
    garment = load_text(text, folder=GARMENTS).garment
    assert tell_plans(garment)[0][2:] == (alt, caption)
    assert tell_mark(garment).alt == "The designer's mark"


def test_what_is_needed_for_the_pyjamas():
    lines = needs(sheet("night-watch-pyjamas"))
    assert lines["Notions, the small things to buy"] == (
        (
            "1 \N{MULTIPLICATION SIGN} elastic, 2.5 cm (1 in) wide and 70 cm (27½ in) long;"
            " for a waist of 76 cm (30 in); else your waist less a tenth, and 2 cm (¾ in) to"
            " overlap"
        ),
    )
    assert "Safety pin or bodkin, a thick blunt needle" in lines["Tools"]
    assert "Interfacing" not in lines


def test_the_cutting_list_has_the_interfacing_too():
    rows = [(row.piece, row.cut, row.fabric) for row in sheet("breakwater-skirt").cutting]
    assert rows == [
        ("Front", "1, on the fold", "shell"),
        ("Back", "2, a mirrored pair", "shell"),
        ("Front facing", "1, on the fold", "shell"),
        ("Front facing", "1, on the fold", "fusible"),
        ("Back facing", "2, a mirrored pair", "shell"),
        ("Back facing", "2, a mirrored pair", "fusible"),
    ]


def test_a_lining_is_called_one_and_cut_turned_over():
    made = sheet_of(
        "pieces: {bag: {cut: 1, edges: [top]}, inner: {like: bag, layer: lining, note: Cut last}}\n"
        "operations: {it: {do: Sew}}"
    )
    assert [(row.piece, row.cut, row.notes) for row in made.cutting] == [
        ("Bag", "1, single layer", ()),
        ("Inner, lining", "1, with the pattern turned over", ("Cut last.",)),
    ]


def test_allowances_are_said_once_for_all_and_for_each_exception():
    assert sheet("breakwater-skirt").allowances == (
        "A seam allowance of 1.5 cm (⅝ in) is included unless a step says otherwise.",
        (
            "The hem edges of the back and front pieces: 4 cm (1⅝ in) for the fold,"
            " 1 cm (⅜ in) turned in and then 3 cm (1⅛ in)."
        ),
        (
            "The lower edges of the front facing and back facing pieces: no allowance,"
            " because nothing is sewn to them."
        ),
    )
    assert "names no seam allowance" in sheet("tube").allowances[0]
    assert "The round edges of the pocket pieces: 6 mm (¼ in) for the seam." in (
        sheet("dress").allowances
    )


def test_a_narrow_hem_is_not_turned_in_deeper_than_it_is():
    lines = sheet("rope-walk-bag").allowances
    assert any("5 mm (¼ in) turned in and then 5 mm (¼ in)" in line for line in lines)


def test_points_to_mark_are_listed():
    marks = sheet("breakwater-skirt").marks
    assert "On the front piece: the notch of the side edge (a single one 20 cm" in marks[0]
    assert "On the back pieces: the point where centre and opening meet" in marks[2]
    assert "2.5 cm (1 in) above its bottom stop" in marks[3]
    assert len(sheet("rope-walk-bag").marks) == 3


def test_places_on_edges_are_listed_for_marking():
    assert "On the side edges of the upper pieces: the two marks" in sheet("gull-skirt").marks[0]
    assert sheet("chandlery-tote").marks[0] == (
        "On the top edges of the outer pieces: where the strap pieces will lie."
    )
    neck, ties = sheet("galley-apron").marks[1:3]
    assert neck == "On the top edge of the body piece: where the neck piece will lie."
    assert ties == "On the side edges of the body piece: where the tie pieces will lie."


def test_headings_name_the_part_in_hand():
    headings = [group.heading for group in sheet("breakwater-skirt").groups]
    assert headings == ["Front and back", "The facings", "All of it"]
    assert [g.heading for g in sheet("rope-walk-bag").groups] == ["Panel"]


def test_free_words_alone_make_a_sheet():
    made = sheet_of("operations: {one: {do: Fold the paper}, two: {do: Fly it, station: table}}")
    assert [group.heading for group in made.groups] == ["The whole work"]
    assert made.cutting == ()
    assert made.marks == ()
    assert made.glossary == ()


def titles(made):
    return [caution.title for caution in made.cautions]


CORD = """
%s
notions: {cord: {kind: cord}, beads: {kind: bead}}
pieces: {bag: {cut: 1, edges: [top, side, foot, side]}}
operations: {channel: {casing: bag.top, depth: 2}, cord: {insert: cord, in: channel}}
"""


def test_cautions_follow_the_stations_that_are_used():
    assert "Overlocker" in titles(sheet("breakwater-skirt"))
    assert "Overlocker" not in titles(sheet("rope-walk-bag"))
    assert titles(sheet("rope-walk-bag"))[0] == "Scissors and rotary cutter"
    for name in ALL:
        assert "come first" in sheet(name).caution_intro


USED = {
    "Fusing": "operations: {it: {fuse: bag, with: shell}}",
    "Washing cloth": "operations: {it: {pretreat: shell}}",
    "Iron": "operations: {it: {hem: bag.top, depth: 2}}",
    "Overlocker": "operations: {it: {finish: bag.top}}",
    "Hand needles": "operations: {it: {hem: bag.top, depth: 2, by: hand}}",
    "Cutting into a piece": "operations: {it: {slash: bag.top}}",
    "Seam ripper": "operations: {it: {buttonhole: bag.top}}",
    "Eyelets, rivets and studs": "notions: {s: {kind: eyelet}}\n"
    "operations: {it: {attach: s, at: bag}}",
}
BAG = """
wearer: adult
fabrics: {shell: {kind: woven}}
pieces: {bag: {of: shell, cut: 1, edges: [top, side, foot, side]}}
"""


@pytest.mark.parametrize("title", USED)
def test_a_caution_stands_where_the_garment_needs_it_and_only_there(title):
    assert title in titles(sheet_of(BAG + USED[title]))
    assert title not in titles(sheet_of(BAG + "operations: {it: {baste: bag.side}}"))


def test_free_words_alone_want_no_cautions_of_cutting_and_pinning():
    assert titles(sheet_of("operations: {one: {do: Fold the paper}}")) == []


def test_the_zip_of_a_childs_garment_has_a_pull_that_may_come_off():
    made = sheet("dress")
    (small,) = [caution for caution in made.cautions if caution.title == "Small parts"]
    assert "button and the pull of a zip" in small.lines[0]


def test_cords_and_small_parts_are_cautioned_against_for_children():
    made = sheet_of(CORD % "wearer: child")
    assert titles(made)[:3] == ["Made for a child", "Cords on children's clothes", "Small parts"]


def test_a_cord_is_worth_a_note_where_nobody_says_who_wears_it():
    assert titles(sheet_of(CORD % "author: Somebody"))[0] == "If a child will use it"
    assert "child" not in " ".join(titles(sheet_of(CORD % "wearer: adult")))


def test_the_last_check_names_every_closure():
    assert "Every closure works, several times: invisible zip and hook and eye." in (
        sheet("breakwater-skirt").checks
    )
    assert not any("closure" in check for check in sheet("night-watch-pyjamas").checks)


@pytest.mark.parametrize("name", ALL)
def test_the_sheet_counts_what_it_holds(name):
    made = sheet(name)
    steps = [step for group in made.groups for step in group.steps]
    assert [step.number for step in steps] == list(range(1, made.steps + 1))
    assert sum(len(step.sentences) for step in steps) == made.operations
    assert made.operations == len(built(name).operations)


def test_a_heading_names_only_the_first_of_many_pieces():
    headings = [group.heading for group in sheet("net-loft-shirt").groups]
    assert all(heading.count(",") <= 4 for heading in headings)
    assert any(heading.endswith("more pieces") for heading in headings)


OWN_WORDS = """
garment: Buoy scarf
glossary:
  keel line: The fold that runs down the middle
  moon tuck: A tuck that tapers to nothing at both ends
  topstitch: Two rows that show
fabrics: {wool: {kind: woven}}
pieces: {scarf: {of: wool, cut: 1, edges: [end, long, end, long]}}
operations:
  first:  {do: Look the cloth over., on: scarf}
  tucks:  {do: Lay four moon tucks., on: scarf}
  again:  {do: Press the moon tuck and topstitch it., on: scarf, note: Mind the moon tuck.}
"""


def test_the_authors_own_words_are_explained_where_they_are_used_first():
    made = sheet_of(OWN_WORDS)
    steps = [step for group in made.groups for step in group.steps]
    assert [[term.name for term in step.terms] for step in steps] == [
        [],
        ["moon tuck"],
        ["topstitch"],
    ]
    assert {term.name: term.meaning for term in made.glossary} == {
        "keel line": "The fold that runs down the middle.",
        "moon tuck": "A tuck that tapers to nothing at both ends.",
        "topstitch": "Two rows that show.",
    }


def test_the_halves_of_pocket_bags_are_cut_as_mirror_images():
    cut = {row.piece: row.cut for row in sheet("gull-skirt").cutting}
    assert cut["Pocket"] == "4, in mirrored pairs"
    assert cut["Tier"] == "2, all alike"


def test_rows_on_the_face_of_pieces_are_marked():
    marks = " ".join(sheet("pilot-boat-trousers").marks)
    assert "On the front pieces: the curved line along which the fly is topstitched" in marks
    assert "On the band piece: both ends of every buttonhole." in marks

"""The translations: complete, in step with the English, and spoken where they are asked for."""

import re
import shutil
import string
import subprocess
import sys
from html import unescape

import polib
import pytest
from cli.running import GARMENTS, ROOT, SKIRT, run
from hypothesis import given
from hypothesis import strategies as st
from tell.sampler import DRESS, TUBE, construction
from tell.test_verbs import FILES, verb_garment
from tools import make_words
from words.reading import GARMENT, english_in, english_labels_in

import seqplan.words.say as words
from seqplan.base.language import ENGLISH, LANGUAGES, speaking, spoken
from seqplan.base.measure import (
    MM_PER_INCH,
    Length,
    both,
    both_whole_inches,
    format_written,
    parse_length,
)
from seqplan.explain.chart import Lanes
from seqplan.paper import batch, booklet, class_sheets, filming
from seqplan.pipeline import draw_graph, open_garment, step_pictures, told_in, write_handout
from seqplan.render.handout.paper import Paper
from seqplan.render.listing import list_steps
from seqplan.tell.step import tell_operation
from seqplan.tell.terms import terms_in
from seqplan.words.say import has, say, sentence, translated

OTHERS = [language for language in LANGUAGES if language != ENGLISH]
KEYS = [source.context for source in make_words.sources() if source.is_key]


# -- the catalogues --------------------------------------------------------------------------


@pytest.mark.parametrize("language", OTHERS)
def test_everything_that_readers_read_is_translated_as_its_english_stands_now(language):
    assert list(make_words.problems(language)) == []


@pytest.mark.parametrize("language", OTHERS)
def test_a_translation_is_not_its_english(language):
    with speaking(language):
        same = [
            key for key in KEYS if len(sentence(key)) > 40 and say_with_names(key) == sentence(key)
        ]
    assert same == []


def say_with_names(key):
    """A sentence whose places are filled by their own names."""
    names = make_words.places(sentence(key)) - {"count"}
    return say(key, count=7, **{name: f"{{{name}}}" for name in names})


@pytest.fixture
def copied(tmp_path, monkeypatch):
    """The translations in a folder of their own, where they may be spoilt."""
    shutil.copytree(make_words.LOCALE, tmp_path / "locale")
    monkeypatch.setattr(make_words, "LOCALE", tmp_path / "locale")
    return make_words.po_file("de")


def _rewritten(path, old, new):
    text = path.read_text(encoding="utf-8")
    assert old in text
    path.write_text(text.replace(old, new, 1), encoding="utf-8")


def test_where_the_english_has_changed_its_translation_is_stale(copied):
    """As if the sentence had been another one when it was translated."""
    _rewritten(copied, "All loose threads are cut off, and", "All loose threads are trimmed, and")
    found = list(make_words.problems("de"))
    assert any("sheet-done-threads: the English has changed" in line for line in found)
    make_words.write("de")
    assert any("sheet-done-threads: the English" in line for line in make_words.problems("de"))
    entry = polib.pofile(str(copied)).find("sheet-done-threads", by="msgctxt")
    assert entry.fuzzy
    assert entry.previous_msgid.startswith("All loose threads are trimmed")


def test_a_sentence_without_a_translation_is_named(copied):
    written = polib.pofile(str(copied))
    written.find("step-stitch", by="msgctxt").msgstr = ""
    written.save()
    assert any("step-stitch: not translated yet" in line for line in make_words.problems("de"))


def test_a_place_that_is_lost_is_named(copied):
    _rewritten(copied, "Kante {edges} von {pieces}", "Kante {edges}")
    found = "\n".join(make_words.problems("de"))
    assert "step-edges-of: other places than in the English: pieces" in found


def test_what_was_not_compiled_is_told(copied):
    copied.with_suffix(".mo").unlink()
    assert any("seqplan.mo" in line for line in make_words.problems("de"))
    make_words.write("de")
    assert list(make_words.problems("de")) == []


@pytest.mark.parametrize("language", OTHERS)
def test_each_word_of_the_trade_occurs_in_the_form_in_which_it_is_explained(language):
    """Else the glossary never had it. What only authors say has no sentence of ours."""
    by_authors = {"ease", "facing", "lining", "fly"}
    with speaking(language):
        told = [say_with_names(key) for key in KEYS if key.startswith("step-")]
        found = {term.name for term in terms_in(told)}
        keys = [key.removesuffix("-forms") for key in KEYS if key.endswith("-forms")]
        missing = {key for key in keys if say(f"{key}-name") not in found}
    assert missing - {f"term-{key}" for key in by_authors} == set()


# -- what is said ----------------------------------------------------------------------------

NAMES = st.text(
    st.characters(codec="utf-8", exclude_categories=("Cs", "Cc")), min_size=1, max_size=12
)


@given(st.sampled_from(OTHERS), st.sampled_from(KEYS), st.data(), st.integers(1, 12))
def test_whatever_an_author_calls_things_every_place_is_filled(language, key, data, count):
    places = {p for form in _english(key) for p in make_words.places(form)} - {"count"}
    names = {place: data.draw(NAMES, label=place) for place in sorted(places)}
    with speaking(language):
        told = say(key, count=count, **names)
    needed = places & set.intersection(*(make_words.places(form) for form in _english(key)))
    assert all(names[place] in told for place in needed)
    unfilled = [f"{{{place}}}" for place in (*places, "count")]
    assert not [mark for mark in unfilled if mark in told and mark not in "".join(names.values())]


def _english(key):
    return [sentence(name) for name in (key, f"{key}-one") if has(name)]


def test_a_number_decides_the_form():
    with speaking("de"):
        assert "eine Stunde" in say("step-wait", count=1)
        assert "2 Stunden" in say("step-wait", count=2)
        assert say("step-wait-one") == say("step-wait", count=1)


def test_a_sentence_with_a_number_is_not_said_without_one():
    with speaking("de"), pytest.raises(KeyError, match="count"):
        say("sheet-step-range", first=1, last=2)


def test_what_has_no_translation_is_said_in_english():
    with speaking("de"):
        assert say("fault-empty-file") == "the file is empty"
        assert translated("foot", "my own foot") == "my own foot"
        assert translated("foot", "zip") == "Reißverschlussfuß"


def test_speaking_ends_where_it_ends():
    def stumble():
        with speaking("de"):
            raise ValueError(spoken())

    with pytest.raises(ValueError, match="de"):
        stumble()
    assert spoken() == ENGLISH
    with pytest.raises(KeyError), speaking("tlh"):
        pass


def test_measures_are_written_as_the_language_writes_them():
    with speaking("de"):
        assert both(parse_length("1.5 cm")) == "1,5 cm (⅝ Zoll)"
        assert both(parse_length("5/8 in")) == "⅝ Zoll (1,5 cm)"
        assert both_whole_inches(parse_length("23 cm")) == "23 cm (9 Zoll)"


@given(
    st.sampled_from(list(LANGUAGES)), st.integers(1, 40_000), st.sampled_from(["cm", "mm", "in"])
)
def test_what_goes_into_a_file_is_written_alike_in_every_language(language, eighths, unit):
    length = Length(
        eighths * MM_PER_INCH / 8 if unit == "in" else eighths / MM_PER_INCH * 127, unit
    )
    with speaking(language):
        written = format_written(length)
    assert written == format_written(length)


# -- handouts --------------------------------------------------------------------------------


def _handouts(opened):
    """Every handout there is, each as a page."""
    c, planner = opened.garment, opened.planner
    documents = (
        booklet.compose(c, planner),
        batch.compose(c, planner),
        *class_sheets.compose(c, planner, sessions=3),
        filming.compose(c, planner),
    )
    return [write_handout(document, ".html", Paper.A4).decode() for document in documents]


def _plain(page):
    """What a page says, without its tags and its style."""
    text = re.sub(r"<style>.*?</style>", "", page, flags=re.DOTALL)
    return unescape(re.sub(r"<[^>]+>", " ", text))


def test_english_is_found_where_it_is():
    pages = _handouts(open_garment(SKIRT))
    assert all(len(english_in(_plain(page))) > 10 for page in pages)
    assert all(len(english_labels_in(page)) > 8 for page in pages)


@pytest.mark.parametrize("path", [*GARMENTS, GARMENT], ids=lambda path: path.stem)
def test_no_german_handout_holds_an_english_sentence_of_ours(path, monkeypatch):
    used, usual = set(), words.sentence
    monkeypatch.setattr(words, "sentence", lambda key: used.add(key) or usual(key))
    with told_in(open_garment(path), "de") as opened:
        pages = _handouts(opened)
        pictures = step_pictures(opened)
        steps = list_steps(opened.garment, opened.planner.booklet())
    # What cannot be laid out is told while ways of sewing are tried, and thrown away with them; so
    # is why a mistake comes off itself, where only what else does is counted.
    thrown_away = {*words.catalogue("shapes"), "rescue-done-wrong"}
    known = {*KEYS, *(f"{key}-one" for key in KEYS), "skill-do-wrong", *thrown_away}
    assert used <= known
    assert all('<html lang="de">' in page for page in pages)
    assert [english_in(_plain(page)) for page in pages] == [[]] * len(pages)
    written = path.read_text(encoding="utf-8").casefold().replace("-", " ")
    labels = set().union(*map(english_labels_in, pages))
    assert {label for label in labels if label.casefold() not in written} == set()
    assert english_in(_plain(" ".join(pictures.values()))) == []
    assert english_in(steps) == []
    assert not [page for page in pages if re.search(r"\d\.\d+\s(?:mm|cm)", _plain(page))]


@pytest.mark.parametrize("lanes", Lanes)
def test_no_german_graph_holds_an_english_sentence_of_ours(lanes):
    with told_in(open_garment(SKIRT), "de") as opened:
        graph = _plain(draw_graph(opened, lanes))
    assert english_in(graph) == []
    assert "gebügelt vor der Quernaht" in graph


NOT_A_SENTENCE = re.compile(r"  |[{}_]|\bNone\b|\b(\w+) \1\b| [,.;:]|\.\.|\(\)|„“|\(\(|\)\)")


@pytest.mark.parametrize("path", FILES, ids=lambda path: path.stem)
def test_what_a_verb_is_told_with_is_whole_in_german(path):
    _all_is_german(verb_garment(path))


@pytest.mark.parametrize("text", [DRESS, TUBE])
def test_what_the_samplers_are_told_with_is_whole_in_german(text):
    _all_is_german(construction(text))


def _all_is_german(c):
    for before in (False, True):
        for at, op in enumerate(c.operations):
            with speaking("de"):
                told = tell_operation(c, op, c.ids if before else c.ids[:at])
            is_own = bool(c.entry(op).say or c.entry(op).words)
            for text in filter(None, (*told.texts, told.check)):
                assert english_in(text) == []
                assert not NOT_A_SENTENCE.search(text), text
                assert text[-1] in ".!?", text
                assert is_own or text[0].isupper() or text[0].isdigit() or text[0] == "„", text


# -- who asks --------------------------------------------------------------------------------


def _written(tmp_path, command, *words):
    out = tmp_path / {"handout": "out.html", "graph": "out.svg"}.get(command, "out")
    assert run(command, *words, "-o", out).exit_code == 0
    if out.is_dir():
        return "".join(path.read_text() for path in sorted(out.iterdir()))
    return out.read_text()


@pytest.mark.parametrize("command", ["handout", "pictures", "graph"])
def test_the_command_line_overrides_the_file(tmp_path, command):
    assert english_in(_plain(_written(tmp_path, command, GARMENT))) == []
    assert english_in(_plain(_written(tmp_path, command, GARMENT, "--language", "en"))) != []


def test_steps_are_listed_in_the_language_of_the_file_or_of_the_command_line():
    assert "Teil für Teil" in run("steps", GARMENT).output
    assert "Unit by unit" in run("steps", GARMENT, "--language", "en").output
    assert "Teil für Teil" in run("steps", SKIRT, "--language", "de").output


def test_findings_are_told_in_english_and_what_readers_read_in_their_language(tmp_path):
    out = tmp_path / "out"
    assert run("make", GARMENT, "-o", out).exit_code == 0
    assert "nothing to mend" in (out / "check.txt").read_text()
    assert 'lang="de"' in (out / "booklet.html").read_text()
    assert "muss vorher kommen" in (out / "graph.svg").read_text()
    assert "Schritte;" in (out / "batch-steps.txt").read_text()


def test_a_language_that_is_not_there_is_refused():
    result = run("handout", SKIRT, "-o", "x.html", "--language", "tlh")
    assert result.exit_code == 2
    assert all(language in result.output for language in LANGUAGES)


def test_nothing_of_the_author_is_translated():
    """Names stand as they are written, in quotes inside a sentence."""
    with told_in(open_garment(GARMENT)) as opened:
        page = _plain(_handouts(opened)[0])
    garment = opened.garment.garment
    for piece in garment.pieces:
        assert f"„{piece.title}“" in page
    assert all(entry.note in page for entry in garment.entries if entry.note)


def test_english_loads_no_translation():
    code = (
        "import sys\n"
        "from seqplan.cli.app import seqplan\n"
        "from seqplan.words.say import translations\n"
        "try: seqplan(['check', sys.argv[1]])\n"
        "except SystemExit as end: assert end.code == 0\n"
        "print(translations.cache_info().currsize)"
    )
    words = [sys.executable, "-c", code, str(SKIRT)]
    done = subprocess.run(words, cwd=ROOT, check=True, capture_output=True, text=True)
    assert done.stdout.splitlines()[-1] == "0"


def test_every_place_of_a_translation_is_named():
    for language in OTHERS:
        for entry in polib.pofile(str(make_words.po_file(language))):
            for form in entry.msgstr_plural.values() or [entry.msgstr]:
                fields = [
                    name for _, name, _, _ in string.Formatter().parse(form) if name is not None
                ]
                assert all(name.isidentifier() for name in fields), entry.msgctxt

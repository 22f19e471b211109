"""The booklet in a browser: offline, quiet, nothing wider than the page."""

from pathlib import Path

import pytest
from tell.sampler import SHIPPED, booklet, sheet

CHROMIUM = Path("/usr/bin/chromium")

pytestmark = [
    pytest.mark.browser,
    pytest.mark.skipif(not CHROMIUM.exists(), reason=f"there is no chromium at {CHROMIUM}"),
]

WIDTHS = (360, 640, 718, 800, 1200)
"""Pixels: a telephone, a page at 200 %, the text width of A4, a small window, a large one."""

LETTER = (702, 939)
"""Pixels within the margins of a Letter page: 186 by 248 mm."""
HEADINGS = 75
"""Pixels of the headings that stand above the first step."""


@pytest.fixture(scope="module")
def browser():
    playwright = pytest.importorskip("playwright.sync_api", reason="playwright is not installed")
    with playwright.sync_playwright() as running:
        opened = running.chromium.launch(executable_path=str(CHROMIUM), args=["--no-sandbox"])
        yield opened
        opened.close()


@pytest.fixture
def page(browser):
    context = browser.new_context(offline=True)
    opened = context.new_page()
    opened.messages, opened.requested = [], []
    opened.on("console", lambda message: opened.messages.append(message.text))
    opened.on("pageerror", lambda error: opened.messages.append(str(error)))
    opened.on("request", lambda request: opened.requested.append(request.url))
    yield opened
    context.close()


@pytest.fixture(params=[*SHIPPED, "dress"])
def opened(request, page, tmp_path):
    """A page that is open in the browser, with the sheet it was made from."""
    path = tmp_path / "booklet.html"
    path.write_text(booklet(request.param), encoding="utf-8")
    page.goto(path.as_uri())
    return page, sheet(request.param)


def overflow(page):
    return page.evaluate(
        "document.documentElement.scrollWidth - document.documentElement.clientWidth"
    )


def test_the_booklet_opens_offline_and_quietly(opened):
    page, made = opened
    assert page.title() == f"{made.title}: Sewing booklet"
    assert page.get_by_role("heading", level=1).inner_text() == made.title
    assert page.get_by_role("heading", level=4).count() == made.steps
    assert page.get_by_role("checkbox").count() >= made.operations
    assert page.messages == []
    assert len(page.requested) == 1


def test_a_box_can_be_ticked(opened):
    page, made = opened
    step = made.groups[0].steps[0]
    where = made.station[step.sentences[0].station].title
    box = page.get_by_role("checkbox", name=where).first
    box.check()
    assert box.is_checked()


@pytest.mark.parametrize("media", ["screen", "print"])
def test_nothing_is_wider_than_the_page(opened, media):
    page, _ = opened
    page.emulate_media(media=media)
    for width in WIDTHS:
        page.set_viewport_size({"width": width, "height": 900})
        assert overflow(page) <= 0, width


def test_no_text_is_cut_off(opened):
    page, _ = opened
    page.set_viewport_size({"width": 718, "height": 1000})
    cut_off = page.evaluate(
        """[...document.querySelectorAll('p, li, dd, dt, td, th, h2, h3, h4')]
           .filter(e => getComputedStyle(e).display != 'inline')
           .filter(e => e.scrollWidth > e.clientWidth + 1)
           .map(e => e.textContent)"""
    )
    assert cut_off == []


def test_whatever_is_done_at_one_place_fits_on_a_page(opened):
    """A step may go on overleaf, but only between two of its boxes."""
    page, _ = opened
    page.emulate_media(media="print")
    page.set_viewport_size({"width": LETTER[0], "height": LETTER[1]})
    heights = page.evaluate(
        "[...document.querySelectorAll('.deeds > li')].map(e => e.getBoundingClientRect().height)"
    )
    assert max(heights) <= LETTER[1] - HEADINGS


@pytest.mark.parametrize("size", ["A4", "Letter"])
def test_it_prints_on_both_sizes_of_paper(opened, size):
    page, made = opened
    printed = page.pdf(format=size, print_background=True, tagged=True)
    assert printed.startswith(b"%PDF")
    assert printed.count(b"/Type /Page\n") <= made.steps + 6

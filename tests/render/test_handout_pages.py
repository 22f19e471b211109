"""The booklet on paper: no page is left nearly empty, on A4 and on Letter."""

import re
import shutil
import subprocess
from itertools import product
from pathlib import Path

import pytest
from tell.sampler import SHIPPED, booklet

from seqplan.render.handout.flow import handfuls
from seqplan.tell.sentence import Term

CHROMIUM = Path("/usr/bin/chromium")
READER = shutil.which("pdftotext")

TOP, FOOT = 14 / 25.4 * 72, 17 / 25.4 * 72
"""The margins of the page in points."""
LEAST = 0.3
LEAST_LAST = 0.12
"""How full a page is, and the last one; one word of the trade alone takes less."""


@pytest.fixture(scope="module")
def browser():
    playwright = pytest.importorskip("playwright.sync_api", reason="playwright is not installed")
    with playwright.sync_playwright() as running:
        opened = running.chromium.launch(executable_path=str(CHROMIUM), args=["--no-sandbox"])
        yield opened
        opened.close()


def _fullness(pdf: Path) -> list[float]:
    """How far down the last word on each page stands, as a part of the page within margins."""
    done = subprocess.run([READER, "-bbox", pdf, "-"], capture_output=True, text=True, check=True)
    found = []
    for height, words in re.findall(
        r'<page width="[\d.]+" height="([\d.]+)">(.*?)</page>', done.stdout, re.DOTALL
    ):
        room = float(height) - TOP - FOOT
        ends = [float(end) - TOP for end in re.findall(r'yMax="([\d.]+)"', words)]
        found.append(max((end for end in ends if end <= room + 1), default=0) / room)
    return found


@pytest.mark.browser
@pytest.mark.skipif(not CHROMIUM.exists(), reason=f"there is no chromium at {CHROMIUM}")
@pytest.mark.skipif(READER is None, reason="there is no pdftotext")
@pytest.mark.parametrize(("name", "size"), list(product(SHIPPED, ("A4", "Letter"))))
def test_no_page_is_nearly_empty(name, size, browser, tmp_path):
    page = browser.new_page()
    page.set_content(booklet(name))
    page.pdf(path=tmp_path / "booklet.pdf", format=size, prefer_css_page_size=False)
    page.close()
    *others, last = _fullness(tmp_path / "booklet.pdf")
    assert others
    assert min(others) >= LEAST
    assert last >= LEAST_LAST


@pytest.mark.parametrize("count", range(40))
def test_words_of_the_trade_stay_in_handfuls(count):
    terms = [Term(str(number), "") for number in range(count)]
    parts = handfuls(terms)
    assert [term for part in parts for term in part] == terms
    assert all(len(part) % 2 == 0 for part in parts[:-1])
    assert all(5 <= len(part) <= 12 for part in parts) or count < 5

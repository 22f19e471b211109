"""`make --watch` follows the file while it is edited."""

import subprocess
import sys
import time
from pathlib import Path

from cli.running import SKIRT


def _wait_for(condition, seconds: float = 20.0) -> bool:
    end = time.monotonic() + seconds
    while time.monotonic() < end:
        if condition():
            return True
        time.sleep(0.05)
    return False


def test_a_save_makes_everything_again_and_a_fault_in_the_file_does_not_end_it(tmp_path: Path):
    file = tmp_path / "skirt.yaml"
    file.write_text(SKIRT.read_text())
    page = tmp_path / "out" / "booklet.html"
    report = tmp_path / "out" / "check.txt"
    command = [sys.executable, "-m", "seqplan", "make", str(file), "-o", str(tmp_path / "out")]
    with subprocess.Popen(
        [*command, "--watch"], stdout=subprocess.DEVNULL, stderr=subprocess.DEVNULL
    ) as process:
        try:
            assert _wait_for(page.exists)
            file.write_text("garment: [")
            assert _wait_for(lambda: "error" in report.read_text())
            file.write_text(SKIRT.read_text().replace("Breakwater skirt", "Mole skirt"))
            assert _wait_for(lambda: "Mole skirt" in page.read_text())
            assert process.poll() is None
        finally:
            process.terminate()

"""A test that is left out has failed where CI is set, and is only left out where it is not."""

from __future__ import annotations

import os
import subprocess
import sys
from pathlib import Path

import pytest

TESTS = Path(__file__).resolve().parent.parent
LEFT_OUT = {
    "module": "import pytest\npytest.importorskip('no_such_library')\ndef test_it():\n    pass\n",
    "mark": "import pytest\n@pytest.mark.skip(reason='not today')\ndef test_it():\n    pass\n",
    "cases": "import pytest\n@pytest.mark.parametrize('case', [])\ndef test_it(case):\n    pass\n",
    "midway": "import pytest\ndef test_it():\n    pytest.skip('not here')\n",
}


def run(folder: Path, text: str, ci: str) -> subprocess.CompletedProcess[str]:
    (folder / "conftest.py").write_bytes((TESTS / "conftest.py").read_bytes())
    (folder / "test_left_out.py").write_text(text)
    command = [
        sys.executable,
        "-m",
        "pytest",
        "-q",
        "-p",
        "no:cacheprovider",
        "-c",
        os.devnull,
        "--rootdir",
        folder,
        folder,
    ]
    environment = {**os.environ, "CI": ci}
    return subprocess.run(command, env=environment, capture_output=True, text=True, check=False, cwd=folder)


@pytest.mark.parametrize("how", LEFT_OUT)
def test_with_ci_set_it_fails(tmp_path, how):
    done = run(tmp_path, LEFT_OUT[how], "true")
    assert done.returncode not in (0, 5), done.stdout
    assert "left out, which no run with CI set may do" in done.stdout


@pytest.mark.parametrize("how", LEFT_OUT)
def test_without_it_does_not(tmp_path, how):
    done = run(tmp_path, LEFT_OUT[how], "")
    assert done.returncode in (0, 5), done.stdout


def test_what_no_installation_can_mend_is_excused(tmp_path):
    text = "import pytest\n@pytest.mark.skip(reason='the super-user may read anything')\ndef test_it():\n    pass\n"
    assert run(tmp_path, text + "def test_other():\n    pass\n", "true").returncode == 0

"""What every test of the house may ask for."""

import pytest
from hypothesis import Phase, settings

# No test asks how long something took: a busy machine would fail it.
settings.register_profile("house", deadline=None)
# Who asks only whether a law fails need not know the simplest example.
settings.register_profile("unshrunk", deadline=None, phases=[Phase.explicit, Phase.generate])
settings.load_profile("house")


def pytest_addoption(parser: pytest.Parser) -> None:
    parser.addoption(
        "--refresh-cases",
        action="store_true",
        help="write what comes now beside the case files; review the difference before you keep it",
    )
    parser.addoption("--nothing-skipped", action="store_true", help="a test that is skipped fails the run")


def pytest_sessionfinish(session: pytest.Session) -> None:
    """On a machine that has all that tests need, a test that is skipped is a test that nobody runs."""
    reporter = session.config.pluginmanager.get_plugin("terminalreporter")
    if session.config.getoption("--nothing-skipped") and reporter is not None and reporter.stats.get("skipped"):
        session.exitstatus = pytest.ExitCode.TESTS_FAILED


@pytest.fixture
def refresh_cases(request: pytest.FixtureRequest) -> bool:
    return bool(request.config.getoption("--refresh-cases"))

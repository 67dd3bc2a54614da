"""What every test of the house may ask for."""

import pytest


def pytest_addoption(parser: pytest.Parser) -> None:
    parser.addoption(
        "--refresh-cases",
        action="store_true",
        help="write what comes now beside the case files; review the difference before you keep it",
    )


@pytest.fixture
def refresh_cases(request: pytest.FixtureRequest) -> bool:
    return bool(request.config.getoption("--refresh-cases"))

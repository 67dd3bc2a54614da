"""Lines of a rule file, as documents show them, made a file."""

import re


def has(snippet, pattern):
    return re.search(pattern, snippet, re.MULTILINE) is not None


def whole(snippet):
    """A snippet as a file: what it leaves out for brevity is put around it."""
    if not has(snippet, r"^standard"):
        snippet = f'standard "snippet" edition 1 variety kohaku\n{snippet}'
    for name in dict.fromkeys(re.findall(r"no (?:better|worse) than (\w+)", snippet)):
        if not has(snippet, rf"^grade {name}\b"):
            snippet += f"\ngrade {name} if length at least 1 cm\n"
    if not has(snippet, r"^grade \w+.* otherwise"):
        snippet += "\ngrade last_of_all otherwise\n"
    if has(snippet, r"^(points|bonus|penalty)") and not has(snippet, r"^section"):
        opening = "section part worth 100\n"
        if not has(snippet, r"^points"):
            opening += "points l by kiwa: blurred gives 0, anything else gives 1\n"
        snippet = re.sub(r"^(points|bonus|penalty)", opening + r"\1", snippet, count=1, flags=re.MULTILINE)
    return snippet

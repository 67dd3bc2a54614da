"""Which standard is meant? A path, the name of a rule set or a text comes in; a checked standard with its bases goes out."""

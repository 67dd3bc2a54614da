"""`python -m koirules`: the same as the command."""

from koirules.commands import main

if __name__ == "__main__":
    main()

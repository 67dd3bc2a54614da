"""What a sample says of a fish, read as a record would say it."""

import koirules

PAGE = (
    'standard "Teal Yard house standard" edition 2026-1 variety kohaku\n'
    "grade keep if length above 10 cm and kiwa at least fair and hi_cover above 10 %\ngrade cull otherwise\n"
)


def sample(facts):
    (made,) = koirules.read_standard(f'{PAGE}sample "fish" with {facts}\n  stays open\n').grader.rules.samples
    return made.record


def test_the_ends_of_a_scale_stand_for_every_step_between_them():
    assert sample("kiwa fair to razor") == sample("kiwa fair or sharp or razor")
    assert sample("kiwa sharp to sharp") == sample("kiwa sharp")


def test_the_unit_behind_the_last_number_is_that_of_both():
    assert sample("length 8 to 12 cm") == sample("length 8 cm to 12 cm")
    assert sample("length 80 to 120 mm") == sample("length 8 cm to 12 cm")
    assert sample("hi_cover 0.5 to 20 %") == sample("hi_cover 0.5 % to 20 %")

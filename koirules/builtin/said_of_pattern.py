"""How sorters speak of the pattern of red (hi): where it lies, and how much of it.

Common practice, no source; wordings from memory.
"""

from __future__ import annotations

from koirules.vocabulary.phrases import Saying, Spoken, each_of

_RED = "hi, red, beni, orange, colour, 緋, 緋盤"


def _counted(number: str) -> str:
    """What is said for so many steps."""
    nouns = (
        "dan",
        "dan pattern",
        "spots of red",
        "red areas",
        "steps",
        "patches",
        "red patches",
        "hi patches",
        "islands",
        "separate patches",
        "separate steps",
        "step pattern",
        "patches of red",
        "red steps",
    )
    return ", ".join(
        [
            *(f"{number} {noun}" for noun in nouns),
            f"{number} big patches",
            f"{number} red islands",
            f"{number} steps of red",
            each_of(
                "{number} {such} {noun}",
                number=number,
                such="clean|clear|big|large|good|bold|strong|separate|neat|distinct|well placed|well spaced",
                noun="steps|patches|dan|red patches",
            ),
        ]
    )


_MOST = "mostly|mainly|more|too much|heavier|heavy|most|concentrated|more of it|loaded|more weight"
_ALL = "all|only|completely|everything|nothing but"


def _side(most: str, side: str) -> str:
    """What is said for red that lies more, or only, at one end or on one side."""
    reds = "red|pattern||hi|the red is|pattern is|it is"
    return ", ".join(
        (
            each_of("{red} {most} {side}", red=reds, most=most, side=side),
            each_of("{most} red {side}", most=most, side=side),
            each_of("{most} the red {side}", most=most, side=side),
            each_of("{most} of the red {side}", most=most, side=side),
            each_of("{most} the pattern {side}", most=most, side=side),
        )
    )


_FRONT = "in front|on the front|at the front|in the front half|on the front half|towards the front|on the shoulder side"
_REAR = (
    "behind|at the rear|at the back|on the rear half|on the rear|in the rear half|towards the tail|behind the "
    "dorsal|at the tail end"
)
_LEFT = "on the left|on the left side|to the left|left"
_RIGHT = "on the right|on the right side|to the right|right"
_STRAY = (
    "(tobihi|(stray|isolated|loose|odd|lone|flying|orphan|single stray) (red spot|red scale|scale of red|red|hi|red fleck|"
    "red dot|bit of red|scale|spot)|red scale (on its own|by itself|all alone|out on its own)|"
    "(speck|fleck|dot|splash|freckle|dab|drop|crumb|spatter|spot) of red|scale of red (all alone|on its own|by itself)|"
    "tiny red (spot|dot|fleck|speck)|scattered red scale|stray)"
)

SAID_OF_PATTERN: tuple[Saying, ...] = (
    Spoken(
        "hi_cover",
        alone={
            reading: each_of(
                "{about} {share} {of} {it} {red}",
                about="|about|roughly|around|some",
                share=share,
                of="of|",
                it="the fish|it|the back|the body|the skin",
                red="red|is red|in red|covered",
            )
            for reading, share in (
                ("is 45 % to 55 %", "half|one half"),
                ("is 30 % to 36 %", "a third|one third"),
                ("is 62 % to 71 %", "two thirds"),
                ("is 70 % to 80 %", "three quarters"),
                ("is 20 % to 30 %", "a quarter|one quarter"),
            )
        },
    ),
    Spoken(
        "hi_cover",
        "cover, hi cover, red cover, red, hi, beni, covered, red share, share of red, red on the back, 緋の割合",
        alone={
            "is 45 % to 55 %": "red covers half, covers half, red covers about half, covers about half, half covered, "
            "half red, half of it red, about half red, half the back is red, half red half white, red on half of the "
            "back, half and half",
            "below 20 %": "hardly any red, hardly any pattern, very little red, hardly any hi, nearly all white, "
            "almost all white, too little red, not much red, little red, little hi, sparse, mostly white, red is "
            "sparse",
            "is 0 %": "all white, no red, no red anywhere, pure white fish, no hi, plain white, white all over, "
            "shiromuji, 白無地",
            "above 75 %": "almost completely red, nearly completely red, red almost all over, mostly red, nearly all "
            "red, almost all red, red nearly everywhere, too much red, heavy red, heavy hi, too much hi, a lot of "
            "red, lots of red",
            "above 97 %": "completely red, all red, red all over, red everywhere, red from head to tail, akamuji, 赤無地",
            "is 30 % to 36 %": "a third red, a third of it red, about a third red",
            "is 62 % to 71 %": "red covers two thirds, covers two thirds, red covers about two thirds, covers about "
            "two thirds, two thirds covered, two thirds red, about two thirds red",
            "is 70 % to 80 %": "three quarters red, about three quarters red",
            "is 20 % to 30 %": "a quarter red, about a quarter red",
        },
    ),
    Spoken(
        "steps",
        "steps, dan, pattern, 段",
        levels={"none": "no", "many": "many, lots of, a lot of, very many"},
        alone={
            "is nidan": f"nidan, nidan kohaku, nidan pattern, two step, a two step, {_counted('two')}, 二段",
            "is sandan": f"sandan, sandan kohaku, sandan pattern, three step, a three step, {_counted('three')}, 三段",
            "is yondan": f"yondan, yondan kohaku, yondan pattern, four step, a four step, {_counted('four')}, 四段",
            "is godan": f"godan, godan kohaku, godan pattern, five step, a five step, {_counted('five')}, 五段",
            "is many": f"many steps, many patches, lots of patches, {_counted('six')}, more than five steps",
            "is nidan or sandan": "two or three steps, two or three patches, two to three steps, two to three patches",
            "is sandan or yondan": "three or four steps, three or four patches, three to four steps, three to four "
            "patches",
            "is yondan or godan": "four or five steps, four or five patches, four to five steps, four to five patches",
            "is tancho": "tancho, a tancho, a real tancho, true tancho, tancho kohaku, tancho pattern, only a head "
            "patch, head patch only, red patch on the head only, red on the head only, only a red patch on the head, "
            "only red on the head, patch on the head only, only the head patch, spot on the head and nothing else, "
            "just the head patch, 丹頂",
            "is ippon": "ippon, ippon hi, one long patch, one long red, one unbroken red, one long patch from head to "
            "tail, one long red without a break, one long red patch, no breaks, unbroken red, red unbroken, no cut, "
            "no cut anywhere, no break, no break in the red, unbroken from head to tail, straight red, straight hi, "
            "one piece, red in one piece, red without a break, one solid red, one continuous red, single long patch, "
            "one step, 一本緋",
            "is inazuma": "inazuma, lightning, lightning pattern, zigzag, a zigzag, one long zigzag, zigzag pattern, "
            "lightning bolt, lightning stripe, zigzag stripe, lightning band, lightning bolt pattern, like lightning, "
            "zigzag red, zigzag hi, inazuma pattern, red zigzags, zig zag, 稲妻",
        },
    ),
    Spoken(
        "step_count",
        "",
        alone={
            "is 1": "only one patch, one patch, one red patch, a single patch, single patch, just one patch, only one "
            "red patch, one patch only"
        },
    ),
    Spoken(
        "pattern_type",
        "pattern type, type of pattern",
        levels={"omoyo": "large, big, bold", "komoyo": "small, fine, busy"},
        alone={
            "is omoyo": "omoyo, big patches, large patches, big bold patches, bold patches, large bold patches, big "
            "pattern, large pattern, bold pattern, patches big, patches large, 大模様",
            "is komoyo": "komoyo, small patches, little patches, small pattern, patches small, fine pattern, busy, "
            "busy pattern, lots of small patches, many small patches, tiny patches, little bits, small bits, lots of "
            "little bits, many little bits, lots of small bits, many small bits, bits and pieces, 小模様",
            "is gotenzakura": "gotenzakura, goten zakura, grape clusters, like cherry blossom, 御殿桜",
            "is kanoko": "kanoko, dappled, single red scales, fawn pattern, 鹿の子",
        },
    ),
    Spoken(
        "maruten",
        "maruten, separate head patch, round head patch, round patch on the head, round spot on the head, round mark "
        "on the head, head patch separate, separate spot on the head, separate patch on the head, separate head spot, "
        "丸点",
        alone={
            "is yes": "head patch apart, head patch stands alone, head patch parted from the body, round head spot, "
            "round patch on head, round spot on the head like a coin, crown patch, round crown patch, a coin on the "
            "head",
            "is no": "head runs into the shoulder, head patch joined, head joined to the shoulder, no maruten, head "
            "patch not separate",
        },
    ),
    Spoken(
        "hi_start",
        "red begins, red starts, hi starts, hi begins, start of the red, beginning of the red, from the nose to the "
        "red",
    ),
    Spoken(
        "odome",
        "odome, ojime, white before the tail, white at the tail, gap before the tail, gap at the tail, white gap at "
        "the tail, white gap before the tail, tail stop, space before the tail, white behind the last red, 尾止め, 尾どめ",
        alone={
            "below 1 %": each_of(
                "{patch} {ends} the tail",
                patch="last patch|second patch|third patch|rear patch|last step|hi",
                ends="ends at|reaches|runs into|goes into|goes to|runs to|touches",
            )
            + ", no gap at the tail, no white gap at the tail, no odome, odome none, without odome, "
            "odome missing, no tail stop, runs into the tail, runs to the tail, red runs into the tail, red runs "
            "right into the tail, red goes into the tail, hi into the tail, hi to the tail, red to the tail, red up "
            "to the tail, no white before the tail, no gap before the tail, no stop, red down to the tail fin, hi "
            "runs into the tail, no white at the tail, no stop at the tail, red right to the tail, red reaches the "
            "tail, hi reaches the tail, 尾止めなし, 尾止め無し",
            "is 3 % to 12 %": "good odome, odome good, odome perfect, perfect odome, excellent odome, odome "
            "excellent, odome ok, odome okay, odome present, odome very good, fine odome, nice odome, odome nice, "
            "odome fine, odome right, odome clean, clean odome, tail stop, good tail stop, tail stop good, nice tail "
            "stop, clean tail stop, nice gap before the tail, good gap before the tail, clear gap before the tail, "
            "has a tail stop, white before the tail good, stops well before the tail, stops before the tail, nice "
            "white before the tail, odome present, has odome, proper odome, clear odome, ends nicely before the tail, "
            "red stops before the tail, clean white before the tail, good stop at the tail, 尾止め良し",
            "is 1 % to 4 %": "short odome, odome short, little white before the tail, weak odome, odome weak, narrow "
            "odome, odome narrow, small gap before the tail, short gap before the tail, odome tight, tight odome, "
            "odome a bit short",
            "above 12 %": "long odome, odome long, much white before the tail, long white before the tail, odome too "
            "long, wide gap before the tail, big gap before the tail",
        },
    ),
    Spoken(
        "odome_gap",
        "odome, ojime, white before the tail, white at the tail, gap before the tail, gap at the tail, white gap at "
        "the tail, white gap before the tail, tail stop, white behind the last red, before the tail, ends before the "
        "tail, red ends before the tail, to the tail, ends, red ends, stops, red stops, end of the red",
    ),
    Spoken(
        "bongiri",
        "bongiri, bon giri, red stops too early, red stops early, long white rear, ends too early, stops too early, "
        "rear all white, white rear, rear white, red ends too early, long white tail end, white tail end, tail end "
        "white, tail end all white, ボンギリ",
        alone={
            "is yes": "nothing behind the dorsal, no red behind the dorsal, nothing behind, no red on the rear, empty "
            "behind, empty rear, no red at the back, nothing on the rear"
        },
    ),
    Spoken(
        "longest_white_gap",
        "white gap, longest white gap, largest white gap, biggest white gap, longest white stretch, white stretch, "
        "white between the steps, white between the patches",
    ),
    Spoken(
        "white_gap",
        "white gap, largest white gap, white stretch, white between the steps, gap between the steps, gap between the "
        "patches, white between the patches",
        levels={
            "none": "no",
            "short": "short, small, narrow, little, tight",
            "fair": "fair, right, good, nice",
            "long": "long, large, big, wide, huge, too long, too big",
        },
        alone={
            "is long": "long white stretch, large white gap, big white gap, long white gap, big gap between the "
            "patches, wide gap between the steps, too much white in between, patches far apart",
            "is short": "patches close together, steps close together",
        },
    ),
    Spoken(
        "white_gap_place",
        "white gap, largest white gap, longest white gap, biggest white gap, white stretch, long white stretch, large "
        "white gap, long white gap, gap",
        levels={
            "front": "in front, at the front, at the shoulder, behind the shoulder, behind the head, on the shoulder, "
            "at the neck",
            "middle": "in the middle, in the middle of the back, at the dorsal, under the dorsal, below the dorsal, "
            "on the back",
            "rear": "at the rear, behind the dorsal, at the back end",
        },
    ),
    Spoken(
        "small_patches",
        "small patches, little patches",
        levels={"none": "no, without", "few": "few, a few, some, one or two", "many": "many, lots of, too many, all"},
        alone={
            "is few": "one small patch, last patch small, the last patch small, small last patch, second patch small, "
            "first patch small, third patch small, the third very small, one patch very small, one patch is small, "
            "last step small, small last step, second step small, third step small",
        },
    ),
    Spoken("smallest_patch", "smallest patch, smallest red patch, smallest step"),
    Spoken(
        "hi_front_share",
        "red in front, share in front, red in the front half, in front",
        alone={
            "above 70 %": "front heavy, heavy front, pattern heavy in front, pattern heavy front, heavy in front, "
            "front-heavy, more red in front, most of the red in front, red mostly in front, top heavy, pattern front "
            "heavy, too much in front, too much red in front, loaded in front, weight in front",
            "above 92 %": "all red in front, all the red is in front, all the red is on the front, all the red on the "
            "front half, all red on the front half, only the front is red, all in front, all front, red only in "
            "front, pattern only on the front, everything in front, red only on the front half, all hi in front",
            "below 30 %": "tail heavy, tail-heavy, rear heavy, heavy behind, heavy at the rear, rear-heavy, more red "
            "behind, more red at the rear, most of the red behind, back heavy, too much behind, too much red behind, "
            "pattern rear heavy, heavy rear, weight behind",
            "below 8 %": "all rear, all the red is behind, all red behind, all the red on the rear, all red on the "
            "rear half, only the rear is red, red only on the rear, all behind, red only behind, everything behind, "
            "pattern only on the rear, all hi behind",
        },
    ),
    Spoken(
        "hi_left_share",
        "red on the left side, share on the left, red left of the spine",
        alone={
            "above 60 %": "left heavy, left-heavy, heavy on the left, more on the left, more red on the left, too "
            "much on the left, too much on the left side, most of the red on the left, heavier on the left, leans to "
            "the left, more red on the left side, mostly on the left, more hi on the left, too much red on the left, "
            "mostly left",
            "below 40 %": "right heavy, right-heavy, heavy on the right, more on the right, more red on the right, "
            "too much on the right, too much on the right side, most of the red on the right, heavier on the right, "
            "leans to the right, more red on the right side, mostly on the right, more hi on the right, too much red "
            "on the right, mostly right",
            "above 90 %": "all on the left, only on the left, all red on the left, red only on the left, pattern only "
            "on the left, nothing on the right side",
            "below 10 %": "all on the right, only on the right, all red on the right, red only on the right, pattern "
            "only on the right, nothing on the left side",
            "is 40 % to 60 %": "left and right balanced, even left and right red, red balanced left and right",
        },
    ),
    Spoken(
        "one_sided",
        "one-sided, one sided, pattern one sided, pattern on one side only, red on one side only, only on one side, "
        "all on one side, one side only, 1 side empty, 1 side white, 1 side without red, nothing on 1 side, no red on "
        "1 side, 片側",
    ),
    Spoken(
        "balance",
        "balance, pattern balance, balance of the pattern, バランス",
        levels={
            "poor": "poor, bad, off, no, weak, lacking, wrong, 悪い",
            "fair": "fair, average, ok, acceptable, so so",
            "good": "good, nice, fine, well, perfect, excellent, great, right, very good, 良い",
        },
        alone={
            "is good": "balanced front and back, balanced front and rear, patches well placed, patches well "
            "distributed, balanced, well balanced, balanced pattern, well balanced pattern, nicely balanced, pattern "
            "balanced, pattern well balanced, good balance, evenly spread, well spread, nicely spread, well spaced, "
            "nicely spaced, pattern well spread, pattern evenly spread, red evenly spread, red well distributed, "
            "pattern well distributed, evenly distributed",
            "is poor": "unbalanced, out of balance, badly balanced, no balance, lopsided, lopsided pattern, pattern "
            "lopsided, pattern unbalanced",
        },
    ),
    Spoken(
        "hi_below_line",
        "red below the lateral line, red under the lateral line, below the lateral line, under the lateral line, hi "
        "below the line",
        alone={
            "is 0 %": "red stays above the lateral line, red above the lateral line, nothing below the lateral line, "
            "no red below the lateral line, stays above the lateral line, red stays on the back, red high on the "
            "back, no red on the sides, above the lateral line",
            "above 5 %": "red down the sides, red below the line, reaches below the lateral line, red goes below the "
            "lateral line, red far down the sides",
        },
    ),
    Spoken(
        "makibara",
        "makibara, maki, red around the belly, red wraps around the belly, red round the belly, red wraps round the "
        "belly, red on the belly, belly red, red under the belly, wraps round the belly, red wrapped round the belly, "
        "巻腹",
        alone={
            "is yes": "red down to the belly on both sides, red round the belly, red goes down over the belly, red "
            "goes down over the belly on both sides, red down to the belly, red down to the belly on the left, red "
            "down to the belly on the right, red runs under the belly, red to the belly, red reaches the belly, "
            "wrapped, wraps down, wraps under, belly wrapped, makibara good, good makibara, nice makibara, makibara "
            "nice, strong makibara, red round the belly on both sides, red goes under, wraps the belly, red wraps the "
            "belly, hi wraps, wraps around the belly, red comes round the belly",
            "is no": "belly white, white belly, clean belly, no red on the belly, belly clean",
        },
    ),
    Spoken(
        "shoulder_cut",
        "kata nuki, kata-nuki, katanuki, shoulder cut, white cut at the shoulder, white notch at the shoulder, white "
        "at the shoulder, white gap at the shoulder, notch at the shoulder, cut at the shoulder, white on the "
        "shoulder, cut behind the head, white notch behind the head, open shoulder, shoulder open, shoulder notch, "
        "notch in the shoulder, step at the shoulder, 肩抜き",
    ),
    Spoken(
        "windows",
        "window, mado, white window, white hole, hole, pinhole, white pinhole, "
        "(window|mado|white window|white hole|hole|pinhole) in (the|that|this|) (red|hi|plate|patch|step), "
        "(white|bald|bare) (spot|island|fleck|scale|dot|eye|patch|speck|hole|gap|bit) (in|inside|through|all through) "
        "(the (first|second|third|last|shoulder|rear|front|) (patch|step|red|hi|plate|saddle)|it|that red), "
        "(gap|bald spot) in the (red|hi|plate), 窓",
        alone={
            "is 0": "no windows, no window, no holes, no holes in the red, red without holes, closed red, red closed, "
            "solid red, (red|plate|hi|patches) without (a|any|) (windows|window|holes|hole), no (windows|holes) in it, "
            "(plate|red|patches) (closed|all closed|solid and closed), "
            "not a (window|hole|mado) (in it|anywhere|in the red|to be seen|), "
            "no (windows|holes|mado) (anywhere|at all|in the plate|in the red|in it), 窓なし",
            "at least 2": "full of holes, several windows, "
            "(red|hi|plate|patch|it|) (full of|riddled with|nothing but) (holes|windows), holes all over the red, "
            "like swiss cheese, like a swiss cheese, like a sieve, "
            "(little|small|tiny|) white (flecks|specks|scales|dots|spots) (all through|all over) "
            "(the red|it|the (second|last|shoulder|first|) patch)",
        },
        of_parts="patches",
    ),
    Spoken(
        "head_windows",
        "mado in the head patch, mado in the head, mado on the head, window in the head, window on the head, hole in "
        "the head patch, window in the head patch, head window, hole in the head red, hole on the head, white hole in "
        "the head patch, white window in the head patch, white window on the head, white spot in the head patch",
    ),
    Spoken(
        "tobihi",
        f"{_STRAY}, splash, red dot, little red dot, small red dot, small red spot, little "
        "red spot, red splash, red freckle, red fleck, freckle of red, red speck, red scale, 飛び緋",
        alone={
            "is 0": "no tobihi, no splashes, no stray spots, no stray red, no stray red spots, no red dots, no strays, "
            "no stray scales, (not a|not a single|without|free of|clear of|no) (tobihi|stray|stray scale|loose red scale|"
            "stray red|stray red scale|loose red|loose scale of red|splash of red) (anywhere|at all|in sight|to be seen|)",
            "is 1": "(a|one|single|lone|) (red scale|scale of red) (all alone|on its own|by itself|all by itself|out on its own|"
            "away from the rest|out in the white|that does not belong), a crumb of red, one crumb of red",
        },
        of_parts="all",
    ),
    Spoken(
        "tobihi_places",
        f"{_STRAY}, splash, red dot, little red dot, small red dot, small red spot, little "
        "red spot, red splash, red freckle, red fleck, freckle of red, red speck, red scale",
        levels={
            "left_flank": "left side of the body, left side",
            "right_flank": "right side of the body, right side",
            "shoulder": "left shoulder, right shoulder",
        },
        of_parts="all",
    ),
    Spoken(
        "hi_front_share",
        alone={
            "above 92 %": _side(_ALL, _FRONT),
            "above 70 %": _side(_MOST, _FRONT) + ", front-loaded, bow heavy",
            "below 8 %": _side(_ALL, _REAR),
            "below 30 %": _side(_MOST, _REAR),
        },
    ),
    Spoken(
        "hi_left_share",
        alone={
            "above 90 %": _side(_ALL, _LEFT),
            "above 60 %": _side(_MOST, _LEFT),
            "below 10 %": _side(_ALL, _RIGHT),
            "below 40 %": _side(_MOST, _RIGHT),
        },
    ),
)
"""What is said of where red lies."""

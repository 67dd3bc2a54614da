"""How sorters speak of the body, of its parts and of its measures. Common practice, no source; wordings from memory."""

from __future__ import annotations

from koirules.vocabulary.phrases import Saying, Spoken, SpokenTogether, each_of

_GOOD = "good, fine, nice, right, sound, well made, よい, 良い"


def _of_a_side(nouns: str, side: str, faults: str) -> str:
    """What is said of something that is wrong on one side: `left gill plate curled`, `gill plate on the left is curled`."""
    return ", ".join(
        each_of(pattern, noun=nouns, fault=faults).replace("SIDE", side)
        for pattern in (
            "SIDE {noun} {fault}",
            "{noun} SIDE {fault}",
            "{noun} on the SIDE {fault}",
            "{noun} {fault} SIDE",
            "{noun} {fault} on the SIDE",
            "{fault} SIDE {noun}",
            "{fault} {noun} on the SIDE",
            "{fault} {noun} SIDE",
        )
    )


_GILLS = "gill cover|gill plate|gill|operculum|gill lid"
_GILL_FAULTS = (
    "short|curled|bent|folded|missing|bad|faulty|deformed|malformed|open|turned out|turned in|damaged|too short"
)
_FILMED = "cloudy|milky|clouded|grey|dim|filmed|white|hazy|with a film"
_BLIND = "missing|gone|blind|lost|dead|damaged"

SAID_OF_BODY: tuple[Saying, ...] = (
    Spoken("length", "l, long, in length, tall of, total length, size, measures, 全長, 体長"),
    Spoken("standard_length", "length without the tail"),
    Spoken("weight", "w, weighs, heavy, grams, 体重"),
    Spoken("depth", "deep, high, height, body height, depth of body, 体高"),
    Spoken("width", "w, wide, broad, breadth, body breadth, 体幅"),
    Spoken("girth", "round, around, girth"),
    Spoken(
        "sex",
        "sex, 性別",
        levels={"female": "female, hen, lady, girl", "male": "male, cock, boy"},
        alone={
            "is female": "female, a female, hen fish, hen, probably a girl, she is a female, メス, 雌",
            "is male": "male, a male, cock fish, he is a male, オス, 雄",
        },
    ),
    Spoken(
        "outline",
        "outline, body, body shape, body line, body lines, shape, shape of the body, conformation, "
        "figure, frame, form, lines, 体型, 体形",
        levels={
            "poor": "poor, bad, ugly, weak, off, wrong, clumsy, 悪い",
            "fair": "fair, average, middling, passable, acceptable, ordinary, so so, ok, okay, not bad, 普通",
            "good": _GOOD,
            "excellent": "excellent, perfect, superb, outstanding, very good, great, first class, faultless, ideal, 抜群, 極上",
        },
        alone={
            "at most poor": "no body, nothing of a body, no frame",
            "is excellent": "perfect torpedo, a perfect torpedo, textbook torpedo, perfect body, ideal torpedo",
            "is good": "elegant fish, elegant body, elegant, good lines, nice lines, nice torpedo, "
            "good torpedo, well built, well "
            "proportioned",
            "is poor": "snake, thin as a snake, like a snake, tubby, badly built, balloon, potbellied",
        },
    ),
    Spoken(
        "build",
        "build, bauart",
        levels={
            "slim": "slender, thin, lean, skinny, narrow",
            "heavy": "stocky, stout, bulky, fat, plump, thick, short",
        },
        alone={
            "is slim": "slim, slim fish, slim body, slim build, slender, slender body, too slim, a slim one, on the "
            "slim side, lean, lean body, "
            "skinny, thin fish, thin body, narrow body, body slim, body thin, 細い, 細身",
            "is trim": "trim, trim body, neat body",
            "is torpedo": "torpedo build, torpedo, a torpedo, torpedo shape, torpedo shaped, built like a torpedo",
            "is heavy": "big body, big frame, large frame, stocky, stocky fish, stocky body, stout, stout body, "
            "bulky, heavy body, heavy bodied, heavyset, "
            "fat, fat fish, fat body, "
            "plump, chubby, thick body, thickset, wide body, big body, volume, good volume, lots of volume, "
            "full bodied, compact, compact body, "
            "short body, short and thick, body heavy, body fat, 太い, 太め",
            "is thick_front": "thick shoulders with a thin stem, thick in front and thin behind, front heavy body, all "
            "shoulder and no tail, "
            "big shoulders thin stem, falls off behind, thin behind, falls away behind, falls off behind the dorsal",
        },
    ),
    Spoken(
        "shoulders",
        "shoulder, shoulders, kata, shoulder line, 肩",
        levels={
            "weak": "weak, narrow, thin, pinched, slim, small, poor, hollow, 弱い",
            "fair": "fair, average, ordinary, okay",
            "strong": "strong, broad, wide, big, thick, powerful, full, good, heavy, massive, 太い, 張りのある",
        },
        alone={
            "is weak": "pinched behind the gills, pinched at the shoulder, narrow behind the head, pinched "
            "neck, pinched behind the head, step behind the head, no shoulders, neck pinched"
        },
    ),
    Spoken(
        "tail_stem",
        "tail stem, stem, ozutsu, tail stalk, stalk, tail tube, tail root, peduncle, caudal peduncle, wrist, tail base, 尾筒",
        levels={
            "thin": "thin, weak, narrow, slim, slender, poor, 細い",
            "fair": "fair, average, ordinary",
            "strong": "strong, thick, powerful, good, broad, heavy, stout, wide, solid, 太い",
        },
        alone={
            "is thin": "thin behind the dorsal, thin at the tail, thin towards the tail, thin tail, weak tail, thin tail end",
            "is strong": "thick tail, strong tail, strong tail end, strong at the tail, thick towards the tail",
        },
    ),
    Spoken(
        "back_line",
        "back, back line, top line, topline, line of the back, back from the side",
        levels={
            "humped": "humped, hollow, hunched, arched",
            "uneven": "uneven, wavy",
            "smooth": "smooth, good, clean, even",
        },
        alone={
            "is humped": "hump behind the head, hump behind the shoulder, hump at the shoulder, humped, "
            "hunched, hunchback, hump, hump on the back, a hump, hollow back, humpback"
        },
    ),
    Spoken(
        "belly_shape",
        "belly, belly line, stomach, tummy, 腹",
        levels={
            "hanging": "hanging, sagging, drooping, pot",
            "full": "full, fat, round, big, swollen, thick",
            "level": "level, flat, good, smooth, normal",
            "hollow": "hollow, empty, sunken, drawn in, pinched, thin",
        },
    ),
    Spoken(
        "spine",
        "spine, backbone, back, back bone, 背骨, 背",
        levels={
            "bent": "bent to the left, bent to the right, bent to one side, bent left, bent right, bent, "
            "crooked, curved, kinked, twisted, malformed, deformed, s shaped, off, wrong, not straight, 曲がり",
            "slight": "slightly bent, slightly crooked, slightly kinked, slightly off, a little bent, not quite straight",
            "straight": "straight, good, fine, sound, ok, okay, in order, まっすぐ",
        },
        alone={
            "is bent": "bent, bent fish, crooked, crooked body, bent body, body bent, body crooked, body is bent to the left, "
            "body is bent to the right, bent to the left, bent to the right, bent left, bent right, kink, "
            "kink in the spine, kinked, kink in the tail, "
            "kink near the dorsal, kink near the tail, kink at the tail, kink behind the dorsal, a "
            "kink, twisted, twisted body, deformed spine, s shaped, bend in the "
            "body, bend in the spine, banana, 背曲がり",
            "is straight": "straight, not bent, no bent spine, "
            "straight body, body straight, straight as an arrow, straight back, straight fish",
        },
    ),
    Spoken(
        "body_symmetry",
        "symmetry, body symmetry, both sides of the body, sides of the body",
        levels={
            "poor": "poor, uneven, unequal, bad, different",
            "fair": "fair",
            "good": "good, even, equal, alike, the same",
        },
        alone={
            "is poor": "lopsided body, body lopsided, one sided belly, belly one sided, lump on one side, lump on the side"
        },
    ),
    Spoken(
        "head_shape",
        "head, head shape, shape of the head, head form, face shape, 頭, 頭の形",
        levels={
            "poor": "poor, bad, pointed, pointy, narrow, dished, dented, square, squared, ugly, too small, too big, "
            "small, malformed, 悪い",
            "fair": "fair, average, ordinary",
            "good": "good, broad, wide, well shaped, well rounded, rounded, strong, 良い",
        },
        alone={
            "is good": "broad between the eyes, wide between the eyes",
            "is poor": "pointed nose, dished face, dent in the head, pike head, pinhead, pin head, pinheaded",
        },
    ),
    Spoken(
        "mouth",
        "mouth, jaw, lips form, 口",
        levels={
            "malformed": "malformed, deformed, bent, crooked, twisted, off, bad, undershot, overshot, wrong, stuck, not "
            "straight, out of shape, odd, funny, strange, skewed, weird",
            "slight": "slightly off, slightly crooked, slightly bent, slightly twisted, a bit off, a little off, not "
            "quite straight, a bit crooked",
            "good": "good, straight, fine, sound, normal, ok, closes well",
        },
        alone={"is malformed": "crooked mouth, undershot jaw, overshot jaw, bent mouth, 口曲がり"},
    ),
    Spoken(
        "barbels_missing",
        "left barbel missing, right barbel missing, barbel missing on the left, barbel missing on the right, "
        "missing barbel on the left, "
        "missing barbel on the right, barbel on the left, barbel on the right, barbel missing, "
        "missing barbel, barbels missing, missing barbels, barbel gone, whisker missing, "
        "missing whisker, barbels gone, lost barbel",
        alone={
            "is 0": "all barbels, barbels complete, all four barbels, barbels good, barbels all there, no barbel "
            "missing, whiskers complete",
            "is 1": "missing 1 barbel, missing 1 barbel on the right, missing 1 barbel on the left, 1 barbel "
            "missing on the left, 1 barbel missing on the right, 1 barbel gone, "
            "one barbel short, three barbels, only three barbels",
            "at least 1": "barbels not complete, barbels missing",
        },
    ),
    Spoken(
        "gill_cover_faults",
        "faulty gill cover, bad gill cover, gill cover fault, gill fault",
        alone={
            "includes left_gill": "gill cover short left, gill cover short on the left, left gill cover short, left gill cover "
            "curled, left gill cover bent, "
            "left gill cover folded, left gill cover missing, left gill short, left gill curled, left gill "
            "plate short, left gill plate curled, "
            "gill cover curled left, gill cover bent left, gill cover left short, left gill cover bad, short "
            "gill cover on the left, "
            "short gill cover left, curled gill cover left, curled gill cover on the left, short left gill "
            "cover, curled left gill cover, "
            "left gill cover damaged, left gill cover faulty, left gill cover open, gill cover left curled",
            "includes right_gill": "gill cover short right, gill cover short on the right, right gill cover short, right "
            "gill cover "
            "curled, "
            "right gill cover bent, right gill cover folded, right gill cover missing, right gill short, "
            "right gill curled, right gill plate short, "
            "right gill plate curled, gill cover curled right, gill cover bent right, gill cover right "
            "short, right gill cover bad, "
            "short gill cover on the right, short gill cover right, curled gill cover right, curled gill "
            "cover on the right, short right gill cover, "
            "curled right gill cover, right gill cover damaged, right gill cover faulty, right gill cover "
            "open, gill cover right curled",
            "count is 1": "1 gill cover short, 1 gill cover curled, 1 gill cover bent, 1 gill cover missing, 1 short gill "
            "cover, 1 gill cover bad, "
            "1 curled gill cover, 1 gill cover folded, 1 bent gill cover",
            "count at least 1": "gill cover short, short gill cover, gill cover curled, curled gill cover, gill cover "
            "bent, bent "
            "gill cover, "
            "gill cover missing, gill cover bad, gill cover folded, short gill plate, gill plate curled",
            "is none": "both gill covers fine, both gill covers good, both gill covers ok, both gills fine, "
            "gill covers in order, gill plates good, gill plates fine, gill covers good, gill covers "
            "fine, gill covers whole, gill covers sound, gills good, gills "
            "fine, gill covers ok",
            "is (left_gill, right_gill)": "both gill covers short, both gill covers curled, both gill covers bad, short gill "
            "covers on "
            "both sides",
        },
    ),
    Spoken(
        "eye_film",
        "film on the eye, eye film, cloudy eye, film over the eye, cataract, milky eye, eye cloudy, clouded eye",
        alone={
            "includes left_eye": "cloudy left eye, left eye cloudy, left eye clouded, left eye milky, left eye grey, film "
            "on the "
            "left eye, "
            "film over the left eye, left eye has a film, left eye film, milky left eye, left eye dim",
            "includes right_eye": "cloudy right eye, right eye cloudy, right eye clouded, right eye milky, right eye grey, "
            "film on "
            "the right eye, "
            "film over the right eye, right eye has a film, right eye film, milky right eye, right eye dim",
            "count is 1": "1 eye cloudy, 1 cloudy eye, 1 eye milky, 1 milky eye, film on 1 eye, film over 1 eye, 1 eye clouded",
            "is (left_eye, right_eye)": "both eyes cloudy, both eyes milky, film on both eyes, film over both eyes",
        },
    ),
    Spoken(
        "eye_clarity",
        "eyes, eye, clarity of the eyes",
        levels={
            "cloudy": "cloudy, dim, milky, dull, clouded",
            "fair": "fair",
            "clear": "clear, bright, good, clean, shiny, sound, fine, ok, okay",
        },
        alone={
            "is clear": "clear eyes, bright eyes, both eyes clear, both eyes good",
            "is cloudy": "cloudy eyes, eyes cloudy",
        },
    ),
    Spoken(
        "eyes_missing",
        "eye missing, missing eye, blind eye, eye blind, eye gone, lost eye",
        alone={
            "includes left_eye": "left eye missing, missing left eye, left eye gone, left eye blind, blind in the left "
            "eye, blind "
            "on the left eye, no left eye, "
            "left eye lost, blind left eye",
            "includes right_eye": "right eye missing, missing right eye, right eye gone, right eye blind, blind in the "
            "right eye, "
            "blind on the right eye, no right eye, right eye lost, blind right eye",
            "count is 1": "1 eye missing, one-eyed, 1 eyed, 1 eye gone, blind in 1 eye, blind on 1 eye, 1 eye blind, an "
            "eye missing",
        },
    ),
    Spoken(
        "fin_faults",
        "malformed fin, deformed fin, fin malformed, fin deformed, kinked fin, fin kinked, fin missing, "
        "missing fin, fin fault, bent fin, "
        "fin bent, short fin",
        alone={
            f"includes {fin}": ", ".join(
                f"{words} {fault}, {fault} {words}"
                for words in said.split("|")
                for fault in (
                    "malformed",
                    "deformed",
                    "kinked",
                    "missing",
                    "bent",
                    "short",
                    "crooked",
                    "folded",
                    "stunted",
                )
            )
            for fin, said in (
                ("left_pectoral", "left pectoral|left pectoral fin|left pec"),
                ("right_pectoral", "right pectoral|right pectoral fin|right pec"),
                ("tail", "tail|tail fin|1 lobe of the tail|tail lobe"),
                ("pelvic", "pelvic fin|ventral fin"),
                ("anal", "anal fin"),
            )
        },
    ),
    Spoken(
        "fin_damage",
        "damaged fin, split fin, fin split, frayed fin, torn fin, fin torn, fin frayed, fin damaged, "
        "ragged fin, nipped fin, fin nipped, broken fin, "
        "fin damage",
        alone={
            f"includes {fin}": ", ".join(
                f"{words} {damage}, {damage} {words}, {damage} in the {words}, {noun} in the {words}, {noun} in {words}, "
                f"{words} missing a piece, {words} has a piece missing, piece missing from the {words}"
                for words in said.split("|")
                for damage, noun in (
                    ("split", "split"),
                    ("damaged", "damage"),
                    ("torn", "tear"),
                    ("frayed", "fray"),
                    ("ragged", "nick"),
                    ("nipped", "nip"),
                )
            )
            for fin, said in (
                ("left_pectoral", "left pectoral|left pectoral fin|left pec"),
                ("right_pectoral", "right pectoral|right pectoral fin|right pec"),
                ("dorsal", "dorsal|dorsal fin|back fin"),
                ("tail", "tail|tail fin|caudal fin"),
                ("pelvic", "pelvic fin|ventral fin|pelvic"),
                ("anal", "anal fin"),
            )
        }
        | {
            "is none": "fins whole, fins good, fins intact, fins perfect, all fins whole, fins sound, fins fine, all "
            "fins good, no damage to the fins"
        },
    ),
    Spoken(
        "pectoral_size",
        "pectorals, pectoral fins, pectoral, pecs, pectoral size, breast fins, 胸鰭",
        levels={
            "small": "small, short, pointed, little, tiny, narrow, poor, 小さい",
            "fair": "fair, average, medium, ordinary",
            "large": "large, big, rounded, broad, wide, good, long, great, huge, 大きい",
        },
    ),
    Spoken(
        "dorsal_fin",
        "dorsal, dorsal fin, back fin, 背鰭",
        levels={
            "folded": "folded, folded over, bent over, lying over, flat, drooping, down, collapsed",
            "fair": "fair",
            "upright": "upright, up, good, standing, erect, straight",
        },
    ),
    Spoken(
        "scale_loss",
        "left side scale missing, right side scale missing, scale missing left, scale missing "
        "right, lost scale, missing scale, scale missing, scale lost, scale gone, bare spot, "
        "scale off, scales "
        "missing on the side, scale missing on the left side, "
        "scale missing on the right side, scale missing on the flank, scale missing on the left flank, "
        "scale missing on the right flank, "
        "scale missing on the back, scale lost on the back, scale lost on the flank, scale lost on the "
        "left, scale lost on the right, "
        "scale missing on the left, scale missing on the right, scale missing on the shoulder",
        alone={
            "is 1": "missing a scale on the right "
            "flank, missing a scale on the left flank, "
            "missing a scale on the side, missing a scale on the back, missing a scale on the left side, "
            "missing a scale on the right side, "
            "missing a scale on the left, missing a scale on the right, missing 1 scale, lost 1 scale, 1 scale missing",
            "at least 2": "lost a few scales on the flank, lost a few scales on the side, a few scales lost, a few "
            "scales gone, lost a few scales, a few scales missing on the flank, a few scales "
            "missing, some scales missing, missing some scales, lost some scales, missing a few scales",
            "is 1 to 2": each_of("a scale or two {gone}", gone="missing|gone|lost|off")
            + ", "
            + each_of("{missing} a scale or two", missing="missing|lost|has lost|lacks"),
            "is 2": "missing 2 scales, lost 2 scales",
            "is 3": "missing 3 scales, lost 3 scales",
            "is 0": "scales all there, no scales missing, scales complete, no scale missing",
        },
    ),
    Spoken("scars", "scar, healed wound, dent, old wound, old scar, little scar, small scar, scar tissue, 傷"),
    Spoken(
        "health",
        "health, condition, fish, state, lot, whole lot, all of them, every one of them, all fish, 健康",
        levels={
            "sick": "sick, ill, diseased, bad, poorly",
            "doubtful": "doubtful, questionable, unsure, suspicious",
            "well": "well, good, fine, healthy, sound, lively",
        },
        alone={
            "is well": "well, fish are well, all well, healthy, all healthy, fish well, lively, fit, in good health, "
            "all fit, fish are healthy, fish are fine, "
            "health good, all are well, no sick fish, none sick, nothing sick, no sick ones, nobody sick, 健康",
            "is sick": "sick, ill, fin rot, ulcer, open wound, parasites, a sore, sore, has a sore",
            "is doubtful": "clamps its fins, clamped fins, hangs back, off its food, listless",
        },
    ),
    Spoken(
        "swimming",
        "swimming, swim, swims, movement, moves",
        levels={
            "off": "off, crooked, badly, wrong, sideways, rolling, lopsided, odd, oddly, funny, strange, strangely",
            "stiff": "stiff, stiffly, slowly",
            "smooth": "smooth, smoothly, well, good, straight, fine, easily",
        },
        alone={
            "is off": "swims in circles, swims funny, swims strangely, swims oddly, swims badly, "
            "hangs in the water, rolls, lists to "
            "one side, leans to one side, swims on its side, swims crooked, rolls "
            "when it swims"
        },
    ),
    Spoken(
        "tobi",
        "tobi, runaway, runaway grower, shooter, トビ",
        alone={"is yes": "a runaway, a shooter, far bigger than the rest"},
    ),
    Spoken(
        "scalation",
        "scales, scalation, 鱗",
        levels={"wagoi": "full, scaled", "kagami": "mirror", "kawa": "leather", "ginrin": "sparkling, shiny"},
        alone={
            "is ginrin": "ginrin, gin rin, kin gin rin, 銀鱗",
            "is kagami": "mirror scaled",
            "is kawa": "leather skin",
        },
    ),
    Spoken(
        "gill_cover_faults",
        alone={f"includes {side}_gill": _of_a_side(_GILLS, side, _GILL_FAULTS) for side in ("left", "right")},
    ),
    Spoken(
        "gill_cover_faults",
        alone={
            "count is 1": each_of("{one} {noun} {fault}", one="1|1 of the", noun=_GILLS, fault=_GILL_FAULTS),
            "is (left_gill, right_gill)": each_of("both {noun} {fault}", noun=_GILLS, fault=_GILL_FAULTS),
        },
    ),
    Spoken("eye_film", alone={f"includes {side}_eye": _of_a_side("eye", side, _FILMED) for side in ("left", "right")}),
    Spoken(
        "eyes_missing", alone={f"includes {side}_eye": _of_a_side("eye", side, _BLIND) for side in ("left", "right")}
    ),
    SpokenTogether(
        "fins ok, fins okay, all fins ok, fins in order, fins undamaged, fins all ok, fins all good",
        "fin_damage is none and fin_faults is none",
    ),
    SpokenTogether(
        "no faults, no fault, no faults at all, nothing wrong at all, clean fish no faults, "
        "without fault, too small, too bad really, one for the lot, "
        "well, as before, still the same, good fish, clean fish, nothing wrong with it, "
        "nothing wrong, otherwise fine, otherwise good, "
        "otherwise clean, fine otherwise, clean otherwise, "
        "good otherwise, nothing else, that is all, no problem, a pity, pity, shame, a shame, what a "
        "shame, sorry, lovely, lovely fish, nice fish, "
        "pretty, cute, charming, i like it, i like that, i like this, i like this one, do not like it, "
        "do not like that, i do not like that, "
        "i do not like it, does not bother me, do not mind, i do not mind, i do not mind that, never "
        "mind, no matter, fine, it is fine, is fine, "
        "the children will love it, comes from good parents, good parents, let me look again later, let "
        "me see, let us see, well well, interesting, hovering gently, "
        "i would say, hard to say, what else, healed, all healed, no wound, rest is fine, the rest is "
        "fine, the rest good, rest good, the rest ok, "
        "poor thing, needs watching, those bother me, that bothers me, it bothers me, does not matter, "
        "that does not matter, it does not matter, matters little, that is how i like it, how i like it, "
        "just how i like it, not too bad, not so bad, well fed, nicely fed, sweet, else clean, else fine, else good, "
        "rest clean, the rest clean, rest is clean, people like that, people pay for that, there you go, good to see, "
        "too bad, oh dear, good one, a good one, nice one, a nice one, ok, fine fish, as expected, as usual",
        "nothing",
    ),
)
"""What is said of the frame, the parts and the measures of a body."""

# English (British spelling). Every sentence handspan prints about an exam.
# Sides are the mother's. Write "your left" to the family, "her left" to the midwife.

## Sides and parts

her-left = Her left
her-right = Her right

## The family page
# Plain words, short sentences (20 words at most), Flesch-Kincaid grade 6 or below. "Your left" is the mother's left.
# A message about safety names its source ids (the table is in tests/published/family-safety.csv); only facts
# that were seen in the source are used. Nothing here says that all is well, or that anything is not.
# `____` is a line to write on.

# $n is how many babies there are.
family-title-one = How your baby is lying
family-title-more = How your babies are lying
family-name = Name ____
family-felt-on = Felt by hand on ____
# $age is one of the family-weeks messages.
family-felt-on-at = Felt by hand on ____ at { $age }
family-weeks = { $weeks } weeks
family-weeks-day = { $weeks } weeks and 1 day
family-weeks-days = { $weeks } weeks and { $days } days

# $baby is one of these.
family-baby-one = Your baby
family-baby-number = Baby { $number }

family-lie-head-down = { $baby } is lying head down.
family-lie-head-down-probably = { $baby } is probably lying head down.
family-lie-bottom-down = { $baby } is lying bottom down.
family-lie-bottom-down-probably = { $baby } is probably lying bottom down.
family-lie-across = { $baby } is lying across your bump.
family-lie-across-probably = { $baby } is probably lying across your bump.
family-lie-slanting = { $baby } is lying on a slant.
family-lie-slanting-probably = { $baby } is probably lying on a slant.
family-lie-not-told = Hands could not tell how your baby lies.
family-lie-not-told-number = Hands could not tell how baby { $number } lies.
family-lie-early = It is too soon to feel how your baby lies.
family-early-picture = The picture shows how high your womb has grown.

family-head-left = The head is on your left.
family-head-right = The head is on your right.
family-head-low-left = The head is low, on your left.
family-head-low-right = The head is low, on your right.
family-head-high-left = The head is high, on your left.
family-head-high-right = The head is high, on your right.
family-head-low = The head is lower than the bottom.
family-head-high = The head is higher than the bottom.

# $side is one of the family-side messages.
family-side-left = left
family-side-right = right
family-back-side = The back is to your { $side }.
family-back-side-probably = The back is probably to your { $side }.
family-back-side-front = The back is to your { $side }, towards your front.
family-back-side-front-probably = The back is probably to your { $side }, towards your front.
family-back-side-spine = The back is to your { $side }, towards your spine.
family-back-side-spine-probably = The back is probably to your { $side }, towards your spine.
family-back-side-square = The back is straight out to your { $side }.
family-back-side-square-probably = The back is probably straight out to your { $side }.
family-back-front = The back is towards your front.
family-back-front-probably = The back is probably towards your front.
family-back-spine = The back is towards your spine.
family-back-spine-probably = The back is probably towards your spine.
family-back-ribs = The back is towards your ribs.
family-back-ribs-probably = The back is probably towards your ribs.
family-back-feet = The back is towards your feet.
family-back-feet-probably = The back is probably towards your feet.
family-back-not-told = Hands could not tell where the back is.
family-back-not-felt = The back was not felt for.

family-about-title = About this page
family-hold = Hold this page on your bump with the picture facing out. Then the sides match.
family-hands = This was felt by hand. It is not a scan, and hands can be wrong.
family-hands-scan = Some of this was felt by hand and some seen on a scan. The picture is not a scan, and hands can be wrong.
family-turn = Babies turn. This page shows one day. When you get a new page, put this one away.
family-heart = The small heart shows where the heartbeat was heard that day.
family-artist = Face and limbs are drawn to fit.

family-call-title = When to call
# Source: CDC-HH
family-worried = If you are worried, call, even if it is not on this list. Say that you are pregnant.
family-clinic-blank = Call ____
family-number-blank = Number ____

family-moves-title-one = Your baby’s movements
family-moves-title-more = Your babies’ movements
# Source: NHS-MOVE; HEY-NHS
family-moves-fewer = Are they fewer, or not as usual?
# Source: NHS-MOVE; HEY-NHS
family-moves-call = Call now, day or night.
# Source: NHS-MOVE; HEY-NHS
family-moves-wait = Do not wait for the next day.
# Source: NHS-MOVE; RCOG-57
family-moves-late = Babies do not move less near the birth.
# Source: NTH NHS
family-moves-early = None felt by 24 weeks? Call for a check.
# Source: RCM-DOP
family-moves-monitor = Do not use a heart monitor to check. You may hear your own pulse.

family-go-title = Go in now
# Source: RCOG-50
family-go-waters = Your waters break, fluid leaks or labour starts: call and come in at once
# Source: CDC-HH; WHO-DS; HEAT
family-go-bleeding = Bleeding from the vagina
# Source: CDC-HH; WHO-DS
family-go-pain = Strong belly pain that stays
# Source: CDC-HH; WHO-DS
family-go-breath = Trouble breathing, or chest pain
# Source: CDC-HH; WHO-DS
family-go-head = A bad headache with blurred sight
# Source: WHO-DS; HEAT
family-go-fits = Fits, or a fever that makes you weak

family-call-list-title = Call now, day or night
# Source: CDC-HH; HEAT
family-call-fluid = Your waters break, or fluid leaks
# Source: CDC-HH; WHO-DS
family-call-head = A bad or lasting headache
# Source: CDC-HH; WHO-DS
family-call-sight = Changes in how you see
# Source: CDC-HH; WHO-DS
family-call-fever = A fever of 38 °C (100.4 °F) or more
# Source: CDC-HH
family-call-swelling = A very swollen face or hands
# Source: CDC-HH
family-call-vomit = Being sick and not able to stop
# Source: CDC-HH; WHO-DS
family-call-faint = Fainting, or a racing heart
# Source: CDC-HH
family-call-leg = Pain or swelling in a leg
# Source: CDC-HH
family-call-tired = Feeling far too tired
# Source: CDC-HH
family-call-harm = Thoughts of hurting yourself

# $version is the program's.
family-use = A drawing of what was felt. It does not take the place of a check by your midwife or doctor. handspan { $version }

# English (British spelling). Every sentence handspan prints about an exam.
# Sides are the mother's. Write "your left" to the family, "her left" to the midwife.

## Sides and parts

her-left = Her left
her-right = Her right

## What was understood
## `handspan check` says back what it read. $value is in the words of the exam language.

check-weeks = { $file }, at { $weeks } weeks
check-no-weeks = { $file }, weeks not given
check-baby = Baby { $baby }
check-not-examined = Not examined: { $names }.
check-nothing-left = Nothing that is usual at these weeks was left out.

value-unsure = { $value }, unsure
value-scan = { $value }, by scan
value-scan-at = { $value }, by scan { $when }
value-vaginal = { $value }, by vaginal examination

group-dates = Dates
group-says = She says
group-looked = Looked
group-womb = Womb
group-tape = Tape
group-grip-1 = First grip
group-grip-2 = Second grip
group-grip-3 = Third grip
group-grip-4 = Fourth grip
group-baby = Baby
group-heart = Heart
group-weight = Weight
group-concluded = You wrote
group-note = Note

found-weeks = Weeks: { $value }.
found-visit = Visit on { $value }.
found-due = Due on { $value }.
found-last-period = Last period from { $value }.
found-cycle = Cycle of { $value } days.
found-scan = Dated by scan: { $value }.
found-note = { $value }

found-movements = Movements: { $value }.
found-reports = She reports: { $value }.
found-denies = Asked, and not so: { $value }.
found-births-before = Births before: { $value }.
found-operations = Operations on the womb: { $value }.
found-womb-cut = Cut in the womb: { $value }.
found-placenta = Placenta: { $value }.
found-posture = She lay: { $value }.
found-shape = Shape: { $value }.
found-scars = Scars on the skin: { $value }.
found-skin = Skin: { $value }.
found-pulse = Her pulse: { $value }.
found-womb = Womb: { $value }.
found-water = Water: { $value }.
found-lumps = Fibroids: { $value }.
found-fundus = Top of the womb: { $value }.
found-fundal-height = Pubic bone to the top of the womb: { $value }.
found-earlier-tapes = Earlier: { $value }.
found-girth = Girth at the navel: { $value }.
found-navel = Navel above the pubic bone: { $value }.
found-tape-unfit = Tape not fit for a chart: { $value }.

found-breech = Bottom: { $value }.
found-back = Back: { $value }.
found-limbs = Limbs: { $value }.
found-dip-at-navel = Dip at the navel: { $value }.
found-head = Head: { $value }.
found-head-above-brim = Head above the brim: { $value } palpable.
# A state, such as "could not tell (thick wall)".
found-head-above-brim-state = Head above the brim: { $value }.
found-descent = Descent: { $value }.
found-prominence = Head stands out on: { $value }.
found-attitude = Head held: { $value }.
found-legs = Legs: { $value }.
found-moved-under-hands = Moved under the hands: { $value }.
found-heart = Heard: { $value }.
found-heart-state = Heart { $value }.
found-heart-with = With: { $value }.
found-heart-counts = Counted: { $value }, a mean of { $mean } beats a minute.
found-heart-counts-state = Counted: { $value }.
found-heart-rate = Rate: { $value } beats a minute.
found-heart-rate-state = Rate: { $value }.
found-heart-rise = Highest on movement: { $value }.
found-heart-rhythm = Rhythm: { $value }.
found-weight-by-hand = By hand: { $value }.
found-weight-by-scan = By an earlier scan: { $value }.
found-lie = Lie: { $value }.
found-presentation = Presentation: { $value }.
found-position = Position: { $value }.

name-movements = movements
name-fundal-height = tape
name-breech = bottom
name-back = back
name-limbs = limbs
name-head = head
name-descent = head above the brim
name-heart = heart
name-heart-rate = heart rate

conclude-cephalic = Head down
conclude-face = Head down, face first
conclude-brow = Head down, brow first
conclude-breech = Bottom down
conclude-longitudinal = Lying lengthwise, which end is down is not known
conclude-transverse = Lying across
conclude-transverse-head-left = Lying across, head to her left
conclude-transverse-head-right = Lying across, head to her right
conclude-shoulder = Lying across, shoulder low
conclude-shoulder-head-left = Lying across, shoulder low, head to her left
conclude-shoulder-head-right = Lying across, shoulder low, head to her right
conclude-oblique = Lying slantwise
conclude-oblique-head-low-left = Lying slantwise, head low on her left
conclude-oblique-head-low-right = Lying slantwise, head low on her right
conclude-oblique-head-up-left = Lying slantwise, head high on her left, bottom low on the other side
conclude-oblique-head-up-right = Lying slantwise, head high on her right, bottom low on the other side
conclude-nothing = How the baby lies does not follow from these findings
conclude-nothing-head-low = The head is low; how the baby lies does not follow from these findings
conclude-nothing-head-up = The head is high; how the baby lies does not follow from these findings

back-left-front = back to her left front
back-left-lateral = back square to her left
back-left-spine = back to her left, turned to her spine
back-left = back to her left
back-right-front = back to her right front
back-right-lateral = back square to her right
back-right-spine = back to her right, turned to her spine
back-right = back to her right
back-front = back to her front
back-spine = back to her spine (back to back)
back-ribs = back towards her ribs
back-feet = back towards her feet

# The parts above, put together: with a position, without, and without a back.
conclude-position = { $lie }, { $back }: { $position } ({ $code }).
conclude-position-words = { $lie }, { $back }: { $position }.
conclude-back = { $lie }, { $back }.
conclude-nothing-at-all = { $lie }.
conclude-no-back = { $lie }; where the back is, is not known.
conclude-no-turn = No position is named: only the side of the back is known.
conclude-unsure = Unsure: a finding this rests on is marked with a question mark.
conclude-engaged = Engaged: { $fifths } of the head palpable above the brim.
conclude-not-engaged = Not engaged: { $fifths } of the head palpable above the brim.
conclude-engaged-said = Said to be engaged; no fifths recorded.
conclude-head-free = Not engaged: the head is free above the brim.

check-remarks-none = Nothing recorded here meets an act-now rule or contradicts itself. That rules nothing out.
check-problems = In the file
grade-act-now = Act now
grade-cannot-both = Cannot both be right
grade-look-again = Look again
grade-follow-guidance = Follow guidance
# Before a remark or a conclusion about one of twins.
for-baby = Baby { $baby }: { $text }

## Remarks
## One sentence what was found, one what to do next. Never a diagnosis, never reassurance; local guidance decides.

remark-movements-fewer = She says the baby moves less than usual. Have her and the baby assessed now, by your local guidance for fewer movements; a heart that is heard does not settle it.
remark-movements-changed = She says the movements have changed. Have her and the baby assessed now, by your local guidance for changed movements; a heart that is heard does not settle it.
remark-movements-none = She says the baby does not move. Have her and the baby assessed now, by your local guidance; a heart that is heard does not settle it.
remark-movements-not-felt-yet = Movements have not been felt yet, and 24 weeks have passed or the weeks are not known. Have her and the baby assessed, by your local guidance for movements not felt by 24 weeks.
remark-bleeding = She reports bleeding. Get help and follow your local guidance for bleeding in pregnancy now.
remark-constant-pain = She reports pain that stays. Get help and follow your local guidance for constant pain in pregnancy now.
remark-urgent-signs = She reports: { $signs }. Get help and follow your local guidance for it now.
remark-hard-tender-womb = The womb is hard and tender. Get help and follow your local guidance now; do not wait for a softer moment to feel again.
remark-scar-pain = She reports pain at the scar, and the womb has been operated on. Get help and follow your local guidance for scar pain now.
remark-scar-pain-operations-not-known = She reports pain at a scar, and whether the womb has been operated on is not recorded. Ask now; if it has, or if nobody knows, get help by your local guidance for scar pain.
remark-waters-broken-not-head-down = The waters have broken and the baby is not head down. Call for help now and follow your local guidance for waters broken with a baby that is not head down, the risk to the cord first.
remark-waters-broken-lie-not-known = The waters have broken and it is not recorded that the baby is head down. Feel for the head now, and follow your local guidance for broken waters, the risk to the cord first.
remark-waters-broken-head-free = The waters have broken and the head is free above the brim. Call for help now and follow your local guidance for broken waters with a free head, the risk to the cord first.
remark-heart-not-heard = The heart was not heard. Ask a second person and another instrument to listen now, and arrange a scan by your local guidance for a heart not heard; do not send her home to wait.
remark-heart-rate-low = The heart rate is recorded as { $rate } beats a minute, under 100. Feel her pulse while you listen again for a full minute, get help, and follow your local guidance now.
remark-heart-rate-high = The heart rate is recorded as { $rate } beats a minute, over 180. Listen again for a full minute, get help, and follow your local guidance now.
remark-pulse-near-heart = Her pulse is { $pulse } and the rate heard is { $rate }: it may be her own pulse that was heard. Feel her pulse while you listen again now; if they run together, treat the heart as not heard.

remark-head-and-bottom-in-one-place = Head and bottom cannot be in one place ({ $said }). Feel both ends of the womb again.
remark-back-against-lie = The back cannot lie so with head or bottom there ({ $said }). Feel the back again, then head and bottom.
remark-lie-against-findings = The lie you wrote is not what these findings give ({ $said }). Feel head and bottom again; the picture follows the findings.
remark-presentation-against-findings = The presentation you wrote is not what these findings give ({ $said }). Feel head and bottom again; the picture follows the findings.
remark-position-against-findings = The position you wrote is not what these findings give ({ $said }). Feel head, bottom and back again, her left and right first; the picture follows the findings.
remark-conclusions-against-one-another = What you concluded does not hold together ({ $said }). Keep the one you can feel.
remark-attitude-against-presentation = The head cannot be held in two ways ({ $said }). Keep the one you know, and how you know it.
remark-engaged-and-crosswise = A baby that lies across or slantwise has no head deep in the pelvis ({ $said }). Feel above the brim again.
remark-head-in-two-places = One head cannot be in two places ({ $said }). Feel the top of the womb and above the brim again.
remark-fifths-on-a-breech = Fifths are counted on a head, and these findings put the bottom down ({ $said }). Feel above the brim again: is it head or bottom?
remark-engaged-on-a-breech = Engaged is said of a head, and these findings put the bottom down ({ $said }). Say of a bottom: free, at the brim or deep.
remark-fifths-against-descent = The fifths and the descent in words do not agree ({ $said }). Feel above the brim again and keep one of them.
remark-heart-not-heard-but-counted = A heart that was not heard has no rate ({ $said }). Say where it was heard, or take the rate out.
remark-reported-and-denied = The same thing is reported and denied ({ $said }). Ask again.

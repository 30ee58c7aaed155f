# English (American). What differs from en.ftl; all the rest is said as there.

# Spelling and words of the same language: signed with it.
language-signed = yes
language-name = English (US)

back-ribs = back toward her ribs
back-feet = back toward her feet

family-lie-across = { $baby } is lying across your belly today, { $how }.
family-lie-across-probably = { $baby } is probably lying across your belly today, { $how }.
family-kind-come = If your water breaks (fluid leaks) or labor starts, call and come in at once.
family-back-side-front = The back is to your { $side }, toward your front.
family-back-side-front-probably = The back is probably to your { $side }, toward your front.
family-back-side-spine = The back is to your { $side }, toward your spine.
family-back-side-spine-probably = The back is probably to your { $side }, toward your spine.
family-back-front = The back is toward your front.
family-back-front-probably = The back is probably toward your front.
family-back-spine = The back is toward your spine.
family-back-spine-probably = The back is probably toward your spine.
family-back-ribs = The back is toward your ribs.
family-back-ribs-probably = The back is probably toward your ribs.
family-back-feet = The back is toward your feet.
family-back-feet-probably = The back is probably toward your feet.
family-heart = The small ring shows where on your belly your { family-carer } heard the heartbeat. It is not the heart itself. If movements change, call; do not listen first.
family-heavy-now = If you might act on it now: call the emergency number, or 988 in the US.
family-heavy-now-number = If you might act on it now: call { $number }, or 988 in the US.
# Source: RCOG-BREECH
family-next-operation = A planned operation (C-section)
family-hold = Hold this page on your belly with the picture facing out. Then the sides match.
# Source: RCOG-50
family-urgent-waters = Your water breaks (fluid leaks) or labor starts (contractions): come at once.
# Source: WHO-DS; HEAT
family-go-fits = Seizures: shaking that you cannot stop
family-come-fever = A fever of 100.4 °F (38 °C) or more
family-come-green = Green or bloody water (fluid that leaks)
family-come-waters = Your water breaks: fluid leaks from the vagina
family-come-labour = Labor starts, contractions again and again: call, and ask when to come in
family-come-tightenings = Contractions again and again before 37 weeks
# Source: CDC-HH
family-call-vomit = Throwing up and not able to stop
colouring-title = A picture to color in
colouring-by = Colored by ____

desk-back-side-towards-her-spine = toward her spine
desk-back-towards-her-spine = toward her spine
desk-back-towards-her-ribs = toward her ribs (lying across)
desk-back-towards-her-feet = toward her feet (lying across)
desk-clinic-labour-ward = Labor ward, day and night
desk-key-water = Amniotic fluid

found-water = Amniotic fluid: { $value }.
found-head-above-brim = Engagement / station: { $value } palpable above the brim.
found-head-above-brim-state = Engagement / station: { $value }.
diameter-suboccipitobregmatic = below the occiput to the anterior fontanel (suboccipitobregmatic)
diameter-submentobregmatic = under the chin to the anterior fontanel (submentobregmatic)
numbers-tape-weeks = Centimeters as weeks: { $rule } cm.
numbers-tape-weeks-none = Centimeters as weeks: from 24+0 only.
numbers-tape-no-weeks = Not compared with weeks or percentiles: the weeks are not given.
numbers-tape-unfit = Not compared with weeks or percentiles, and no weight from it: { $why }.
numbers-tape-standard = INTERGROWTH-21st: mean { $mean } cm, SD { $sd } cm; z { $z }, percentile { $centile }.
box-liquor = Amniotic fluid
box-engagement = Engagement / station
value-tape-unfit-much-water = much amniotic fluid
value-reports-fits = seizures
value-reports-tightenings = contractions
value-reports-waters-broken = water broke
value-operations-caesarean = cesarean section

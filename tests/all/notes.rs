//! Free words of a note in the languages that are shipped: what could be an alarm is found; what is denied, past, of another
//! woman or advice is quiet. Every language from both sides.

use handspan::exam::alarm;

fn said(text: &str) -> Vec<String> {
    alarm::mentions(text).into_iter().map(|mention| mention.words).collect()
}

const FOUND: &[(&str, &[&str])] = &[
    // English: what a comma, a clock, a night or a plan must not swallow.
    ("swollen hands and face since Monday", &["swollen hands and face"]),
    ("face swollen, vomiting", &["face swollen"]),
    ("last night PV bleed", &["PV bleed"]),
    ("past 2 days headache", &["headache"]),
    ("previously well, now bleeding", &["bleeding"]),
    ("previously well now bleeding", &["bleeding"]),
    ("PV bleeding since 2000 hrs", &["PV bleeding"]),
    ("bled at 2015", &["bled"]),
    ("family report a fit at home", &["a fit"]),
    ("discussed IOL, PV bleed this morning", &["PV bleed"]),
    ("denies headache, bleeding since yesterday", &["bleeding"]),
    ("denies headache but has blurred vision", &["blurred vision"]),
    ("FH could not be found", &["FH could not be found"]),
    ("FHR 140 decelerating with contractions", &["decelerating"]),
    ("FHR dips to 90", &["FHR dips"]),
    ("?labour", &["labour"]),
    ("abdomen hard and tender", &["hard and tender"]),
    ("low placenta on scan", &["low placenta"]),
    ("chest tightness", &["chest tightness"]),
    // Spanish.
    ("sangrado vaginal desde anoche", &["sangrado"]),
    ("refiere metrorragia escasa", &["metrorragia"]),
    ("rompió la bolsa a las 2", &["rompió la bolsa"]),
    ("pierde líquido desde ayer", &["pierde líquido"]),
    ("líquido meconial", &["líquido meconial"]),
    ("aguas verdes", &["aguas verdes"]),
    ("cefalea intensa y ve lucecitas", &["cefalea", "lucecitas"]),
    ("visión borrosa", &["visión borrosa"]),
    ("dolor en epigastrio", &["dolor en epigastrio"]),
    ("manos hinchadas, cara hinchada", &["manos hinchadas", "cara hinchada"]),
    ("ha convulsionado en casa", &["convulsionado"]),
    ("se desmayó en la calle", &["se desmayó"]),
    ("opresión en el pecho", &["opresión en el pecho"]),
    ("le cuesta respirar", &["le cuesta respirar"]),
    ("fiebre desde anoche", &["fiebre"]),
    ("T 38,5", &["38,5"]),
    ("TA 150/95", &["150/95"]),
    ("TA 15/9", &["15/9"]),
    ("el bebé se mueve menos", &["se mueve menos"]),
    ("no nota al bebé desde ayer", &["no nota al bebé"]),
    ("FCF no audible", &["FCF no audible"]),
    ("no se escucha FCF", &["no se escucha FCF"]),
    ("ausencia de FCF", &["ausencia de FCF"]),
    ("se palpa cordón", &["se palpa cordón"]),
    ("tacto: pie", &["pie"]),
    ("presentación de cara", &["presentación de cara"]),
    ("útero en tabla", &["útero en tabla"]),
    ("dolor que no cede", &["dolor que no cede"]),
    ("se ha caído por la escalera", &["se ha caído"]),
    ("placenta previa con sangrado", &["placenta previa", "sangrado"]),
    ("cesárea previa con incisión en T", &["incisión en T"]),
    ("rotura uterina en 2019", &["rotura uterina"]),
    ("ideación suicida", &["ideación suicida"]),
    ("violencia de género", &["violencia de género"]),
    ("niega cefalea, sangrado desde ayer", &["sangrado"]),
    ("sin fiebre, sangrado", &["sangrado"]),
    ("informada del plan, sangrado esta mañana", &["sangrado"]),
    ("DIU", &["DIU"]),
    // French.
    ("saignement ce matin", &["saignement"]),
    ("a saigné hier", &["saigné"]),
    ("pertes de sang", &["pertes de sang"]),
    ("suspicion d’hémorragie", &["d’hémorragie"]),
    ("rupture de la poche des eaux", &["rupture de la poche"]),
    ("perd du liquide depuis hier", &["perd du liquide"]),
    ("liquide méconial", &["liquide méconial"]),
    ("liquide teinté", &["liquide teinté"]),
    ("céphalées intenses et phosphènes", &["céphalées", "phosphènes"]),
    ("voit flou", &["voit flou"]),
    ("douleur en barre", &["douleur en barre"]),
    ("œdèmes du visage", &["œdèmes du visage"]),
    ("a convulsé", &["a convulsé"]),
    ("perte de connaissance", &["perte de connaissance"]),
    ("gêne respiratoire", &["gêne respiratoire"]),
    ("douleur thoracique", &["douleur thoracique"]),
    ("fièvre, frissons", &["fièvre", "frissons"]),
    ("TA 16/10", &["16/10"]),
    ("tension 14,5/9", &["14,5/9"]),
    ("bébé bouge moins", &["bouge moins"]),
    ("ne sent plus bébé bouger", &["ne sent plus"]),
    ("BDC non retrouvés", &["BDC non retrouvés"]),
    ("pas de BDC", &["pas de BDC"]),
    ("pas d’activité cardiaque", &["pas d’activité cardiaque"]),
    ("procidence du cordon", &["procidence du cordon"]),
    ("TV : main", &["main"]),
    ("présentation de la face", &["présentation de la face"]),
    ("utérus de bois", &["utérus de bois"]),
    ("douleur permanente", &["douleur permanente"]),
    ("est tombée dans l’escalier", &["est tombée"]),
    ("placenta prævia", &["placenta prævia"]),
    ("incision en T en 2018", &["incision en T"]),
    ("rupture utérine en 2018", &["rupture utérine"]),
    ("idées suicidaires", &["idées suicidaires"]),
    ("violences conjugales", &["violences conjugales"]),
    ("pas de fièvre, saignement", &["saignement"]),
    ("nie céphalées, saigne depuis hier", &["saigne"]),
];

const QUIET: &[&str] = &[
    // English.
    "history of swollen hands and face",
    "last pregnancy PV bleed",
    "family history of fits",
    "PPROM in 2019",
    "denies headache, bleeding, swollen face",
    "advised re PV bleed, RFM and SROM",
    "no swollen face",
    "in labour",
    "low placenta resolved",
    "placenta praevia excluded",
    "no decelerations",
    // Spanish.
    "sin sangrado ni pérdida de líquido",
    "no refiere sangrado ni cefalea",
    "niega sangrado, cefalea y visión borrosa",
    "niega cefalea, fosfenos y epigastralgia",
    "no sangra",
    "ausencia de sangrado",
    "afebril",
    "ningún sangrado",
    "antecedente de preeclampsia",
    "preeclampsia en 2019",
    "hermana con preeclampsia",
    "en embarazo anterior sangrado",
    "acudir si sangrado, pérdida de líquido o menos movimientos",
    "explicados signos de alarma: sangrado, fiebre",
    "se informa de cuándo acudir: sangrado, fiebre",
    "sangrado: no",
    "TA 12/7",
    "TA 118/72",
    "T 36,8",
    "movimientos fetales presentes",
    "todo bien",
    // French.
    "pas de saignement ni de perte de liquide",
    "ni saignement ni fièvre",
    "ne saigne pas",
    "n’a pas saigné",
    "pas d’hémorragie",
    "absence de saignement",
    "aucun saignement",
    "sans fièvre",
    "apyrétique",
    "nie céphalées, phosphènes et barre épigastrique",
    "ATCD de prééclampsie",
    "prééclampsie en 2019",
    "sœur : prééclampsie",
    "revenir si saignement, fièvre ou perte de liquide",
    "informée des signes : saignement, fièvre",
    "saignement : 0",
    "TA 12/7",
    "température 36,9",
    "bouge bien",
    "mouvements actifs perçus",
];

#[test]
fn what_could_be_an_alarm_is_found_in_every_language() {
    let wrong: Vec<String> = FOUND
        .iter()
        .filter(|(text, words)| said(text) != *words)
        .map(|(text, words)| format!("{text}: {:?}, not {words:?}", said(text)))
        .collect();
    assert!(wrong.is_empty(), "{}", wrong.join("\n"));
}

#[test]
fn what_is_denied_or_past_or_advice_is_quiet_in_every_language() {
    let wrong: Vec<String> = QUIET
        .iter()
        .filter(|text| !said(text).is_empty())
        .map(|text| format!("{text}: {:?}", said(text)))
        .collect();
    assert!(wrong.is_empty(), "{}", wrong.join("\n"));
}

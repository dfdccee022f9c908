<?xml version="1.0" encoding="utf-8"?>
<!DOCTYPE TS>
<TS version="2.1" language="de" sourcelanguage="en">
    <context>
        <name>seamclock</name>
        <message>
            <source> (%1 to %2)</source>
            <translation> (%1 bis %2)</translation>
        </message>
        <message>
            <source> (%1, pressed %2)</source>
            <translation> (%1, gedrückt %2)</translation>
        </message>
        <message>
            <source> And %1 more: see the printed card.</source>
            <translation> Weitere: %1, siehe gedruckte Karte.</translation>
        </message>
        <message>
            <source> and </source>
            <translation> und </translation>
        </message>
        <message>
            <source> ± %1</source>
            <translation> ± %1</translation>
        </message>
        <message>
            <source> · %1 ticked</source>
            <translation> · gewählt: %1</translation>
        </message>
        <message>
            <source> · at work: %1</source>
            <translation> · an der Bank: %1</translation>
        </message>
        <message>
            <source>"%1" is no value for %2; allowed: %3.</source>
            <translation>„%1“ ist kein Wert für %2; erlaubt: %3.</translation>
        </message>
        <message>
            <source>% for each kelvin</source>
            <translation>% je Kelvin</translation>
        </message>
        <message>
            <source>%1 %2</source>
            <translation>%1 %2</translation>
        </message>
        <message>
            <source>%1 %2 mm, %3 mm long</source>
            <translation>%1 %2 mm, %3 mm lang</translation>
        </message>
        <message>
            <source>%1 %2 × %3</source>
            <translation>%1 %2 × %3</translation>
        </message>
        <message>
            <source>%1 %2, %3: %4</source>
            <translation>%1 %2, %3: %4</translation>
        </message>
        <message>
            <source>%1 %2, limit %3</source>
            <translation>%1 %2, Grenze %3</translation>
        </message>
        <message>
            <source>%1 %2, plan %3</source>
            <translation>%1 %2, Plan %3</translation>
        </message>
        <message>
            <source>%1 %2, plan %3, out of limits</source>
            <translation>%1 %2, Plan %3, außerhalb</translation>
        </message>
        <message>
            <source>%1 (%2 to %3)</source>
            <translation>%1 (%2 bis %3)</translation>
        </message>
        <message>
            <source>%1 (%2) %3</source>
            <translation>%1 (%2) %3</translation>
        </message>
        <message>
            <source>%1 (%2, to %3)</source>
            <translation>%1 (%2, bis %3)</translation>
        </message>
        <message>
            <source>%1 / %2 mm</source>
            <translation>%1 / %2 mm</translation>
        </message>
        <message>
            <source>%1 It is in the record.</source>
            <translation>%1 Es steht im Protokoll.</translation>
        </message>
        <message>
            <source>%1 N/mm²</source>
            <translation>%1 N/mm²</translation>
        </message>
        <message>
            <source>%1 Next try in %2.</source>
            <translation>%1 Wieder in %2.</translation>
        </message>
        <message>
            <source>%1 as before</source>
            <translation>%1 wie vorher</translation>
        </message>
        <message>
            <source>%1 attested values are withdrawn.</source>
            <translation>Bestätigung entzogen, Werte: %1.</translation>
        </message>
        <message>
            <source>%1 by %2, %3: %4</source>
            <translation>%1 (%2, %3): %4</translation>
        </message>
        <message>
            <source>%1 can't be meant: %2 to %3 %4.</source>
            <translation>%1 kann nicht stimmen: %2 bis %3 %4.</translation>
        </message>
        <message>
            <source>%1 can't be welded here: %2.</source>
            <translation>%1 geht hier nicht: %2.</translation>
        </message>
        <message>
            <source>%1 classes of air temperature</source>
            <translation>%1 Klassen der Lufttemperatur</translation>
        </message>
        <message>
            <source>%1 for people</source>
            <translation>%1 für Leser</translation>
        </message>
        <message>
            <source>%1 from memory: not attested</source>
            <translation>%1 aus dem Kopf: nicht bestätigt</translation>
        </message>
        <message>
            <source>%1 has a new PIN.</source>
            <translation>%1 hat eine neue PIN.</translation>
        </message>
        <message>
            <source>%1 in all</source>
            <translation>gesamt %1</translation>
        </message>
        <message>
            <source>%1 is %2. What is right?</source>
            <translation>%1 ist %2. Was ist richtig?</translation>
        </message>
        <message>
            <source>%1 is above %2 %3.</source>
            <translation>%1 ist über %2 %3.</translation>
        </message>
        <message>
            <source>%1 is below %2. Keep it, turn up.</source>
            <translation>%1 ist unter %2. Gilt, dann hochdrehen.</translation>
        </message>
        <message>
            <source>%1 is not too far: %2.</source>
            <translation>%1 ist nicht zu weit: %2.</translation>
        </message>
        <message>
            <source>%1 is open</source>
            <translation>%1 ist offen</translation>
        </message>
        <message>
            <source>%1 is outside %2.</source>
            <translation>%1 ist außerhalb: %2.</translation>
        </message>
        <message>
            <source>%1 is too cold: %2.</source>
            <translation>%1 ist zu kalt: %2.</translation>
        </message>
        <message>
            <source>%1 is too hot: %2.</source>
            <translation>%1 ist zu heiß: %2.</translation>
        </message>
        <message>
            <source>%1 joints</source>
            <translation>%1 Schweißungen</translation>
        </message>
        <message>
            <source>%1 joints were broken off when the program ended.</source>
            <translation>Abgebrochen, als das Programm endete: %1 Schweißungen.</translation>
        </message>
        <message>
            <source>%1 kept</source>
            <translation>Fotos: %1</translation>
        </message>
        <message>
            <source>%1 missing or altered</source>
            <translation>fehlt, verändert: %1</translation>
        </message>
        <message>
            <source>%1 mm</source>
            <translation>%1 mm</translation>
        </message>
        <message>
            <source>%1 mm apart</source>
            <translation>%1 mm offen</translation>
        </message>
        <message>
            <source>%1 mm apart, %2 more above</source>
            <translation>%1 mm offen, oben %2 mehr</translation>
        </message>
        <message>
            <source>%1 mm apart, %2 more below</source>
            <translation>%1 mm offen, unten %2 mehr</translation>
        </message>
        <message>
            <source>%1 mm to the plate</source>
            <translation>%1 mm zum Heizelement</translation>
        </message>
        <message>
            <source>%1 mm, formula</source>
            <translation>%1 mm, Formel</translation>
        </message>
        <message>
            <source>%1 of %2</source>
            <translation>%1 von %2</translation>
        </message>
        <message>
            <source>%1 of %2 attested</source>
            <translation>%1 von %2 bestätigt</translation>
        </message>
        <message>
            <source>%1 of %2 s</source>
            <translation>%1 von %2 s</translation>
        </message>
        <message>
            <source>%1 of %2 values</source>
            <translation>%1 von %2 Werten</translation>
        </message>
        <message>
            <source>%1 of %2 values attested</source>
            <translation>%1 von %2 Werten bestätigt</translation>
        </message>
        <message>
            <source>%1 of at least %2 digits.</source>
            <translation>%1 von mindestens %2 Ziffern.</translation>
        </message>
        <message>
            <source>%1 of them</source>
            <translation>gesamt %1</translation>
        </message>
        <message>
            <source>%1 points, due on %2</source>
            <translation>Punkte: %1, fällig am %2</translation>
        </message>
        <message>
            <source>%1 rows</source>
            <translation>%1 Zeilen</translation>
        </message>
        <message>
            <source>%1 rows are not on disk yet</source>
            <translation>%1 Zeilen sind noch nicht gespeichert</translation>
        </message>
        <message>
            <source>%1 s</source>
            <translation>%1 s</translation>
        </message>
        <message>
            <source>%1 s left</source>
            <translation>noch %1 s</translation>
        </message>
        <message>
            <source>%1 set</source>
            <translation>Soll %1</translation>
        </message>
        <message>
            <source>%1 steps</source>
            <translation>%1 Schritte</translation>
        </message>
        <message>
            <source>%1 things are to be put right before it can be kept.</source>
            <translation>Vor dem Übernehmen in Ordnung zu bringen: %1.</translation>
        </message>
        <message>
            <source>%1 things to put right</source>
            <translation>In Ordnung zu bringen: %1</translation>
        </message>
        <message>
            <source>%1 to %2</source>
            <translation>%1 bis %2</translation>
        </message>
        <message>
            <source>%1 to %2 %3</source>
            <translation>%1 bis %2 %3</translation>
        </message>
        <message>
            <source>%1 to %2 digits.</source>
            <translation>%1 bis %2 Ziffern.</translation>
        </message>
        <message>
            <source>%1 to %2 digits: it locks the key of the seal.</source>
            <translation>%1 bis %2 Ziffern: sie schützt den Schlüssel des Siegels.</translation>
        </message>
        <message>
            <source>%1 to %2 mm</source>
            <translation>%1 bis %2 mm</translation>
        </message>
        <message>
            <source>%1 to %2 s</source>
            <translation>%1 bis %2 s</translation>
        </message>
        <message>
            <source>%1 to %2 °C</source>
            <translation>%1 bis %2 °C</translation>
        </message>
        <message>
            <source>%1 took %2: out of limits. Let it cool, or cut it out.</source>
            <translation>%1 %2: außerhalb. Abkühlen lassen oder austrennen.</translation>
        </message>
        <message>
            <source>%1 values are attested.</source>
            <translation>Bestätigte Werte: %1.</translation>
        </message>
        <message>
            <source>%1 values lose their standing.</source>
            <translation>Bestätigung entfällt, Werte: %1.</translation>
        </message>
        <message>
            <source>%1 values of %2.</source>
            <translation>Werte: %1 aus %2.</translation>
        </message>
        <message>
            <source>%1 welds at a virtual bench; %2 within limits and with a joint that bends.</source>
            <translation>%1 Schweißungen an einer virtuellen Bank; %2 in den Grenzen und mit biegbarer Naht.</translation>
        </message>
        <message>
            <source>%1 welds. Touch one to see it again.</source>
            <translation>%1 Schweißungen. Antippen zeigt sie noch einmal.</translation>
        </message>
        <message>
            <source>%1 °C</source>
            <translation>%1 °C</translation>
        </message>
        <message>
            <source>%1 · %2 · %3</source>
            <translation>%1 · %2 · %3</translation>
        </message>
        <message>
            <source>%1%2. Shop %3.</source>
            <translation>%1%2. Halle %3.</translation>
        </message>
        <message>
            <source>%1, %2</source>
            <translation>%1, %2</translation>
        </message>
        <message>
            <source>%1, %2 %3</source>
            <translation>%1, %2 %3</translation>
        </message>
        <message>
            <source>%1, %2 mm thick, %3 mm long</source>
            <translation>%1, %2 mm dick, %3 mm lang</translation>
        </message>
        <message>
            <source>%1, %2 mm: %3.</source>
            <translation>%1, %2 mm: %3.</translation>
        </message>
        <message>
            <source>%1, %2 of %3 in limits, %4</source>
            <translation>%1, %2 von %3 in den Grenzen, %4</translation>
        </message>
        <message>
            <source>%1, %2 thick, %3 long</source>
            <translation>%1, %2 dick, %3 lang</translation>
        </message>
        <message>
            <source>%1, %2 welds</source>
            <translation>%1, %2-mal</translation>
        </message>
        <message>
            <source>%1, and %2 more.</source>
            <translation>%1, weitere: %2.</translation>
        </message>
        <message>
            <source>%1, batch</source>
            <translation>%1, Charge</translation>
        </message>
        <message>
            <source>%1, by PIN</source>
            <translation>%1, mit PIN</translation>
        </message>
        <message>
            <source>%1, edition %2</source>
            <translation>%1, Ausgabe %2</translation>
        </message>
        <message>
            <source>%1, edition %2. %3</source>
            <translation>%1, Ausgabe %2. %3</translation>
        </message>
        <message>
            <source>%1, event %2</source>
            <translation>%1, Ereignis %2</translation>
        </message>
        <message>
            <source>%1, event %2: %3</source>
            <translation>%1, Ereignis %2: %3</translation>
        </message>
        <message>
            <source>%1, face %2</source>
            <translation>%1, Fläche %2</translation>
        </message>
        <message>
            <source>%1, has left</source>
            <translation>%1, ist weg</translation>
        </message>
        <message>
            <source>%1, it strings</source>
            <translation>%1, zieht Fäden</translation>
        </message>
        <message>
            <source>%1, joint %2</source>
            <translation>%1, Schweißung %2</translation>
        </message>
        <message>
            <source>%1, limit %2</source>
            <translation>%1, Grenze %2</translation>
        </message>
        <message>
            <source>%1, maker</source>
            <translation>%1, Hersteller</translation>
        </message>
        <message>
            <source>%1, material</source>
            <translation>%1, Werkstoff</translation>
        </message>
        <message>
            <source>%1, no PIN</source>
            <translation>%1, ohne PIN</translation>
        </message>
        <message>
            <source>%1, skin %2 °C</source>
            <translation>%1, Haut %2 °C</translation>
        </message>
        <message>
            <source>%1, then %2 for the second sheet</source>
            <translation>%1, dann %2 für die zweite Tafel</translation>
        </message>
        <message>
            <source>%1, thickness</source>
            <translation>%1, Dicke</translation>
        </message>
        <message>
            <source>%1, to %2</source>
            <translation>%1, bis %2</translation>
        </message>
        <message>
            <source>%1, until %2</source>
            <translation>%1, bis %2</translation>
        </message>
        <message>
            <source>%1. %2</source>
            <translation>%1. %2</translation>
        </message>
        <message>
            <source>%1. All else within limits.</source>
            <translation>%1. Sonst alles in den Grenzen.</translation>
        </message>
        <message>
            <source>%1. Let it cool, or cut it out.</source>
            <translation>%1. Abkühlen lassen oder austrennen.</translation>
        </message>
        <message>
            <source>%1: %2</source>
            <translation>%1: %2</translation>
        </message>
        <message>
            <source>%1: %2 instead of %3. Why?</source>
            <translation>%1: %2 statt %3. Warum?</translation>
        </message>
        <message>
            <source>%1: %2 s before</source>
            <translation>%1: %2 s vorher</translation>
        </message>
        <message>
            <source>%1: after %2 s</source>
            <translation>%1: nach %2 s</translation>
        </message>
        <message>
            <source>%1: kept.</source>
            <translation>%1: gilt.</translation>
        </message>
        <message>
            <source>%1: not joined</source>
            <translation>%1: nicht gefügt</translation>
        </message>
        <message>
            <source>%1: set %2, done %3</source>
            <translation>%1: Soll %2, Ist %3</translation>
        </message>
        <message>
            <source>%1: skin %2 °C and melt %3 mm as the faces met, bead %4 / %5 mm, K %6 mm</source>
            <translation>%1: Haut %2 °C und Schmelze %3 mm beim Fügen, Wulst %4 / %5 mm, K %6 mm</translation>
        </message>
        <message>
            <source>%1: the certificate is kept.</source>
            <translation>%1: Zeugnis eingetragen.</translation>
        </message>
        <message>
            <source>%1: told %2, it was %3</source>
            <translation>%1: gemeldet %2, es war %3</translation>
        </message>
        <message>
            <source>%1: what the source lacks, and what it says instead</source>
            <translation>%1: was der Quelle fehlt und was sie stattdessen sagt</translation>
        </message>
        <message>
            <source>%1: ÷ %2 = %3 %4, set to %5 %4</source>
            <translation>%1: ÷ %2 = %3 %4, einstellen auf %5 %4</translation>
        </message>
        <message>
            <source>%1; %2</source>
            <translation>%1; %2</translation>
        </message>
        <message>
            <source>%1; and %2 more</source>
            <translation>%1; weitere: %2</translation>
        </message>
        <message>
            <source>%1; by today's rules %2</source>
            <translation>%1; nach heutigen Regeln %2</translation>
        </message>
        <message>
            <source>(%1, limit %2)</source>
            <translation>(%1, Grenze %2)</translation>
        </message>
        <message>
            <source>+ 1 s</source>
            <translation>+ 1 s</translation>
        </message>
        <message>
            <source>+ 10 s</source>
            <translation>+ 10 s</translation>
        </message>
        <message>
            <source>, </source>
            <translation>, </translation>
        </message>
        <message>
            <source>, %1 cut away of both sheets together</source>
            <translation>, von beiden Tafeln zusammen %1 weggeschnitten</translation>
        </message>
        <message>
            <source>, batch %1</source>
            <translation>, Charge %1</translation>
        </message>
        <message>
            <source>, batches %1</source>
            <translation>, Chargen %1</translation>
        </message>
        <message>
            <source>, cut to half: full load only after the whole time</source>
            <translation>, halbiert: volle Last erst nach der ganzen Zeit</translation>
        </message>
        <message>
            <source>, last entry %1</source>
            <translation>, letzter Eintrag %1</translation>
        </message>
        <message>
            <source>, preload %1</source>
            <translation>, Vorlast %1</translation>
        </message>
        <message>
            <source>, taken %1</source>
            <translation>, gemacht %1</translation>
        </message>
        <message>
            <source>, zero at %1</source>
            <translation>, Null bei %1</translation>
        </message>
        <message>
            <source>. %1.</source>
            <translation>. %1.</translation>
        </message>
        <message>
            <source>1 class of air temperature</source>
            <translation>1 Klasse der Lufttemperatur</translation>
        </message>
        <message>
            <source>1 joint</source>
            <translation>1 Schweißung</translation>
        </message>
        <message>
            <source>1 row</source>
            <translation>1 Zeile</translation>
        </message>
        <message>
            <source>1 row is not on disk yet</source>
            <translation>1 Zeile ist noch nicht gespeichert</translation>
        </message>
        <message>
            <source>1 step</source>
            <translation>1 Schritt</translation>
        </message>
        <message>
            <source>1 thing is to be put right before it can be kept.</source>
            <translation>Vor dem Übernehmen in Ordnung zu bringen: 1.</translation>
        </message>
        <message>
            <source>1 thing to put right</source>
            <translation>In Ordnung zu bringen: 1</translation>
        </message>
        <message>
            <source>1 to %1 characters</source>
            <translation>1 bis %1 Zeichen</translation>
        </message>
        <message>
            <source>1 to %1 characters, by the keyboard.</source>
            <translation>1 bis %1 Zeichen, mit der Tastatur.</translation>
        </message>
        <message>
            <source>10 s are over</source>
            <translation>10 s sind um</translation>
        </message>
        <message>
            <source>100, 125, 150, 200 %</source>
            <translation>100, 125, 150, 200 %</translation>
        </message>
        <message>
            <source>3 places</source>
            <translation>3 Stellen</translation>
        </message>
        <message>
            <source>4 s ago</source>
            <translation>vor 4 s</translation>
        </message>
        <message>
            <source>95 %</source>
            <translation>95 %</translation>
        </message>
        <message>
            <source>: </source>
            <translation>: </translation>
        </message>
        <message>
            <source>: made %1</source>
            <translation>: Stand %1</translation>
        </message>
        <message>
            <source>: read it at %1</source>
            <translation>: ablesen bei %1</translation>
        </message>
        <message>
            <source>; </source>
            <translation>; </translation>
        </message>
        <message>
            <source>; also %1 %2</source>
            <translation>; auch %1 %2</translation>
        </message>
        <message>
            <source>; by the rules now: %1</source>
            <translation>; nach heutigen Regeln: %1</translation>
        </message>
        <message>
            <source>; calibrated %1, due %2</source>
            <translation>; kalibriert %1, fällig %2</translation>
        </message>
        <message>
            <source>; cooling </source>
            <translation>; Abkühlen </translation>
        </message>
        <message>
            <source>; cut to half: full load only after the whole time</source>
            <translation>; halbiert: volle Last erst nach der ganzen Zeit</translation>
        </message>
        <message>
            <source>; its document is not in the log, so there are no actual forces</source>
            <translation>; ihr Dokument ist nicht im Logbuch, daher keine Ist-Kräfte</translation>
        </message>
        <message>
            <source>; plan replaced </source>
            <translation>; Plan ersetzt </translation>
        </message>
        <message>
            <source>; scale in %1 from %2, %3</source>
            <translation>; Skala in %1 ab %2, %3</translation>
        </message>
        <message>
            <source>; ± %1 at %2 %3 (95 %)</source>
            <translation>; ± %1 bei %2 %3 (95 %)</translation>
        </message>
        <message>
            <source>A PIN</source>
            <translation>PIN</translation>
        </message>
        <message>
            <source>A PIN for %1?</source>
            <translation>Eine PIN für %1?</translation>
        </message>
        <message>
            <source>A fifth bench is one too many: 4 are allowed.</source>
            <translation>Eine fünfte Bank ist zu viel: 4 sind erlaubt.</translation>
        </message>
        <message>
            <source>A first row</source>
            <translation>Erste Zeile</translation>
        </message>
        <message>
            <source>A foreman comes first, enters the others and seals the day.</source>
            <translation>Erst kommt ein Meister; er trägt die anderen ein und versiegelt den Tag.</translation>
        </message>
        <message>
            <source>A melt flow rate is outside the printed ranges.</source>
            <translation>Ein Schmelzindex liegt außerhalb der gedruckten Bereiche.</translation>
        </message>
        <message>
            <source>A new PIN</source>
            <translation>Neue PIN</translation>
        </message>
        <message>
            <source>A photo</source>
            <translation>Ein Foto</translation>
        </message>
        <message>
            <source>A screen can't teach the feel of a wheel. That comes at the bench.</source>
            <translation>Ein Bildschirm lehrt nicht das Gefühl im Handrad. Das kommt an der Bank.</translation>
        </message>
        <message>
            <source>A sheet slipped</source>
            <translation>Tafel verrutscht</translation>
        </message>
        <message>
            <source>A trial joint is welded first, tested, and released by the supervisor.</source>
            <translation>Zuerst eine Probe schweißen und prüfen; die Aufsicht gibt sie frei.</translation>
        </message>
        <message>
            <source>A verdict tells how a joint was made, by what people typed and tapped; it does not prove that the joint is good, and no bead does.</source>
            <translation>Ein Urteil sagt, wie eine Schweißung gemacht wurde, nach dem, was Menschen eingetippt und gedrückt haben; es beweist nicht, dass sie gut ist, und das tut auch kein Wulst.</translation>
        </message>
        <message>
            <source>A word, or its beginning</source>
            <translation>Ein Wort oder sein Anfang</translation>
        </message>
        <message>
            <source>A wrong tap</source>
            <translation>Falsch getippt</translation>
        </message>
        <message>
            <source>Accept</source>
            <translation>Annehmen</translation>
        </message>
        <message>
            <source>Actual</source>
            <translation>Ist</translation>
        </message>
        <message>
            <source>Add a correction for each kelvin of air</source>
            <translation>Korrektur je Kelvin Luft dazu</translation>
        </message>
        <message>
            <source>Add a formula</source>
            <translation>Formel dazu</translation>
        </message>
        <message>
            <source>Add a most of soak</source>
            <translation>Anwärm-Höchstdruck dazu</translation>
        </message>
        <message>
            <source>Add a table</source>
            <translation>Tabelle dazu</translation>
        </message>
        <message>
            <source>Add a tolerance</source>
            <translation>Toleranz dazu</translation>
        </message>
        <message>
            <source>Add an aim of soak</source>
            <translation>Anwärm-Zieldruck dazu</translation>
        </message>
        <message>
            <source>Add cooling</source>
            <translation>Abkühlen dazu</translation>
        </message>
        <message>
            <source>Add the plate's window</source>
            <translation>Heizelementbereich dazu</translation>
        </message>
        <message>
            <source>Add the relief of half cooling</source>
            <translation>Halbe Abkühlzeit zulassen</translation>
        </message>
        <message>
            <source>Add this column</source>
            <translation>Spalte dazu</translation>
        </message>
        <message>
            <source>Align</source>
            <translation>Angleichen</translation>
        </message>
        <message>
            <source>Align and join</source>
            <translation>Angleichen, Fügen</translation>
        </message>
        <message>
            <source>Alignment bead</source>
            <translation>Angleichwulst</translation>
        </message>
        <message>
            <source>All</source>
            <translation>Alle</translation>
        </message>
        <message>
            <source>All days</source>
            <translation>Alle Tage</translation>
        </message>
        <message>
            <source>All done</source>
            <translation>Alles fertig</translation>
        </message>
        <message>
            <source>All is as it may be. It is kept by a foreman's PIN.</source>
            <translation>Alles ist zulässig. Übernehmen mit Meister-PIN.</translation>
        </message>
        <message>
            <source>All joints</source>
            <translation>Alle Schweißungen</translation>
        </message>
        <message>
            <source>Allow it</source>
            <translation>Erlauben</translation>
        </message>
        <message>
            <source>Allowed</source>
            <translation>Erlaubt</translation>
        </message>
        <message>
            <source>Allowed in grey, took in black</source>
            <translation>Erlaubt grau, Dauer schwarz</translation>
        </message>
        <message>
            <source>Allowed: %1.</source>
            <translation>Erlaubt: %1.</translation>
        </message>
        <message>
            <source>An estimate. It explains a weld and judges none; the procedure's limits decide.</source>
            <translation>Eine Schätzung: erklärt, urteilt nicht; es gelten die Grenzen der Anweisung.</translation>
        </message>
        <message>
            <source>Another</source>
            <translation>Anders</translation>
        </message>
        <message>
            <source>Another bench</source>
            <translation>Weitere Bank</translation>
        </message>
        <message>
            <source>Another class</source>
            <translation>Weitere Klasse</translation>
        </message>
        <message>
            <source>Another gap</source>
            <translation>Weitere Lücke</translation>
        </message>
        <message>
            <source>Another log tells this joint differently: %1.</source>
            <translation>Ein anderes Logbuch stellt diese Schweißung anders dar: %1.</translation>
        </message>
        <message>
            <source>Another name</source>
            <translation>Anderer Name</translation>
        </message>
        <message>
            <source>Another note</source>
            <translation>Weitere Notiz</translation>
        </message>
        <message>
            <source>Another point</source>
            <translation>Weiterer Punkt</translation>
        </message>
        <message>
            <source>Another procedure</source>
            <translation>Weitere Anweisung</translation>
        </message>
        <message>
            <source>Another reason</source>
            <translation>Anderer Grund</translation>
        </message>
        <message>
            <source>Another role</source>
            <translation>Andere Rolle</translation>
        </message>
        <message>
            <source>Another seam</source>
            <translation>Andere Naht</translation>
        </message>
        <message>
            <source>Another spring</source>
            <translation>Weitere Feder</translation>
        </message>
        <message>
            <source>Answer to a signal</source>
            <translation>Antwort auf Signal</translation>
        </message>
        <message>
            <source>As before</source>
            <translation>Wie vorher</translation>
        </message>
        <message>
            <source>As in: PE-HD, PP 3-20 mm until 2031-06-30</source>
            <translation>Etwa so: PE-HD, PP 3-20 mm until 2031-06-30</translation>
        </message>
        <message>
            <source>As measured, both the same.</source>
            <translation>Wie gemessen, beide gleich.</translation>
        </message>
        <message>
            <source>As planned</source>
            <translation>Wie geplant</translation>
        </message>
        <message>
            <source>Ask</source>
            <translation>Fragen</translation>
        </message>
        <message>
            <source>Asked for</source>
            <translation>Auswahl</translation>
        </message>
        <message>
            <source>At %1</source>
            <translation>Auf %1</translation>
        </message>
        <message>
            <source>At the worst place, above the sheet.</source>
            <translation>An der schlechtesten Stelle, über der Tafel.</translation>
        </message>
        <message>
            <source>Attest</source>
            <translation>Bestätigen</translation>
        </message>
        <message>
            <source>Attest instead</source>
            <translation>Doch bestätigen</translation>
        </message>
        <message>
            <source>Back</source>
            <translation>Hinten</translation>
        </message>
        <message>
            <source>Back +</source>
            <translation>Hinten +</translation>
        </message>
        <message>
            <source>Back to the bench</source>
            <translation>Zurück zur Bank</translation>
        </message>
        <message>
            <source>Back to the log</source>
            <translation>Zum Logbuch</translation>
        </message>
        <message>
            <source>Back to the weld</source>
            <translation>Zur Schweißung</translation>
        </message>
        <message>
            <source>Back −</source>
            <translation>Hinten −</translation>
        </message>
        <message>
            <source>Backed off in soak</source>
            <translation>Abgehoben beim Anwärmen</translation>
        </message>
        <message>
            <source>Bars are open</source>
            <translation>Balken sind auf</translation>
        </message>
        <message>
            <source>Bead all along? Turn down to %1 and lock.</source>
            <translation>Wulst überall? Auf %1 herunterdrehen, sperren.</translation>
        </message>
        <message>
            <source>Bead height</source>
            <translation>Wulsthöhe</translation>
        </message>
        <message>
            <source>Bead is slow. Is the plate cold or dirty?</source>
            <translation>Wulst kommt langsam. Heizelement kalt oder schmutzig?</translation>
        </message>
        <message>
            <source>Bead missing at one end</source>
            <translation>Wulst fehlt an einem Ende</translation>
        </message>
        <message>
            <source>Bead width</source>
            <translation>Wulstbreite</translation>
        </message>
        <message>
            <source>Begin</source>
            <translation>Start</translation>
        </message>
        <message>
            <source>Begun</source>
            <translation>Beginn</translation>
        </message>
        <message>
            <source>Below +</source>
            <translation>Unten +</translation>
        </message>
        <message>
            <source>Below −</source>
            <translation>Unten −</translation>
        </message>
        <message>
            <source>Bench</source>
            <translation>Bank</translation>
        </message>
        <message>
            <source>Bench %1 has an open weld. Practise when it is saved.</source>
            <translation>Bank %1 hat eine offene Schweißung. Üben, wenn sie gespeichert ist.</translation>
        </message>
        <message>
            <source>Bench %1 is free. No seam of the job is open.</source>
            <translation>Bank %1 ist frei. Im Auftrag ist keine Naht offen.</translation>
        </message>
        <message>
            <source>Bench %1 is free. Which seam?</source>
            <translation>Bank %1 ist frei. Welche Naht?</translation>
        </message>
        <message>
            <source>Bench %1 is free. Which seams are made is being read.</source>
            <translation>Bank %1 ist frei. Fertige Nähte werden gelesen.</translation>
        </message>
        <message>
            <source>Benches</source>
            <translation>Bänke</translation>
        </message>
        <message>
            <source>Bend test, front to back: the joint bends everywhere.</source>
            <translation>Biegeversuch, vorn bis hinten: Die Naht biegt überall.</translation>
        </message>
        <message>
            <source>Bend test, front to back: the joint breaks.</source>
            <translation>Biegeversuch, vorn bis hinten: Die Naht bricht.</translation>
        </message>
        <message>
            <source>Beside the weld</source>
            <translation>Neben der Schweißung</translation>
        </message>
        <message>
            <source>Besides, %1 broken off when the program ended.</source>
            <translation>Dazu %1 abgebrochen, als das Programm endete.</translation>
        </message>
        <message>
            <source>Both sheets: %1</source>
            <translation>Beide Tafeln: %1</translation>
        </message>
        <message>
            <source>Both stay in the record. The foreman's PIN is asked next.</source>
            <translation>Beides bleibt im Protokoll. Als Nächstes die PIN des Meisters.</translation>
        </message>
        <message>
            <source>Bring the force to zero, never past it.</source>
            <translation>Kraft auf null bringen, nie darüber hinaus.</translation>
        </message>
        <message>
            <source>Build-up</source>
            <translation>Druckaufbau</translation>
        </message>
        <message>
            <source>By a model of heat and melt in the sheet, no measurement; in brackets what uncertain inputs make of it.</source>
            <translation>Aus einem Modell von Wärme und Schmelze in der Tafel, keine Messung; in Klammern, was unsichere Eingaben daraus machen.</translation>
        </message>
        <message>
            <source>By a steady hand</source>
            <translation>Von ruhiger Hand</translation>
        </message>
        <message>
            <source>By the rules now: %1</source>
            <translation>Nach heutigen Regeln: %1</translation>
        </message>
        <message>
            <source>CSV or JSON of these</source>
            <translation>CSV oder JSON davon</translation>
        </message>
        <message>
            <source>Calibration</source>
            <translation>Kalibrierung</translation>
        </message>
        <message>
            <source>Can't be read, or told in two ways</source>
            <translation>Nicht lesbar oder widersprüchlich</translation>
        </message>
        <message>
            <source>Cannot set it</source>
            <translation>Geht so nicht</translation>
        </message>
        <message>
            <source>Card in inch, lbf, °F</source>
            <translation>Karte in inch, lbf, °F</translation>
        </message>
        <message>
            <source>Card in mm, N, °C</source>
            <translation>Karte in mm, N, °C</translation>
        </message>
        <message>
            <source>Card is for another sheet</source>
            <translation>Karte für andere Tafel</translation>
        </message>
        <message>
            <source>Card's unit is wrong</source>
            <translation>Einheit auf Karte falsch</translation>
        </message>
        <message>
            <source>Certificate</source>
            <translation>Zeugnis</translation>
        </message>
        <message>
            <source>Change an entry</source>
            <translation>Eintrag ändern</translation>
        </message>
        <message>
            <source>Changeover</source>
            <translation>Umstellen</translation>
        </message>
        <message>
            <source>Changeover too late</source>
            <translation>Umstellen zu lang</translation>
        </message>
        <message>
            <source>Changes are kept by a foreman's PIN and hold for new welds.</source>
            <translation>Änderungen brauchen die PIN eines Meisters und gelten für neue Schweißungen.</translation>
        </message>
        <message>
            <source>Chapter before</source>
            <translation>Kapitel davor</translation>
        </message>
        <message>
            <source>Check anew</source>
            <translation>Neu prüfen</translation>
        </message>
        <message>
            <source>Checking</source>
            <translation>Wird geprüft</translation>
        </message>
        <message>
            <source>Checks</source>
            <translation>Prüfungen</translation>
        </message>
        <message>
            <source>Checks and release</source>
            <translation>Prüfungen und Ausspannen</translation>
        </message>
        <message>
            <source>Choose</source>
            <translation>Wählen</translation>
        </message>
        <message>
            <source>Choose a seam first: its plan is what is looked at.</source>
            <translation>Erst eine Naht wählen: Gezeigt wird ihr Plan.</translation>
        </message>
        <message>
            <source>Choose a table, then its rows. They lose their standing.</source>
            <translation>Tabelle wählen, dann die Zeilen. Deren Bestätigung entfällt.</translation>
        </message>
        <message>
            <source>Choose a table, then the rows that were compared.</source>
            <translation>Tabelle wählen, dann die verglichenen Zeilen.</translation>
        </message>
        <message>
            <source>Clamp</source>
            <translation>Spannen</translation>
        </message>
        <message>
            <source>Clamp it</source>
            <translation>Spannen</translation>
        </message>
        <message>
            <source>Clamp the first sheet evenly, end to end.</source>
            <translation>Erste Tafel gleichmäßig spannen, Ende zu Ende.</translation>
        </message>
        <message>
            <source>Clamp the second sheet against the first.</source>
            <translation>Zweite Tafel gegen die erste spannen.</translation>
        </message>
        <message>
            <source>Clamps</source>
            <translation>Klemmen</translation>
        </message>
        <message>
            <source>Clamps are eased</source>
            <translation>Klemmen sind lose</translation>
        </message>
        <message>
            <source>Clear</source>
            <translation>Leeren</translation>
        </message>
        <message>
            <source>Clock from first contact</source>
            <translation>Uhr ab erster Berührung</translation>
        </message>
        <message>
            <source>Close</source>
            <translation>Schließen</translation>
        </message>
        <message>
            <source>Close the day</source>
            <translation>Tag abschließen</translation>
        </message>
        <message>
            <source>Closed as: %1</source>
            <translation>Abgeschlossen als: %1</translation>
        </message>
        <message>
            <source>Cold place on the plate</source>
            <translation>Kalte Stelle am Heizelement</translation>
        </message>
        <message>
            <source>Contents</source>
            <translation>Inhalt</translation>
        </message>
        <message>
            <source>Cooling</source>
            <translation>Abkühlen</translation>
        </message>
        <message>
            <source>Cooling %1 °C</source>
            <translation>Abkühlen %1 °C</translation>
        </message>
        <message>
            <source>Cooling has gone on.</source>
            <translation>Abkühlen lief weiter.</translation>
        </message>
        <message>
            <source>Cooling is %1 short. Why?</source>
            <translation>Beim Abkühlen fehlen %1. Warum?</translation>
        </message>
        <message>
            <source>Cooling is over. Number on the sheet? Then release.</source>
            <translation>Abkühlzeit ist um. Nummer auf der Tafel? Dann ausspannen.</translation>
        </message>
        <message>
            <source>Cooling time</source>
            <translation>Abkühlzeit</translation>
        </message>
        <message>
            <source>Cooling, air %1</source>
            <translation>Abkühlen, Luft %1</translation>
        </message>
        <message>
            <source>Copy of practice, read only</source>
            <translation>Kopie vom Üben, nur lesen</translation>
        </message>
        <message>
            <source>Copy, read only</source>
            <translation>Kopie, nur lesen</translation>
        </message>
        <message>
            <source>Correct a value</source>
            <translation>Wert berichtigen</translation>
        </message>
        <message>
            <source>Course</source>
            <translation>Verlauf</translation>
        </message>
        <message>
            <source>Cut out</source>
            <translation>Austrennen</translation>
        </message>
        <message>
            <source>Date</source>
            <translation>Datum</translation>
        </message>
        <message>
            <source>Day report</source>
            <translation>Tagesbericht</translation>
        </message>
        <message>
            <source>Day report, %1</source>
            <translation>Tagesbericht, %1</translation>
        </message>
        <message>
            <source>Day, people, screen and hands</source>
            <translation>Tag, Personen, Anzeige, Hände</translation>
        </message>
        <message>
            <source>Decision</source>
            <translation>Entscheidung</translation>
        </message>
        <message>
            <source>Decision and sign-off</source>
            <translation>Entscheidung und Abzeichnung</translation>
        </message>
        <message>
            <source>Do</source>
            <translation>Tun</translation>
        </message>
        <message>
            <source>Done</source>
            <translation>Fertig</translation>
        </message>
        <message>
            <source>Down</source>
            <translation>Hinunter</translation>
        </message>
        <message>
            <source>Drag</source>
            <translation>Schleppkraft</translation>
        </message>
        <message>
            <source>Drag is above the soak force: just in contact.</source>
            <translation>Schleppkraft ist größer als die Anwärmkraft: nur anliegen.</translation>
        </message>
        <message>
            <source>Drag is not measured: taken as nothing.</source>
            <translation>Schleppkraft nicht gemessen: mit null gerechnet.</translation>
        </message>
        <message>
            <source>Drag, bench %1</source>
            <translation>Schleppkraft, Bank %1</translation>
        </message>
        <message>
            <source>Draught at the seam</source>
            <translation>Zugluft an der Naht</translation>
        </message>
        <message>
            <source>Each sheet loses about %1 of its length in this seam: cut it longer by that, and by twice that with a seam at both ends: %2.</source>
            <translation>Jede Tafel verliert in dieser Naht etwa %1 ihrer Länge: um so viel länger zuschneiden, bei Nähten an beiden Enden um das Doppelte: %2.</translation>
        </message>
        <message>
            <source>Ease clamps</source>
            <translation>Klemmen lösen</translation>
        </message>
        <message>
            <source>Ease the clamps on both sides.</source>
            <translation>Klemmen auf beiden Seiten lockern.</translation>
        </message>
        <message>
            <source>Edge leans</source>
            <translation>Kante schräg</translation>
        </message>
        <message>
            <source>Edge touched</source>
            <translation>Kante berührt</translation>
        </message>
        <message>
            <source>Edges</source>
            <translation>Kanten</translation>
        </message>
        <message>
            <source>Edges are clean</source>
            <translation>Kanten sauber</translation>
        </message>
        <message>
            <source>Edges meet</source>
            <translation>Kanten passen</translation>
        </message>
        <message>
            <source>Edges not parallel</source>
            <translation>Kanten nicht parallel</translation>
        </message>
        <message>
            <source>Edit in a form</source>
            <translation>Im Formular ändern</translation>
        </message>
        <message>
            <source>End the program</source>
            <translation>Programm beenden</translation>
        </message>
        <message>
            <source>Erase all</source>
            <translation>Alles löschen</translation>
        </message>
        <message>
            <source>Estimate, not a limit</source>
            <translation>Schätzung, keine Grenze</translation>
        </message>
        <message>
            <source>Estimate: each sheet loses about %1.</source>
            <translation>Schätzung: Jede Tafel verliert etwa %1.</translation>
        </message>
        <message>
            <source>Estimate: it is being worked out.</source>
            <translation>Schätzung: wird gerade gerechnet.</translation>
        </message>
        <message>
            <source>Estimate: it will fall by about %1 %2 and stay in its band. Each sheet loses %3.</source>
            <translation>Schätzung: Der Skalenwert fällt um etwa %1 %2 und bleibt im Bereich. Jede Tafel verliert %3.</translation>
        </message>
        <message>
            <source>Estimate: it will fall by about %1 %2, below its band: top it up. Each sheet loses %3.</source>
            <translation>Schätzung: Der Skalenwert fällt um etwa %1 %2 unter den Bereich: nachdrehen. Jede Tafel verliert %3.</translation>
        </message>
        <message>
            <source>Estimate: melt %1 mm deep</source>
            <translation>Schätzung: Schmelze %1 mm tief</translation>
        </message>
        <message>
            <source>Estimate: soft %1 mm deep</source>
            <translation>Schätzung: weich %1 mm tief</translation>
        </message>
        <message>
            <source>Estimates, not limits</source>
            <translation>Schätzungen, keine Grenzen</translation>
        </message>
        <message>
            <source>Even motion</source>
            <translation>Volle Bewegung</translation>
        </message>
        <message>
            <source>Event</source>
            <translation>[n]</translation>
        </message>
        <message>
            <source>Events</source>
            <translation>Ereignisse</translation>
        </message>
        <message>
            <source>Events %1 to %2: %3</source>
            <translation>Ereignisse %1 bis %2: %3</translation>
        </message>
        <message>
            <source>Events %1 to %2: not sealed yet.</source>
            <translation>Ereignisse %1 bis %2: noch nicht versiegelt.</translation>
        </message>
        <message>
            <source>Every event</source>
            <translation>Alle Ereignisse</translation>
        </message>
        <message>
            <source>Every value</source>
            <translation>Alle Werte</translation>
        </message>
        <message>
            <source>Every value is within its limits.</source>
            <translation>Jeder Wert ist in seinen Grenzen.</translation>
        </message>
        <message>
            <source>Every value, CSV</source>
            <translation>Alle Werte, CSV</translation>
        </message>
        <message>
            <source>Extraction on. Film off, edges clean, plate wiped.</source>
            <translation>Absaugung ein. Folie ab, Kanten sauber, Heizelement geputzt.</translation>
        </message>
        <message>
            <source>Faces cooled in the air</source>
            <translation>Flächen an Luft abgekühlt</translation>
        </message>
        <message>
            <source>Faces out of line</source>
            <translation>Versatz</translation>
        </message>
        <message>
            <source>Faces together</source>
            <translation>Flächen zusammen</translation>
        </message>
        <message>
            <source>Faces together now</source>
            <translation>Flächen jetzt zusammen</translation>
        </message>
        <message>
            <source>Faces together now. The limit is passed.</source>
            <translation>Flächen jetzt zusammen. Grenze überschritten.</translation>
        </message>
        <message>
            <source>Film</source>
            <translation>Folie</translation>
        </message>
        <message>
            <source>Film is off</source>
            <translation>Folie ist ab</translation>
        </message>
        <message>
            <source>Film left on the edge</source>
            <translation>Folienrest an der Kante</translation>
        </message>
        <message>
            <source>Film off</source>
            <translation>Folie ab</translation>
        </message>
        <message>
            <source>Film off, edges planed and clean, plate wiped.</source>
            <translation>Folie ab, Kanten gehobelt, sauber, Heizelement geputzt.</translation>
        </message>
        <message>
            <source>Fingerprint of the seal</source>
            <translation>Fingerabdruck des Siegels</translation>
        </message>
        <message>
            <source>First foreman</source>
            <translation>Erster Meister</translation>
        </message>
        <message>
            <source>First sheet</source>
            <translation>Erste Tafel</translation>
        </message>
        <message>
            <source>First sheet is clamped</source>
            <translation>Erste Tafel gespannt</translation>
        </message>
        <message>
            <source>First the one that holds now.</source>
            <translation>Erst die jetzige.</translation>
        </message>
        <message>
            <source>Follow</source>
            <translation>Folgen</translation>
        </message>
        <message>
            <source>Foot switch: %1</source>
            <translation>Fußschalter: %1</translation>
        </message>
        <message>
            <source>Foot switch: none</source>
            <translation>Fußschalter: keiner</translation>
        </message>
        <message>
            <source>For people, PINs and the day's seal.</source>
            <translation>Für Personen, PINs und das Tagessiegel.</translation>
        </message>
        <message>
            <source>For spreadsheets and other programs; as the list is narrowed now.</source>
            <translation>Für Tabellenprogramme und andere; so, wie die Liste jetzt eingegrenzt ist.</translation>
        </message>
        <message>
            <source>For the customer</source>
            <translation>Für den Kunden</translation>
        </message>
        <message>
            <source>For the day's seal.</source>
            <translation>Für das Tagessiegel.</translation>
        </message>
        <message>
            <source>Force is off</source>
            <translation>Kraft ist null</translation>
        </message>
        <message>
            <source>Force set</source>
            <translation>Kraft Soll</translation>
        </message>
        <message>
            <source>Foreman</source>
            <translation>Meister</translation>
        </message>
        <message>
            <source>Foreman is here</source>
            <translation>Meister ist da</translation>
        </message>
        <message>
            <source>Foreman's desk</source>
            <translation>Meisterpult</translation>
        </message>
        <message>
            <source>Foreman's desk: %1</source>
            <translation>Meisterpult: %1</translation>
        </message>
        <message>
            <source>From</source>
            <translation>Ab</translation>
        </message>
        <message>
            <source>From %1 °C this plastic gives off harmful gas. Never weld so.</source>
            <translation>Ab %1 °C gibt dieser Kunststoff schädliches Gas ab. Nie so schweißen.</translation>
        </message>
        <message>
            <source>Front</source>
            <translation>Vorn</translation>
        </message>
        <message>
            <source>Front +</source>
            <translation>Vorn +</translation>
        </message>
        <message>
            <source>Front −</source>
            <translation>Vorn −</translation>
        </message>
        <message>
            <source>Gap</source>
            <translation>Abstand</translation>
        </message>
        <message>
            <source>Gap between the tables</source>
            <translation>Abstand der Tische</translation>
        </message>
        <message>
            <source>Gap is %1 mm</source>
            <translation>Abstand %1 mm</translation>
        </message>
        <message>
            <source>Gaps</source>
            <translation>Lücken</translation>
        </message>
        <message>
            <source>Gaps: %1</source>
            <translation>Lücken: %1</translation>
        </message>
        <message>
            <source>Gaps: %1 values</source>
            <translation>Lücken: %1 Werte</translation>
        </message>
        <message>
            <source>Get ready</source>
            <translation>Bereithalten</translation>
        </message>
        <message>
            <source>Give the reason</source>
            <translation>Grund nennen</translation>
        </message>
        <message>
            <source>Go on</source>
            <translation>Weiter</translation>
        </message>
        <message>
            <source>Go on evenly to %1. Do not jerk.</source>
            <translation>Gleichmäßig weiter auf %1. Nicht rucken.</translation>
        </message>
        <message>
            <source>Go on without a trial</source>
            <translation>Ohne Probe weiter</translation>
        </message>
        <message>
            <source>Go on without this check? Say why.</source>
            <translation>Ohne diese Prüfung weiter? Grund nennen.</translation>
        </message>
        <message>
            <source>Go on: %1</source>
            <translation>Weiter: %1</translation>
        </message>
        <message>
            <source>Grade</source>
            <translation>Einstufung</translation>
        </message>
        <message>
            <source>Grade, photo</source>
            <translation>Bewertung, Foto</translation>
        </message>
        <message>
            <source>Group %1</source>
            <translation>Gruppe %1</translation>
        </message>
        <message>
            <source>Guard</source>
            <translation>Schutz</translation>
        </message>
        <message>
            <source>Half cooling: full load only after the whole time.</source>
            <translation>Halbe Abkühlzeit: volle Last erst nach der ganzen Zeit.</translation>
        </message>
        <message>
            <source>Hands on the plate and the wheel. Wait for zero.</source>
            <translation>Hände an Heizelement und Handrad. Auf Null warten.</translation>
        </message>
        <message>
            <source>Has left</source>
            <translation>Ist weg</translation>
        </message>
        <message>
            <source>Heat in the sheet: %1, %2 mm</source>
            <translation>Wärme in der Tafel: %1, %2 mm</translation>
        </message>
        <message>
            <source>Heat, an estimate: it never judges</source>
            <translation>Wärme, geschätzt: urteilt nie</translation>
        </message>
        <message>
            <source>Height</source>
            <translation>Höhe</translation>
        </message>
        <message>
            <source>Help</source>
            <translation>Hilfe</translation>
        </message>
        <message>
            <source>Help: the user guide</source>
            <translation>Hilfe: das Handbuch</translation>
        </message>
        <message>
            <source>History</source>
            <translation>Verlauf</translation>
        </message>
        <message>
            <source>How does the bead look to you?</source>
            <translation>Wie sieht der Wulst aus?</translation>
        </message>
        <message>
            <source>How far did the scale go before you turned back?</source>
            <translation>Wie weit ging die Skala vor dem Zurückdrehen?</translation>
        </message>
        <message>
            <source>How it went</source>
            <translation>Wie es lief</translation>
        </message>
        <message>
            <source>How much is cut away, of both sheets together?</source>
            <translation>Wie viel fällt weg, von beiden Tafeln zusammen?</translation>
        </message>
        <message>
            <source>How the scale reading comes about</source>
            <translation>So entsteht der Skalenwert</translation>
        </message>
        <message>
            <source>I hear it</source>
            <translation>Ich höre es</translation>
        </message>
        <message>
            <source>In limits</source>
            <translation>In Grenzen</translation>
        </message>
        <message>
            <source>In soak the scale can't show it: just in contact.</source>
            <translation>Beim Anwärmen zeigt es die Skala nicht: nur anliegen.</translation>
        </message>
        <message>
            <source>Incomplete</source>
            <translation>Unvollständig</translation>
        </message>
        <message>
            <source>Is back</source>
            <translation>Ist zurück</translation>
        </message>
        <message>
            <source>It came with another log; its seal stands in that one.</source>
            <translation>Aus einem anderen Logbuch; das Siegel steht dort.</translation>
        </message>
        <message>
            <source>It can't be counted as cooling.</source>
            <translation>Das zählt nicht als Abkühlen.</translation>
        </message>
        <message>
            <source>It closes by itself after two minutes.</source>
            <translation>Es schließt nach zwei Minuten von selbst.</translation>
        </message>
        <message>
            <source>It guides. The machine's instructions, the standard in force, local rules and a qualified welder decide.</source>
            <translation>Es leitet an. Betriebsanleitung der Maschine, geltende Norm, örtliche Regeln und ein geprüfter Schweißer entscheiden.</translation>
        </message>
        <message>
            <source>It held: go on with the series</source>
            <translation>Hält: weiter mit der Serie</translation>
        </message>
        <message>
            <source>It is %1.</source>
            <translation>Stand: %1.</translation>
        </message>
        <message>
            <source>It is a trial</source>
            <translation>Es ist eine Probe</translation>
        </message>
        <message>
            <source>It is kept with its time, and told when the weld is over.</source>
            <translation>Es wird mit der Zeit gemerkt und nach der Schweißung gesagt.</translation>
        </message>
        <message>
            <source>It signs all rows up to now with your key. Its fingerprint then goes on paper or by mail: on this tablet alone it proves nothing to others.</source>
            <translation>Es unterschreibt alle Zeilen bis jetzt mit dem eigenen Schlüssel. Der Fingerabdruck geht dann auf Papier oder per Mail hinaus: Auf diesem Tablet allein beweist er anderen nichts.</translation>
        </message>
        <message>
            <source>It will be cut out</source>
            <translation>Wird ausgetrennt</translation>
        </message>
        <message>
            <source>It will be in the record.</source>
            <translation>Es kommt ins Protokoll.</translation>
        </message>
        <message>
            <source>It will be out of limits.</source>
            <translation>Ist dann außerhalb.</translation>
        </message>
        <message>
            <source>Its events make no weld</source>
            <translation>Ergibt keine Schweißung</translation>
        </message>
        <message>
            <source>Job</source>
            <translation>Auftrag</translation>
        </message>
        <message>
            <source>Job report</source>
            <translation>Auftragsbericht</translation>
        </message>
        <message>
            <source>Job report, %1</source>
            <translation>Auftragsbericht, %1</translation>
        </message>
        <message>
            <source>Join</source>
            <translation>Fügen</translation>
        </message>
        <message>
            <source>Joint</source>
            <translation>Nr.</translation>
        </message>
        <message>
            <source>Joint %1</source>
            <translation>Schweißung %1</translation>
        </message>
        <message>
            <source>Joint %1 (%2): %3</source>
            <translation>Schweißung %1 (%2): %3</translation>
        </message>
        <message>
            <source>Joint %1 goes on without this check.</source>
            <translation>Schweißung %1 geht ohne diese Prüfung weiter.</translation>
        </message>
        <message>
            <source>Joint %1 is accepted. Why?</source>
            <translation>Schweißung %1 annehmen. Warum?</translation>
        </message>
        <message>
            <source>Joint %1 is accepted: %2.</source>
            <translation>Schweißung %1 angenommen: %2.</translation>
        </message>
        <message>
            <source>Joint %1 is cut out</source>
            <translation>Schweißung %1 austrennen</translation>
        </message>
        <message>
            <source>Joint %1 is not on disk yet. Trying again.</source>
            <translation>Schweißung %1 ist noch nicht gespeichert. Neuer Versuch.</translation>
        </message>
        <message>
            <source>Joint %1 is saved. %2.</source>
            <translation>Schweißung %1 gespeichert. %2.</translation>
        </message>
        <message>
            <source>Joint %1 is signed off.</source>
            <translation>Schweißung %1 ist abgezeichnet.</translation>
        </message>
        <message>
            <source>Joint %1 is stopped. Cut back and plane again.</source>
            <translation>Schweißung %1 abgebrochen. Zurückschneiden, neu hobeln.</translation>
        </message>
        <message>
            <source>Joint %1 is stopped. Cut it out and plane again.</source>
            <translation>Schweißung %1 abgebrochen. Austrennen, neu hobeln.</translation>
        </message>
        <message>
            <source>Joint %1 is to be cut out. Why?</source>
            <translation>Schweißung %1 austrennen. Warum?</translation>
        </message>
        <message>
            <source>Joint %1 is to be cut out: %2.</source>
            <translation>Schweißung %1 austrennen: %2.</translation>
        </message>
        <message>
            <source>Joint %1 is to be repaired. Why?</source>
            <translation>Schweißung %1 reparieren. Warum?</translation>
        </message>
        <message>
            <source>Joint %1 is to be repaired: %2.</source>
            <translation>Schweißung %1 reparieren: %2.</translation>
        </message>
        <message>
            <source>Joint %1 on bench %2</source>
            <translation>Schweißung %1 an Bank %2</translation>
        </message>
        <message>
            <source>Joint %1 was broken off when the program ended.</source>
            <translation>Schweißung %1 wurde abgebrochen, als das Programm endete.</translation>
        </message>
        <message>
            <source>Joint %1. %2 %3, %4</source>
            <translation>Schweißung %1. %2 %3, %4</translation>
        </message>
        <message>
            <source>Joint %1. %2.</source>
            <translation>Schweißung %1. %2.</translation>
        </message>
        <message>
            <source>Joint %1: %2 is corrected.</source>
            <translation>Schweißung %1: %2 ist berichtigt.</translation>
        </message>
        <message>
            <source>Joint %1: %2.</source>
            <translation>Schweißung %1: %2.</translation>
        </message>
        <message>
            <source>Joint %1: all steps are there.</source>
            <translation>Schweißung %1: alle Schritte sind da.</translation>
        </message>
        <message>
            <source>Joint %1: not taken over.</source>
            <translation>Schweißung %1: nicht übernommen.</translation>
        </message>
        <message>
            <source>Joint %1: steps are lost, look at the bench before you go on.</source>
            <translation>Schweißung %1: Schritte fehlen; vor dem Weitermachen die Bank ansehen.</translation>
        </message>
        <message>
            <source>Joint number</source>
            <translation>Schweißung Nr.</translation>
        </message>
        <message>
            <source>Joints</source>
            <translation>Anzahl</translation>
        </message>
        <message>
            <source>Joints in which material?</source>
            <translation>Schweißungen in welchem Werkstoff?</translation>
        </message>
        <message>
            <source>Joints of which bench?</source>
            <translation>Schweißungen an welcher Bank?</translation>
        </message>
        <message>
            <source>Joints of which day?</source>
            <translation>Schweißungen von welchem Tag?</translation>
        </message>
        <message>
            <source>Joints of which job?</source>
            <translation>Schweißungen aus welchem Auftrag?</translation>
        </message>
        <message>
            <source>Joints of which operator?</source>
            <translation>Schweißungen von welchem Bediener?</translation>
        </message>
        <message>
            <source>Joints with which verdict?</source>
            <translation>Schweißungen mit welchem Urteil?</translation>
        </message>
        <message>
            <source>Judged by the top bead</source>
            <translation>Nur oberen Wulst beachtet</translation>
        </message>
        <message>
            <source>K value</source>
            <translation>K-Wert</translation>
        </message>
        <message>
            <source>Keep %1</source>
            <translation>%1 gilt</translation>
        </message>
        <message>
            <source>Keep it</source>
            <translation>Übernehmen</translation>
        </message>
        <message>
            <source>Keep this PIN</source>
            <translation>PIN übernehmen</translation>
        </message>
        <message>
            <source>Kilograms taken for newtons</source>
            <translation>Kilogramm statt Newton</translation>
        </message>
        <message>
            <source>Know before you start</source>
            <translation>Vorher wissen</translation>
        </message>
        <message>
            <source>Known before</source>
            <translation>Vorher bekannt</translation>
        </message>
        <message>
            <source>Last step is in memory only: leave the machine on. %1</source>
            <translation>Letzter Schritt ist nur im Arbeitsspeicher: Rechner anlassen. %1</translation>
        </message>
        <message>
            <source>Last step is not on disk yet. Trying again. %1</source>
            <translation>Letzter Schritt noch nicht gespeichert. Neuer Versuch. %1</translation>
        </message>
        <message>
            <source>Late</source>
            <translation>Zu spät</translation>
        </message>
        <message>
            <source>Leave it locked. Nothing else to do.</source>
            <translation>Gesperrt lassen. Sonst nichts zu tun.</translation>
        </message>
        <message>
            <source>Leave it locked. Read the scale in %1.</source>
            <translation>Gesperrt lassen. Skala ablesen in %1.</translation>
        </message>
        <message>
            <source>Leave practice</source>
            <translation>Üben verlassen</translation>
        </message>
        <message>
            <source>Leave the desk</source>
            <translation>Pult verlassen</translation>
        </message>
        <message>
            <source>Leave the lesson</source>
            <translation>Lektion verlassen</translation>
        </message>
        <message>
            <source>Left-handed</source>
            <translation>Linkshändig</translation>
        </message>
        <message>
            <source>Length</source>
            <translation>Länge</translation>
        </message>
        <message>
            <source>Length of the seam</source>
            <translation>Länge der Naht</translation>
        </message>
        <message>
            <source>Less motion</source>
            <translation>Weniger Bewegung</translation>
        </message>
        <message>
            <source>Lesson %1</source>
            <translation>Lektion %1</translation>
        </message>
        <message>
            <source>Lesson %1, weld %2 of %3</source>
            <translation>Lektion %1, Schweißung %2 von %3</translation>
        </message>
        <message>
            <source>Lesson %1: %2</source>
            <translation>Lektion %1: %2</translation>
        </message>
        <message>
            <source>Let back after the lock</source>
            <translation>Nach Sperren zurückgedreht</translation>
        </message>
        <message>
            <source>Let it cool</source>
            <translation>Abkühlen lassen</translation>
        </message>
        <message>
            <source>Let it ring</source>
            <translation>Klingeln lassen</translation>
        </message>
        <message>
            <source>Let the spring off.</source>
            <translation>Feder entspannen.</translation>
        </message>
        <message>
            <source>Let the spring off. Scale must read %1.</source>
            <translation>Feder entspannen. Skala muss %1 zeigen.</translation>
        </message>
        <message>
            <source>Level %1</source>
            <translation>Stufe %1</translation>
        </message>
        <message>
            <source>Lift sheet</source>
            <translation>Ausheben</translation>
        </message>
        <message>
            <source>Lift the sheet out, seam supported.</source>
            <translation>Tafel herausheben, Naht dabei stützen.</translation>
        </message>
        <message>
            <source>Limit</source>
            <translation>Grenze</translation>
        </message>
        <message>
            <source>Limits</source>
            <translation>Grenzen</translation>
        </message>
        <message>
            <source>Listen</source>
            <translation>Hören</translation>
        </message>
        <message>
            <source>Lock</source>
            <translation>Sperren</translation>
        </message>
        <message>
            <source>Lock gives way</source>
            <translation>Sperre gibt nach</translation>
        </message>
        <message>
            <source>Lock the wheel at %1.</source>
            <translation>Handrad bei %1 sperren.</translation>
        </message>
        <message>
            <source>Look</source>
            <translation>Prüfen</translation>
        </message>
        <message>
            <source>Look at the edges: gap to %1 mm, step to %2 mm.</source>
            <translation>Kanten ansehen: Spalt bis %1 mm, Versatz bis %2 mm.</translation>
        </message>
        <message>
            <source>Looked at</source>
            <translation>Befunde</translation>
        </message>
        <message>
            <source>Looked for in %1.</source>
            <translation>Gesucht in %1.</translation>
        </message>
        <message>
            <source>Made %1 times, best: %2, %3.</source>
            <translation>%1-mal gemacht, bestes: %2, %3.</translation>
        </message>
        <message>
            <source>Made by %1</source>
            <translation>Gemacht von %1</translation>
        </message>
        <message>
            <source>Made once: %1, %2.</source>
            <translation>Einmal gemacht: %1, %2.</translation>
        </message>
        <message>
            <source>Make a trial</source>
            <translation>Probe schweißen</translation>
        </message>
        <message>
            <source>Make another trial</source>
            <translation>Noch eine Probe</translation>
        </message>
        <message>
            <source>Material</source>
            <translation>Werkstoff</translation>
        </message>
        <message>
            <source>May fall</source>
            <translation>Darf fallen</translation>
        </message>
        <message>
            <source>May not fall</source>
            <translation>Darf nicht fallen</translation>
        </message>
        <message>
            <source>Measure</source>
            <translation>Messen</translation>
        </message>
        <message>
            <source>Measure how far the faces are out of line.</source>
            <translation>Versatz der Tafeln messen.</translation>
        </message>
        <message>
            <source>Measure its width, over both beads.</source>
            <translation>Breite über beide Wülste messen.</translation>
        </message>
        <message>
            <source>Measure the bead's height at its worst place.</source>
            <translation>Wulsthöhe an der schlechtesten Stelle messen.</translation>
        </message>
        <message>
            <source>Measure the plate</source>
            <translation>Heizelement messen</translation>
        </message>
        <message>
            <source>Measure the valley's height above the sheet.</source>
            <translation>Höhe des Kerbgrunds über der Tafel messen.</translation>
        </message>
        <message>
            <source>Middle</source>
            <translation>Mitte</translation>
        </message>
        <message>
            <source>More</source>
            <translation>Mehr</translation>
        </message>
        <message>
            <source>More rows</source>
            <translation>Mehr Zeilen</translation>
        </message>
        <message>
            <source>More: %1 of %2</source>
            <translation>Weiter: %1 von %2</translation>
        </message>
        <message>
            <source>My own PIN</source>
            <translation>Eigene PIN</translation>
        </message>
        <message>
            <source>N/mm²: alignment, soak, joining</source>
            <translation>N/mm²: Angleichen, Anwärmen, Fügen</translation>
        </message>
        <message>
            <source>Name and drive</source>
            <translation>Name und Antrieb</translation>
        </message>
        <message>
            <source>New PIN of %1</source>
            <translation>Neue PIN: %1</translation>
        </message>
        <message>
            <source>Newer</source>
            <translation>Neuere</translation>
        </message>
        <message>
            <source>Next chapter</source>
            <translation>Nächstes Kapitel</translation>
        </message>
        <message>
            <source>Next seam</source>
            <translation>Nächste Naht</translation>
        </message>
        <message>
            <source>Next weld</source>
            <translation>Nächste</translation>
        </message>
        <message>
            <source>Next: %1</source>
            <translation>Nächste: %1</translation>
        </message>
        <message>
            <source>No *.%1 lies in %2.</source>
            <translation>In %2 liegt kein *.%1.</translation>
        </message>
        <message>
            <source>No backup of the log. %1</source>
            <translation>Keine Sicherung des Logbuchs. %1</translation>
        </message>
        <message>
            <source>No cooling time is printed for this shop temperature.</source>
            <translation>Für diese Hallentemperatur ist keine Abkühlzeit gedruckt.</translation>
        </message>
        <message>
            <source>No copy of the log for others. %1</source>
            <translation>Keine Kopie des Logbuchs für andere. %1</translation>
        </message>
        <message>
            <source>No decision and no sign-off yet.</source>
            <translation>Noch keine Entscheidung oder Abzeichnung.</translation>
        </message>
        <message>
            <source>No foreman has a PIN on this tablet.</source>
            <translation>Kein Meister hat eine PIN auf diesem Tablet.</translation>
        </message>
        <message>
            <source>No gauge at hand</source>
            <translation>Kein Messmittel da</translation>
        </message>
        <message>
            <source>No heat estimate: %1.</source>
            <translation>Keine Wärmeschätzung: %1.</translation>
        </message>
        <message>
            <source>No joint here is wholly covered by a seal.</source>
            <translation>Keine Schweißung hier ist ganz von einem Siegel gedeckt.</translation>
        </message>
        <message>
            <source>No joint is in this log yet.</source>
            <translation>Noch keine Schweißung in diesem Logbuch.</translation>
        </message>
        <message>
            <source>No joint is like that.</source>
            <translation>Keine Schweißung passt dazu.</translation>
        </message>
        <message>
            <source>No joint on this day</source>
            <translation>Tag ohne Schweißung</translation>
        </message>
        <message>
            <source>No mark of the scale lies in the band.</source>
            <translation>Kein Strich der Skala liegt im Bereich.</translation>
        </message>
        <message>
            <source>No mistake was found.</source>
            <translation>Kein Fehler gefunden.</translation>
        </message>
        <message>
            <source>No other bench can take it</source>
            <translation>Keine andere Bank kann es</translation>
        </message>
        <message>
            <source>No page in practice: nothing on it would tell it from a real one.</source>
            <translation>Beim Üben kein Ausdruck: Er wäre von einem echten nicht zu unterscheiden.</translation>
        </message>
        <message>
            <source>No phase was begun.</source>
            <translation>Keine Phase begonnen.</translation>
        </message>
        <message>
            <source>No place in the guide holds these words.</source>
            <translation>Keine Stelle im Handbuch enthält diese Wörter.</translation>
        </message>
        <message>
            <source>No plastic, no heat, no harm: make your mistakes here.</source>
            <translation>Kein Kunststoff, keine Hitze, keine Gefahr: Fehler hier machen.</translation>
        </message>
        <message>
            <source>No reason was stored.</source>
            <translation>Kein Grund ist gespeichert.</translation>
        </message>
        <message>
            <source>No sound. Watch this screen. The weld goes on.</source>
            <translation>Kein Ton. Bildschirm beobachten. Schweißung läuft weiter.</translation>
        </message>
        <message>
            <source>No tool at hand</source>
            <translation>Kein Werkzeug da</translation>
        </message>
        <message>
            <source>No trial joint yet today of this sheet on bench %1.</source>
            <translation>Heute noch keine Probe dieser Tafel auf Bank %1.</translation>
        </message>
        <message>
            <source>Nobody has attested: %1.</source>
            <translation>Nicht bestätigt: %1.</translation>
        </message>
        <message>
            <source>Nobody has looked at this joint yet.</source>
            <translation>Diese Schweißung hat noch niemand angesehen.</translation>
        </message>
        <message>
            <source>Nobody in particular</source>
            <translation>Niemand Bestimmtes</translation>
        </message>
        <message>
            <source>Not finished</source>
            <translation>Nicht fertig</translation>
        </message>
        <message>
            <source>Not finished: %1</source>
            <translation>Nicht fertig: %1</translation>
        </message>
        <message>
            <source>Not good: cut it out</source>
            <translation>Nicht gut: austrennen</translation>
        </message>
        <message>
            <source>Not made yet.</source>
            <translation>Noch nie gemacht.</translation>
        </message>
        <message>
            <source>Not measured</source>
            <translation>Nicht gemessen</translation>
        </message>
        <message>
            <source>Not needed for this weld</source>
            <translation>Hier nicht nötig</translation>
        </message>
        <message>
            <source>Not ready to weld</source>
            <translation>Nicht schweißbereit</translation>
        </message>
        <message>
            <source>Not ready to weld.</source>
            <translation>Nicht schweißbereit.</translation>
        </message>
        <message>
            <source>Not sealed yet</source>
            <translation>Noch kein Siegel</translation>
        </message>
        <message>
            <source>Not sealed yet.</source>
            <translation>Noch nicht versiegelt.</translation>
        </message>
        <message>
            <source>Not sure</source>
            <translation>Unsicher</translation>
        </message>
        <message>
            <source>Not wholly covered by a seal: joints %1.</source>
            <translation>Nicht ganz von einem Siegel gedeckt: Schweißungen %1.</translation>
        </message>
        <message>
            <source>Not yet</source>
            <translation>Noch nicht</translation>
        </message>
        <message>
            <source>Noted: %1.</source>
            <translation>Notiert: %1.</translation>
        </message>
        <message>
            <source>Notes</source>
            <translation>Notizen</translation>
        </message>
        <message>
            <source>Nothing is changed yet.</source>
            <translation>Noch nichts geändert.</translation>
        </message>
        <message>
            <source>Nothing is typed: a few words say why.</source>
            <translation>Nichts eingetippt: Ein paar Worte sagen, warum.</translation>
        </message>
        <message>
            <source>Nothing is typed: the edition is printed on the cover.</source>
            <translation>Nichts eingetippt: Die Ausgabe steht auf dem Deckblatt.</translation>
        </message>
        <message>
            <source>Nothing touching: move the table. Read the scale.</source>
            <translation>Nichts berührt sich: Tisch fahren. Skala ablesen.</translation>
        </message>
        <message>
            <source>Nothing touching: what the scale reads while the table moves.</source>
            <translation>Nichts berührt sich: was die Skala zeigt, während der Tisch fährt.</translation>
        </message>
        <message>
            <source>Nothing wrong there</source>
            <translation>Dort war nichts falsch</translation>
        </message>
        <message>
            <source>Nothing yet.</source>
            <translation>Noch nichts.</translation>
        </message>
        <message>
            <source>Nothing.</source>
            <translation>Nichts.</translation>
        </message>
        <message>
            <source>Now</source>
            <translation>Jetzt</translation>
        </message>
        <message>
            <source>Number</source>
            <translation>Nummer</translation>
        </message>
        <message>
            <source>Numbered</source>
            <translation>Nummeriert</translation>
        </message>
        <message>
            <source>Numbers</source>
            <translation>Nummern</translation>
        </message>
        <message>
            <source>Older</source>
            <translation>Ältere</translation>
        </message>
        <message>
            <source>On the sheet</source>
            <translation>Auf der Tafel</translation>
        </message>
        <message>
            <source>Once the wheel is locked the reading will fall by about %1 %2 (%3 to %4), as the sheets close up and shrink</source>
            <translation>Ist das Handrad gesperrt, fällt der Skalenwert um etwa %1 %2 (%3 bis %4), weil die Tafeln nachrücken und schrumpfen</translation>
        </message>
        <message>
            <source>One by one</source>
            <translation>Einzeln</translation>
        </message>
        <message>
            <source>One moment</source>
            <translation>Moment</translation>
        </message>
        <message>
            <source>One moment: it is being checked.</source>
            <translation>Moment, sie wird geprüft.</translation>
        </message>
        <message>
            <source>Only a foreman may go on here.</source>
            <translation>Hier darf nur ein Meister weitermachen.</translation>
        </message>
        <message>
            <source>Only a foreman releases a trial joint.</source>
            <translation>Nur ein Meister gibt eine Probe frei.</translation>
        </message>
        <message>
            <source>Open</source>
            <translation>Offen</translation>
        </message>
        <message>
            <source>Open bars</source>
            <translation>Balken auf</translation>
        </message>
        <message>
            <source>Open the clamp bars.</source>
            <translation>Spannbalken öffnen.</translation>
        </message>
        <message>
            <source>Open the desk</source>
            <translation>Pult öffnen</translation>
        </message>
        <message>
            <source>Open the first</source>
            <translation>Erste öffnen</translation>
        </message>
        <message>
            <source>Open the gap to %1 mm, the same front and back.</source>
            <translation>Abstand auf %1 mm öffnen, vorn wie hinten.</translation>
        </message>
        <message>
            <source>Operator</source>
            <translation>Bediener</translation>
        </message>
        <message>
            <source>Order</source>
            <translation>Auftrag</translation>
        </message>
        <message>
            <source>Order of release</source>
            <translation>Ausspannfolge</translation>
        </message>
        <message>
            <source>Order of steps</source>
            <translation>Schrittfolge</translation>
        </message>
        <message>
            <source>Other lessons</source>
            <translation>Andere Lektion</translation>
        </message>
        <message>
            <source>Other seam</source>
            <translation>Andere Naht</translation>
        </message>
        <message>
            <source>Out</source>
            <translation>Außerhalb</translation>
        </message>
        <message>
            <source>Out of limits</source>
            <translation>Außerhalb</translation>
        </message>
        <message>
            <source>Out of limits: %1.</source>
            <translation>Außerhalb: %1.</translation>
        </message>
        <message>
            <source>Out of limits: %1. Say why.</source>
            <translation>Außerhalb: %1. Grund nennen.</translation>
        </message>
        <message>
            <source>Over both beads, at the same place.</source>
            <translation>Über beide Wülste, an derselben Stelle.</translation>
        </message>
        <message>
            <source>Overheated plastic and coatings give off harmful fume: run the extraction, do not smoke, never burn residue off the plate.</source>
            <translation>Überhitzter Kunststoff und Beschichtungen geben schädliche Dämpfe ab: Absaugung einschalten, nicht rauchen, Rückstände nie vom Heizelement abbrennen.</translation>
        </message>
        <message>
            <source>PDF of these joints</source>
            <translation>PDF dieser Schweißungen</translation>
        </message>
        <message>
            <source>PIN of %1</source>
            <translation>PIN: %1</translation>
        </message>
        <message>
            <source>PRACTICE</source>
            <translation>ÜBUNG</translation>
        </message>
        <message>
            <source>Paint joint number %1 on the sheet.</source>
            <translation>Nummer %1 auf die Tafel malen.</translation>
        </message>
        <message>
            <source>Part</source>
            <translation>Teil</translation>
        </message>
        <message>
            <source>Photos</source>
            <translation>Fotos</translation>
        </message>
        <message>
            <source>Photos are in no backup. %1</source>
            <translation>Fotos sind in keiner Sicherung. %1</translation>
        </message>
        <message>
            <source>Place %1 of %2, at %3 mm: </source>
            <translation>Stelle %1 von %2, bei %3 mm: </translation>
        </message>
        <message>
            <source>Plane</source>
            <translation>Hobeln</translation>
        </message>
        <message>
            <source>Plane both edges. Do not touch them by hand.</source>
            <translation>Beide Kanten hobeln. Nicht mehr anfassen.</translation>
        </message>
        <message>
            <source>Plane edges</source>
            <translation>Kanten hobeln</translation>
        </message>
        <message>
            <source>Plate</source>
            <translation>Heizelement</translation>
        </message>
        <message>
            <source>Plate and air</source>
            <translation>Heizelement, Luft</translation>
        </message>
        <message>
            <source>Plate cold or dirty</source>
            <translation>Heizelement kalt, schmutzig</translation>
        </message>
        <message>
            <source>Plate in</source>
            <translation>Einsetzen</translation>
        </message>
        <message>
            <source>Plate in, sheets against it. Turn up to %1.</source>
            <translation>Heizelement rein, Tafeln dran. Hochdrehen auf %1.</translation>
        </message>
        <message>
            <source>Plate is dirty</source>
            <translation>Heizelement schmutzig</translation>
        </message>
        <message>
            <source>Plate is hot. Let it settle for 10 minutes.</source>
            <translation>Heizelement ist heiß. 10 Minuten warten.</translation>
        </message>
        <message>
            <source>Plate is wiped</source>
            <translation>Heizelement sauber</translation>
        </message>
        <message>
            <source>Plate out</source>
            <translation>Heizelement raus</translation>
        </message>
        <message>
            <source>Plate out, faces together</source>
            <translation>Heizelement raus, Flächen zusammen</translation>
        </message>
        <message>
            <source>Plate temperature, bench %1</source>
            <translation>Heizelementtemperatur, Bank %1</translation>
        </message>
        <message>
            <source>Plate too cold</source>
            <translation>Heizelement zu kalt</translation>
        </message>
        <message>
            <source>Plate too hot</source>
            <translation>Heizelement zu heiß</translation>
        </message>
        <message>
            <source>Plate was dirty</source>
            <translation>Heizelement schmutzig</translation>
        </message>
        <message>
            <source>Play</source>
            <translation>Start</translation>
        </message>
        <message>
            <source>Power was off</source>
            <translation>Strom war weg</translation>
        </message>
        <message>
            <source>Power was off for %1.</source>
            <translation>Strom war %1 weg.</translation>
        </message>
        <message>
            <source>Power was off.</source>
            <translation>Strom war weg.</translation>
        </message>
        <message>
            <source>Practice</source>
            <translation>Üben</translation>
        </message>
        <message>
            <source>Practice of %1</source>
            <translation>Üben: %1</translation>
        </message>
        <message>
            <source>Practice record</source>
            <translation>Übungsprotokoll</translation>
        </message>
        <message>
            <source>Practice record. Not a certificate.</source>
            <translation>Übungsprotokoll. Kein Zeugnis.</translation>
        </message>
        <message>
            <source>Practice, up to %1 times as fast. No joint here counts.</source>
            <translation>Üben, bis zu %1-mal so schnell. Keine Schweißung zählt hier.</translation>
        </message>
        <message>
            <source>Practice. No joint here counts, and this report is no certificate.</source>
            <translation>Übung. Keine Schweißung zählt hier, und dieser Bericht ist kein Zeugnis.</translation>
        </message>
        <message>
            <source>Practice. This joint counts for nothing, and this record is no certificate.</source>
            <translation>Übung. Diese Schweißung zählt nicht, und dieses Protokoll ist kein Zeugnis.</translation>
        </message>
        <message>
            <source>Prepare</source>
            <translation>Vorbereiten</translation>
        </message>
        <message>
            <source>Press the foot switch now.</source>
            <translation>Jetzt den Fußschalter drücken.</translation>
        </message>
        <message>
            <source>Pressure</source>
            <translation>Druck</translation>
        </message>
        <message>
            <source>Pressure is off</source>
            <translation>Druck ist weg</translation>
        </message>
        <message>
            <source>Pressure is on</source>
            <translation>Druck steht</translation>
        </message>
        <message>
            <source>Pressure set</source>
            <translation>Druck Soll</translation>
        </message>
        <message>
            <source>Pressure, plate</source>
            <translation>Druck, Heizelement</translation>
        </message>
        <message>
            <source>Pressures</source>
            <translation>Drücke</translation>
        </message>
        <message>
            <source>Pressures, plate</source>
            <translation>Drücke, Heizelement</translation>
        </message>
        <message>
            <source>Print</source>
            <translation>Drucken</translation>
        </message>
        <message>
            <source>Print or mail it today: whoever has this tablet could seal anew, and only a fingerprint elsewhere shows it.</source>
            <translation>Heute noch drucken oder mailen: Wer dieses Tablet hat, könnte neu siegeln; nur ein Fingerabdruck anderswo zeigt das.</translation>
        </message>
        <message>
            <source>Procedure</source>
            <translation>Anweisung</translation>
        </message>
        <message>
            <source>Procedures</source>
            <translation>Anweisungen</translation>
        </message>
        <message>
            <source>Rate %1 N for each %2 (± %3 %), zero at %4 %2.</source>
            <translation>Rate %1 N je %2 (± %3 %), Null bei %4 %2.</translation>
        </message>
        <message>
            <source>Read</source>
            <translation>Ablesen</translation>
        </message>
        <message>
            <source>Read a CSV file</source>
            <translation>CSV-Datei lesen</translation>
        </message>
        <message>
            <source>Read it</source>
            <translation>Lesen</translation>
        </message>
        <message>
            <source>Read on the face. Place %1 of %2: %3.</source>
            <translation>An der Fläche messen. Stelle %1 von %2: %3.</translation>
        </message>
        <message>
            <source>Read scale %1 now and type it in.</source>
            <translation>Skala %1 jetzt ablesen, eintippen.</translation>
        </message>
        <message>
            <source>Read the plate on its face. Place %1 of %2: %3.</source>
            <translation>Heizelement an der Fläche messen. Stelle %1 von %2: %3.</translation>
        </message>
        <message>
            <source>Reading is below %1. Turn up to %2.</source>
            <translation>Wert unter %1. Hochdrehen auf %2.</translation>
        </message>
        <message>
            <source>Reading not followed</source>
            <translation>Wert nicht gehalten</translation>
        </message>
        <message>
            <source>Readings</source>
            <translation>Ablesungen</translation>
        </message>
        <message>
            <source>Readings and measures</source>
            <translation>Skalen- und Messwerte</translation>
        </message>
        <message>
            <source>Readings of the scale against the forces that a load cell shows: at least 3, over the whole range that is welded with.</source>
            <translation>Skalenwerte und die Kräfte, die eine Kraftmessdose zeigt: mindestens 3, über den ganzen Bereich, in dem geschweißt wird.</translation>
        </message>
        <message>
            <source>Reason</source>
            <translation>Grund</translation>
        </message>
        <message>
            <source>Record</source>
            <translation>Protokoll</translation>
        </message>
        <message>
            <source>Record of a heated-tool butt weld</source>
            <translation>Protokoll einer Heizelementstumpfschweißung</translation>
        </message>
        <message>
            <source>Record of joint %1</source>
            <translation>Protokoll, Schweißung %1</translation>
        </message>
        <message>
            <source>Release</source>
            <translation>Ausspannen</translation>
        </message>
        <message>
            <source>Release</source>
            <comment>a trial joint, by the foreman</comment>
            <translation>Freigeben</translation>
        </message>
        <message>
            <source>Release it</source>
            <translation>Freigeben</translation>
        </message>
        <message>
            <source>Released too early</source>
            <translation>Zu früh ausgespannt</translation>
        </message>
        <message>
            <source>Remarks</source>
            <translation>Vermerke</translation>
        </message>
        <message>
            <source>Repair</source>
            <translation>Reparieren</translation>
        </message>
        <message>
            <source>Report</source>
            <translation>Bericht</translation>
        </message>
        <message>
            <source>Report of chosen joints</source>
            <translation>Bericht gewählter Schweißungen</translation>
        </message>
        <message>
            <source>Right-handed</source>
            <translation>Rechtshändig</translation>
        </message>
        <message>
            <source>Row below</source>
            <translation>Zeile drunter</translation>
        </message>
        <message>
            <source>Rows after</source>
            <translation>Weitere Zeilen</translation>
        </message>
        <message>
            <source>Rows before</source>
            <translation>Frühere Zeilen</translation>
        </message>
        <message>
            <source>Said, changed and seen</source>
            <translation>Gesagt, geändert, gesehen</translation>
        </message>
        <message>
            <source>Same again</source>
            <translation>Noch einmal so</translation>
        </message>
        <message>
            <source>Save</source>
            <translation>Speichern</translation>
        </message>
        <message>
            <source>Save as PDF</source>
            <translation>Als PDF sichern</translation>
        </message>
        <message>
            <source>Save report</source>
            <translation>Bericht sichern</translation>
        </message>
        <message>
            <source>Save the joint</source>
            <translation>Speichern</translation>
        </message>
        <message>
            <source>Saved: %1</source>
            <translation>Gesichert: %1</translation>
        </message>
        <message>
            <source>Say why</source>
            <translation>Warum?</translation>
        </message>
        <message>
            <source>Scale</source>
            <translation>Skala</translation>
        </message>
        <message>
            <source>Scale %1</source>
            <translation>Skala %1</translation>
        </message>
        <message>
            <source>Scale %1 in cooling</source>
            <translation>Skala %1 beim Abkühlen</translation>
        </message>
        <message>
            <source>Scale and force</source>
            <translation>Skala und Kraft</translation>
        </message>
        <message>
            <source>Scale and springs</source>
            <translation>Skala und Federn</translation>
        </message>
        <message>
            <source>Scale at %1, wheel locked. Wait for the signal.</source>
            <translation>Skala auf %1, Handrad gesperrt. Auf das Signal warten.</translation>
        </message>
        <message>
            <source>Scale is not on zero</source>
            <translation>Skala nicht auf null</translation>
        </message>
        <message>
            <source>Scale of bench %1</source>
            <translation>Skala von Bank %1</translation>
        </message>
        <message>
            <source>Scale reading</source>
            <translation>Skalenwert</translation>
        </message>
        <message>
            <source>Scale reads %1</source>
            <translation>Skala zeigt %1</translation>
        </message>
        <message>
            <source>Scale reads %1 %2</source>
            <translation>Skala zeigt %1 %2</translation>
        </message>
        <message>
            <source>Scale too coarse: only a foreman may allow it.</source>
            <translation>Skala zu grob: Nur ein Meister darf es erlauben.</translation>
        </message>
        <message>
            <source>Scatter %1 N; the line is known to ± %2 N, a reading to ± %3 N (95 %, at the middle).</source>
            <translation>Streuung %1 N; die Gerade ist auf ± %2 N bekannt, ein Skalenwert auf ± %3 N (95 %, in der Mitte).</translation>
        </message>
        <message>
            <source>Screen: %1</source>
            <translation>Anzeige: %1</translation>
        </message>
        <message>
            <source>Seal</source>
            <translation>Siegel</translation>
        </message>
        <message>
            <source>Seal again</source>
            <translation>Neu siegeln</translation>
        </message>
        <message>
            <source>Seal the day</source>
            <translation>Tag versiegeln</translation>
        </message>
        <message>
            <source>Sealed</source>
            <translation>Siegel</translation>
        </message>
        <message>
            <source>Sealed at %1 by %2</source>
            <translation>Versiegelt um %1 von %2</translation>
        </message>
        <message>
            <source>Seals</source>
            <translation>Siegel</translation>
        </message>
        <message>
            <source>Seam</source>
            <translation>Naht</translation>
        </message>
        <message>
            <source>Seam %1</source>
            <translation>Naht %1</translation>
        </message>
        <message>
            <source>Seam %1 of %2: </source>
            <translation>Naht %1 von %2: </translation>
        </message>
        <message>
            <source>Seam %1, %2</source>
            <translation>Naht %1, %2</translation>
        </message>
        <message>
            <source>Seam is shielded</source>
            <translation>Naht ist geschützt</translation>
        </message>
        <message>
            <source>Seamclock</source>
            <translation>Seamclock</translation>
        </message>
        <message>
            <source>Seamclock can't start.</source>
            <translation>Seamclock startet nicht.</translation>
        </message>
        <message>
            <source>Seamclock, practice: physics in a model, no plastic. It can't teach the feel of a wheel, and it proves no skill at a real bench.</source>
            <translation>Seamclock, Üben: Physik im Modell, kein Kunststoff. Es lehrt nicht das Gefühl im Handrad und beweist kein Können an einer echten Bank.</translation>
        </message>
        <message>
            <source>Seamclock: practice</source>
            <translation>Seamclock: Üben</translation>
        </message>
        <message>
            <source>Seamclock; log %1</source>
            <translation>Seamclock; Logbuch %1</translation>
        </message>
        <message>
            <source>Seamclock; log %1, %2</source>
            <translation>Seamclock; Logbuch %1, %2</translation>
        </message>
        <message>
            <source>Seams</source>
            <translation>Nähte</translation>
        </message>
        <message>
            <source>Search</source>
            <translation>Suchen</translation>
        </message>
        <message>
            <source>Search for what?</source>
            <translation>Wonach suchen?</translation>
        </message>
        <message>
            <source>Search the guide</source>
            <translation>Im Handbuch suchen</translation>
        </message>
        <message>
            <source>Second sheet</source>
            <translation>Zweite Tafel</translation>
        </message>
        <message>
            <source>Second sheet is clamped</source>
            <translation>Zweite Tafel gespannt</translation>
        </message>
        <message>
            <source>See it again</source>
            <translation>Noch einmal</translation>
        </message>
        <message>
            <source>See the result</source>
            <translation>Ergebnis ansehen</translation>
        </message>
        <message>
            <source>Seen</source>
            <translation>Gesehen</translation>
        </message>
        <message>
            <source>Seen again: %1</source>
            <translation>Noch einmal: %1</translation>
        </message>
        <message>
            <source>Set</source>
            <translation>Stellen</translation>
        </message>
        <message>
            <source>Set</source>
            <comment>what was to be, beside what was</comment>
            <translation>Soll</translation>
        </message>
        <message>
            <source>Set and actual</source>
            <translation>Soll und Ist</translation>
        </message>
        <message>
            <source>Set gap</source>
            <translation>Abstand</translation>
        </message>
        <message>
            <source>Set the gap to %1 mm, the same front and back.</source>
            <translation>Abstand auf %1 mm stellen, vorn wie hinten.</translation>
        </message>
        <message>
            <source>Set-up</source>
            <translation>Einrichten</translation>
        </message>
        <message>
            <source>Set-up: procedures and benches</source>
            <translation>Einrichten: Anweisungen und Bänke</translation>
        </message>
        <message>
            <source>Several short ones in one clamping add up.</source>
            <translation>Mehrere kurze in einer Spannung zählen zusammen.</translation>
        </message>
        <message>
            <source>Sheet</source>
            <translation>Tafel</translation>
        </message>
        <message>
            <source>Sheet %1</source>
            <translation>Tafel %1</translation>
        </message>
        <message>
            <source>Sheet %1: %2</source>
            <translation>Tafel %1: %2</translation>
        </message>
        <message>
            <source>Sheet 1</source>
            <translation>Tafel 1</translation>
        </message>
        <message>
            <source>Sheet 2</source>
            <translation>Tafel 2</translation>
        </message>
        <message>
            <source>Sheet is out</source>
            <translation>Tafel ist raus</translation>
        </message>
        <message>
            <source>Sheets</source>
            <translation>Tafeln</translation>
        </message>
        <message>
            <source>Sheets apart, plate out, faces together.</source>
            <translation>Tafeln weg, Heizelement raus, Flächen zusammen.</translation>
        </message>
        <message>
            <source>Shield</source>
            <translation>Schützen</translation>
        </message>
        <message>
            <source>Shield the seam. Wipe it dry.</source>
            <translation>Naht schützen. Trocken wischen.</translation>
        </message>
        <message>
            <source>Shim</source>
            <translation>Unterlegen</translation>
        </message>
        <message>
            <source>Shop</source>
            <translation>Halle</translation>
        </message>
        <message>
            <source>Shop temperature</source>
            <translation>Hallentemperatur</translation>
        </message>
        <message>
            <source>Sign in</source>
            <translation>Anmelden</translation>
        </message>
        <message>
            <source>Sign it off</source>
            <translation>Abzeichnen</translation>
        </message>
        <message>
            <source>Signal</source>
            <translation>Signal</translation>
        </message>
        <message>
            <source>Slammed together</source>
            <translation>Hart zusammengefahren</translation>
        </message>
        <message>
            <source>Slow</source>
            <translation>Langsam</translation>
        </message>
        <message>
            <source>Soak</source>
            <translation>Anwärmen</translation>
        </message>
        <message>
            <source>Soak from zero to drag</source>
            <translation>Anwärmen null bis Schleppkraft</translation>
        </message>
        <message>
            <source>Soak is over by %1 s. Plate out now.</source>
            <translation>Anwärmzeit seit %1 s um. Heizelement raus.</translation>
        </message>
        <message>
            <source>Soak's reading lies below the calibration.</source>
            <translation>Der Skalenwert fürs Anwärmen liegt unter der Kalibrierung.</translation>
        </message>
        <message>
            <source>Soak, at most</source>
            <translation>Anwärmen, max.</translation>
        </message>
        <message>
            <source>Soaked under pressure</source>
            <translation>Unter Druck angewärmt</translation>
        </message>
        <message>
            <source>Somebody disturbed it</source>
            <translation>Jemand hat gestört</translation>
        </message>
        <message>
            <source>Somebody new</source>
            <translation>Jemand Neues</translation>
        </message>
        <message>
            <source>Something else</source>
            <translation>Etwas anderes</translation>
        </message>
        <message>
            <source>Something is wrong</source>
            <translation>Etwas stimmt nicht</translation>
        </message>
        <message>
            <source>Something sticks to it.</source>
            <translation>Etwas klebt daran.</translation>
        </message>
        <message>
            <source>Speed × %1</source>
            <translation>Tempo × %1</translation>
        </message>
        <message>
            <source>Spring is off</source>
            <translation>Feder entspannt</translation>
        </message>
        <message>
            <source>Spring off</source>
            <translation>Feder lösen</translation>
        </message>
        <message>
            <source>Stand at the bench. Can you hear the signal?</source>
            <translation>An die Bank stellen. Ist das Signal zu hören?</translation>
        </message>
        <message>
            <source>Step</source>
            <translation>Versatz</translation>
        </message>
        <message>
            <source>Step from one sheet to the other.</source>
            <translation>Stufe von Tafel zu Tafel.</translation>
        </message>
        <message>
            <source>Stop</source>
            <translation>Stopp</translation>
        </message>
        <message>
            <source>Stop this weld</source>
            <translation>Abbrechen</translation>
        </message>
        <message>
            <source>Stop this weld? Say why.</source>
            <translation>Abbrechen? Grund nennen.</translation>
        </message>
        <message>
            <source>Stop: cut out</source>
            <translation>Stopp: austrennen</translation>
        </message>
        <message>
            <source>Stop: plate too cold</source>
            <translation>Stopp: Heizelement zu kalt</translation>
        </message>
        <message>
            <source>Stop: plate too hot</source>
            <translation>Stopp: Heizelement zu heiß</translation>
        </message>
        <message>
            <source>Stopped</source>
            <translation>Abbruch</translation>
        </message>
        <message>
            <source>Stopped: %1</source>
            <translation>Abbruch: %1</translation>
        </message>
        <message>
            <source>Stored at closing, by rules %1. By today's rules %2: %3.</source>
            <translation>Beim Abschluss gespeichert, nach Regeln %1. Nach heutigen Regeln %2: %3.</translation>
        </message>
        <message>
            <source>Stored at closing: %1</source>
            <translation>Beim Abschluss gespeichert: %1</translation>
        </message>
        <message>
            <source>Sums by sheet</source>
            <translation>Summen je Tafel</translation>
        </message>
        <message>
            <source>Supervisor</source>
            <translation>Schweißaufsicht</translation>
        </message>
        <message>
            <source>Tables</source>
            <translation>Tabellen</translation>
        </message>
        <message>
            <source>Take back</source>
            <translation>Zurücknehmen</translation>
        </message>
        <message>
            <source>Take care</source>
            <translation>Vorsicht</translation>
        </message>
        <message>
            <source>Take off</source>
            <translation>Abziehen</translation>
        </message>
        <message>
            <source>Take out</source>
            <translation>Entfernen</translation>
        </message>
        <message>
            <source>Take out early</source>
            <translation>Früher ausspannen</translation>
        </message>
        <message>
            <source>Take the call</source>
            <translation>Abnehmen</translation>
        </message>
        <message>
            <source>Take the film off both edges.</source>
            <translation>Folie von beiden Kanten abziehen.</translation>
        </message>
        <message>
            <source>That PIN is wrong.</source>
            <translation>Die PIN ist falsch.</translation>
        </message>
        <message>
            <source>The battery is low: %1 %. Plug the charger in.</source>
            <translation>Der Akku ist schwach: %1 %. Ladegerät anstecken.</translation>
        </message>
        <message>
            <source>The bead is not measured. Say why.</source>
            <translation>Der Wulst ist nicht gemessen. Grund nennen.</translation>
        </message>
        <message>
            <source>The bench "%1" is changed.</source>
            <translation>Die Bank „%1“ wird geändert.</translation>
        </message>
        <message>
            <source>The bench can't be set so</source>
            <translation>Bank lässt sich nicht so stellen</translation>
        </message>
        <message>
            <source>The bench is kept.</source>
            <translation>Die Bank ist übernommen.</translation>
        </message>
        <message>
            <source>The bench is needed</source>
            <translation>Bank wird gebraucht</translation>
        </message>
        <message>
            <source>The bench that harms nobody</source>
            <translation>Die Bank ohne Gefahr</translation>
        </message>
        <message>
            <source>The calibration is too uncertain for this seam.</source>
            <translation>Die Kalibrierung ist zu unsicher für diese Naht.</translation>
        </message>
        <message>
            <source>The card is saved: %1</source>
            <translation>Die Karte ist gespeichert: %1</translation>
        </message>
        <message>
            <source>The day's joints</source>
            <translation>Tagesliste</translation>
        </message>
        <message>
            <source>The edges are planed, the chips are off.</source>
            <translation>Die Kanten sind gehobelt, die Späne weg.</translation>
        </message>
        <message>
            <source>The file can't be read: %1</source>
            <translation>Die Datei ist nicht lesbar: %1</translation>
        </message>
        <message>
            <source>The file is not the one that was kept; it is not shown: %1</source>
            <translation>Die Datei ist nicht die übernommene; sie wird nicht gezeigt: %1</translation>
        </message>
        <message>
            <source>The file is not there: %1</source>
            <translation>Die Datei ist nicht da: %1</translation>
        </message>
        <message>
            <source>The film is off the edges.</source>
            <translation>Die Folie ist von den Kanten ab.</translation>
        </message>
        <message>
            <source>The first one is entered under "Who is it?".</source>
            <translation>Der erste wird unter „Wer ist es?“ eingetragen.</translation>
        </message>
        <message>
            <source>The folder above</source>
            <translation>Ordner darüber</translation>
        </message>
        <message>
            <source>The force is less than this bench holds steadily.</source>
            <translation>Die Kraft ist kleiner, als diese Bank sicher hält.</translation>
        </message>
        <message>
            <source>The foreman decided</source>
            <translation>Der Meister entschied</translation>
        </message>
        <message>
            <source>The foreman may go on. Why?</source>
            <translation>Der Meister darf weitermachen. Warum?</translation>
        </message>
        <message>
            <source>The foreman releases it</source>
            <translation>Meister gibt sie frei</translation>
        </message>
        <message>
            <source>The foreman's PIN is asked next; the record keeps the name.</source>
            <translation>Als Nächstes die PIN des Meisters; der Name kommt ins Protokoll.</translation>
        </message>
        <message>
            <source>The foreman's PIN is asked next; the verdict stays as it is.</source>
            <translation>Als Nächstes die PIN des Meisters; das Urteil bleibt, wie es ist.</translation>
        </message>
        <message>
            <source>The guide itself is in English.</source>
            <translation>Das Handbuch selbst ist englisch.</translation>
        </message>
        <message>
            <source>The hand was slow</source>
            <translation>Die Hand war langsam</translation>
        </message>
        <message>
            <source>The job lets this seam be welded again %1 times. It is in the record.</source>
            <translation>Laut Auftrag darf diese Naht %1-mal neu geschweißt werden. Es steht im Protokoll.</translation>
        </message>
        <message>
            <source>The joint</source>
            <translation>Die Naht</translation>
        </message>
        <message>
            <source>The joint is cut out and kept in the list as stopped.</source>
            <translation>Die Schweißung wird ausgetrennt und bleibt als Abbruch in der Liste.</translation>
        </message>
        <message>
            <source>The joint of that photo is gone from its bench.</source>
            <translation>Die Schweißung zu diesem Foto ist nicht mehr an der Bank.</translation>
        </message>
        <message>
            <source>The key that it types becomes the next step.</source>
            <translation>Die Taste, die er tippt, wird der nächste Schritt.</translation>
        </message>
        <message>
            <source>The limit is passed. It counts, and is in the record.</source>
            <translation>Grenze überschritten. Es zählt und steht im Protokoll.</translation>
        </message>
        <message>
            <source>The list, CSV</source>
            <translation>Die Liste, CSV</translation>
        </message>
        <message>
            <source>The list, JSON</source>
            <translation>Die Liste, JSON</translation>
        </message>
        <message>
            <source>The log is damaged. Finish the weld, end the program, start it again. %1</source>
            <translation>Das Logbuch ist beschädigt. Fertig schweißen, Programm beenden, neu starten. %1</translation>
        </message>
        <message>
            <source>The log keeps what was, and who changed it.</source>
            <translation>Im Logbuch bleibt, was war und wer es geändert hat.</translation>
        </message>
        <message>
            <source>The log knows no people yet.</source>
            <translation>Das Logbuch kennt noch niemanden.</translation>
        </message>
        <message>
            <source>The log was damaged and is kept aside; %1 tells what was taken over.</source>
            <translation>Das Logbuch war beschädigt und liegt beiseite; was übernommen wurde, steht in %1.</translation>
        </message>
        <message>
            <source>The log was damaged and is kept aside; a new one goes on.</source>
            <translation>Das Logbuch war beschädigt und liegt beiseite; ein neues geht weiter.</translation>
        </message>
        <message>
            <source>The log's file was damaged. Nothing is lost: the log goes on in a new file, the old one is kept.</source>
            <translation>Die Datei des Logbuchs war beschädigt. Nichts ist verloren: Es geht in einer neuen Datei weiter, die alte bleibt.</translation>
        </message>
        <message>
            <source>The machine's own instructions decide in which order a joint is released: the program has no order of its own.</source>
            <translation>Die Betriebsanleitung der Maschine entscheidet, in welcher Folge ausgespannt wird: Das Programm hat keine eigene Folge.</translation>
        </message>
        <message>
            <source>The machine's own instructions decide. The last step is the sheet.</source>
            <translation>Die Betriebsanleitung der Maschine entscheidet. Zuletzt kommt die Tafel.</translation>
        </message>
        <message>
            <source>The machine's own instructions, the standard in force, local rules and a qualified welder decide.</source>
            <translation>Betriebsanleitung der Maschine, geltende Norm, örtliche Regeln und ein geprüfter Schweißer entscheiden.</translation>
        </message>
        <message>
            <source>The melt flow rates are far apart.</source>
            <translation>Die Schmelzindizes liegen weit auseinander.</translation>
        </message>
        <message>
            <source>The melt flow rates can't be compared.</source>
            <translation>Die Schmelzindizes sind nicht vergleichbar.</translation>
        </message>
        <message>
            <source>The phone rings.</source>
            <translation>Das Telefon klingelt.</translation>
        </message>
        <message>
            <source>The photo is kept: %1</source>
            <translation>Das Foto ist übernommen: %1</translation>
        </message>
        <message>
            <source>The place can't be reached</source>
            <translation>Stelle nicht erreichbar</translation>
        </message>
        <message>
            <source>The plan names no source.</source>
            <translation>Der Plan nennt keine Quelle.</translation>
        </message>
        <message>
            <source>The plate burns at once. Gloves for heat, but never on planed faces; park the plate guarded.</source>
            <translation>Das Heizelement verbrennt sofort. Handschuhe gegen Hitze, aber nie an gehobelten Flächen; Heizelement geschützt ablegen.</translation>
        </message>
        <message>
            <source>The plate burns at once; the tables crush, and the spring stores its force; overheated plastic and coatings give off harmful fume.</source>
            <translation>Das Heizelement verbrennt sofort; die Tische quetschen, und die Feder speichert ihre Kraft; überhitzter Kunststoff und Beschichtungen geben schädliche Dämpfe ab.</translation>
        </message>
        <message>
            <source>The plate can't be set so</source>
            <translation>Heizelement nicht so einstellbar</translation>
        </message>
        <message>
            <source>The plate has cooled. Cut back and plane.</source>
            <translation>Heizelement ist kalt. Zurückschneiden, hobeln.</translation>
        </message>
        <message>
            <source>The plate is between the edges: its face can't be read.</source>
            <translation>Das Heizelement ist zwischen den Kanten: Seine Fläche ist nicht messbar.</translation>
        </message>
        <message>
            <source>The plate is outside its window. Wait, then read it again.</source>
            <translation>Heizelement außerhalb seines Bereichs. Warten, dann neu messen.</translation>
        </message>
        <message>
            <source>The plate is wiped.</source>
            <translation>Heizelement geputzt.</translation>
        </message>
        <message>
            <source>The plate stuck</source>
            <translation>Heizelement klebte</translation>
        </message>
        <message>
            <source>The plate's face reads %1 °C at the %2.</source>
            <translation>Heizelementfläche: %1 °C, %2.</translation>
        </message>
        <message>
            <source>The procedure "%1" is changed.</source>
            <translation>Die Anweisung „%1“ wird geändert.</translation>
        </message>
        <message>
            <source>The procedure is kept.</source>
            <translation>Die Anweisung ist übernommen.</translation>
        </message>
        <message>
            <source>The procedure lacks a value for this sheet.</source>
            <translation>In der Anweisung fehlt ein Wert für diese Tafel.</translation>
        </message>
        <message>
            <source>The procedure lacks: %1.</source>
            <translation>In der Anweisung fehlt: %1.</translation>
        </message>
        <message>
            <source>The program ended in mid-weld: nothing was kept to see again.</source>
            <translation>Das Programm endete mitten in der Schweißung: nichts blieb zum Ansehen.</translation>
        </message>
        <message>
            <source>The record is on the printer: %1</source>
            <translation>Das Protokoll ist beim Drucker: %1</translation>
        </message>
        <message>
            <source>The record is saved: %1</source>
            <translation>Das Protokoll ist gespeichert: %1</translation>
        </message>
        <message>
            <source>The report is saved: %1</source>
            <translation>Der Bericht ist gespeichert: %1</translation>
        </message>
        <message>
            <source>The same PIN once more</source>
            <translation>Dieselbe PIN noch einmal</translation>
        </message>
        <message>
            <source>The same was stored at closing %1, by rules %2.</source>
            <translation>Dasselbe wurde beim Abschluss %1 gespeichert, nach Regeln %2.</translation>
        </message>
        <message>
            <source>The screen has just come to this bench. Press again.</source>
            <translation>Der Bildschirm kam gerade erst zu dieser Bank. Noch einmal drücken.</translation>
        </message>
        <message>
            <source>The screen is kept on. The tablet may sleep: see its own settings.</source>
            <translation>Der Bildschirm bleibt an. Das Tablet kann einschlafen: siehe seine Einstellungen.</translation>
        </message>
        <message>
            <source>The sheets are molten %1 deep after soak, and their skin is at %2 when the faces meet after the longest changeover; it melts at %3.</source>
            <translation>Die Tafeln sind nach dem Anwärmen %1 tief geschmolzen, und ihre Haut hat beim Fügen nach dem längsten Umstellen %2; sie schmilzt bei %3.</translation>
        </message>
        <message>
            <source>The sheets are soft %1 deep after soak, and their skin is at %2 when the faces meet after the longest changeover; it is soft above %3.</source>
            <translation>Die Tafeln sind nach dem Anwärmen %1 tief weich, und ihre Haut hat beim Fügen nach dem längsten Umstellen %2; weich ist sie über %3.</translation>
        </message>
        <message>
            <source>The sheets' grades differ: ask first.</source>
            <translation>Die Sorten der Tafeln sind verschieden: erst fragen.</translation>
        </message>
        <message>
            <source>The shop is too cold or too warm for this procedure.</source>
            <translation>Die Halle ist zu kalt oder zu warm für diese Anweisung.</translation>
        </message>
        <message>
            <source>The skin may no longer be molten when the faces meet.</source>
            <translation>Die Haut ist beim Fügen vielleicht nicht mehr geschmolzen.</translation>
        </message>
        <message>
            <source>The steps are then written in this name.</source>
            <translation>Die Schritte laufen dann unter diesem Namen.</translation>
        </message>
        <message>
            <source>The steps are written in this name.</source>
            <translation>Die Schritte laufen unter diesem Namen.</translation>
        </message>
        <message>
            <source>The table is saved: %1</source>
            <translation>Die Tabelle ist gespeichert: %1</translation>
        </message>
        <message>
            <source>The tables crush, and the spring stores its force: keep hands out, and ease it before you open a clamp.</source>
            <translation>Die Tische quetschen, und die Feder speichert ihre Kraft: Hände weg, Feder entspannen, bevor eine Klemme aufgeht.</translation>
        </message>
        <message>
            <source>The tablet is kept awake until no joint is open.</source>
            <translation>Das Tablet bleibt wach, bis keine Schweißung offen ist.</translation>
        </message>
        <message>
            <source>The tablet is kept awake. Its screen may go dark: see its own settings.</source>
            <translation>Das Tablet bleibt wach. Der Bildschirm kann dunkel werden: siehe seine Einstellungen.</translation>
        </message>
        <message>
            <source>The trial joint: what does the supervisor say?</source>
            <translation>Die Probeschweißung: Was sagt die Aufsicht?</translation>
        </message>
        <message>
            <source>The two were not the same. Type it anew.</source>
            <translation>Die beiden waren nicht gleich. Neu eintippen.</translation>
        </message>
        <message>
            <source>The weld goes on meanwhile.</source>
            <translation>Die Schweißung läuft weiter.</translation>
        </message>
        <message>
            <source>The weld is not closed, so no verdict is stored yet.</source>
            <translation>Nicht abgeschlossen, daher ist noch kein Urteil gespeichert.</translation>
        </message>
        <message>
            <source>The weld was stopped, so no verdict was stored.</source>
            <translation>Abgebrochen, daher ist kein Urteil gespeichert.</translation>
        </message>
        <message>
            <source>There is no folder "%1".</source>
            <translation>Es gibt keinen Ordner „%1“.</translation>
        </message>
        <message>
            <source>There is no photo on this tablet yet.</source>
            <translation>Auf diesem Tablet ist noch kein Foto.</translation>
        </message>
        <message>
            <source>There is no such joint in this log.</source>
            <translation>Keine solche Schweißung ist in diesem Logbuch.</translation>
        </message>
        <message>
            <source>These days are not sealed.</source>
            <translation>Diese Tage sind nicht versiegelt.</translation>
        </message>
        <message>
            <source>Thickness</source>
            <translation>Dicke</translation>
        </message>
        <message>
            <source>Thickness of the sheets</source>
            <translation>Dicke der Tafeln</translation>
        </message>
        <message>
            <source>This card guides. The machine's own instructions, the standard in force, local rules and a qualified welder decide.</source>
            <translation>Diese Karte leitet an. Betriebsanleitung der Maschine, geltende Norm, örtliche Regeln und ein geprüfter Schweißer entscheiden.</translation>
        </message>
        <message>
            <source>This is practice already: people and set-up belong to the shop.</source>
            <translation>Das ist schon Üben: Personen und Einrichten gehören zum Betrieb.</translation>
        </message>
        <message>
            <source>This machine can't be kept awake from here: see its own settings.</source>
            <translation>Dieser Rechner lässt sich von hier nicht wach halten: siehe seine Einstellungen.</translation>
        </message>
        <message>
            <source>This scale can't show the tolerance. Fetch the foreman.</source>
            <translation>Diese Skala zeigt die Toleranz nicht. Meister holen.</translation>
        </message>
        <message>
            <source>This scale hardly shows the tolerance.</source>
            <translation>Diese Skala zeigt die Toleranz kaum.</translation>
        </message>
        <message>
            <source>Tick all</source>
            <translation>Alle wählen</translation>
        </message>
        <message>
            <source>Tick none</source>
            <translation>Keine wählen</translation>
        </message>
        <message>
            <source>Tick values</source>
            <translation>Werte wählen</translation>
        </message>
        <message>
            <source>Time</source>
            <translation>Zeit</translation>
        </message>
        <message>
            <source>Time goes on.</source>
            <translation>Die Zeit läuft.</translation>
        </message>
        <message>
            <source>Times</source>
            <translation>Zeiten</translation>
        </message>
        <message>
            <source>Times, bead: %1</source>
            <translation>Zeiten, Wulst: %1</translation>
        </message>
        <message>
            <source>To the list</source>
            <translation>Zur Liste</translation>
        </message>
        <message>
            <source>To the overview</source>
            <translation>Zur Übersicht</translation>
        </message>
        <message>
            <source>To the tables</source>
            <translation>Zu den Tabellen</translation>
        </message>
        <message>
            <source>Too hot, it gives off hydrogen chloride: extraction on.</source>
            <translation>Zu heiß gibt es Chlorwasserstoff ab: Absaugung ein.</translation>
        </message>
        <message>
            <source>Too hot, it gives off toxic acid gas: extraction on, do not smoke.</source>
            <translation>Zu heiß gibt es giftiges, saures Gas ab: Absaugung ein, nicht rauchen.</translation>
        </message>
        <message>
            <source>Too many wrong PINs.</source>
            <translation>Zu viele falsche PINs.</translation>
        </message>
        <message>
            <source>Took</source>
            <translation>Dauer</translation>
        </message>
        <message>
            <source>Trainee: %1</source>
            <translation>Lehrling: %1</translation>
        </message>
        <message>
            <source>Trainee: nobody was named</source>
            <translation>Lehrling: nicht genannt</translation>
        </message>
        <message>
            <source>Trial joint %1 is cut out.</source>
            <translation>Probeschweißung %1 wird ausgetrennt.</translation>
        </message>
        <message>
            <source>Trial joint %1 is not released yet.</source>
            <translation>Probe %1 ist noch nicht freigegeben.</translation>
        </message>
        <message>
            <source>Trial joint %1 is released.</source>
            <translation>Probeschweißung %1 ist freigegeben.</translation>
        </message>
        <message>
            <source>Trial joint %1 is released. Why?</source>
            <translation>Probeschweißung %1 freigeben. Warum?</translation>
        </message>
        <message>
            <source>Trial joint %1 is released: %2.</source>
            <translation>Probeschweißung %1 freigegeben: %2.</translation>
        </message>
        <message>
            <source>Trial joint %1 was not accepted.</source>
            <translation>Probe %1 wurde nicht angenommen.</translation>
        </message>
        <message>
            <source>Trouble</source>
            <translation>Störung</translation>
        </message>
        <message>
            <source>Trouble with the bench</source>
            <translation>Störung an der Bank</translation>
        </message>
        <message>
            <source>True time</source>
            <translation>Echtzeit</translation>
        </message>
        <message>
            <source>Turn the wheel evenly. Keep to the mark.</source>
            <translation>Handrad gleichmäßig drehen. Der Marke folgen.</translation>
        </message>
        <message>
            <source>Turned too far</source>
            <translation>Zu weit gedreht</translation>
        </message>
        <message>
            <source>Turned too far, bench %1</source>
            <translation>Zu weit gedreht, Bank %1</translation>
        </message>
        <message>
            <source>Two minutes without a press: the desk is closed.</source>
            <translation>Zwei Minuten ohne Druck: Das Pult ist zu.</translation>
        </message>
        <message>
            <source>Type a word or two first: the record keeps them.</source>
            <translation>Erst ein, zwei Wörter eintippen: Das Protokoll behält sie.</translation>
        </message>
        <message>
            <source>Type it again</source>
            <translation>Neu eintippen</translation>
        </message>
        <message>
            <source>Type it in</source>
            <translation>Eintippen</translation>
        </message>
        <message>
            <source>Type readings and forces</source>
            <translation>Werte und Kräfte eintippen</translation>
        </message>
        <message>
            <source>Types</source>
            <translation>Arten</translation>
        </message>
        <message>
            <source>Unlock</source>
            <translation>Lösen</translation>
        </message>
        <message>
            <source>Up</source>
            <translation>Hinauf</translation>
        </message>
        <message>
            <source>Valley between the beads, above the sheet's surface.</source>
            <translation>Kerbgrund zwischen den Wülsten, über der Tafeloberfläche.</translation>
        </message>
        <message>
            <source>Values</source>
            <translation>Werte</translation>
        </message>
        <message>
            <source>Verdict</source>
            <translation>Urteil</translation>
        </message>
        <message>
            <source>Verdict: %1</source>
            <translation>Urteil: %1</translation>
        </message>
        <message>
            <source>Wait</source>
            <translation>Warten</translation>
        </message>
        <message>
            <source>Wait %1</source>
            <translation>Warten %1</translation>
        </message>
        <message>
            <source>Wait %2 before soak on %1. Two hands, one plate.</source>
            <translation>Noch %2 warten mit Anwärmen an %1. Zwei Hände, ein Heizelement.</translation>
        </message>
        <message>
            <source>Wait %2 before you begin %1. Two hands, one plate.</source>
            <translation>Vor Beginn an %1 noch %2 warten. Zwei Hände, ein Heizelement.</translation>
        </message>
        <message>
            <source>Wait for a %1 mm bead, all along, top and bottom.</source>
            <translation>Auf %1 mm Wulst warten, überall, oben und unten.</translation>
        </message>
        <message>
            <source>Watch</source>
            <translation>Schauen</translation>
        </message>
        <message>
            <source>Weld again</source>
            <translation>Neu schweißen</translation>
        </message>
        <message>
            <source>Weld card</source>
            <translation>Schweißkarte</translation>
        </message>
        <message>
            <source>Weld card, bench %1</source>
            <translation>Schweißkarte, Bank %1</translation>
        </message>
        <message>
            <source>Welder</source>
            <translation>Schweißer</translation>
        </message>
        <message>
            <source>Welders</source>
            <translation>Schweißer</translation>
        </message>
        <message>
            <source>Welds again</source>
            <translation>Ersatz für</translation>
        </message>
        <message>
            <source>What</source>
            <translation>Was</translation>
        </message>
        <message>
            <source>What I did</source>
            <translation>Was ich tat</translation>
        </message>
        <message>
            <source>What does the scale read now?</source>
            <translation>Was zeigt die Skala jetzt?</translation>
        </message>
        <message>
            <source>What fits</source>
            <translation>Was passt</translation>
        </message>
        <message>
            <source>What if</source>
            <translation>Was wenn</translation>
        </message>
        <message>
            <source>What is %1 here?</source>
            <translation>Was ist %1 hier?</translation>
        </message>
        <message>
            <source>What is done first when cooling is over?</source>
            <translation>Was kommt zuerst nach der Abkühlzeit?</translation>
        </message>
        <message>
            <source>What is done then? (step %1)</source>
            <translation>Was kommt dann? (Schritt %1)</translation>
        </message>
        <message>
            <source>What is wrong here?</source>
            <translation>Was stimmt hier nicht?</translation>
        </message>
        <message>
            <source>What it is</source>
            <translation>Bezeichnung</translation>
        </message>
        <message>
            <source>What it is made for</source>
            <translation>Wofür sie gemacht ist</translation>
        </message>
        <message>
            <source>What stood there stays in the record, struck.</source>
            <translation>Was dastand, bleibt durchgestrichen im Protokoll.</translation>
        </message>
        <message>
            <source>What the seal does</source>
            <translation>Was das Siegel tut</translation>
        </message>
        <message>
            <source>What the verdict found</source>
            <translation>Was das Urteil ergab</translation>
        </message>
        <message>
            <source>What was made</source>
            <translation>Was gemacht wurde</translation>
        </message>
        <message>
            <source>What was said, what was decided</source>
            <translation>Gesagt und entschieden</translation>
        </message>
        <message>
            <source>What was welded</source>
            <translation>Was geschweißt wurde</translation>
        </message>
        <message>
            <source>What was wrong</source>
            <translation>Was nicht stimmte</translation>
        </message>
        <message>
            <source>What went well</source>
            <translation>Was gut ging</translation>
        </message>
        <message>
            <source>What went wrong, and why</source>
            <translation>Was falsch lief, und warum</translation>
        </message>
        <message>
            <source>What your hands did</source>
            <translation>Was die Hände taten</translation>
        </message>
        <message>
            <source>Wheel +</source>
            <translation>Rad +</translation>
        </message>
        <message>
            <source>Wheel is locked</source>
            <translation>Handrad gesperrt</translation>
        </message>
        <message>
            <source>Wheel −</source>
            <translation>Rad −</translation>
        </message>
        <message>
            <source>When</source>
            <translation>Wann</translation>
        </message>
        <message>
            <source>Where</source>
            <translation>Wo</translation>
        </message>
        <message>
            <source>Where the bench stands.</source>
            <translation>Wo die Bank steht.</translation>
        </message>
        <message>
            <source>Where the numbers come from</source>
            <translation>Woher die Zahlen kommen</translation>
        </message>
        <message>
            <source>Where the plan's values come from</source>
            <translation>Woher die Werte des Plans kommen</translation>
        </message>
        <message>
            <source>Which attested values hold no more?</source>
            <translation>Welche bestätigten Werte gelten nicht mehr?</translation>
        </message>
        <message>
            <source>Which certificate has %1?</source>
            <translation>Welches Zeugnis hat %1?</translation>
        </message>
        <message>
            <source>Which edition was it?</source>
            <translation>Welche Ausgabe war es?</translation>
        </message>
        <message>
            <source>Which file of readings and forces?</source>
            <translation>Welche Datei mit Werten und Kräften?</translation>
        </message>
        <message>
            <source>Which foreman?</source>
            <translation>Welcher Meister?</translation>
        </message>
        <message>
            <source>Which lesson?</source>
            <translation>Welche Lektion?</translation>
        </message>
        <message>
            <source>Which name?</source>
            <translation>Welcher Name?</translation>
        </message>
        <message>
            <source>Which photo?</source>
            <translation>Welches Foto?</translation>
        </message>
        <message>
            <source>Which photo? The newest comes first.</source>
            <translation>Welches Foto? Das neueste zuerst.</translation>
        </message>
        <message>
            <source>Which procedure file?</source>
            <translation>Welche Anweisungsdatei?</translation>
        </message>
        <message>
            <source>Which procedure?</source>
            <translation>Welche Anweisung?</translation>
        </message>
        <message>
            <source>Which sheets, and how long is the seam?</source>
            <translation>Welche Tafeln, und wie lang ist die Naht?</translation>
        </message>
        <message>
            <source>Which table of these joints?</source>
            <translation>Welche Tabelle dieser Schweißungen?</translation>
        </message>
        <message>
            <source>Which value was written down wrong?</source>
            <translation>Welcher Wert ist falsch notiert?</translation>
        </message>
        <message>
            <source>Which values agree with the shop's copy?</source>
            <translation>Welche Werte stimmen mit der Norm im Betrieb überein?</translation>
        </message>
        <message>
            <source>While a joint cools its clock and its scale decide. Look at this later.</source>
            <translation>Beim Abkühlen entscheiden Uhr und Skala. Dies später ansehen.</translation>
        </message>
        <message>
            <source>Who forgot it gets another at the foreman's desk.</source>
            <translation>Vergessen? Am Meisterpult gibt es eine neue.</translation>
        </message>
        <message>
            <source>Who is it?</source>
            <translation>Wer ist es?</translation>
        </message>
        <message>
            <source>Who is new?</source>
            <translation>Wer ist neu?</translation>
        </message>
        <message>
            <source>Who is the first foreman?</source>
            <translation>Wer ist der erste Meister?</translation>
        </message>
        <message>
            <source>Whose PIN changes?</source>
            <translation>Wessen PIN ändern?</translation>
        </message>
        <message>
            <source>Whose entry changes?</source>
            <translation>Wessen Eintrag ändern?</translation>
        </message>
        <message>
            <source>Why do they hold no more?</source>
            <translation>Warum gelten sie nicht mehr?</translation>
        </message>
        <message>
            <source>Width</source>
            <translation>Breite</translation>
        </message>
        <message>
            <source>Wipe</source>
            <translation>Putzen</translation>
        </message>
        <message>
            <source>Wipe both faces of the plate. It burns.</source>
            <translation>Beide Seiten des Heizelements putzen. Sehr heiß.</translation>
        </message>
        <message>
            <source>Wipe plate</source>
            <translation>Putzen</translation>
        </message>
        <message>
            <source>With a PIN</source>
            <translation>Mit PIN</translation>
        </message>
        <message>
            <source>With one, nobody else can work in this name.</source>
            <translation>Damit arbeitet niemand sonst unter diesem Namen.</translation>
        </message>
        <message>
            <source>With the program closed, seamclock-cli people pin --forgotten gives one.</source>
            <translation>Bei beendetem Programm vergibt seamclock-cli people pin --forgotten eine.</translation>
        </message>
        <message>
            <source>Withdraw</source>
            <translation>Entziehen</translation>
        </message>
        <message>
            <source>Within</source>
            <translation>In Grenzen</translation>
        </message>
        <message>
            <source>Within limits</source>
            <translation>In den Grenzen</translation>
        </message>
        <message>
            <source>Within limits with remarks</source>
            <translation>In den Grenzen mit Vermerk</translation>
        </message>
        <message>
            <source>Without a PIN</source>
            <translation>Ohne PIN</translation>
        </message>
        <message>
            <source>Without a name</source>
            <translation>Ohne Namen</translation>
        </message>
        <message>
            <source>Words: %1 %</source>
            <translation>Schrift: %1 %</translation>
        </message>
        <message>
            <source>Worked out: the bench once more, and the joint of a steady hand.</source>
            <translation>Gerechnet: noch einmal die Bank, und die Schweißung einer ruhigen Hand.</translation>
        </message>
        <message>
            <source>Wrong row of the table</source>
            <translation>Falsche Tabellenzeile</translation>
        </message>
        <message>
            <source>Wrong sheet or setting</source>
            <translation>Tafel/Einstellung falsch</translation>
        </message>
        <message>
            <source>You are on the phone.</source>
            <translation>Am Telefon.</translation>
        </message>
        <message>
            <source>You can't see the bench. Both hands are off it.</source>
            <translation>Die Bank ist nicht zu sehen. Beide Hände sind weg.</translation>
        </message>
        <message>
            <source>You touched the edge with your hand. Plane it again.</source>
            <translation>Die Hand war an der Kante. Neu hobeln.</translation>
        </message>
        <message>
            <source>Your joint</source>
            <translation>Eigene Naht</translation>
        </message>
        <message>
            <source>Your own grade. It changes nothing of the verdict.</source>
            <translation>Eigene Bewertung. Am Urteil ändert sie nichts.</translation>
        </message>
        <message>
            <source>Your weld is looked at.</source>
            <translation>Die Schweißung wird geprüft.</translation>
        </message>
        <message>
            <source>Zero and rate come from the calibration's points.</source>
            <translation>Null und Rate kommen aus den Kalibrierpunkten.</translation>
        </message>
        <message>
            <source>[n]: the event in the log that a value comes from</source>
            <translation>[n]: das Ereignis im Logbuch, aus dem ein Wert kommt</translation>
        </message>
        <message>
            <source>[n]: the event of that joint in the log; what has no bracket stands in [1]</source>
            <translation>[n]: das Ereignis dieser Schweißung im Logbuch; was keine Klammer hat, steht in [1]</translation>
        </message>
        <message>
            <source>a bench that harms nobody</source>
            <translation>eine Bank ohne Gefahr</translation>
        </message>
        <message>
            <source>a check was left out</source>
            <translation>eine Prüfung ausgelassen</translation>
        </message>
        <message>
            <source>a copy, read only</source>
            <translation>Kopie, nur lesen</translation>
        </message>
        <message>
            <source>a fault in the bead</source>
            <translation>Fehler im Wulst</translation>
        </message>
        <message>
            <source>a foot lever</source>
            <translation>ein Fußhebel</translation>
        </message>
        <message>
            <source>a handwheel</source>
            <translation>ein Handrad</translation>
        </message>
        <message>
            <source>a line a joint</source>
            <translation>Zeile je Schweißung</translation>
        </message>
        <message>
            <source>a person's, whatever the verdict says</source>
            <translation>von einem Menschen, gleich was das Urteil sagt</translation>
        </message>
        <message>
            <source>a rate and its uncertainty; due on %1</source>
            <translation>eine Rate mit Unsicherheit; fällig am %1</translation>
        </message>
        <message>
            <source>a reading in cooling was missed</source>
            <translation>eine Ablesung beim Abkühlen fehlt</translation>
        </message>
        <message>
            <source>a remark</source>
            <translation>ein Vermerk</translation>
        </message>
        <message>
            <source>a sheet slipped</source>
            <translation>Tafel verrutscht</translation>
        </message>
        <message>
            <source>a step was set earlier</source>
            <translation>ein Schritt wurde vorverlegt</translation>
        </message>
        <message>
            <source>a step was taken back</source>
            <translation>Schritt zurückgenommen</translation>
        </message>
        <message>
            <source>a test piece broke</source>
            <translation>Prüfstück ist gebrochen</translation>
        </message>
        <message>
            <source>a test piece held</source>
            <translation>Prüfstück hat gehalten</translation>
        </message>
        <message>
            <source>a touch on the name</source>
            <translation>Namen antippen</translation>
        </message>
        <message>
            <source>a wrong tap</source>
            <translation>falsch getippt</translation>
        </message>
        <message>
            <source>about %1</source>
            <translation>etwa %1</translation>
        </message>
        <message>
            <source>above 0</source>
            <translation>über 0</translation>
        </message>
        <message>
            <source>above 0 mm</source>
            <translation>über 0 mm</translation>
        </message>
        <message>
            <source>above mm</source>
            <translation>über mm</translation>
        </message>
        <message>
            <source>accepted</source>
            <translation>angenommen</translation>
        </message>
        <message>
            <source>acid gas: extraction on</source>
            <translation>saures Gas: Absaugung ein</translation>
        </message>
        <message>
            <source>act now</source>
            <translation>jetzt</translation>
        </message>
        <message>
            <source>after 10 min</source>
            <translation>nach 10 min</translation>
        </message>
        <message>
            <source>again: joint %1 was cut out</source>
            <translation>neu: Schweißung %1 ausgetrennt</translation>
        </message>
        <message>
            <source>against the first</source>
            <translation>gegen die erste</translation>
        </message>
        <message>
            <source>against the standard</source>
            <translation>gegen die Norm</translation>
        </message>
        <message>
            <source>aim of soak's pressure</source>
            <translation>Ziel des Anwärmdrucks</translation>
        </message>
        <message>
            <source>aim °C, else the middle</source>
            <translation>Ziel °C, sonst die Mitte</translation>
        </message>
        <message>
            <source>air</source>
            <translation>Luft</translation>
        </message>
        <message>
            <source>air from °C</source>
            <translation>Luft ab °C</translation>
        </message>
        <message>
            <source>align</source>
            <translation>Angleichen</translation>
        </message>
        <message>
            <source>alignment</source>
            <translation>Angleichen</translation>
        </message>
        <message>
            <source>alignment N/mm²</source>
            <translation>Angleichen N/mm²</translation>
        </message>
        <message>
            <source>alignment bead</source>
            <translation>Angleichwulst</translation>
        </message>
        <message>
            <source>alignment begun</source>
            <translation>Angleichen begonnen</translation>
        </message>
        <message>
            <source>alignment force</source>
            <translation>Angleichkraft</translation>
        </message>
        <message>
            <source>alignment is slow from</source>
            <translation>Angleichen langsam ab</translation>
        </message>
        <message>
            <source>alignment pressure</source>
            <translation>Angleichdruck</translation>
        </message>
        <message>
            <source>alignment reading</source>
            <translation>Skala Angleichen</translation>
        </message>
        <message>
            <source>alignment time</source>
            <translation>Angleichzeit</translation>
        </message>
        <message>
            <source>alignment: %1</source>
            <translation>Angleichen: %1</translation>
        </message>
        <message>
            <source>all</source>
            <translation>alle</translation>
        </message>
        <message>
            <source>all %1 values attested</source>
            <translation>alle %1 Werte bestätigt</translation>
        </message>
        <message>
            <source>all %1 were right</source>
            <translation>alle %1 stimmten</translation>
        </message>
        <message>
            <source>all four</source>
            <translation>alle vier</translation>
        </message>
        <message>
            <source>all joints again</source>
            <translation>wieder alle</translation>
        </message>
        <message>
            <source>all springs, N for each mm of closing</source>
            <translation>alle Federn, N je mm Schließweg</translation>
        </message>
        <message>
            <source>allowed</source>
            <translation>erlaubt</translation>
        </message>
        <message>
            <source>allowed %1 to %2 %3</source>
            <translation>erlaubt %1 bis %2 %3</translation>
        </message>
        <message>
            <source>allowed %1 to %2 °C</source>
            <translation>erlaubt %1 bis %2 °C</translation>
        </message>
        <message>
            <source>allowed up to %1 %2</source>
            <translation>erlaubt bis %1 %2</translation>
        </message>
        <message>
            <source>along the seam: %1</source>
            <translation>längs der Naht: %1</translation>
        </message>
        <message>
            <source>along the straight line</source>
            <translation>auf der Geraden</translation>
        </message>
        <message>
            <source>along the table's straight line</source>
            <translation>auf der Geraden der Tabelle</translation>
        </message>
        <message>
            <source>an attestation</source>
            <translation>eine Bestätigung</translation>
        </message>
        <message>
            <source>an empty form</source>
            <translation>leeres Formular</translation>
        </message>
        <message>
            <source>and %1 more, under Attest</source>
            <translation>und %1 weitere, unter Bestätigen</translation>
        </message>
        <message>
            <source>and back: it goes on</source>
            <translation>und zurück: es geht weiter</translation>
        </message>
        <message>
            <source>and its report</source>
            <translation>und der Bericht</translation>
        </message>
        <message>
            <source>another reason</source>
            <translation>anderer Grund</translation>
        </message>
        <message>
            <source>as it was handed out</source>
            <translation>wie ausgegeben</translation>
        </message>
        <message>
            <source>as it was kept</source>
            <translation>wie übernommen</translation>
        </message>
        <message>
            <source>as set here</source>
            <translation>wie hier</translation>
        </message>
        <message>
            <source>at least</source>
            <translation>mindestens</translation>
        </message>
        <message>
            <source>at least %1</source>
            <translation>mindestens %1</translation>
        </message>
        <message>
            <source>at most</source>
            <translation>höchstens</translation>
        </message>
        <message>
            <source>at most %1</source>
            <translation>höchstens %1</translation>
        </message>
        <message>
            <source>at most %1 %2</source>
            <translation>höchstens %1 %2</translation>
        </message>
        <message>
            <source>at most %1 mm</source>
            <translation>höchstens %1 mm</translation>
        </message>
        <message>
            <source>at the band's end</source>
            <translation>am Bereichsende</translation>
        </message>
        <message>
            <source>at the signal</source>
            <translation>beim Signal</translation>
        </message>
        <message>
            <source>attested by %1</source>
            <translation>bestätigt von %1</translation>
        </message>
        <message>
            <source>attested by the shop</source>
            <translation>vom Betrieb bestätigt</translation>
        </message>
        <message>
            <source>away from the bench</source>
            <translation>weg von der Bank</translation>
        </message>
        <message>
            <source>back</source>
            <translation>hinten</translation>
        </message>
        <message>
            <source>back to</source>
            <translation>zurück zu</translation>
        </message>
        <message>
            <source>back to the bench</source>
            <translation>zurück zur Bank</translation>
        </message>
        <message>
            <source>back to the desk</source>
            <translation>zurück zum Pult</translation>
        </message>
        <message>
            <source>back to the job</source>
            <translation>zurück zum Auftrag</translation>
        </message>
        <message>
            <source>back to the list</source>
            <translation>zurück zur Liste</translation>
        </message>
        <message>
            <source>back to the tables</source>
            <translation>zurück zu den Tabellen</translation>
        </message>
        <message>
            <source>back to the weld</source>
            <translation>zurück zur Schweißung</translation>
        </message>
        <message>
            <source>backed off after overshoot</source>
            <translation>zu weit, zurückgedreht</translation>
        </message>
        <message>
            <source>bars opened under a loaded spring</source>
            <translation>Balken bei gespannter Feder geöffnet</translation>
        </message>
        <message>
            <source>batch %1</source>
            <translation>Charge %1</translation>
        </message>
        <message>
            <source>batch of sheet 1</source>
            <translation>Charge Tafel 1</translation>
        </message>
        <message>
            <source>batch of sheet 2</source>
            <translation>Charge Tafel 2</translation>
        </message>
        <message>
            <source>batch, first sheet</source>
            <translation>Charge, erste Tafel</translation>
        </message>
        <message>
            <source>batch, second sheet</source>
            <translation>Charge, zweite Tafel</translation>
        </message>
        <message>
            <source>battery</source>
            <translation>Akku</translation>
        </message>
        <message>
            <source>bead</source>
            <translation>Wulst</translation>
        </message>
        <message>
            <source>bead %1 mm</source>
            <translation>Wulst %1 mm</translation>
        </message>
        <message>
            <source>bead K</source>
            <translation>K-Wert</translation>
        </message>
        <message>
            <source>bead at %1: %2</source>
            <translation>Wulst bei %1: %2</translation>
        </message>
        <message>
            <source>bead at least</source>
            <translation>Wulst mindestens</translation>
        </message>
        <message>
            <source>bead height</source>
            <translation>Wulsthöhe</translation>
        </message>
        <message>
            <source>bead is slow</source>
            <translation>Wulst langsam</translation>
        </message>
        <message>
            <source>bead missing at one end</source>
            <translation>Wulst fehlt an einem Ende</translation>
        </message>
        <message>
            <source>bead mm</source>
            <translation>Wulst mm</translation>
        </message>
        <message>
            <source>bead not measured</source>
            <translation>Wulst nicht gemessen</translation>
        </message>
        <message>
            <source>bead stands after</source>
            <translation>Wulst steht nach</translation>
        </message>
        <message>
            <source>bead stands, at %1</source>
            <translation>Wulst steht, auf %1</translation>
        </message>
        <message>
            <source>bead width</source>
            <translation>Wulstbreite</translation>
        </message>
        <message>
            <source>bead's height.</source>
            <translation>Wulsthöhe.</translation>
        </message>
        <message>
            <source>bead, grade, decisions</source>
            <translation>Wulst, Bewertung, Entscheid</translation>
        </message>
        <message>
            <source>bead: %1</source>
            <translation>Wulst: %1</translation>
        </message>
        <message>
            <source>bead: front %1, back %2 mm</source>
            <translation>Wulst: vorn %1, hinten %2 mm</translation>
        </message>
        <message>
            <source>before every weld</source>
            <translation>vor jeder Naht</translation>
        </message>
        <message>
            <source>before: %1</source>
            <translation>vorher: %1</translation>
        </message>
        <message>
            <source>begun by %1</source>
            <translation>begonnen von %1</translation>
        </message>
        <message>
            <source>being looked at</source>
            <translation>Prüfung</translation>
        </message>
        <message>
            <source>being prepared</source>
            <translation>Vorbereitung</translation>
        </message>
        <message>
            <source>being released</source>
            <translation>Ausspannen</translation>
        </message>
        <message>
            <source>bench</source>
            <translation>Bank</translation>
        </message>
        <message>
            <source>bench %1</source>
            <translation>Bank %1</translation>
        </message>
        <message>
            <source>bench %1 · seams to %2 mm · sheets %3 to %4 mm</source>
            <translation>Bank %1 · Nähte bis %2 mm · Tafeln %3 bis %4 mm</translation>
        </message>
        <message>
            <source>bends</source>
            <translation>biegt</translation>
        </message>
        <message>
            <source>between a band's ends</source>
            <translation>zwischen Bereichsenden</translation>
        </message>
        <message>
            <source>both sheets, both sides</source>
            <translation>beide Tafeln, beide Seiten</translation>
        </message>
        <message>
            <source>both stay in the record</source>
            <translation>beides bleibt im Protokoll</translation>
        </message>
        <message>
            <source>both, and chips off</source>
            <translation>beide, Späne weg</translation>
        </message>
        <message>
            <source>breaks</source>
            <translation>bricht</translation>
        </message>
        <message>
            <source>broken off: the program ended in mid-weld</source>
            <translation>abgebrochen: das Programm endete mitten darin</translation>
        </message>
        <message>
            <source>build-up</source>
            <translation>Druckaufbau</translation>
        </message>
        <message>
            <source>build-up late</source>
            <translation>Druckaufbau spät</translation>
        </message>
        <message>
            <source>build-up s</source>
            <translation>Druckaufbau s</translation>
        </message>
        <message>
            <source>by</source>
            <translation>von</translation>
        </message>
        <message>
            <source>by PIN</source>
            <translation>mit PIN</translation>
        </message>
        <message>
            <source>by a model of heat in the sheet, no measurement and no part of the verdict</source>
            <translation>aus einem Modell der Wärme in der Tafel, keine Messung und kein Teil des Urteils</translation>
        </message>
        <message>
            <source>by a word</source>
            <translation>nach einem Wort</translation>
        </message>
        <message>
            <source>by bead</source>
            <translation>nach Wulst</translation>
        </message>
        <message>
            <source>by his PIN, then go on</source>
            <translation>mit PIN, dann weiter</translation>
        </message>
        <message>
            <source>by the first event [1], unless told</source>
            <translation>aus Ereignis [1], wenn nichts dabeisteht</translation>
        </message>
        <message>
            <source>by the plan</source>
            <translation>laut Plan</translation>
        </message>
        <message>
            <source>by the rules now: %1</source>
            <translation>nach heutigen Regeln: %1</translation>
        </message>
        <message>
            <source>by the upper end of the table's band</source>
            <translation>nach dem oberen Ende des Tabellenbereichs</translation>
        </message>
        <message>
            <source>by the wall clock</source>
            <translation>nach der Uhrzeit</translation>
        </message>
        <message>
            <source>by your own eye</source>
            <translation>nach Augenschein</translation>
        </message>
        <message>
            <source>calibrated %1, due %2</source>
            <translation>kalibriert %1, fällig %2</translation>
        </message>
        <message>
            <source>calibration due on %1</source>
            <translation>Kalibrierung fällig am %1</translation>
        </message>
        <message>
            <source>can't be read</source>
            <translation>nicht lesbar</translation>
        </message>
        <message>
            <source>certificate expired</source>
            <translation>Zeugnis abgelaufen</translation>
        </message>
        <message>
            <source>certificate for other sheets</source>
            <translation>Zeugnis für andere Tafeln</translation>
        </message>
        <message>
            <source>change it</source>
            <translation>ändern</translation>
        </message>
        <message>
            <source>changeover</source>
            <translation>Umstellen</translation>
        </message>
        <message>
            <source>changeover late</source>
            <translation>Umstellen zu lang</translation>
        </message>
        <message>
            <source>changeover s</source>
            <translation>Umstellen s</translation>
        </message>
        <message>
            <source>changeover too late</source>
            <translation>Umstellen zu lang</translation>
        </message>
        <message>
            <source>class %1: air from °C</source>
            <translation>Klasse %1: Luft ab °C</translation>
        </message>
        <message>
            <source>clock jumped</source>
            <translation>Uhr sprang</translation>
        </message>
        <message>
            <source>closed as %1</source>
            <translation>abgeschlossen als %1</translation>
        </message>
        <message>
            <source>closed: %1</source>
            <translation>abgeschlossen: %1</translation>
        </message>
        <message>
            <source>cold</source>
            <translation>kalt</translation>
        </message>
        <message>
            <source>cold plate</source>
            <translation>zu kalt</translation>
        </message>
        <message>
            <source>cold skin</source>
            <translation>Haut kalt</translation>
        </message>
        <message>
            <source>colder</source>
            <translation>kälter</translation>
        </message>
        <message>
            <source>common practice, no source</source>
            <translation>übliche Praxis, keine Quelle</translation>
        </message>
        <message>
            <source>cooling</source>
            <translation>Abkühlen</translation>
        </message>
        <message>
            <source>cooling for each kelvin</source>
            <translation>Abkühlen je Kelvin</translation>
        </message>
        <message>
            <source>cooling is over</source>
            <translation>Abkühlzeit ist um</translation>
        </message>
        <message>
            <source>cooling min</source>
            <translation>Abkühlen min</translation>
        </message>
        <message>
            <source>cooling over</source>
            <translation>Abkühlzeit um</translation>
        </message>
        <message>
            <source>cooling, by the shop's temperature</source>
            <translation>Abkühlen, nach Hallentemperatur</translation>
        </message>
        <message>
            <source>cooling: %1 left</source>
            <translation>Abkühlen: noch %1</translation>
        </message>
        <message>
            <source>could not be done: %1</source>
            <translation>ging nicht: %1</translation>
        </message>
        <message>
            <source>count none of it</source>
            <translation>nichts davon zählen</translation>
        </message>
        <message>
            <source>count-in</source>
            <translation>Vorzählen</translation>
        </message>
        <message>
            <source>cut out</source>
            <translation>austrennen</translation>
        </message>
        <message>
            <source>damaged: %1</source>
            <translation>beschädigt: %1</translation>
        </message>
        <message>
            <source>dark</source>
            <translation>dunkel</translation>
        </message>
        <message>
            <source>dark, light, high contrast</source>
            <translation>dunkel, hell, starker Kontrast</translation>
        </message>
        <message>
            <source>day</source>
            <translation>Tag</translation>
        </message>
        <message>
            <source>decimal sign %1</source>
            <translation>Dezimalzeichen %1</translation>
        </message>
        <message>
            <source>decision</source>
            <translation>Entscheidung</translation>
        </message>
        <message>
            <source>digits typed: %1</source>
            <translation>Ziffern getippt: %1</translation>
        </message>
        <message>
            <source>dirt in it</source>
            <translation>Schmutz</translation>
        </message>
        <message>
            <source>done</source>
            <translation>fertig</translation>
        </message>
        <message>
            <source>done</source>
            <comment>beside what was set</comment>
            <translation>Ist</translation>
        </message>
        <message>
            <source>done on, like 2030-01-07</source>
            <translation>gemacht am, wie 2030-01-07</translation>
        </message>
        <message>
            <source>drag</source>
            <translation>Schleppkraft</translation>
        </message>
        <message>
            <source>drag as read</source>
            <translation>Skala Schleppkraft</translation>
        </message>
        <message>
            <source>drag read with the sheet clamped</source>
            <translation>Schleppkraft mit gespannter Tafel abgelesen</translation>
        </message>
        <message>
            <source>draught</source>
            <translation>Zugluft</translation>
        </message>
        <message>
            <source>drawing</source>
            <translation>Zeichnung</translation>
        </message>
        <message>
            <source>due in %1</source>
            <translation>fällig in %1</translation>
        </message>
        <message>
            <source>due on</source>
            <translation>fällig am</translation>
        </message>
        <message>
            <source>e.g. another plate</source>
            <translation>z. B. neues Heizelement</translation>
        </message>
        <message>
            <source>each sheet lost</source>
            <translation>jede Tafel verlor</translation>
        </message>
        <message>
            <source>edges</source>
            <translation>Kanten</translation>
        </message>
        <message>
            <source>edges meet in parallel</source>
            <translation>Kanten liegen parallel an</translation>
        </message>
        <message>
            <source>edges planed, clean, not touched</source>
            <translation>Kanten gehobelt, sauber, nicht angefasst</translation>
        </message>
        <message>
            <source>edition</source>
            <translation>Ausgabe</translation>
        </message>
        <message>
            <source>enter a name</source>
            <translation>Namen eingeben</translation>
        </message>
        <message>
            <source>enters people, seals, decides; has a PIN</source>
            <translation>trägt ein, siegelt, entscheidet; mit PIN</translation>
        </message>
        <message>
            <source>even rise to</source>
            <translation>stetig bis</translation>
        </message>
        <message>
            <source>evenly to %1</source>
            <translation>stetig bis %1</translation>
        </message>
        <message>
            <source>event</source>
            <translation>Ereignis</translation>
        </message>
        <message>
            <source>event %1</source>
            <translation>Ereignis %1</translation>
        </message>
        <message>
            <source>event %1 taken back</source>
            <translation>Ereignis %1 zurückgenommen</translation>
        </message>
        <message>
            <source>event %1 was %2 earlier</source>
            <translation>Ereignis %1 war %2 früher</translation>
        </message>
        <message>
            <source>event %1, %2: was %3, is %4 (%5)</source>
            <translation>Ereignis %1, %2: war %3, ist %4 (%5)</translation>
        </message>
        <message>
            <source>face %1</source>
            <translation>Fläche %1</translation>
        </message>
        <message>
            <source>faces</source>
            <translation>Fügen</translation>
        </message>
        <message>
            <source>faces in line</source>
            <translation>Versatzgrenze</translation>
        </message>
        <message>
            <source>faces out of line</source>
            <translation>Versatz</translation>
        </message>
        <message>
            <source>faces out of line.</source>
            <translation>Versatz der Tafeln.</translation>
        </message>
        <message>
            <source>faces together</source>
            <translation>Flächen zusammen</translation>
        </message>
        <message>
            <source>factor, floor and cap</source>
            <translation>Faktor, Unter-, Obergrenze</translation>
        </message>
        <message>
            <source>factors of 1, s, s² and so on</source>
            <translation>Faktoren von 1, s, s² und so weiter</translation>
        </message>
        <message>
            <source>film</source>
            <translation>Folie</translation>
        </message>
        <message>
            <source>film off, edges planed</source>
            <translation>Folie ab, Kanten gehobelt</translation>
        </message>
        <message>
            <source>finished</source>
            <translation>fertig</translation>
        </message>
        <message>
            <source>first and last name</source>
            <translation>Vor- und Nachname</translation>
        </message>
        <message>
            <source>first bench %1</source>
            <translation>erst Bank %1</translation>
        </message>
        <message>
            <source>first gap, times the thickness</source>
            <translation>erster Abstand, mal Dicke</translation>
        </message>
        <message>
            <source>first sheet clamped evenly</source>
            <translation>erste Tafel gleichmäßig gespannt</translation>
        </message>
        <message>
            <source>folder</source>
            <translation>Ordner</translation>
        </message>
        <message>
            <source>for a %1 mm bead</source>
            <translation>bis %1 mm Wulst</translation>
        </message>
        <message>
            <source>for programs</source>
            <translation>für Programme</translation>
        </message>
        <message>
            <source>force</source>
            <translation>Kraft</translation>
        </message>
        <message>
            <source>force N</source>
            <translation>Kraft N</translation>
        </message>
        <message>
            <source>force in cooling</source>
            <translation>Kraft beim Abkühlen</translation>
        </message>
        <message>
            <source>foreman</source>
            <translation>Meister</translation>
        </message>
        <message>
            <source>foreman without a PIN here</source>
            <translation>Meister, hier ohne PIN</translation>
        </message>
        <message>
            <source>foreman, by PIN</source>
            <translation>Meister, mit PIN</translation>
        </message>
        <message>
            <source>formula</source>
            <translation>Formel</translation>
        </message>
        <message>
            <source>found</source>
            <translation>Befund</translation>
        </message>
        <message>
            <source>free</source>
            <translation>frei</translation>
        </message>
        <message>
            <source>free, next:</source>
            <translation>frei, nächste:</translation>
        </message>
        <message>
            <source>from</source>
            <translation>aus</translation>
        </message>
        <message>
            <source>from %1</source>
            <translation>ab %1</translation>
        </message>
        <message>
            <source>from %1 °C</source>
            <translation>ab %1 °C</translation>
        </message>
        <message>
            <source>from a file</source>
            <translation>aus einer Datei</translation>
        </message>
        <message>
            <source>from memory: not attested</source>
            <translation>aus dem Kopf: nicht bestätigt</translation>
        </message>
        <message>
            <source>from mm</source>
            <translation>ab mm</translation>
        </message>
        <message>
            <source>from the job</source>
            <translation>aus dem Auftrag</translation>
        </message>
        <message>
            <source>from when it shows its heat</source>
            <translation>ab Erreichen der Temperatur</translation>
        </message>
        <message>
            <source>front</source>
            <translation>vorn</translation>
        </message>
        <message>
            <source>gap</source>
            <translation>Abstand</translation>
        </message>
        <message>
            <source>gap at most</source>
            <translation>Spalt max.</translation>
        </message>
        <message>
            <source>gap between the edges</source>
            <translation>Spalt der Kanten</translation>
        </message>
        <message>
            <source>gap between the tables</source>
            <translation>Abstand der Tische</translation>
        </message>
        <message>
            <source>gap for the second sheet</source>
            <translation>Abstand für Tafel 2</translation>
        </message>
        <message>
            <source>gap opened for the second sheet</source>
            <translation>Abstand für die zweite Tafel geöffnet</translation>
        </message>
        <message>
            <source>gap set, the same front and back</source>
            <translation>Abstand gestellt, vorn wie hinten</translation>
        </message>
        <message>
            <source>gap × 2</source>
            <translation>Abst. × 2</translation>
        </message>
        <message>
            <source>get ready</source>
            <translation>bereithalten</translation>
        </message>
        <message>
            <source>grade</source>
            <translation>Bewertung</translation>
        </message>
        <message>
            <source>graded by %1: %2</source>
            <translation>bewertet nach %1: %2</translation>
        </message>
        <message>
            <source>greatest force it holds N</source>
            <translation>größte haltbare Kraft N</translation>
        </message>
        <message>
            <source>had left</source>
            <translation>war weg</translation>
        </message>
        <message>
            <source>half cooling</source>
            <translation>halbe Abkühlzeit</translation>
        </message>
        <message>
            <source>half cooling from mm</source>
            <translation>halbe Abkühlzeit ab mm</translation>
        </message>
        <message>
            <source>has none here</source>
            <translation>hat hier keine</translation>
        </message>
        <message>
            <source>heat in the sheet, estimated</source>
            <translation>Wärme in der Tafel, geschätzt</translation>
        </message>
        <message>
            <source>heated plate that hangs there: its name or mark</source>
            <translation>Heizelement an der Bank: Name oder Zeichen</translation>
        </message>
        <message>
            <source>held against this paper it shows whether the log was changed</source>
            <translation>mit diesem Papier verglichen zeigt es, ob das Logbuch geändert wurde</translation>
        </message>
        <message>
            <source>held against this paper they show whether the log was changed</source>
            <translation>mit diesem Papier verglichen zeigen sie, ob das Logbuch geändert wurde</translation>
        </message>
        <message>
            <source>high</source>
            <translation>hoch</translation>
        </message>
        <message>
            <source>high contrast</source>
            <translation>starker Kontrast</translation>
        </message>
        <message>
            <source>hollow</source>
            <translation>hohl</translation>
        </message>
        <message>
            <source>hot</source>
            <translation>heiß</translation>
        </message>
        <message>
            <source>hot faces pulled apart</source>
            <translation>heiße Flächen getrennt</translation>
        </message>
        <message>
            <source>if one is not</source>
            <translation>wenn eins fehlt</translation>
        </message>
        <message>
            <source>if you like</source>
            <translation>freiwillig</translation>
        </message>
        <message>
            <source>in</source>
            <translation>rein</translation>
        </message>
        <message>
            <source>in alignment</source>
            <translation>Angleichen</translation>
        </message>
        <message>
            <source>in build-up</source>
            <translation>Druckaufbau</translation>
        </message>
        <message>
            <source>in changeover</source>
            <translation>Umstellen</translation>
        </message>
        <message>
            <source>in cooling</source>
            <translation>beim Abkühlen</translation>
        </message>
        <message>
            <source>in line</source>
            <translation>bündig</translation>
        </message>
        <message>
            <source>in soak</source>
            <translation>Anwärmen</translation>
        </message>
        <message>
            <source>in the plan: %1 N</source>
            <translation>im Plan: %1 N</translation>
        </message>
        <message>
            <source>in the shop, by the plan</source>
            <translation>in der Halle, laut Plan</translation>
        </message>
        <message>
            <source>in this bench's order</source>
            <translation>in der Folge dieser Bank</translation>
        </message>
        <message>
            <source>incomplete</source>
            <translation>unvollständig</translation>
        </message>
        <message>
            <source>into a file</source>
            <translation>in eine Datei</translation>
        </message>
        <message>
            <source>into the documents</source>
            <translation>in die Dokumente</translation>
        </message>
        <message>
            <source>it burns: keep it guarded</source>
            <translation>verbrennt: gesichert halten</translation>
        </message>
        <message>
            <source>it is in the record</source>
            <translation>es steht im Protokoll</translation>
        </message>
        <message>
            <source>it leaks</source>
            <translation>undicht</translation>
        </message>
        <message>
            <source>it stays</source>
            <translation>bleibt so</translation>
        </message>
        <message>
            <source>it was</source>
            <translation>war es</translation>
        </message>
        <message>
            <source>it will be cut out</source>
            <translation>wird ausgetrennt</translation>
        </message>
        <message>
            <source>it will be in the record</source>
            <translation>es kommt ins Protokoll</translation>
        </message>
        <message>
            <source>its end, %1</source>
            <translation>Ende, %1</translation>
        </message>
        <message>
            <source>its events can't be read</source>
            <translation>Ereignisse nicht lesbar</translation>
        </message>
        <message>
            <source>its file can't be read</source>
            <translation>Datei nicht lesbar</translation>
        </message>
        <message>
            <source>its file is missing</source>
            <translation>Datei fehlt</translation>
        </message>
        <message>
            <source>its file was altered</source>
            <translation>Datei wurde verändert</translation>
        </message>
        <message>
            <source>joined, bead %1 / %2 mm</source>
            <translation>gefügt, Wulst %1 / %2 mm</translation>
        </message>
        <message>
            <source>joining</source>
            <translation>Fügen</translation>
        </message>
        <message>
            <source>joining N/mm²</source>
            <translation>Fügen N/mm²</translation>
        </message>
        <message>
            <source>joining force</source>
            <translation>Fügekraft</translation>
        </message>
        <message>
            <source>joining pressure</source>
            <translation>Fügedruck</translation>
        </message>
        <message>
            <source>joining reading</source>
            <translation>Skala beim Fügen</translation>
        </message>
        <message>
            <source>joint %1</source>
            <translation>Nr. %1</translation>
        </message>
        <message>
            <source>joint %1 begun</source>
            <translation>Schweißung %1 begonnen</translation>
        </message>
        <message>
            <source>joint, out of limits</source>
            <translation>Schweißung, außerhalb</translation>
        </message>
        <message>
            <source>keep hands out: tables crush</source>
            <translation>Hände weg: Tische quetschen</translation>
        </message>
        <message>
            <source>kept</source>
            <translation>stimmt</translation>
        </message>
        <message>
            <source>kinked</source>
            <translation>geknickt</translation>
        </message>
        <message>
            <source>learns to weld</source>
            <translation>lernt Schweißen</translation>
        </message>
        <message>
            <source>least force it holds N</source>
            <translation>kleinste haltbare Kraft N</translation>
        </message>
        <message>
            <source>left of %1 cooling</source>
            <translation>Rest von %1 Abkühlen</translation>
        </message>
        <message>
            <source>left of %1 soak</source>
            <translation>Rest von %1 Anwärmen</translation>
        </message>
        <message>
            <source>left out by the foreman: %1 (%2)</source>
            <translation>vom Meister ausgelassen: %1 (%2)</translation>
        </message>
        <message>
            <source>left out by the welder: %1 (%2)</source>
            <translation>vom Schweißer ausgelassen: %1 (%2)</translation>
        </message>
        <message>
            <source>length</source>
            <translation>Länge</translation>
        </message>
        <message>
            <source>length of the seam</source>
            <translation>Länge der Naht</translation>
        </message>
        <message>
            <source>less drag %1</source>
            <translation>− Schleppkraft %1</translation>
        </message>
        <message>
            <source>let go while soft</source>
            <translation>weich losgelassen</translation>
        </message>
        <message>
            <source>let it cool</source>
            <translation>abkühlen lassen</translation>
        </message>
        <message>
            <source>light</source>
            <translation>hell</translation>
        </message>
        <message>
            <source>limit</source>
            <translation>Grenze</translation>
        </message>
        <message>
            <source>line</source>
            <translation>Gerade</translation>
        </message>
        <message>
            <source>list and records</source>
            <translation>Liste und Protokolle</translation>
        </message>
        <message>
            <source>load cell</source>
            <translation>Kraftmessdose</translation>
        </message>
        <message>
            <source>local times</source>
            <translation>Ortszeit</translation>
        </message>
        <message>
            <source>local times, %1</source>
            <translation>Ortszeit, %1</translation>
        </message>
        <message>
            <source>lock</source>
            <translation>Sperren</translation>
        </message>
        <message>
            <source>locked</source>
            <translation>gesperrt</translation>
        </message>
        <message>
            <source>long</source>
            <translation>lang</translation>
        </message>
        <message>
            <source>longer when</source>
            <translation>länger, wenn</translation>
        </message>
        <message>
            <source>longest seam mm</source>
            <translation>längste Naht mm</translation>
        </message>
        <message>
            <source>look at the bead</source>
            <translation>Wulst ansehen</translation>
        </message>
        <message>
            <source>looked at: the bead is good</source>
            <translation>angesehen: Wulst ist gut</translation>
        </message>
        <message>
            <source>lost before the faces press N</source>
            <translation>Vorlast, bis die Flächen drücken N</translation>
        </message>
        <message>
            <source>louder than the fan?</source>
            <translation>lauter als der Lüfter?</translation>
        </message>
        <message>
            <source>low</source>
            <translation>tief</translation>
        </message>
        <message>
            <source>lower %1</source>
            <translation>unten %1</translation>
        </message>
        <message>
            <source>lowest</source>
            <translation>tiefster</translation>
        </message>
        <message>
            <source>made %1</source>
            <translation>Stand %1</translation>
        </message>
        <message>
            <source>maker %1</source>
            <translation>Hersteller %1</translation>
        </message>
        <message>
            <source>maker of sheet 1</source>
            <translation>Hersteller Tafel 1</translation>
        </message>
        <message>
            <source>maker of sheet 2</source>
            <translation>Hersteller Tafel 2</translation>
        </message>
        <message>
            <source>maker of the sheets</source>
            <translation>Hersteller der Tafeln</translation>
        </message>
        <message>
            <source>material</source>
            <translation>Werkstoff</translation>
        </message>
        <message>
            <source>material %1</source>
            <translation>Werkstoff %1</translation>
        </message>
        <message>
            <source>materials, thickness, last day</source>
            <translation>Werkstoffe, Dicke, letzter Tag</translation>
        </message>
        <message>
            <source>may fall with thickness</source>
            <translation>darf mit der Dicke fallen</translation>
        </message>
        <message>
            <source>median %1</source>
            <translation>Median %1</translation>
        </message>
        <message>
            <source>median %1, %2 to %3</source>
            <translation>Median %1, %2 bis %3</translation>
        </message>
        <message>
            <source>meet to %1, faces in line to %2</source>
            <translation>Spalt bis %1, Versatz bis %2</translation>
        </message>
        <message>
            <source>melt %1 mm deep</source>
            <translation>Schmelze %1 mm tief</translation>
        </message>
        <message>
            <source>melt after soak</source>
            <translation>Schmelze nach Anwärmen</translation>
        </message>
        <message>
            <source>melt depth, end of soak</source>
            <translation>Schmelztiefe nach Anwärmen</translation>
        </message>
        <message>
            <source>melt flow %1</source>
            <translation>Schmelzindex %1</translation>
        </message>
        <message>
            <source>melts</source>
            <translation>schmilzt</translation>
        </message>
        <message>
            <source>middle</source>
            <translation>Mitte</translation>
        </message>
        <message>
            <source>min</source>
            <translation>min</translation>
        </message>
        <message>
            <source>minutes</source>
            <translation>Minuten</translation>
        </message>
        <message>
            <source>molten at the end of soak</source>
            <translation>geschmolzen nach dem Anwärmen</translation>
        </message>
        <message>
            <source>most of soak's pressure</source>
            <translation>Höchster Anwärmdruck</translation>
        </message>
        <message>
            <source>name, role, PIN</source>
            <translation>Name, Rolle, PIN</translation>
        </message>
        <message>
            <source>name, role, PIN, has left</source>
            <translation>Name, Rolle, PIN, ist weg</translation>
        </message>
        <message>
            <source>near the back</source>
            <translation>nahe hinten</translation>
        </message>
        <message>
            <source>near the front</source>
            <translation>nahe vorn</translation>
        </message>
        <message>
            <source>never less than mm</source>
            <translation>nie weniger als mm</translation>
        </message>
        <message>
            <source>never more than mm, empty: no cap</source>
            <translation>nie mehr als mm, leer: unbegrenzt</translation>
        </message>
        <message>
            <source>no</source>
            <translation>nein</translation>
        </message>
        <message>
            <source>no calibration is on record</source>
            <translation>keine Kalibrierung eingetragen</translation>
        </message>
        <message>
            <source>no certificate noted</source>
            <translation>kein Zeugnis notiert</translation>
        </message>
        <message>
            <source>no foreman has a PIN</source>
            <translation>kein Meister hat eine PIN</translation>
        </message>
        <message>
            <source>no gauge at hand</source>
            <translation>kein Messmittel da</translation>
        </message>
        <message>
            <source>no load</source>
            <translation>ohne Last</translation>
        </message>
        <message>
            <source>no photo is kept</source>
            <translation>kein Foto übernommen</translation>
        </message>
        <message>
            <source>no sheet is in</source>
            <translation>keine Tafel drin</translation>
        </message>
        <message>
            <source>no sound</source>
            <translation>kein Ton</translation>
        </message>
        <message>
            <source>no tool at hand</source>
            <translation>kein Werkzeug da</translation>
        </message>
        <message>
            <source>no trial joint was made before</source>
            <translation>vorher wurde keine Probe geschweißt</translation>
        </message>
        <message>
            <source>no weather guard noted</source>
            <translation>kein Wetterschutz notiert</translation>
        </message>
        <message>
            <source>none</source>
            <translation>keine</translation>
        </message>
        <message>
            <source>none noted</source>
            <translation>keins notiert</translation>
        </message>
        <message>
            <source>none noted in this log</source>
            <translation>keins in diesem Logbuch notiert</translation>
        </message>
        <message>
            <source>none was due</source>
            <translation>keine fällig</translation>
        </message>
        <message>
            <source>none was kept</source>
            <translation>keins übernommen</translation>
        </message>
        <message>
            <source>none: the source lacks nothing</source>
            <translation>keine: der Quelle fehlt nichts</translation>
        </message>
        <message>
            <source>not by hand</source>
            <translation>nicht anfassen</translation>
        </message>
        <message>
            <source>not chosen yet</source>
            <translation>noch nicht gewählt</translation>
        </message>
        <message>
            <source>not finished</source>
            <translation>nicht fertig</translation>
        </message>
        <message>
            <source>not finished: %1</source>
            <translation>nicht fertig: %1</translation>
        </message>
        <message>
            <source>not given</source>
            <translation>ohne Angabe</translation>
        </message>
        <message>
            <source>not joined</source>
            <translation>nicht gefügt</translation>
        </message>
        <message>
            <source>not needed for this weld</source>
            <translation>hier nicht nötig</translation>
        </message>
        <message>
            <source>not over</source>
            <translation>läuft noch</translation>
        </message>
        <message>
            <source>not passed: %1</source>
            <translation>nicht bestanden: %1</translation>
        </message>
        <message>
            <source>not said</source>
            <translation>ohne Angabe</translation>
        </message>
        <message>
            <source>not saved</source>
            <translation>ungesichert</translation>
        </message>
        <message>
            <source>not sound by its record</source>
            <translation>laut Protokoll nicht in Ordnung</translation>
        </message>
        <message>
            <source>not there</source>
            <translation>fehlt</translation>
        </message>
        <message>
            <source>not ticked</source>
            <translation>nicht gewählt</translation>
        </message>
        <message>
            <source>notch</source>
            <translation>Kerbe</translation>
        </message>
        <message>
            <source>note %1</source>
            <translation>Notiz %1</translation>
        </message>
        <message>
            <source>nothing is changed</source>
            <translation>nichts ändert sich</translation>
        </message>
        <message>
            <source>nothing is corrected</source>
            <translation>nichts wird berichtigt</translation>
        </message>
        <message>
            <source>nothing is decided</source>
            <translation>nichts entschieden</translation>
        </message>
        <message>
            <source>nothing is kept</source>
            <translation>nichts übernommen</translation>
        </message>
        <message>
            <source>nothing is opened</source>
            <translation>nichts wird begonnen</translation>
        </message>
        <message>
            <source>nothing is read</source>
            <translation>nichts wird gelesen</translation>
        </message>
        <message>
            <source>nothing is written</source>
            <translation>nichts wird geschrieben</translation>
        </message>
        <message>
            <source>nothing yet</source>
            <translation>noch nichts</translation>
        </message>
        <message>
            <source>noticed at %1</source>
            <translation>bemerkt bei %1</translation>
        </message>
        <message>
            <source>now true time</source>
            <translation>jetzt Echtzeit</translation>
        </message>
        <message>
            <source>now: %1</source>
            <translation>jetzt: %1</translation>
        </message>
        <message>
            <source>number %1, %2 %3</source>
            <translation>Nummer %1, %2 %3</translation>
        </message>
        <message>
            <source>number not written on it yet</source>
            <translation>Nummer steht noch nicht darauf</translation>
        </message>
        <message>
            <source>number on the sheet</source>
            <translation>Nummer auf der Tafel</translation>
        </message>
        <message>
            <source>number, seam, batch, remark, name</source>
            <translation>Nummer, Naht, Charge, Vermerk, Name</translation>
        </message>
        <message>
            <source>of %1</source>
            <translation>von %1</translation>
        </message>
        <message>
            <source>of %1 s</source>
            <translation>von %1 s</translation>
        </message>
        <message>
            <source>of the bead, in mm</source>
            <translation>des Wulstes, in mm</translation>
        </message>
        <message>
            <source>of the changeover's front</source>
            <translation>der Front beim Umstellen</translation>
        </message>
        <message>
            <source>of the guide</source>
            <translation>des Handbuchs</translation>
        </message>
        <message>
            <source>of the weld on this bench</source>
            <translation>der Schweißung auf dieser Bank</translation>
        </message>
        <message>
            <source>of this table</source>
            <translation>dieser Tabelle</translation>
        </message>
        <message>
            <source>off</source>
            <translation>daneben</translation>
        </message>
        <message>
            <source>off the line N</source>
            <translation>neben der Geraden N</translation>
        </message>
        <message>
            <source>on its face: it burns</source>
            <translation>an der Fläche: sehr heiß</translation>
        </message>
        <message>
            <source>on scale %1</source>
            <translation>an Skala %1</translation>
        </message>
        <message>
            <source>on the scale, no load</source>
            <translation>auf der Skala, ohne Last</translation>
        </message>
        <message>
            <source>on the scale, plate between</source>
            <translation>auf der Skala, Heizelement drin</translation>
        </message>
        <message>
            <source>one end to the other</source>
            <translation>von Ende zu Ende</translation>
        </message>
        <message>
            <source>one page, PDF</source>
            <translation>eine Seite, PDF</translation>
        </message>
        <message>
            <source>one standard deviation of the rate %</source>
            <translation>eine Standardabweichung der Rate %</translation>
        </message>
        <message>
            <source>open below</source>
            <translation>unten offen</translation>
        </message>
        <message>
            <source>open welds stay</source>
            <translation>offene bleiben offen</translation>
        </message>
        <message>
            <source>operator</source>
            <translation>Bediener</translation>
        </message>
        <message>
            <source>or: turned too far</source>
            <translation>oder: zu weit gedreht</translation>
        </message>
        <message>
            <source>out</source>
            <translation>raus</translation>
        </message>
        <message>
            <source>out at %1</source>
            <translation>raus um %1</translation>
        </message>
        <message>
            <source>out of limits</source>
            <translation>außerhalb</translation>
        </message>
        <message>
            <source>out of line</source>
            <translation>Versatz</translation>
        </message>
        <message>
            <source>over %1 s</source>
            <translation>über %1 s</translation>
        </message>
        <message>
            <source>over the soak of %1</source>
            <translation>über Anwärmzeit %1</translation>
        </message>
        <message>
            <source>overheated</source>
            <translation>überhitzt</translation>
        </message>
        <message>
            <source>page %1 of %2</source>
            <translation>Seite %1 von %2</translation>
        </message>
        <message>
            <source>path of a file or folder</source>
            <translation>Pfad der Datei oder des Ordners</translation>
        </message>
        <message>
            <source>pedal</source>
            <translation>Pedal</translation>
        </message>
        <message>
            <source>people, PINs, the day's seal</source>
            <translation>Personen, PINs, Tagessiegel</translation>
        </message>
        <message>
            <source>people, day's seal</source>
            <translation>Personen, Tagessiegel</translation>
        </message>
        <message>
            <source>photo</source>
            <translation>Foto</translation>
        </message>
        <message>
            <source>photo %1, %2 bytes, SHA-256 %3</source>
            <translation>Foto %1, %2 Byte, SHA-256 %3</translation>
        </message>
        <message>
            <source>plan</source>
            <translation>Plan</translation>
        </message>
        <message>
            <source>plan replaced: %1</source>
            <translation>Plan ersetzt: %1</translation>
        </message>
        <message>
            <source>plate</source>
            <translation>Heizelement</translation>
        </message>
        <message>
            <source>plate burns, tables crush</source>
            <translation>heiß! Tische quetschen</translation>
        </message>
        <message>
            <source>plate burns: gloves on</source>
            <translation>heiß: Handschuhe an</translation>
        </message>
        <message>
            <source>plate cold or dirty</source>
            <translation>Heizelement kalt, schmutzig</translation>
        </message>
        <message>
            <source>plate drawn out while pressed</source>
            <translation>Heizelement unter Druck gezogen</translation>
        </message>
        <message>
            <source>plate faces differ</source>
            <translation>Heizelement ungleich</translation>
        </message>
        <message>
            <source>plate on its face</source>
            <translation>Heizelementfläche</translation>
        </message>
        <message>
            <source>plate out</source>
            <translation>Umstellen</translation>
        </message>
        <message>
            <source>plate read on its face</source>
            <translation>Heizelement an der Fläche gemessen</translation>
        </message>
        <message>
            <source>plate settled for ten minutes</source>
            <translation>Heizelement zehn Minuten durchgewärmt</translation>
        </message>
        <message>
            <source>plate temperature</source>
            <translation>Heizelementtemperatur</translation>
        </message>
        <message>
            <source>plate to aim at</source>
            <translation>Heizelement, Ziel</translation>
        </message>
        <message>
            <source>plate wiped</source>
            <translation>Heizelement geputzt</translation>
        </message>
        <message>
            <source>plate wiped: it burns</source>
            <translation>Heizelement geputzt: heiß</translation>
        </message>
        <message>
            <source>plate, highest °C</source>
            <translation>Heizelement max. °C</translation>
        </message>
        <message>
            <source>plate, lowest °C</source>
            <translation>Heizelement min. °C</translation>
        </message>
        <message>
            <source>power was off</source>
            <translation>Strom war weg</translation>
        </message>
        <message>
            <source>power was off for %1, by a clock that nobody confirmed</source>
            <translation>Strom war %1 weg, nach einer Uhr, die niemand bestätigt hat</translation>
        </message>
        <message>
            <source>power was off for %1, confirmed by a person</source>
            <translation>Strom war %1 weg, von einer Person bestätigt</translation>
        </message>
        <message>
            <source>power was off for %1; the clock went back</source>
            <translation>Strom war %1 weg; die Uhr ging zurück</translation>
        </message>
        <message>
            <source>practice</source>
            <translation>Übung</translation>
        </message>
        <message>
            <source>prepare</source>
            <translation>vorbereiten</translation>
        </message>
        <message>
            <source>prepare %1</source>
            <translation>%1 vorbereiten</translation>
        </message>
        <message>
            <source>press it to choose step by step</source>
            <translation>drücken, dann Schritt für Schritt</translation>
        </message>
        <message>
            <source>pressure in cooling</source>
            <translation>Druck beim Abkühlen</translation>
        </message>
        <message>
            <source>pressure ± %1</source>
            <translation>Druck ± %1</translation>
        </message>
        <message>
            <source>pressure's tolerance</source>
            <translation>Drucktoleranz</translation>
        </message>
        <message>
            <source>pressure, alignment</source>
            <translation>Druck, Angleichen</translation>
        </message>
        <message>
            <source>pressure, joining</source>
            <translation>Druck, Fügen</translation>
        </message>
        <message>
            <source>pressure, soak</source>
            <translation>Druck, Anwärmen</translation>
        </message>
        <message>
            <source>pressure, soak, aim</source>
            <translation>Druck, Anwärmen, Ziel</translation>
        </message>
        <message>
            <source>pressure, soak, at most</source>
            <translation>Druck, Anwärmen, höchstens</translation>
        </message>
        <message>
            <source>pressure, tolerance</source>
            <translation>Druck, Toleranz</translation>
        </message>
        <message>
            <source>printed %1</source>
            <translation>gedruckt %1</translation>
        </message>
        <message>
            <source>procedure</source>
            <translation>Anweisung</translation>
        </message>
        <message>
            <source>procedures, benches</source>
            <translation>Anweisungen, Bänke</translation>
        </message>
        <message>
            <source>process time %1 of %2</source>
            <translation>Prozesszeit %1 von %2</translation>
        </message>
        <message>
            <source>process time %1, %2</source>
            <translation>Prozesszeit %1, %2</translation>
        </message>
        <message>
            <source>production</source>
            <translation>Fertigung</translation>
        </message>
        <message>
            <source>program lost</source>
            <translation>Programm weg</translation>
        </message>
        <message>
            <source>protective film off</source>
            <translation>Schutzfolie ab</translation>
        </message>
        <message>
            <source>rate of spring %1, N for each %2</source>
            <translation>Rate der Feder %1, N je %2</translation>
        </message>
        <message>
            <source>read at %1</source>
            <translation>lesen bei %1</translation>
        </message>
        <message>
            <source>read it</source>
            <translation>messen</translation>
        </message>
        <message>
            <source>read on its face</source>
            <translation>an der Fläche</translation>
        </message>
        <message>
            <source>read wrong</source>
            <translation>falsch gelesen</translation>
        </message>
        <message>
            <source>reading</source>
            <translation>Skalenwert</translation>
        </message>
        <message>
            <source>reading %1</source>
            <translation>Skalenwert %1</translation>
        </message>
        <message>
            <source>reading due</source>
            <translation>Ablesen fällig</translation>
        </message>
        <message>
            <source>reading in cooling</source>
            <translation>Skala beim Abkühlen</translation>
        </message>
        <message>
            <source>reading without force, %1</source>
            <translation>Wert ohne Kraft, %1</translation>
        </message>
        <message>
            <source>readings</source>
            <translation>Skalenwerte</translation>
        </message>
        <message>
            <source>readings in cooling</source>
            <translation>Skalenwerte beim Abkühlen</translation>
        </message>
        <message>
            <source>readings stay the scale's</source>
            <translation>Skalenwerte bleiben</translation>
        </message>
        <message>
            <source>ready</source>
            <translation>bereit</translation>
        </message>
        <message>
            <source>reason</source>
            <translation>Grund</translation>
        </message>
        <message>
            <source>reason for %1: %2</source>
            <translation>Grund für %1: %2</translation>
        </message>
        <message>
            <source>reference air</source>
            <translation>Bezugsluft</translation>
        </message>
        <message>
            <source>reference air °C</source>
            <translation>Bezugsluft °C</translation>
        </message>
        <message>
            <source>release</source>
            <translation>Ausspannen</translation>
        </message>
        <message>
            <source>released</source>
            <translation>freigegeben</translation>
        </message>
        <message>
            <source>remark</source>
            <translation>Vermerk</translation>
        </message>
        <message>
            <source>remarks, reasons, photos, grading</source>
            <translation>Vermerke, Gründe, Fotos, Bewertung</translation>
        </message>
        <message>
            <source>rows 1 to %1</source>
            <translation>Zeilen 1 bis %1</translation>
        </message>
        <message>
            <source>rows 1 to %1; %2 came since</source>
            <translation>Zeilen 1 bis %1; seither %2</translation>
        </message>
        <message>
            <source>rows 1 to %1; 1 came since</source>
            <translation>Zeilen 1 bis %1; seither 1</translation>
        </message>
        <message>
            <source>rules %1 %2; it stands as it was stored</source>
            <translation>Regeln %1 %2; bleibt, wie es gespeichert wurde</translation>
        </message>
        <message>
            <source>rules %1, by the plan's limits alone</source>
            <translation>Regeln %1, nur nach den Grenzen des Plans</translation>
        </message>
        <message>
            <source>s</source>
            <translation>s</translation>
        </message>
        <message>
            <source>s, limit %1 s</source>
            <translation>s, Grenze %1 s</translation>
        </message>
        <message>
            <source>same as the sheet: %1 mm</source>
            <translation>wie die Tafel: %1 mm</translation>
        </message>
        <message>
            <source>say what you see</source>
            <translation>sagen, was auffällt</translation>
        </message>
        <message>
            <source>say why</source>
            <translation>Grund?</translation>
        </message>
        <message>
            <source>scale</source>
            <translation>Skala</translation>
        </message>
        <message>
            <source>scale again</source>
            <translation>Skala erneut</translation>
        </message>
        <message>
            <source>scale calibration overdue</source>
            <translation>Skalenkalibrierung überfällig</translation>
        </message>
        <message>
            <source>scale fine enough for the tolerance</source>
            <translation>Skala fein genug für die Toleranz</translation>
        </message>
        <message>
            <source>scale not calibrated</source>
            <translation>Skala nicht kalibriert</translation>
        </message>
        <message>
            <source>scale read without load</source>
            <translation>Skala ohne Last abgelesen</translation>
        </message>
        <message>
            <source>scale without load</source>
            <translation>Skala ohne Last</translation>
        </message>
        <message>
            <source>scale, %1: %2</source>
            <translation>Skala, %1: %2</translation>
        </message>
        <message>
            <source>scale: a mark every %1</source>
            <translation>Skala: ein Strich je %1</translation>
        </message>
        <message>
            <source>scales: 1 or 2</source>
            <translation>Skalen: 1 oder 2</translation>
        </message>
        <message>
            <source>seal it, by PIN</source>
            <translation>mit PIN versiegeln</translation>
        </message>
        <message>
            <source>seal of %1 by %2, made %3, rows 1 to %4; fingerprint %5; key %6</source>
            <translation>Siegel für %1 von %2, gemacht %3, Zeilen 1 bis %4; Fingerabdruck %5; Schlüssel %6</translation>
        </message>
        <message>
            <source>sealed as far as it is; the rest comes behind</source>
            <translation>versiegelt, so weit sie ist; der Rest kommt danach</translation>
        </message>
        <message>
            <source>seam %1</source>
            <translation>Naht %1</translation>
        </message>
        <message>
            <source>seam shielded from draught, wet and sun</source>
            <translation>Naht vor Zugluft, Nässe und Sonne geschützt</translation>
        </message>
        <message>
            <source>seam, sheet and force</source>
            <translation>Naht, Tafel und Kraft</translation>
        </message>
        <message>
            <source>second gap, times the first</source>
            <translation>zweiter Abstand, mal erster</translation>
        </message>
        <message>
            <source>second sheet clamped</source>
            <translation>zweite Tafel gespannt</translation>
        </message>
        <message>
            <source>seen in a text</source>
            <translation>in Text gesehen</translation>
        </message>
        <message>
            <source>set</source>
            <translation>Soll</translation>
        </message>
        <message>
            <source>set against done</source>
            <translation>Soll gegen Ist</translation>
        </message>
        <message>
            <source>set and done, a line a value</source>
            <translation>Soll und Ist, Zeile je Wert</translation>
        </message>
        <message>
            <source>sheet %1</source>
            <translation>Tafel %1</translation>
        </message>
        <message>
            <source>sheet %1, batch</source>
            <translation>Tafel %1, Charge</translation>
        </message>
        <message>
            <source>sheet %1, maker</source>
            <translation>Tafel %1, Hersteller</translation>
        </message>
        <message>
            <source>sheet 1</source>
            <translation>Tafel 1</translation>
        </message>
        <message>
            <source>sheet 2</source>
            <translation>Tafel 2</translation>
        </message>
        <message>
            <source>sheets and drag as now</source>
            <translation>Tafeln, Schleppkraft wie eben</translation>
        </message>
        <message>
            <source>shielded from draught and damp</source>
            <translation>vor Zugluft und Nässe geschützt</translation>
        </message>
        <message>
            <source>shop</source>
            <translation>Halle</translation>
        </message>
        <message>
            <source>shop temperature</source>
            <translation>Hallentemperatur</translation>
        </message>
        <message>
            <source>short</source>
            <translation>kurz</translation>
        </message>
        <message>
            <source>short name: stays the same</source>
            <translation>Kurzname: bleibt so</translation>
        </message>
        <message>
            <source>short name: stays the same for ever</source>
            <translation>Kurzname: bleibt für immer so</translation>
        </message>
        <message>
            <source>sign-off</source>
            <translation>Abzeichnung</translation>
        </message>
        <message>
            <source>signal heard at the bench</source>
            <translation>Signal an der Bank gehört</translation>
        </message>
        <message>
            <source>signal seen: %1</source>
            <translation>Signal gesehen: %1</translation>
        </message>
        <message>
            <source>signed by %1</source>
            <translation>gezeichnet: %1</translation>
        </message>
        <message>
            <source>signed off as %1</source>
            <translation>abgezeichnet als %1</translation>
        </message>
        <message>
            <source>signed off by %1, %2</source>
            <translation>abgezeichnet von %1, %2</translation>
        </message>
        <message>
            <source>skin after soak</source>
            <translation>Haut nach Anwärmen</translation>
        </message>
        <message>
            <source>skin at the end of soak</source>
            <translation>Haut nach dem Anwärmen</translation>
        </message>
        <message>
            <source>skin stays molten in air for</source>
            <translation>Haut bleibt an Luft flüssig</translation>
        </message>
        <message>
            <source>skin when the faces meet</source>
            <translation>Haut beim Fügen</translation>
        </message>
        <message>
            <source>skin when the faces met</source>
            <translation>Haut beim Fügen</translation>
        </message>
        <message>
            <source>skin °C</source>
            <translation>Haut °C</translation>
        </message>
        <message>
            <source>skin, end of soak</source>
            <translation>Haut nach Anwärmen</translation>
        </message>
        <message>
            <source>skin, faces meet</source>
            <translation>Haut beim Fügen</translation>
        </message>
        <message>
            <source>slow from %1</source>
            <translation>langsam ab %1</translation>
        </message>
        <message>
            <source>smallest bead in alignment</source>
            <translation>kleinster Angleichwulst</translation>
        </message>
        <message>
            <source>smallest division, %1</source>
            <translation>kleinste Teilung, %1</translation>
        </message>
        <message>
            <source>soak</source>
            <translation>Anwärmen</translation>
        </message>
        <message>
            <source>soak aims at %1</source>
            <translation>Ziel Anwärmen %1</translation>
        </message>
        <message>
            <source>soak counted before the bead stood</source>
            <translation>Anwärmen gezählt, bevor der Wulst stand</translation>
        </message>
        <message>
            <source>soak force</source>
            <translation>Anwärmkraft</translation>
        </message>
        <message>
            <source>soak from zero to drag: where it stands</source>
            <translation>Anwärmen null bis Schleppkraft: wo es steht</translation>
        </message>
        <message>
            <source>soak is over</source>
            <translation>Anwärmzeit ist um</translation>
        </message>
        <message>
            <source>soak pressure</source>
            <translation>Anwärmdruck</translation>
        </message>
        <message>
            <source>soak pressure at most</source>
            <translation>Anwärmdruck höchstens</translation>
        </message>
        <message>
            <source>soak pressure to aim at</source>
            <translation>Anwärmdruck, Ziel</translation>
        </message>
        <message>
            <source>soak reading</source>
            <translation>Skala Anwärmen</translation>
        </message>
        <message>
            <source>soak reading reached</source>
            <translation>Anwärmwert erreicht</translation>
        </message>
        <message>
            <source>soak s</source>
            <translation>Anwärmen s</translation>
        </message>
        <message>
            <source>soak's tolerance</source>
            <translation>Anwärmtoleranz</translation>
        </message>
        <message>
            <source>soak, aim N/mm²</source>
            <translation>Anwärmen, Ziel N/mm²</translation>
        </message>
        <message>
            <source>soak, at most N/mm²</source>
            <translation>Anwärmen, max. N/mm²</translation>
        </message>
        <message>
            <source>soak, longer by at most %</source>
            <translation>Anwärmen, länger um max. %</translation>
        </message>
        <message>
            <source>soak, shorter by at most % (0 or less)</source>
            <translation>Anwärmen, kürzer um max. % (0 oder weniger)</translation>
        </message>
        <message>
            <source>soft %1 mm deep</source>
            <translation>weich %1 mm tief</translation>
        </message>
        <message>
            <source>softens</source>
            <translation>erweicht</translation>
        </message>
        <message>
            <source>somebody disturbed it</source>
            <translation>jemand hat gestört</translation>
        </message>
        <message>
            <source>sound</source>
            <translation>Ton</translation>
        </message>
        <message>
            <source>sound ok</source>
            <translation>Ton gut</translation>
        </message>
        <message>
            <source>speed × %1</source>
            <translation>Tempo × %1</translation>
        </message>
        <message>
            <source>stand where you work</source>
            <translation>wo gearbeitet wird</translation>
        </message>
        <message>
            <source>standard, or the shop's own</source>
            <translation>Norm, oder betriebseigen</translation>
        </message>
        <message>
            <source>stands back: front %1, back %2 mm</source>
            <translation>steht zurück: vorn %1, hinten %2 mm</translation>
        </message>
        <message>
            <source>station</source>
            <translation>Rechner</translation>
        </message>
        <message>
            <source>stay with the weld</source>
            <translation>dabeibleiben</translation>
        </message>
        <message>
            <source>stays on the scale</source>
            <translation>bleibt auf der Skala</translation>
        </message>
        <message>
            <source>step at most %1 mm</source>
            <translation>Versatz max. %1 mm</translation>
        </message>
        <message>
            <source>still open</source>
            <translation>noch offen</translation>
        </message>
        <message>
            <source>still soft</source>
            <translation>noch weich</translation>
        </message>
        <message>
            <source>stopped</source>
            <translation>Abbruch</translation>
        </message>
        <message>
            <source>stopped: %1</source>
            <translation>Abbruch: %1</translation>
        </message>
        <message>
            <source>supervisor</source>
            <translation>Aufsicht</translation>
        </message>
        <message>
            <source>table</source>
            <translation>Tabelle</translation>
        </message>
        <message>
            <source>tables close up by</source>
            <translation>Tische rücken nach</translation>
        </message>
        <message>
            <source>tables: front %1 mm, back %2 mm</source>
            <translation>Tische: vorn %1 mm, hinten %2 mm</translation>
        </message>
        <message>
            <source>taken back</source>
            <translation>zurückgenommen</translation>
        </message>
        <message>
            <source>temperature</source>
            <translation>Temperatur</translation>
        </message>
        <message>
            <source>the bead ends it, not the clock</source>
            <translation>der Wulst beendet es, nicht die Uhr</translation>
        </message>
        <message>
            <source>the bench can't be set so</source>
            <translation>Bank lässt sich nicht so stellen</translation>
        </message>
        <message>
            <source>the bench was needed</source>
            <translation>Bank wurde gebraucht</translation>
        </message>
        <message>
            <source>the benches</source>
            <translation>den Bänken</translation>
        </message>
        <message>
            <source>the clock is right</source>
            <translation>die Uhr geht richtig</translation>
        </message>
        <message>
            <source>the clock was set</source>
            <translation>die Uhr wurde gestellt</translation>
        </message>
        <message>
            <source>the clock was set by %1</source>
            <translation>die Uhr wurde um %1 gestellt</translation>
        </message>
        <message>
            <source>the day %1</source>
            <translation>Tag %1</translation>
        </message>
        <message>
            <source>the foreman</source>
            <translation>der Meister</translation>
        </message>
        <message>
            <source>the foreman decided</source>
            <translation>der Meister entschied</translation>
        </message>
        <message>
            <source>the guide, what alarms mean</source>
            <translation>Handbuch, was Alarme heißen</translation>
        </message>
        <message>
            <source>the hand was slow</source>
            <translation>die Hand war langsam</translation>
        </message>
        <message>
            <source>the job's seams: %1</source>
            <translation>Nähte des Auftrags: %1</translation>
        </message>
        <message>
            <source>the joints that were chosen</source>
            <translation>die gewählten Schweißungen</translation>
        </message>
        <message>
            <source>the key that it types</source>
            <translation>die Taste, die er tippt</translation>
        </message>
        <message>
            <source>the log of real joints is not touched</source>
            <translation>das echte Logbuch bleibt unberührt</translation>
        </message>
        <message>
            <source>the name stays in the log</source>
            <translation>der Name bleibt im Logbuch</translation>
        </message>
        <message>
            <source>the old one is forgotten</source>
            <translation>die alte ist vergessen</translation>
        </message>
        <message>
            <source>the order stays</source>
            <translation>die Folge bleibt</translation>
        </message>
        <message>
            <source>the place can't be reached</source>
            <translation>Stelle nicht erreichbar</translation>
        </message>
        <message>
            <source>the plate stuck</source>
            <translation>Heizelement klebte</translation>
        </message>
        <message>
            <source>the reason, for the record</source>
            <translation>der Grund, fürs Protokoll</translation>
        </message>
        <message>
            <source>the ribbon is lifted</source>
            <translation>das Band hebt sich</translation>
        </message>
        <message>
            <source>the same seam</source>
            <translation>dieselbe Naht</translation>
        </message>
        <message>
            <source>the seal waits for them</source>
            <translation>das Siegel wartet auf sie</translation>
        </message>
        <message>
            <source>the spring is loaded</source>
            <translation>die Feder ist gespannt</translation>
        </message>
        <message>
            <source>the trial joint held</source>
            <translation>die Probe hat gehalten</translation>
        </message>
        <message>
            <source>the trial joint was not accepted</source>
            <translation>die Probe wurde nicht angenommen</translation>
        </message>
        <message>
            <source>the trial joint was not good</source>
            <translation>die Probe war nicht gut</translation>
        </message>
        <message>
            <source>the trial joint was not released yet</source>
            <translation>die Probe war noch nicht freigegeben</translation>
        </message>
        <message>
            <source>the upper end of the table's band</source>
            <translation>das obere Ende des Tabellenbereichs</translation>
        </message>
        <message>
            <source>the wall clock went back</source>
            <translation>die Uhr ging zurück</translation>
        </message>
        <message>
            <source>then clear of bench %1</source>
            <translation>dann stört Bank %1 nicht</translation>
        </message>
        <message>
            <source>then lock</source>
            <translation>dann sperren</translation>
        </message>
        <message>
            <source>then: plate out within %1 s</source>
            <translation>dann: Umstellen in max. %1 s</translation>
        </message>
        <message>
            <source>there is no printer</source>
            <translation>kein Drucker da</translation>
        </message>
        <message>
            <source>thick</source>
            <translation>dick</translation>
        </message>
        <message>
            <source>thickest sheet mm</source>
            <translation>dickste Tafel mm</translation>
        </message>
        <message>
            <source>thickness</source>
            <translation>Dicke</translation>
        </message>
        <message>
            <source>thickness mm</source>
            <translation>Dicke mm</translation>
        </message>
        <message>
            <source>thin</source>
            <translation>dünn</translation>
        </message>
        <message>
            <source>thin melt</source>
            <translation>Schmelze dünn</translation>
        </message>
        <message>
            <source>things</source>
            <translation>Sachen</translation>
        </message>
        <message>
            <source>thinnest sheet mm</source>
            <translation>dünnste Tafel mm</translation>
        </message>
        <message>
            <source>this job</source>
            <translation>dieser Auftrag</translation>
        </message>
        <message>
            <source>this weld is stopped</source>
            <translation>Abbruch der Schweißung</translation>
        </message>
        <message>
            <source>ticked</source>
            <translation>gewählt</translation>
        </message>
        <message>
            <source>till bead stands</source>
            <translation>bis Wulst steht</translation>
        </message>
        <message>
            <source>till the bead stands</source>
            <translation>bis der Wulst steht</translation>
        </message>
        <message>
            <source>time</source>
            <translation>Zeit</translation>
        </message>
        <message>
            <source>time of the weld</source>
            <translation>Zeit der Schweißung</translation>
        </message>
        <message>
            <source>title</source>
            <translation>Titel</translation>
        </message>
        <message>
            <source>title and date, as printed on the shop's copy</source>
            <translation>Titel und Datum, wie auf der Norm im Betrieb gedruckt</translation>
        </message>
        <message>
            <source>to %1</source>
            <translation>bis %1</translation>
        </message>
        <message>
            <source>to %1 °C</source>
            <translation>bis %1 °C</translation>
        </message>
        <message>
            <source>to [%1]</source>
            <translation>bis [%1]</translation>
        </message>
        <message>
            <source>to be cut out</source>
            <translation>auszutrennen</translation>
        </message>
        <message>
            <source>to be repaired</source>
            <translation>zu reparieren</translation>
        </message>
        <message>
            <source>to cut out</source>
            <translation>austrennen</translation>
        </message>
        <message>
            <source>to mm</source>
            <translation>bis mm</translation>
        </message>
        <message>
            <source>to repair</source>
            <translation>reparieren</translation>
        </message>
        <message>
            <source>to the list</source>
            <translation>zur Liste</translation>
        </message>
        <message>
            <source>to the signal</source>
            <translation>bis zum Signal</translation>
        </message>
        <message>
            <source>to °C</source>
            <translation>bis °C</translation>
        </message>
        <message>
            <source>told too late: %1</source>
            <translation>zu spät gemeldet: %1</translation>
        </message>
        <message>
            <source>told, not done: %1</source>
            <translation>gemeldet, nicht getan: %1</translation>
        </message>
        <message>
            <source>tolerance of build-up</source>
            <translation>Toleranz Druckaufbau</translation>
        </message>
        <message>
            <source>tolerance of soak</source>
            <translation>Toleranz Anwärmen</translation>
        </message>
        <message>
            <source>tolerance of the pressure</source>
            <translation>Drucktoleranz</translation>
        </message>
        <message>
            <source>tolerance ± N/mm²</source>
            <translation>Toleranz ± N/mm²</translation>
        </message>
        <message>
            <source>too coarse for this seam</source>
            <translation>zu grob für diese Naht</translation>
        </message>
        <message>
            <source>too small a deviation to matter here</source>
            <translation>Abweichung hier ohne Bedeutung</translation>
        </message>
        <message>
            <source>trainee</source>
            <translation>Lehrling</translation>
        </message>
        <message>
            <source>trial %1</source>
            <translation>Probe %1</translation>
        </message>
        <message>
            <source>trial joint</source>
            <translation>Probeschweißung</translation>
        </message>
        <message>
            <source>trial: %1</source>
            <translation>Probe: %1</translation>
        </message>
        <message>
            <source>trial: not released yet</source>
            <translation>Probe: noch nicht freigegeben</translation>
        </message>
        <message>
            <source>trouble with the bench</source>
            <translation>Störung an der Bank</translation>
        </message>
        <message>
            <source>true time</source>
            <translation>Echtzeit</translation>
        </message>
        <message>
            <source>turned against the scale's end</source>
            <translation>gegen das Skalenende gedreht</translation>
        </message>
        <message>
            <source>type it in</source>
            <translation>eintippen</translation>
        </message>
        <message>
            <source>type it twice</source>
            <translation>zweimal eintippen</translation>
        </message>
        <message>
            <source>typed by the keyboard</source>
            <translation>mit der Tastatur</translation>
        </message>
        <message>
            <source>typed wrong</source>
            <translation>vertippt</translation>
        </message>
        <message>
            <source>unit of the scale</source>
            <translation>Skaleneinheit</translation>
        </message>
        <message>
            <source>unit printed on it</source>
            <translation>aufgedruckte Einheit</translation>
        </message>
        <message>
            <source>unit, division, zero, rate of each spring</source>
            <translation>Einheit, Teilung, Null, Rate je Feder</translation>
        </message>
        <message>
            <source>upper %1</source>
            <translation>oben %1</translation>
        </message>
        <message>
            <source>valley above the sheet.</source>
            <translation>Kerbgrund über der Tafel.</translation>
        </message>
        <message>
            <source>value</source>
            <translation>Wert</translation>
        </message>
        <message>
            <source>verdict</source>
            <translation>Urteil</translation>
        </message>
        <message>
            <source>verdict %1</source>
            <translation>Urteil %1</translation>
        </message>
        <message>
            <source>wait</source>
            <translation>warten</translation>
        </message>
        <message>
            <source>wait %1: %2 needs you</source>
            <translation>%1 warten: %2 braucht Hände</translation>
        </message>
        <message>
            <source>warm</source>
            <translation>warm</translation>
        </message>
        <message>
            <source>warmer</source>
            <translation>wärmer</translation>
        </message>
        <message>
            <source>was %1 %2</source>
            <translation>war %1 %2</translation>
        </message>
        <message>
            <source>was not noticed</source>
            <translation>nicht bemerkt</translation>
        </message>
        <message>
            <source>weld plane at %1 °C after</source>
            <translation>Fügeebene auf %1 °C nach</translation>
        </message>
        <message>
            <source>weld plane at release</source>
            <translation>Fügeebene beim Ausspannen</translation>
        </message>
        <message>
            <source>weld plane at release about %1 °C, an estimate</source>
            <translation>Fügeebene beim Ausspannen etwa %1 °C, geschätzt</translation>
        </message>
        <message>
            <source>weld plane, release</source>
            <translation>Fügeebene, Ausspannen</translation>
        </message>
        <message>
            <source>weld plane, °C est.</source>
            <translation>Fügeebene, ca. °C</translation>
        </message>
        <message>
            <source>welded again more often than the job allows</source>
            <translation>öfter neu geschweißt, als der Auftrag erlaubt</translation>
        </message>
        <message>
            <source>welder</source>
            <translation>Schweißer</translation>
        </message>
        <message>
            <source>welds</source>
            <translation>schweißt</translation>
        </message>
        <message>
            <source>what</source>
            <translation>was</translation>
        </message>
        <message>
            <source>what people call it</source>
            <translation>wie man sie nennt</translation>
        </message>
        <message>
            <source>what presses</source>
            <translation>was drückt</translation>
        </message>
        <message>
            <source>what that is worth</source>
            <translation>was das wert ist</translation>
        </message>
        <message>
            <source>what the source says instead</source>
            <translation>was die Quelle stattdessen sagt</translation>
        </message>
        <message>
            <source>what was made</source>
            <translation>was gemacht wurde</translation>
        </message>
        <message>
            <source>wheel locked</source>
            <translation>Handrad gesperrt</translation>
        </message>
        <message>
            <source>where it stands</source>
            <translation>wo es steht</translation>
        </message>
        <message>
            <source>where nothing is urgent</source>
            <translation>wo nichts eilt</translation>
        </message>
        <message>
            <source>where something is wrong</source>
            <translation>wo etwas nicht stimmt</translation>
        </message>
        <message>
            <source>where the buttons stand</source>
            <translation>wo die Tasten stehen</translation>
        </message>
        <message>
            <source>which value</source>
            <translation>welcher Wert</translation>
        </message>
        <message>
            <source>who</source>
            <translation>wer</translation>
        </message>
        <message>
            <source>why</source>
            <translation>warum</translation>
        </message>
        <message>
            <source>widest gap between the edges when they meet mm</source>
            <translation>größter Spalt der anliegenden Kanten mm</translation>
        </message>
        <message>
            <source>width</source>
            <translation>Breite</translation>
        </message>
        <message>
            <source>width %1, height %2, K %3, faces out of line %4</source>
            <translation>Breite %1, Höhe %2, K %3, Versatz %4</translation>
        </message>
        <message>
            <source>width, over both beads.</source>
            <translation>Breite über beide Wülste.</translation>
        </message>
        <message>
            <source>wiped</source>
            <translation>geputzt</translation>
        </message>
        <message>
            <source>with a reason</source>
            <translation>mit Grund</translation>
        </message>
        <message>
            <source>with drag %1</source>
            <translation>+ Schleppkraft %1</translation>
        </message>
        <message>
            <source>with the words “%1”</source>
            <translation>mit den Worten „%1“</translation>
        </message>
        <message>
            <source>worked out from the others</source>
            <translation>aus den anderen errechnet</translation>
        </message>
        <message>
            <source>wrong sheet or setting</source>
            <translation>Tafel oder Einstellung falsch</translation>
        </message>
        <message>
            <source>yes</source>
            <translation>ja</translation>
        </message>
        <message>
            <source>yes: the source itself says so</source>
            <translation>ja: die Quelle sagt es selbst</translation>
        </message>
        <message>
            <source>zero</source>
            <translation>Null</translation>
        </message>
        <message>
            <source>zero and rate come from the calibration</source>
            <translation>Null und Rate aus der Kalibrierung</translation>
        </message>
        <message>
            <source>°C of the plate, reference air, soak's tolerance</source>
            <translation>°C am Heizelement, Bezugsluft, Anwärmtoleranz</translation>
        </message>
        <message>
            <source>–</source>
            <translation>–</translation>
        </message>
        <message>
            <source>− 1 s</source>
            <translation>− 1 s</translation>
        </message>
        <message>
            <source>− 10 s</source>
            <translation>− 10 s</translation>
        </message>
    </context>
</TS>

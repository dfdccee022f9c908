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
            <source> (as it was corrected)</source>
            <translation> (wie berichtigt)</translation>
        </message>
        <message>
            <source> (as it was noted at first)</source>
            <translation> (wie zuerst notiert)</translation>
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
            <source> · bench %1</source>
            <translation> · Bank %1</translation>
        </message>
        <message>
            <source> · put right</source>
            <translation> · berichtigt</translation>
        </message>
        <message>
            <source> · welded by %1</source>
            <translation> · geschweißt von %1</translation>
        </message>
        <message>
            <source>"%1" can't be corrected in %2; these can: %3</source>
            <translation>„%1“ lässt sich in %2 nicht berichtigen; möglich sind: %3</translation>
        </message>
        <message>
            <source>"%1" can't be read; allowed: a file that can be read</source>
            <translation>„%1“ ist nicht lesbar; erlaubt: eine lesbare Datei</translation>
        </message>
        <message>
            <source>"%1" can't be read; allowed: a table of up to %2 bytes.</source>
            <translation>„%1“ ist nicht lesbar; erlaubt: eine Tabelle bis %2 Byte.</translation>
        </message>
        <message>
            <source>"%1" can't be written (%2)</source>
            <translation>„%1“ lässt sich nicht schreiben (%2)</translation>
        </message>
        <message>
            <source>"%1" can't be written: %2; allowed: a folder that can be written</source>
            <translation>„%1“ kann nicht geschrieben werden: %2; erlaubt: ein Ordner, in den geschrieben werden kann</translation>
        </message>
        <message>
            <source>"%1" does not name a weld</source>
            <translation>„%1“ nennt keine Schweißung</translation>
        </message>
        <message>
            <source>"%1" holds %2 bytes; allowed: to %3</source>
            <translation>„%1“ enthält %2 Bytes; erlaubt: bis %3</translation>
        </message>
        <message>
            <source>"%1" holds more than small letters, digits and hyphens</source>
            <translation>„%1“ enthält mehr als Kleinbuchstaben, Ziffern und Bindestriche</translation>
        </message>
        <message>
            <source>"%1" is no cell of %2; allowed: a name that the procedure's list of cells shows</source>
            <translation>„%1“ ist kein Feld von %2; erlaubt: ein Name aus der Feldliste der Anweisung</translation>
        </message>
        <message>
            <source>"%1" is no id; allowed: small letters, digits and hyphens</source>
            <translation>„%1“ ist keine Kennung; erlaubt: Kleinbuchstaben, Ziffern und Bindestriche</translation>
        </message>
        <message>
            <source>"%1" is no joint's number; allowed: 1 and up.</source>
            <translation>„%1“ ist keine Nummer einer Schweißung; erlaubt: ab 1.</translation>
        </message>
        <message>
            <source>"%1" is no test; allowed: tensile, bend</source>
            <translation>„%1“ ist kein Versuch; erlaubt: tensile, bend</translation>
        </message>
        <message>
            <source>"%1" is no value for %2; allowed: %3.</source>
            <translation>„%1“ ist kein Wert für %2; erlaubt: %3.</translation>
        </message>
        <message>
            <source>"%1" is no verdict of this program</source>
            <translation>„%1“ ist kein Urteil dieses Programms</translation>
        </message>
        <message>
            <source>"%1" is not "%2"</source>
            <translation>„%1“ ist nicht „%2“</translation>
        </message>
        <message>
            <source>"%1" is not %2</source>
            <translation>„%1“ ist nicht %2</translation>
        </message>
        <message>
            <source>"%1" is not a date like 2030-01-07</source>
            <translation>„%1“ ist kein Datum wie 2030-01-07</translation>
        </message>
        <message>
            <source>"%1" is not a date; allowed: 0000-01-01 to 9999-12-31</source>
            <translation>„%1“ ist kein Datum; erlaubt: 0000-01-01 bis 9999-12-31</translation>
        </message>
        <message>
            <source>"%1" is not a number; allowed: numbers with a dot, parted by commas</source>
            <translation>„%1“ ist keine Zahl; erlaubt: Zahlen mit Punkt, durch Kommas getrennt</translation>
        </message>
        <message>
            <source>"%1" is not a whole number for %2</source>
            <translation>„%1“ ist keine ganze Zahl für %2</translation>
        </message>
        <message>
            <source>"%1" is not in %2; allowed: a weld that the list of joints shows</source>
            <translation>„%1“ ist nicht in %2; erlaubt: eine Schweißung, die in der Liste steht</translation>
        </message>
        <message>
            <source>"%1" is not one of %2</source>
            <translation>„%1“ ist keins von %2</translation>
        </message>
        <message>
            <source>"%1" is not one of handwheel, foot_lever</source>
            <translation>„%1“ ist keins von handwheel, foot_lever</translation>
        </message>
        <message>
            <source>"%1" is not one of line, band-end</source>
            <translation>„%1“ ist keins von line, band-end</translation>
        </message>
        <message>
            <source>"%1" is not one of middle, ends, three, each_face</source>
            <translation>„%1“ ist keines von middle, ends, three, each_face</translation>
        </message>
        <message>
            <source>"%1" is not one of seen, memory, common_practice, derived</source>
            <translation>„%1“ ist keins von seen, memory, common_practice, derived</translation>
        </message>
        <message>
            <source>"%1" is not one of warmer, colder</source>
            <translation>„%1“ ist keins von warmer, colder</translation>
        </message>
        <message>
            <source>"%1" is not the plastic of joint %2; allowed: %3</source>
            <translation>„%1“ ist nicht der Kunststoff der Schweißung %2; erlaubt: %3</translation>
        </message>
        <message>
            <source>"%1" is there twice; allowed: each label once</source>
            <translation>„%1“ steht zweimal da; erlaubt: jede Bezeichnung einmal</translation>
        </message>
        <message>
            <source>"%1" is what %2 is called once it is welded again; allowed: a label that does not end so</source>
            <translation>„%1“ heißt %2, wenn sie neu geschweißt wird; erlaubt: eine Bezeichnung, die nicht so endet</translation>
        </message>
        <message>
            <source>"%1" stands twice</source>
            <translation>„%1“ steht zweimal da</translation>
        </message>
        <message>
            <source>"Seen", and go on.</source>
            <translation>„Gesehen“, und weiter.</translation>
        </message>
        <message>
            <source>"Seen". Cooling takes that much longer.</source>
            <translation>„Gesehen“. Das Abkühlen dauert um so viel länger.</translation>
        </message>
        <message>
            <source>"Stop: cut out", cut back and plane. Going on is in the record.</source>
            <translation>„Stopp: austrennen“, zurückschneiden und hobeln. Weitermachen steht im Protokoll.</translation>
        </message>
        <message>
            <source>"attested" is what a foreman says in a log, with his PIN; a file says seen, memory, common_practice or derived</source>
            <translation>„attested“ sagt ein Meister im Logbuch, mit seiner PIN; in einer Datei steht seen, memory, common_practice oder derived</translation>
        </message>
        <message>
            <source>% for each kelvin</source>
            <translation>% je Kelvin</translation>
        </message>
        <message>
            <source>%1 % a kelvin, longer when colder, %2 to %3 °C</source>
            <translation>%1 % je Kelvin, länger wenn kälter, %2 bis %3 °C</translation>
        </message>
        <message>
            <source>%1 % a kelvin, longer when warmer, %2 to %3 °C</source>
            <translation>%1 % je Kelvin, länger wenn wärmer, %2 bis %3 °C</translation>
        </message>
        <message>
            <source>%1 %2</source>
            <translation>%1 %2</translation>
        </message>
        <message>
            <source>%1 %2 coupons; allowed: 1 to %3</source>
            <translation>%1 Proben (%2); erlaubt: 1 bis %3</translation>
        </message>
        <message>
            <source>%1 %2 is not a finite number with a decimal point</source>
            <translation>%1 %2 ist keine endliche Zahl mit Dezimalpunkt</translation>
        </message>
        <message>
            <source>%1 %2 is outside %3 to %4</source>
            <translation>%1 %2 liegt außerhalb %3 bis %4</translation>
        </message>
        <message>
            <source>%1 %2 is outside %3 to %4%5</source>
            <translation>%1 %2 liegt außerhalb %3 bis %4%5</translation>
        </message>
        <message>
            <source>%1 %2 is outside: allowed %3 to %4.</source>
            <translation>%1 %2 liegt außerhalb: erlaubt %3 bis %4.</translation>
        </message>
        <message>
            <source>%1 %2 mm, %3 mm long</source>
            <translation>%1 %2 mm, %3 mm lang</translation>
        </message>
        <message>
            <source>%1 %2 would be %3 %4</source>
            <translation>%1 %2 wären %3 %4</translation>
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
            <source>%1 (%2)</source>
            <translation>%1 (%2)</translation>
        </message>
        <message>
            <source>%1 (%2) %3</source>
            <translation>%1 (%2) %3</translation>
        </message>
        <message>
            <source>%1 (from the job's file)</source>
            <translation>%1 (aus der Auftragsdatei)</translation>
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
            <source>%1 N is lost before the load cell shows anything: with calibration points it is 0 or left out</source>
            <translation>%1 N gehen verloren, bevor die Kraftmessdose etwas zeigt: mit Kalibrierpunkten ist das 0 oder bleibt weg</translation>
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
            <source>%1 There are %2 such files.</source>
            <translation>%1 Es gibt %2 solche Dateien.</translation>
        </message>
        <message>
            <source>%1 all along</source>
            <translation>%1 überall</translation>
        </message>
        <message>
            <source>%1 angles and %2 displacements for %3 bend coupons; allowed: one of either for each</source>
            <translation>%1 Winkel und %2 Wege für %3 Biegeproben; erlaubt: von einem davon je Probe einer</translation>
        </message>
        <message>
            <source>%1 as before</source>
            <translation>%1 wie vorher</translation>
        </message>
        <message>
            <source>%1 at place %2</source>
            <translation>%1 an Stelle %2</translation>
        </message>
        <message>
            <source>%1 at places %2 and %3</source>
            <translation>%1 an den Stellen %2 und %3</translation>
        </message>
        <message>
            <source>%1 attested values are withdrawn.</source>
            <translation>Bestätigung entzogen, Werte: %1.</translation>
        </message>
        <message>
            <source>%1 bend coupons; allowed: 1 to %2</source>
            <translation>%1 Biegeproben; erlaubt: 1 bis %2</translation>
        </message>
        <message>
            <source>%1 beside the shop's own log</source>
            <translation>%1 beim Logbuch des Betriebs</translation>
        </message>
        <message>
            <source>%1 by %2</source>
            <translation>%1 nach %2</translation>
        </message>
        <message>
            <source>%1 by %2, %3: %4</source>
            <translation>%1 (%2, %3): %4</translation>
        </message>
        <message>
            <source>%1 bytes are no job; allowed: up to %2</source>
            <translation>%1 Bytes sind kein Auftrag; erlaubt: bis %2</translation>
        </message>
        <message>
            <source>%1 bytes do not fit; it has room for %2</source>
            <translation>%1 Bytes passen nicht hinein; Platz ist für %2</translation>
        </message>
        <message>
            <source>%1 came %2 ms after the step before; less than %3 ms is taken for one press</source>
            <translation>%1 kam %2 ms nach dem Schritt davor; weniger als %3 ms gilt als ein Druck</translation>
        </message>
        <message>
            <source>%1 can't be kept: %2.</source>
            <translation>%1 geht nicht: %2.</translation>
        </message>
        <message>
            <source>%1 can't be meant: %2 to %3 %4.</source>
            <translation>%1 kann nicht stimmen: %2 bis %3 %4.</translation>
        </message>
        <message>
            <source>%1 can't be on bench "%2": it is on bench "%3"</source>
            <translation>%1 kann nicht auf Bank „%2“ sein: ist auf Bank „%3“</translation>
        </message>
        <message>
            <source>%1 can't be read (%2)</source>
            <translation>%1 nicht lesbar (%2)</translation>
        </message>
        <message>
            <source>%1 can't be read: %2</source>
            <translation>%1 nicht lesbar: %2</translation>
        </message>
        <message>
            <source>%1 can't be read: expected SHA-256 %2</source>
            <translation>%1 ist nicht lesbar: erwartet SHA-256 %2</translation>
        </message>
        <message>
            <source>%1 can't be read; expected SHA-256 %2</source>
            <translation>%1 ist nicht lesbar; erwartet SHA-256 %2</translation>
        </message>
        <message>
            <source>%1 can't be taken</source>
            <translation>%1 wird nicht angenommen</translation>
        </message>
        <message>
            <source>%1 can't be welded here: %2.</source>
            <translation>%1 geht hier nicht: %2.</translation>
        </message>
        <message>
            <source>%1 can't be written: %2; allowed: a folder that can be written</source>
            <translation>%1 lässt sich nicht schreiben: %2; erlaubt: ein beschreibbarer Ordner</translation>
        </message>
        <message>
            <source>%1 cells under %2 columns; allowed: one for each, a text with a comma in quotes</source>
            <translation>%1 Zellen unter %2 Spalten; erlaubt: je eine, ein Text mit Komma in Anführungszeichen</translation>
        </message>
        <message>
            <source>%1 characters are too many; allowed: 1 to %2.</source>
            <translation>%1 Zeichen sind zu viele; erlaubt: 1 bis %2.</translation>
        </message>
        <message>
            <source>%1 classes of air temperature</source>
            <translation>%1 Klassen der Lufttemperatur</translation>
        </message>
        <message>
            <source>%1 coefficients are outside 1 to %2</source>
            <translation>%1 Koeffizienten liegen außerhalb 1 bis %2</translation>
        </message>
        <message>
            <source>%1 columns; allowed: the %2 that there are</source>
            <translation>%1 Spalten; erlaubt: die %2, die es gibt</translation>
        </message>
        <message>
            <source>%1 coupons, mean %2 N/mm², scatter %3 N/mm²</source>
            <translation>%1 Proben, Mittel %2 N/mm², Streuung %3 N/mm²</translation>
        </message>
        <message>
            <source>%1 days</source>
            <translation>%1 Tage</translation>
        </message>
        <message>
            <source>%1 days; allowed: 0 to %2</source>
            <translation>%1 Tage; erlaubt: 0 bis %2</translation>
        </message>
        <message>
            <source>%1 does not fit while %2</source>
            <translation>%1 passt nicht in dieser Phase: %2</translation>
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
            <source>%1 further seams are not in this plan: it holds %2.</source>
            <translation>%1 weitere Nähte stehen nicht in diesem Plan: Er fasst %2.</translation>
        </message>
        <message>
            <source>%1 h</source>
            <translation>%1 h</translation>
        </message>
        <message>
            <source>%1 has %2 bytes; allowed: up to %3</source>
            <translation>%1 hat %2 Bytes; erlaubt: bis %3</translation>
        </message>
        <message>
            <source>%1 has %2 signs; allowed: %3</source>
            <translation>%1 hat %2 Zeichen; erlaubt: %3</translation>
        </message>
        <message>
            <source>%1 has a new PIN.</source>
            <translation>%1 hat eine neue PIN.</translation>
        </message>
        <message>
            <source>%1 has left the shop</source>
            <translation>%1 ist nicht mehr im Betrieb</translation>
        </message>
        <message>
            <source>%1 has n %2 where n %3 belongs</source>
            <translation>%1 hat n %2, wo n %3 hingehört</translation>
        </message>
        <message>
            <source>%1 has no PIN yet</source>
            <translation>%1 hat noch keine PIN</translation>
        </message>
        <message>
            <source>%1 has no key that the log knows; a new PIN, given by a foreman, makes one</source>
            <translation>%1 hat keinen Schlüssel, den das Logbuch kennt; eine neue PIN, die ein Meister vergibt, macht einen</translation>
        </message>
        <message>
            <source>%1 has no row</source>
            <translation>%1 hat keine Zeile</translation>
        </message>
        <message>
            <source>%1 holds %2 value; expected 2, with a decimal point</source>
            <translation>%1 enthält %2 Wert; erwartet: 2, mit Dezimalpunkt</translation>
        </message>
        <message>
            <source>%1 holds %2 values; expected 2, with a decimal point</source>
            <translation>%1 enthält %2 Werte; erwartet: 2, mit Dezimalpunkt</translation>
        </message>
        <message>
            <source>%1 holds %2 values; expected 2, with a decimal point (1.5, not 1,5)</source>
            <translation>%1 enthält %2 Werte; erwartet: 2, mit Dezimalpunkt (1.5, nicht 1,5)</translation>
        </message>
        <message>
            <source>%1 holds a line end or another control sign; allowed: %2</source>
            <translation>%1 enthält ein Zeilenende oder ein anderes Steuerzeichen; erlaubt: %2</translation>
        </message>
        <message>
            <source>%1 in all</source>
            <translation>gesamt %1</translation>
        </message>
        <message>
            <source>%1 in the list is not a number</source>
            <translation>%1 in der Liste ist keine Zahl</translation>
        </message>
        <message>
            <source>%1 in the list is not a text</source>
            <translation>%1 in der Liste ist kein Text</translation>
        </message>
        <message>
            <source>%1 in the list is not a whole number from %2 to %3</source>
            <translation>%1 in der Liste ist keine ganze Zahl von %2 bis %3</translation>
        </message>
        <message>
            <source>%1 in the list is not an object</source>
            <translation>%1 in der Liste ist kein Objekt</translation>
        </message>
        <message>
            <source>%1 is %2 %3; allowed: %4 to %5 %6</source>
            <translation>%1: %2 %3; erlaubt: %4 bis %5 %6</translation>
        </message>
        <message>
            <source>%1 is %2 and not decided</source>
            <translation>%1 ist %2 und nicht entschieden</translation>
        </message>
        <message>
            <source>%1 is %2, not %3</source>
            <translation>%1 ist %2, nicht %3</translation>
        </message>
        <message>
            <source>%1 is %2. What is right?</source>
            <translation>%1 ist %2. Was ist richtig?</translation>
        </message>
        <message>
            <source>%1 is %2; allowed: %3 to %4</source>
            <translation>%1: %2; erlaubt: %3 bis %4</translation>
        </message>
        <message>
            <source>%1 is above %2 %3.</source>
            <translation>%1 ist über %2 %3.</translation>
        </message>
        <message>
            <source>%1 is above joining %2</source>
            <translation>%1 liegt über joining %2</translation>
        </message>
        <message>
            <source>%1 is above soak_max %2</source>
            <translation>%1 liegt über soak_max %2</translation>
        </message>
        <message>
            <source>%1 is as it was kept</source>
            <translation>%1 ist wie abgelegt</translation>
        </message>
        <message>
            <source>%1 is before done_on %2</source>
            <translation>%1 liegt vor done_on %2</translation>
        </message>
        <message>
            <source>%1 is below %2. Keep it, turn up.</source>
            <translation>%1 ist unter %2. Gilt, dann hochdrehen.</translation>
        </message>
        <message>
            <source>%1 is below floor_mm %2</source>
            <translation>%1 liegt unter floor_mm %2</translation>
        </message>
        <message>
            <source>%1 is below min %2</source>
            <translation>%1 liegt unter min %2</translation>
        </message>
        <message>
            <source>%1 is below min_C %2</source>
            <translation>%1 liegt unter min_C %2</translation>
        </message>
        <message>
            <source>%1 is below thinnest_sheet_mm %2</source>
            <translation>%1 liegt unter thinnest_sheet_mm %2</translation>
        </message>
        <message>
            <source>%1 is finer than a thousandth of the unit</source>
            <translation>%1 ist feiner als ein Tausendstel der Einheit</translation>
        </message>
        <message>
            <source>%1 is line %2's seam already; allowed: each label once</source>
            <translation>%1 ist schon die Naht von Zeile %2; erlaubt: jede Bezeichnung einmal</translation>
        </message>
        <message>
            <source>%1 is marked</source>
            <translation>%1 ist markiert</translation>
        </message>
        <message>
            <source>%1 is missing: expected SHA-256 %2</source>
            <translation>%1 fehlt: erwartet SHA-256 %2</translation>
        </message>
        <message>
            <source>%1 is missing; expected SHA-256 %2</source>
            <translation>%1 fehlt; erwartet SHA-256 %2</translation>
        </message>
        <message>
            <source>%1 is neither; allowed: yes, no</source>
            <translation>%1 ist keins von beiden; erlaubt: yes, no</translation>
        </message>
        <message>
            <source>%1 is no demo shop and is left as it is; allowed: a folder with the mark %2</source>
            <translation>%1 ist kein Demo-Betrieb und bleibt, wie es ist; erlaubt: ein Ordner mit der Marke %2</translation>
        </message>
        <message>
            <source>%1 is no foreman; only a foreman may do that</source>
            <translation>%1 ist kein Meister; das darf nur ein Meister</translation>
        </message>
        <message>
            <source>%1 is no picture; allowed: JPEG or PNG</source>
            <translation>%1 ist kein Bild; erlaubt: JPEG oder PNG</translation>
        </message>
        <message>
            <source>%1 is not UTF-8; allowed: %2</source>
            <translation>%1 ist nicht UTF-8; erlaubt: %2</translation>
        </message>
        <message>
            <source>%1 is not a division above zero %2</source>
            <translation>%1 ist kein Strich über null %2</translation>
        </message>
        <message>
            <source>%1 is not a number; allowed %2 to %3</source>
            <translation>%1 ist keine Zahl; erlaubt %2 bis %3</translation>
        </message>
        <message>
            <source>%1 is not a number; allowed: %2, decimals after a dot</source>
            <translation>%1 ist keine Zahl; erlaubt: %2, Dezimalen nach einem Punkt</translation>
        </message>
        <message>
            <source>%1 is not a text</source>
            <translation>%1 ist kein Text</translation>
        </message>
        <message>
            <source>%1 is not a whole number; allowed %2 to %3</source>
            <translation>%1 ist keine ganze Zahl; erlaubt %2 bis %3</translation>
        </message>
        <message>
            <source>%1 is not a whole number; allowed: %2 to %3</source>
            <translation>%1 ist keine ganze Zahl; erlaubt: %2 bis %3</translation>
        </message>
        <message>
            <source>%1 is not above %2</source>
            <translation>%1 liegt nicht über %2</translation>
        </message>
        <message>
            <source>%1 is not above from_C %2</source>
            <translation>%1 liegt nicht über from_C %2</translation>
        </message>
        <message>
            <source>%1 is not above from_mm %2</source>
            <translation>%1 liegt nicht über from_mm %2</translation>
        </message>
        <message>
            <source>%1 is not above the one before</source>
            <translation>%1 liegt nicht über dem davor</translation>
        </message>
        <message>
            <source>%1 is not an object</source>
            <translation>%1 ist kein Objekt</translation>
        </message>
        <message>
            <source>%1 is not below the pressure %2 it belongs to</source>
            <translation>%1 liegt nicht unter dem Druck %2, zu dem es gehört</translation>
        </message>
        <message>
            <source>%1 is not in this log</source>
            <translation>%1 ist nicht in diesem Logbuch</translation>
        </message>
        <message>
            <source>%1 is not the header; expected reading,force_N (or reading_mm)</source>
            <translation>%1 ist nicht die Kopfzeile; erwartet: reading,force_N (oder reading_mm)</translation>
        </message>
        <message>
            <source>%1 is not the header; expected reading,force_N (or reading_mm), with a comma, not a semicolon</source>
            <translation>%1 ist nicht die Kopfzeile; erwartet: reading,force_N (oder reading_mm), mit Komma, nicht mit Strichpunkt</translation>
        </message>
        <message>
            <source>%1 is not the plastic that %2 is for; allowed: %3</source>
            <translation>%1 ist nicht der Kunststoff, für den %2 gilt; erlaubt: %3</translation>
        </message>
        <message>
            <source>%1 is not there; allowed: %2</source>
            <translation>%1 ist nicht da; erlaubt: %2</translation>
        </message>
        <message>
            <source>%1 is not too far: %2.</source>
            <translation>%1 ist nicht zu weit: %2.</translation>
        </message>
        <message>
            <source>%1 is not true or false</source>
            <translation>%1 ist weder wahr noch falsch (true, false)</translation>
        </message>
        <message>
            <source>%1 is open</source>
            <translation>%1 ist offen</translation>
        </message>
        <message>
            <source>%1 is out of range; allowed: %2</source>
            <translation>%1 liegt außerhalb; erlaubt: %2</translation>
        </message>
        <message>
            <source>%1 is outside %2 to %3</source>
            <translation>%1 liegt außerhalb %2 bis %3</translation>
        </message>
        <message>
            <source>%1 is outside %2 to %3%4</source>
            <translation>%1 liegt außerhalb %2 bis %3%4</translation>
        </message>
        <message>
            <source>%1 is outside %2.</source>
            <translation>%1 ist außerhalb: %2.</translation>
        </message>
        <message>
            <source>%1 is outside 0 to 100000</source>
            <translation>%1 liegt außerhalb 0 bis 100000</translation>
        </message>
        <message>
            <source>%1 is separated by semicolons; expected a comma between the two values and a decimal point in each</source>
            <translation>%1 ist mit Strichpunkten getrennt; erwartet: ein Komma zwischen den zwei Werten und in jedem ein Dezimalpunkt</translation>
        </message>
        <message>
            <source>%1 is separated by tabs; expected a comma between the two values</source>
            <translation>%1 ist mit Tabulatoren getrennt; erwartet: ein Komma zwischen den zwei Werten</translation>
        </message>
        <message>
            <source>%1 is the last foreman; somebody else must become one first</source>
            <translation>%1 ist der letzte Meister; erst muss ein anderer Meister werden</translation>
        </message>
        <message>
            <source>%1 is to be repaired</source>
            <translation>%1 ist nachzubessern</translation>
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
            <source>%1 joints can't be read and may hold it, too. %2</source>
            <translation>%1 Schweißungen sind nicht lesbar und können sie auch enthalten. %2</translation>
        </message>
        <message>
            <source>%1 joints were broken off when the program ended.</source>
            <translation>Abgebrochen, als das Programm endete: %1 Schweißungen.</translation>
        </message>
        <message>
            <source>%1 joints, mean %2</source>
            <translation>%1 Schweißungen, Mittel %2</translation>
        </message>
        <message>
            <source>%1 kept</source>
            <translation>Fotos: %1</translation>
        </message>
        <message>
            <source>%1 leaves a gap after %2</source>
            <translation>%1 lässt eine Lücke nach %2</translation>
        </message>
        <message>
            <source>%1 lies beside the shop's own log, not beside this copy: SHA-256 %2</source>
            <translation>%1 liegt beim Logbuch des Betriebs, nicht bei dieser Kopie: SHA-256 %2</translation>
        </message>
        <message>
            <source>%1 min</source>
            <translation>%1 min</translation>
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
            <source>%1 mm is not the seam's %2 mm; allowed a tenth apart, %3 to %4 mm</source>
            <translation>%1 mm sind nicht die %2 mm der Naht; erlaubt ein Zehntel Abstand, %3 bis %4 mm</translation>
        </message>
        <message>
            <source>%1 mm is not the sheet of joint %2; allowed: a tenth apart from %3 mm</source>
            <translation>%1 mm ist nicht die Tafel der Schweißung %2; erlaubt: bis ein Zehntel neben %3 mm</translation>
        </message>
        <message>
            <source>%1 mm is outside what %2 is for; allowed: %3 to %4 mm</source>
            <translation>%1 mm liegt außerhalb dessen, wofür %2 gilt; erlaubt: %3 bis %4 mm</translation>
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
            <source>%1 mm, planned %2 mm</source>
            <translation>%1 mm, geplant %2 mm</translation>
        </message>
        <message>
            <source>%1 ms can't be confirmed: allowed is one value from 0 to 12 h</source>
            <translation>%1 ms lassen sich nicht bestätigen: erlaubt ist ein Wert von 0 bis 12 h</translation>
        </message>
        <message>
            <source>%1 ms earlier is not allowed: 1 to 10000 ms in all</source>
            <translation>%1 ms früher ist nicht erlaubt: 1 bis 10000 ms insgesamt</translation>
        </message>
        <message>
            <source>%1 names no last day; allowed: as in "PE-HD, PP 3-20 mm until 2031-06-30"</source>
            <translation>%1 nennt keinen letzten Tag; erlaubt: wie „PE-HD, PP 3-20 mm bis 2031-06-30“</translation>
        </message>
        <message>
            <source>%1 needs %2 at the spring, with drag and preload, above %3, the most that bench %4 can hold</source>
            <translation>%1 braucht %2 an der Feder, mit Schleppkraft und Vorlast: über %3, mehr kann Bank %4 nicht halten</translation>
        </message>
        <message>
            <source>%1 needs %2 at the spring, with drag and preload, below %3, the least that bench %4 holds steadily: weld an offcut beside it, or pair seams</source>
            <translation>%1 braucht %2 an der Feder, mit Schleppkraft und Vorlast: unter %3, weniger hält Bank %4 nicht ruhig. Ein Reststück danebenschweißen oder Nähte paaren</translation>
        </message>
        <message>
            <source>%1 noted; the first ends %2</source>
            <translation>%1 eingetragen; das erste endet am %2</translation>
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
            <source>%1 of %2 cracked</source>
            <translation>%1 von %2 gerissen</translation>
        </message>
        <message>
            <source>%1 of %2 s</source>
            <translation>%1 von %2 s</translation>
        </message>
        <message>
            <source>%1 of %2 seams are made</source>
            <translation>%1 von %2 Nähten sind gemacht</translation>
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
            <source>%1 of job %2</source>
            <translation>%1 von Auftrag %2</translation>
        </message>
        <message>
            <source>%1 of them</source>
            <translation>gesamt %1</translation>
        </message>
        <message>
            <source>%1 overlaps the row that ends at %2</source>
            <translation>%1 überlappt die Zeile, die bei %2 endet</translation>
        </message>
        <message>
            <source>%1 photo is not what was kept: %2</source>
            <translation>%1 Foto ist nicht mehr, was abgelegt wurde: %2</translation>
        </message>
        <message>
            <source>%1 photos are named, and no folder of photos lies beside this copy: they were not looked at</source>
            <translation>%1 Fotos sind genannt, und neben dieser Kopie liegt kein Ordner mit Fotos: sie wurden nicht angesehen</translation>
        </message>
        <message>
            <source>%1 photos are not as they were kept. The first: %2</source>
            <translation>%1 Fotos sind nicht wie abgelegt. Das erste: %2</translation>
        </message>
        <message>
            <source>%1 photos are not what was kept: %2</source>
            <translation>%1 Fotos sind nicht mehr, was abgelegt wurde: %2</translation>
        </message>
        <message>
            <source>%1 planned</source>
            <translation>%1 eingeplant</translation>
        </message>
        <message>
            <source>%1 points are more than %2</source>
            <translation>%1 Punkte sind mehr als %2</translation>
        </message>
        <message>
            <source>%1 points, due on %2</source>
            <translation>Punkte: %1, fällig am %2</translation>
        </message>
        <message>
            <source>%1 points; a line with its uncertainty needs 3 or more</source>
            <translation>%1 Punkte; eine Gerade mit ihrer Unsicherheit braucht 3 oder mehr</translation>
        </message>
        <message>
            <source>%1 prepares a trial joint for %2 on bench %3, and locks it by %4.</source>
            <translation>%1 bereitet eine Probe für %2 auf Bank %3 vor und sperrt spätestens um %4.</translation>
        </message>
        <message>
            <source>%1 prepares seam %2 on bench %3, and locks it by %4.</source>
            <translation>%1 bereitet Naht %2 auf Bank %3 vor und sperrt spätestens um %4.</translation>
        </message>
        <message>
            <source>%1 reading %2 %3 is above %4 %5, the end of the scale of bench %6: the seam needs %7, with a drag of %8 the scale shows up to %9</source>
            <translation>%1: Skalenwert %2 %3 liegt über %4 %5, dem Ende der Skala von Bank %6: die Naht braucht %7, mit einer Schleppkraft von %8 zeigt die Skala bis %9</translation>
        </message>
        <message>
            <source>%1 reading %2 %3 is outside %4 to %5 %6, the readings that the calibration of bench %7 covers</source>
            <translation>%1: Skalenwert %2 %3 liegt außerhalb %4 bis %5 %6, dem kalibrierten Bereich von Bank %7</translation>
        </message>
        <message>
            <source>%1 readings and %2 forces; they must be as many</source>
            <translation>%1 Skalenwerte und %2 Kräfte; es müssen gleich viele sein</translation>
        </message>
        <message>
            <source>%1 releases seam %2 on bench %3.</source>
            <translation>%1 spannt Naht %2 auf Bank %3 aus.</translation>
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
            <source>%1 rows stand in the spill file and %2 in memory only: %3</source>
            <translation>%1 Zeilen stehen in der Auffangdatei und %2 nur im Speicher: %3</translation>
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
            <source>%1 seams are kept.</source>
            <translation>%1 Nähte sind gespeichert.</translation>
        </message>
        <message>
            <source>%1 seams are open, and none can be planned.</source>
            <translation>%1 Nähte sind offen, keine ist planbar.</translation>
        </message>
        <message>
            <source>%1 seams are taken away.</source>
            <translation>%1 Nähte sind entfernt.</translation>
        </message>
        <message>
            <source>%1 seams of the job %2, by a foreman's PIN</source>
            <translation>%1 Nähte des Auftrags %2, mit PIN eines Meisters</translation>
        </message>
        <message>
            <source>%1 seams; allowed: up to %2</source>
            <translation>%1 Nähte; erlaubt: bis %2</translation>
        </message>
        <message>
            <source>%1 set</source>
            <translation>Soll %1</translation>
        </message>
        <message>
            <source>%1 sheets given, a butt weld joins 2</source>
            <translation>%1 Tafeln angegeben, eine Stumpfschweißung verbindet 2</translation>
        </message>
        <message>
            <source>%1 sheets instead of 2</source>
            <translation>%1 Tafeln statt 2</translation>
        </message>
        <message>
            <source>%1 springs are outside 1 to %2</source>
            <translation>%1 Federn liegen außerhalb 1 bis %2</translation>
        </message>
        <message>
            <source>%1 stays at seam %2 on bench %3, to the lock at %4.</source>
            <translation>%1 bleibt an Naht %2 auf Bank %3, bis gesperrt ist um %4.</translation>
        </message>
        <message>
            <source>%1 stays at the trial joint of %2 on bench %3, to the lock at %4.</source>
            <translation>%1 bleibt an der Probe für %2 auf Bank %3, bis gesperrt ist um %4.</translation>
        </message>
        <message>
            <source>%1 steps</source>
            <translation>%1 Schritte</translation>
        </message>
        <message>
            <source>%1 takes the trial joint of %2 off bench %3.</source>
            <translation>%1 spannt die Probe für %2 auf Bank %3 aus.</translation>
        </message>
        <message>
            <source>%1 things are to be put right before it can be kept.</source>
            <translation>Vor dem Übernehmen in Ordnung zu bringen: %1.</translation>
        </message>
        <message>
            <source>%1 things are to be put right in the file.</source>
            <translation>%1 Stellen der Datei sind zu berichtigen.</translation>
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
            <source>%1 to %2 signs on one line</source>
            <translation>%1 bis %2 Zeichen auf einer Zeile</translation>
        </message>
        <message>
            <source>%1 to %2 °C</source>
            <translation>%1 bis %2 °C</translation>
        </message>
        <message>
            <source>%1 to %2 °C, aim %3 °C</source>
            <translation>%1 bis %2 °C, Ziel %3 °C</translation>
        </message>
        <message>
            <source>%1 took %2: out of limits. Let it cool, or cut it out.</source>
            <translation>%1 %2: außerhalb. Abkühlen lassen oder austrennen.</translation>
        </message>
        <message>
            <source>%1 values</source>
            <translation>%1 Werte</translation>
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
            <source>%1 was changed: expected SHA-256 %2, found %3</source>
            <translation>%1 wurde geändert: erwartet SHA-256 %2, gefunden %3</translation>
        </message>
        <message>
            <source>%1 was changed; expected SHA-256 %2, found %3</source>
            <translation>%1 wurde geändert; erwartet SHA-256 %2, gefunden %3</translation>
        </message>
        <message>
            <source>%1 was cut out</source>
            <translation>%1 wurde ausgetrennt</translation>
        </message>
        <message>
            <source>%1 was meant for step %2, the last one is %3</source>
            <translation>%1 galt Schritt %2, der letzte ist %3</translation>
        </message>
        <message>
            <source>%1 was stopped</source>
            <translation>%1 wurde abgebrochen</translation>
        </message>
        <message>
            <source>%1 welds at a virtual bench; %2 within limits and with a joint that bends.</source>
            <translation>%1 Schweißungen an einer virtuellen Bank; %2 in den Grenzen und mit biegbarer Schweißung.</translation>
        </message>
        <message>
            <source>%1 welds. Touch one to see it again.</source>
            <translation>%1 Schweißungen. Antippen zeigt sie noch einmal.</translation>
        </message>
        <message>
            <source>%1 would leave %2 % of the cooling time; allowed at least %3 %</source>
            <translation>%1 ließe %2 % der Abkühlzeit übrig; erlaubt mindestens %3 %</translation>
        </message>
        <message>
            <source>%1 °C</source>
            <translation>%1 °C</translation>
        </message>
        <message>
            <source>%1 °C, planned %2 °C</source>
            <translation>%1 °C, geplant %2 °C</translation>
        </message>
        <message>
            <source>%1 · %2</source>
            <translation>%1 · %2</translation>
        </message>
        <message>
            <source>%1 · %2 · %3</source>
            <translation>%1 · %2 · %3</translation>
        </message>
        <message>
            <source>%1 · at work: %2</source>
            <translation>%1 · an der Bank: %2</translation>
        </message>
        <message>
            <source>%1 · bench %2 · %3</source>
            <translation>%1 · Bank %2 · %3</translation>
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
            <source>%1, %2 joints</source>
            <translation>%1, %2 Schweißungen</translation>
        </message>
        <message>
            <source>%1, %2 mm</source>
            <translation>%1, %2 mm</translation>
        </message>
        <message>
            <source>%1, %2 mm thick, %3 mm long</source>
            <translation>%1, %2 mm dick, %3 mm lang</translation>
        </message>
        <message>
            <source>%1, %2 mm, %3 mm long</source>
            <translation>%1, %2 mm, %3 mm lang</translation>
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
            <source>%1, %2, %3</source>
            <translation>%1, %2, %3</translation>
        </message>
        <message>
            <source>%1, 1 joint</source>
            <translation>%1, 1 Schweißung</translation>
        </message>
        <message>
            <source>%1, and %2 more.</source>
            <translation>%1, weitere: %2.</translation>
        </message>
        <message>
            <source>%1, at %2</source>
            <translation>%1, bei %2</translation>
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
            <source>%1, cut to half: full load only after the whole time</source>
            <translation>%1, halbiert: volle Last erst nach der ganzen Zeit</translation>
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
            <source>%1, entered %2 by %3: %4</source>
            <translation>%1, eingetragen %2 von %3: %4</translation>
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
            <source>%1, line %2, %3: %4</source>
            <translation>%1, Zeile %2, %3: %4</translation>
        </message>
        <message>
            <source>%1, line %2: %3</source>
            <translation>%1, Zeile %2: %3</translation>
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
            <source>%1, n %2: the log holds another event there</source>
            <translation>%1, n %2: im Logbuch steht dort ein anderes Ereignis</translation>
        </message>
        <message>
            <source>%1, no PIN</source>
            <translation>%1, ohne PIN</translation>
        </message>
        <message>
            <source>%1, no interval: too few coupons, or too much scatter</source>
            <translation>%1, ohne Bereich: zu wenige Proben oder zu viel Streuung</translation>
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
            <source>%1, to %2, event %3 of %4</source>
            <translation>%1, bis %2, Ereignis %3 von %4</translation>
        </message>
        <message>
            <source>%1, until %2</source>
            <translation>%1, bis %2</translation>
        </message>
        <message>
            <source>%1, was %2</source>
            <translation>%1, war %2</translation>
        </message>
        <message>
            <source>%1, with 95 % between %2 and %3</source>
            <translation>%1, mit 95 % zwischen %2 und %3</translation>
        </message>
        <message>
            <source>%1, with other reasons</source>
            <translation>%1, mit anderen Gründen</translation>
        </message>
        <message>
            <source>%1-wal: is damaged, and whole transactions stand behind that</source>
            <translation>%1-wal: ist beschädigt, und dahinter stehen ganze Einträge</translation>
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
            <source>%1. Its place is the folder %2.</source>
            <translation>%1. Sein Platz ist der Ordner %2.</translation>
        </message>
        <message>
            <source>%1. Let it cool, or cut it out.</source>
            <translation>%1. Abkühlen lassen oder austrennen.</translation>
        </message>
        <message>
            <source>%1.txt: can't be brought to disk</source>
            <translation>%1.txt: lässt sich nicht auf den Datenträger schreiben</translation>
        </message>
        <message>
            <source>%1: %2</source>
            <translation>%1: %2</translation>
        </message>
        <message>
            <source>%1: %2 (event %3 of the test)</source>
            <translation>%1: %2 (Ereignis %3 des Versuchs)</translation>
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
            <source>%1: %2 seams for job %3</source>
            <translation>%1: %2 Nähte für Auftrag %3</translation>
        </message>
        <message>
            <source>%1: after %2 s</source>
            <translation>%1: nach %2 s</translation>
        </message>
        <message>
            <source>%1: go on, or later.</source>
            <translation>%1: weiter, oder später.</translation>
        </message>
        <message>
            <source>%1: is it so?</source>
            <translation>%1: Stimmt es so?</translation>
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
            <source>%1: one seam for job %2</source>
            <translation>%1: eine Naht für Auftrag %2</translation>
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
            <source>%1; after a correction %2</source>
            <translation>%1; nach einer Berichtigung %2</translation>
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
            <source>, %1</source>
            <translation>, %1</translation>
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
            <source>, changed since</source>
            <translation>, seither geändert</translation>
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
            <source>. %1, %2.</source>
            <translation>. %1, %2.</translation>
        </message>
        <message>
            <source>0.5 mm, as for pipe up to 355 mm; for sheet from memory</source>
            <translation>0,5 mm, wie für Rohr bis 355 mm; für Tafeln aus dem Kopf</translation>
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
            <source>1 photo is named, and no folder of photos lies beside this copy: it was not looked at</source>
            <translation>1 Foto ist genannt, und neben dieser Kopie liegt kein Ordner mit Fotos: es wurde nicht angesehen</translation>
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
            <source>1 thing is to be put right in the file.</source>
            <translation>Eine Stelle der Datei ist zu berichtigen.</translation>
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
            <source>1 value</source>
            <translation>1 Wert</translation>
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
            <source>25 mm of PE-HD: more than five minutes of soak, and half an hour of cooling under pressure. Read the scale again each time it is due; it falls for a long while.</source>
            <translation>25 mm PE-HD: mehr als fünf Minuten Anwärmen und eine halbe Stunde Abkühlen unter Druck. Die Skala jedes Mal ablesen, wenn es fällig ist; sie fällt lange.</translation>
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
            <source>60 to 130 % of the target: our judgement</source>
            <translation>60 bis 130 % des Solls: unser Urteil</translation>
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
            <source>: read it at %1</source>
            <translation>: ablesen bei %1</translation>
        </message>
        <message>
            <source>; </source>
            <translation>; </translation>
        </message>
        <message>
            <source>; after a correction: %1</source>
            <translation>; nach einer Berichtigung: %1</translation>
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
            <source>; changed since %1</source>
            <translation>; geändert seit %1</translation>
        </message>
        <message>
            <source>; cut to half: full load only after the whole time</source>
            <translation>; halbiert: volle Last erst nach der ganzen Zeit</translation>
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
            <source>A bench</source>
            <translation>Eine Bank</translation>
        </message>
        <message>
            <source>A bench is kept in a foreman's name.</source>
            <translation>Eine Bank wird im Namen eines Meisters übernommen.</translation>
        </message>
        <message>
            <source>A bend test has no factor. What it must reach is in your standard.</source>
            <translation>Ein Biegeversuch hat keinen Faktor. Was er erreichen muss, steht in Ihrer Norm.</translation>
        </message>
        <message>
            <source>A call in soak</source>
            <translation>Ein Anruf beim Anwärmen</translation>
        </message>
        <message>
            <source>A clean plate</source>
            <translation>Ein sauberes Heizelement</translation>
        </message>
        <message>
            <source>A cold plate melts less in the same time, and the display does not know its own faces. Measure them.</source>
            <translation>Ein kaltes Heizelement schmilzt in gleicher Zeit weniger, und die Anzeige kennt die eigenen Flächen nicht. Nachmessen.</translation>
        </message>
        <message>
            <source>A cold plate takes its twenty minutes here; at a real one the display reaches its mark before the faces have settled. Waiting costs nothing; a weld on a cold plate costs the seam.</source>
            <translation>Ein kaltes Heizelement braucht hier seine zwanzig Minuten; an einem echten ist die Anzeige vor den Flächen am Ziel. Warten kostet nichts; eine Schweißung am kalten Heizelement kostet die Naht.</translation>
        </message>
        <message>
            <source>A door stands open</source>
            <translation>Eine Tür steht offen</translation>
        </message>
        <message>
            <source>A few words, by the keyboard.</source>
            <translation>Ein paar Worte, mit der Tastatur.</translation>
        </message>
        <message>
            <source>A fifth bench is one too many: 4 are allowed.</source>
            <translation>Eine fünfte Bank ist zu viel: 4 sind erlaubt.</translation>
        </message>
        <message>
            <source>A first good weld</source>
            <translation>Eine erste gute Schweißung</translation>
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
            <source>A hand leaves grease and sweat, and melt does not join over them.</source>
            <translation>Eine Hand hinterlässt Fett und Schweiß, und darüber verbindet sich Schmelze nicht.</translation>
        </message>
        <message>
            <source>A job without a name</source>
            <translation>Ein Auftrag ohne Namen</translation>
        </message>
        <message>
            <source>A job's seams, and what is made of each.</source>
            <translation>Die Nähte eines Auftrags und was aus jeder wurde.</translation>
        </message>
        <message>
            <source>A joint that is let go warm bends by its own weight and can open in the middle.</source>
            <translation>Eine Schweißung, die warm losgelassen wird, biegt sich unter ihrem Gewicht und kann in der Mitte aufgehen.</translation>
        </message>
        <message>
            <source>A joint whose number can't be read is not in this plan.</source>
            <translation>Eine Schweißung, deren Nummer nicht lesbar ist, fehlt in diesem Plan.</translation>
        </message>
        <message>
            <source>A kilogram of force is nearly ten newtons: the wrong one is off by a factor that anybody can see who asks whether the reading can be right.</source>
            <translation>Ein Kilogramm Kraft sind fast zehn Newton: das falsche liegt um einen Faktor daneben, den jeder sieht, der fragt, ob der Skalenwert stimmen kann.</translation>
        </message>
        <message>
            <source>A lesson of the shop is left out: %1.</source>
            <translation>Eine Lektion des Betriebs fehlt: %1.</translation>
        </message>
        <message>
            <source>A lock that gives way</source>
            <translation>Eine Sperre, die nachgibt</translation>
        </message>
        <message>
            <source>A log of many joints is looked through while the program runs, and its file is not whole.</source>
            <translation>Ein Logbuch mit vielen Schweißungen wird im laufenden Programm durchgesehen, und seine Datei ist nicht heil.</translation>
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
            <source>A photo of a bead could not be copied, or is not what was kept.</source>
            <translation>Ein Foto eines Wulsts ließ sich nicht kopieren oder ist nicht das aufbewahrte.</translation>
        </message>
        <message>
            <source>A plate can be right in the middle and cold at one end. Measure it front, middle and back, and watch the bead along the whole seam.</source>
            <translation>Ein Heizelement kann in der Mitte stimmen und an einem Ende kalt sein. Vorn, Mitte und hinten messen, und den Wulst längs der ganzen Naht beobachten.</translation>
        </message>
        <message>
            <source>A plate's rate stands in the record as not calibrated.</source>
            <translation>Eine Rate vom Schild steht im Protokoll als nicht kalibriert.</translation>
        </message>
        <message>
            <source>A scale that does not start at zero</source>
            <translation>Eine Skala, die nicht bei null beginnt</translation>
        </message>
        <message>
            <source>A screen can't teach the feel of a wheel. That comes at the bench.</source>
            <translation>Ein Bildschirm lehrt nicht das Gefühl im Handrad. Das kommt an der Bank.</translation>
        </message>
        <message>
            <source>A seam can't be read</source>
            <translation>Eine Naht ist nicht lesbar</translation>
        </message>
        <message>
            <source>A seam leads to the joint that decides.</source>
            <translation>Eine Naht führt zur Schweißung, die entscheidet.</translation>
        </message>
        <message>
            <source>A seam of a job</source>
            <translation>Eine Naht eines Auftrags</translation>
        </message>
        <message>
            <source>A sheet has no batch, so this joint is not found by it: a foreman enters it in the day log.</source>
            <translation>Eine Tafel hat keine Charge, so findet keiner diese Schweißung danach: Der Meister trägt sie im Tagesbuch ein.</translation>
        </message>
        <message>
            <source>A sheet has no batch, so this joint is not found by it: a foreman enters it with the job, or later in the day log.</source>
            <translation>Eine Tafel hat keine Charge, so findet keiner diese Schweißung danach: Der Meister trägt sie beim Auftrag ein oder später im Logbuch.</translation>
        </message>
        <message>
            <source>A sheet has no batch, so this joint is not found by it: type it where the thickness is typed.</source>
            <translation>Eine Tafel hat keine Charge, so findet keiner diese Schweißung danach: eintragen, wo die Dicke steht.</translation>
        </message>
        <message>
            <source>A sheet slipped</source>
            <translation>Tafel verrutscht</translation>
        </message>
        <message>
            <source>A spring that is still loaded throws the bars open. Bring the force to zero first where the bench asks for it, then ease the clamps. Two springs are stiff: they lose twice as much as one when the sheets close up, so read again; and a jerk on them costs melt that one soft spring would spare.</source>
            <translation>Eine noch gespannte Feder wirft die Balken auf. Wo die Bank es verlangt, erst die Kraft auf null, dann die Klemmen lockern. Zwei Federn sind steif: sie verlieren doppelt so viel wie eine, wenn die Tafeln nachrücken, also wieder ablesen; und ein Ruck kostet Schmelze, die eine weiche Feder schont.</translation>
        </message>
        <message>
            <source>A test that can't be read stands last.</source>
            <translation>Ein unlesbarer Versuch steht am Ende.</translation>
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
            <source>A weld card</source>
            <translation>Schweißkarte</translation>
        </message>
        <message>
            <source>A weld is open. The first steps come when it is saved.</source>
            <translation>Eine Schweißung ist offen. Die ersten Schritte kommen, wenn sie gespeichert ist.</translation>
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
            <source>Above its window the melt is damaged and strings on the plate, however fine the bead looks.</source>
            <translation>Über ihrem Bereich wird die Schmelze geschädigt und zieht Fäden am Heizelement, so schön der Wulst auch aussieht.</translation>
        </message>
        <message>
            <source>Above the required %1, with all its interval.</source>
            <translation>Über den verlangten %1, mit dem ganzen Bereich.</translation>
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
            <source>Add a length</source>
            <translation>Länge dazu</translation>
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
            <source>After a correction: %1</source>
            <translation>Nach einer Berichtigung: %1</translation>
        </message>
        <message>
            <source>After the lock the wheel was let back while the joint was soft: %1, at least %2.</source>
            <translation>Nach dem Sperren wurde das Handrad zurückgedreht, als die Schweißung weich war: %1, mindestens %2.</translation>
        </message>
        <message>
            <source>Air between face and plate keeps the heat away, so the melt stays thin and its skin cools.</source>
            <translation>Luft zwischen Fläche und Heizelement hält die Wärme fern; die Schmelze bleibt dünn und ihre Haut kühlt ab.</translation>
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
            <source>Alignment takes longer than it did: often a cold or a dirty plate. Measure it on its face, and wipe it.</source>
            <translation>Angleichen dauert länger als früher: oft ist das Heizelement kalt oder schmutzig. Auf der Fläche messen und abwischen.</translation>
        </message>
        <message>
            <source>Alignment takes twice as long as the last ten on this bench; where there are not five yet, longer than the soak.</source>
            <translation>Das Angleichen dauert doppelt so lange wie die letzten zehn an dieser Bank; wo es noch keine fünf gibt, länger als das Anwärmen.</translation>
        </message>
        <message>
            <source>All</source>
            <translation>Alle</translation>
        </message>
        <message>
            <source>All are out at %1. It can't be earlier.</source>
            <translation>Alles ist um %1 heraus. Früher geht es nicht.</translation>
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
            <source>All hands are full so long. </source>
            <translation>Alle Hände sind so lange voll. </translation>
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
            <source>An edge that leans melts at the top first. Both beads end alignment, not the one that is seen.</source>
            <translation>Eine geneigte Kante schmilzt oben zuerst. Beide Wülste beenden das Angleichen, nicht nur die, die man sieht.</translation>
        </message>
        <message>
            <source>An edge was touched after it was planed, %1.</source>
            <translation>Eine Kante wurde nach dem Hobeln berührt, %1.</translation>
        </message>
        <message>
            <source>An estimate. It explains a weld and judges none; the procedure's limits decide.</source>
            <translation>Eine Schätzung: erklärt, urteilt nicht; es gelten die Grenzen der Anweisung.</translation>
        </message>
        <message>
            <source>Angles</source>
            <translation>Winkel</translation>
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
            <source>Another bench called for hands while you pressed. The press did not count.</source>
            <translation>Eine andere Bank rief nach Händen, während gedrückt wurde. Der Druck zählte nicht.</translation>
        </message>
        <message>
            <source>Another bench, another order</source>
            <translation>Andere Bank, andere Folge</translation>
        </message>
        <message>
            <source>Another class</source>
            <translation>Weitere Klasse</translation>
        </message>
        <message>
            <source>Another coupon</source>
            <translation>Noch eine Probe</translation>
        </message>
        <message>
            <source>Another gap</source>
            <translation>Weitere Lücke</translation>
        </message>
        <message>
            <source>Another joint</source>
            <translation>Eine andere Schweißung</translation>
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
            <source>Another shop temperature</source>
            <translation>Andere Hallentemperatur</translation>
        </message>
        <message>
            <source>Another spring</source>
            <translation>Weitere Feder</translation>
        </message>
        <message>
            <source>Another tablet's log, which was brought in, has that number, too.</source>
            <translation>Das Logbuch eines anderen Tablets, das übernommen wurde, hat diese Nummer auch.</translation>
        </message>
        <message>
            <source>Another unit: Set-up has a form for it.</source>
            <translation>Andere Einheit: Einrichten hat ein Formular dafür.</translation>
        </message>
        <message>
            <source>Answer to a signal</source>
            <translation>Antwort auf Signal</translation>
        </message>
        <message>
            <source>Anybody may look. What is kept takes a foreman's PIN.</source>
            <translation>Jeder darf schauen. Gespeichert wird mit der PIN eines Meisters.</translation>
        </message>
        <message>
            <source>As before</source>
            <translation>Wie vorher</translation>
        </message>
        <message>
            <source>As in: PE-HD, PP 3-20 mm until 2031-06-30</source>
            <translation>Etwa so: PE-HD, PP 3-20 mm bis 2031-06-30</translation>
        </message>
        <message>
            <source>As it stands on the laboratory's paper.</source>
            <translation>Wie es im Bericht des Labors steht.</translation>
        </message>
        <message>
            <source>As many pulses as the bench's place: one for A, two for B. Once more after 1 s.</source>
            <translation>So viele Pulse wie der Platz der Bank: einer für A, zwei für B. Nach 1 s noch einmal.</translation>
        </message>
        <message>
            <source>As measured, both the same.</source>
            <translation>Wie gemessen, beide gleich.</translation>
        </message>
        <message>
            <source>As measured, in millimetres.</source>
            <translation>Wie gemessen, in Millimetern.</translation>
        </message>
        <message>
            <source>As planned</source>
            <translation>Wie geplant</translation>
        </message>
        <message>
            <source>As the spring's or the machine's plate says.</source>
            <translation>Wie auf dem Schild der Feder oder der Maschine.</translation>
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
            <source>At the start; every row could be read.</source>
            <translation>Beim Start; jede Zeile ließ sich lesen.</translation>
        </message>
        <message>
            <source>At the start; the new log has what could be read.</source>
            <translation>Beim Start; das neue Logbuch hat, was sich lesen ließ.</translation>
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
            <source>Attested over a year ago: look again (since %1).</source>
            <translation>Vor über einem Jahr bestätigt: erneut prüfen (seit %1).</translation>
        </message>
        <message>
            <source>Attested values of %1</source>
            <translation>Bestätigte Werte von %1</translation>
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
            <source>Back to practice</source>
            <translation>Zurück zum Üben</translation>
        </message>
        <message>
            <source>Back to the bench</source>
            <translation>Zurück zur Bank</translation>
        </message>
        <message>
            <source>Back to the charts</source>
            <translation>Zu den Karten</translation>
        </message>
        <message>
            <source>Back to the jobs</source>
            <translation>Zu den Aufträgen</translation>
        </message>
        <message>
            <source>Back to the log</source>
            <translation>Zum Logbuch</translation>
        </message>
        <message>
            <source>Back to the shop</source>
            <translation>Zum Betrieb</translation>
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
            <source>Batch, sheet 1</source>
            <translation>Charge, Tafel 1</translation>
        </message>
        <message>
            <source>Batch, sheet 2</source>
            <translation>Charge, Tafel 2</translation>
        </message>
        <message>
            <source>Batches of sheet</source>
            <translation>Chargen der Tafeln</translation>
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
            <source>Bead places</source>
            <translation>Wulststellen</translation>
        </message>
        <message>
            <source>Bead width</source>
            <translation>Wulstbreite</translation>
        </message>
        <message>
            <source>Bead: %1.</source>
            <translation>Wulst: %1.</translation>
        </message>
        <message>
            <source>Before anything presses, read the scale without force. What it shows then is wrong with every reading that follows.</source>
            <translation>Bevor etwas drückt, die Skala ohne Kraft ablesen. Was sie dann zeigt, ist an jedem späteren Skalenwert falsch.</translation>
        </message>
        <message>
            <source>Before the bead stands the faces do not touch everywhere, so a clock that runs from first contact ends soak too soon: the melt is thin.</source>
            <translation>Bevor der Wulst steht, berühren die Flächen nicht überall; eine Uhr ab der ersten Berührung beendet das Anwärmen zu früh: die Schmelze ist dünn.</translation>
        </message>
        <message>
            <source>Before you set a reading, ask whether it can be right: about how much force does such a seam take, and what does the scale say to that?</source>
            <translation>Vor dem Einstellen fragen, ob der Skalenwert stimmen kann: Wie viel Kraft braucht so eine Naht etwa, und was sagt die Skala dazu?</translation>
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
            <source>Below the required %1.</source>
            <translation>Unter den verlangten %1.</translation>
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
            <source>Bench "%1" at place %2: a place is 1 to %3</source>
            <translation>Bank „%1“ auf Platz %2: ein Platz ist 1 bis %3</translation>
        </message>
        <message>
            <source>Bench "%1" can't have place %2: bench "%3" has it; each of 1 to %4 is given once</source>
            <translation>Bank „%1“ kann nicht Platz %2 haben: den hat Bank „%3“; jeder von 1 bis %4 wird einmal vergeben</translation>
        </message>
        <message>
            <source>Bench "%1" is in the shift already, at place %2</source>
            <translation>Bank „%1“ ist schon in der Schicht, auf Platz %2</translation>
        </message>
        <message>
            <source>Bench "%1" is not in the shift</source>
            <translation>Bank „%1“ ist nicht in der Schicht</translation>
        </message>
        <message>
            <source>Bench "%1" would be number %2: a shift has 1 to %3 benches</source>
            <translation>Bank „%1“ wäre Nummer %2: eine Schicht hat 1 bis %3 Bänke</translation>
        </message>
        <message>
            <source>Bench "%1": %2</source>
            <translation>Bank „%1“: %2</translation>
        </message>
        <message>
            <source>Bench %1</source>
            <translation>Bank %1</translation>
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
            <source>Bench %1 is free: seam %2.</source>
            <translation>Bank %1 ist frei: Naht %2.</translation>
        </message>
        <message>
            <source>Bench %1 is taken so long. </source>
            <translation>Bank %1 ist so lange belegt. </translation>
        </message>
        <message>
            <source>Bench %1: %2</source>
            <translation>Bank %1: %2</translation>
        </message>
        <message>
            <source>Benches</source>
            <translation>Bänke</translation>
        </message>
        <message>
            <source>Benches %1 are taken so long. </source>
            <translation>Die Bänke %1 sind so lange belegt. </translation>
        </message>
        <message>
            <source>Bend angle [°]</source>
            <translation>Biegewinkel [°]</translation>
        </message>
        <message>
            <source>Bend coupon %1</source>
            <translation>Biegeprobe %1</translation>
        </message>
        <message>
            <source>Bend coupon %1.</source>
            <translation>Biegeprobe %1.</translation>
        </message>
        <message>
            <source>Bend test, front to back: the joint bends everywhere.</source>
            <translation>Biegeversuch, vorn bis hinten: Die Schweißung lässt sich überall biegen.</translation>
        </message>
        <message>
            <source>Bend test, front to back: the joint breaks.</source>
            <translation>Biegeversuch, vorn bis hinten: Die Schweißung bricht.</translation>
        </message>
        <message>
            <source>Bent, of a joint</source>
            <translation>Gebogen, Schweißung</translation>
        </message>
        <message>
            <source>Bent, of a trial</source>
            <translation>Gebogen, Versuch</translation>
        </message>
        <message>
            <source>Beside the weld</source>
            <translation>Neben der Schweißung</translation>
        </message>
        <message>
            <source>Besides, %1 broken off in mid-weld.</source>
            <translation>Außerdem %1 mittendrin abgebrochen.</translation>
        </message>
        <message>
            <source>Both can be changed at any time: touch the clock.</source>
            <translation>Beides lässt sich jederzeit ändern: Uhr antippen.</translation>
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
            <source>By the batch</source>
            <translation>Nach Charge</translation>
        </message>
        <message>
            <source>By the joint</source>
            <translation>Nach Schweißung</translation>
        </message>
        <message>
            <source>By the rules now: %1</source>
            <translation>Nach heutigen Regeln: %1</translation>
        </message>
        <message>
            <source>By which procedure was the trial welded?</source>
            <translation>Nach welcher Anweisung wurde der Versuch geschweißt?</translation>
        </message>
        <message>
            <source>By which standard was it tested?</source>
            <translation>Nach welcher Norm wurde geprüft?</translation>
        </message>
        <message>
            <source>CSV or JSON of these</source>
            <translation>CSV oder JSON davon</translation>
        </message>
        <message>
            <source>Calibrate it</source>
            <translation>Kalibrieren</translation>
        </message>
        <message>
            <source>Calibration</source>
            <translation>Kalibrierung</translation>
        </message>
        <message>
            <source>Calibration of bench %1</source>
            <translation>Kalibrierung von Bank %1</translation>
        </message>
        <message>
            <source>Calibrations, certificates, attestations within %1 days.</source>
            <translation>Kalibrierungen, Zeugnisse, Bestätigungen in %1 Tagen.</translation>
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
            <source>Certificate of %1</source>
            <translation>Zeugnis von %1</translation>
        </message>
        <message>
            <source>Change an entry</source>
            <translation>Eintrag ändern</translation>
        </message>
        <message>
            <source>Changed since they were attested.</source>
            <translation>Seit der Bestätigung geändert.</translation>
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
            <source>Charts</source>
            <translation>Regelkarten</translation>
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
            <source>Clock was set %1 ahead. No time of a weld changed.</source>
            <translation>Uhr um %1 vorgestellt. Schweißzeiten unverändert.</translation>
        </message>
        <message>
            <source>Clock was set %1 back. No time of a weld changed.</source>
            <translation>Uhr um %1 zurückgestellt. Schweißzeiten unverändert.</translation>
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
            <source>Cooling is over by now. Release it in its order.</source>
            <translation>Abkühlen ist inzwischen vorbei. Der Reihe nach lösen.</translation>
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
            <source>Copy of practice, read only: made %1, last entry %2.</source>
            <translation>Kopie vom Üben, nur lesen: Stand %1, letzter Eintrag %2.</translation>
        </message>
        <message>
            <source>Copy of practice, read only: made %1.</source>
            <translation>Kopie vom Üben, nur lesen: Stand %1.</translation>
        </message>
        <message>
            <source>Copy, read only: made %1, last entry %2.</source>
            <translation>Kopie, nur lesen: Stand %1, letzter Eintrag %2.</translation>
        </message>
        <message>
            <source>Copy, read only: made %1.</source>
            <translation>Kopie, nur lesen: Stand %1.</translation>
        </message>
        <message>
            <source>Correct a value</source>
            <translation>Wert berichtigen</translation>
        </message>
        <message>
            <source>Coupon %1 of the parent sheet</source>
            <translation>Probe %1 der Grundtafel</translation>
        </message>
        <message>
            <source>Coupons are entered.</source>
            <translation>Proben sind eingetragen.</translation>
        </message>
        <message>
            <source>Coupons are put right.</source>
            <translation>Proben sind berichtigt.</translation>
        </message>
        <message>
            <source>Coupons cut from a joint, or from a trial that a procedure was tried with.</source>
            <translation>Proben aus einer Schweißung oder aus dem Versuch zu einer Anweisung.</translation>
        </message>
        <message>
            <source>Coupons cut from it</source>
            <translation>Proben daraus</translation>
        </message>
        <message>
            <source>Coupons cut from these joints</source>
            <translation>Proben aus diesen Schweißungen</translation>
        </message>
        <message>
            <source>Coupons of joints and of procedure trials, the newest first.</source>
            <translation>Proben aus Schweißungen und Versuchen, die neuesten zuerst.</translation>
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
            <source>DEMO SHOP</source>
            <translation>DEMO-BETRIEB</translation>
        </message>
        <message>
            <source>DVS 2203-1, short term, heated-tool butt (memory)</source>
            <translation>DVS 2203-1, Kurzzeit, Heizelementstumpf (aus dem Kopf)</translation>
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
            <source>Demo shop: all invented, and no joint here counts. PINs are shown.</source>
            <translation>Demo-Betrieb: alles erfunden, keine Schweißung zählt. PINs werden gezeigt.</translation>
        </message>
        <message>
            <source>Demo shop: shop, people and joint are invented. This is no certificate.</source>
            <translation>Demo-Betrieb: Betrieb, Personen und Schweißung sind erfunden. Dies ist kein Zeugnis.</translation>
        </message>
        <message>
            <source>Demo shop: shop, people and joints are invented. This is no certificate.</source>
            <translation>Demo-Betrieb: Betrieb, Personen und Schweißungen sind erfunden. Dies ist kein Zeugnis.</translation>
        </message>
        <message>
            <source>Demo shop: the PIN is %1.</source>
            <translation>Demo-Betrieb: Die PIN ist %1.</translation>
        </message>
        <message>
            <source>Did it crack or break?</source>
            <translation>Ist sie gerissen oder gebrochen?</translation>
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
            <source>Drag [N]</source>
            <translation>Schleppkraft [N]</translation>
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
            <source>Each step</source>
            <translation>Jeder Schritt</translation>
        </message>
        <message>
            <source>Each step of your hands</source>
            <translation>Jeder Schritt der Hände</translation>
        </message>
        <message>
            <source>Earlier …</source>
            <translation>Frühere …</translation>
        </message>
        <message>
            <source>Earliest possible %1, this plan %2.</source>
            <translation>Frühestens möglich %1, dieser Plan %2.</translation>
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
            <source>Edges meet along the seam and from top to bottom, or they melt where they touch first. Plane both, set the gap at both ends, look along them and from their end, and shim what stands back before the plate comes in.</source>
            <translation>Kanten liegen längs der Naht und von oben bis unten an, sonst schmelzen sie, wo sie zuerst berühren. Beide hobeln, den Abstand an beiden Enden einstellen, längs und von der Stirn schauen, und unterlegen, was zurücksteht, bevor das Heizelement kommt.</translation>
        </message>
        <message>
            <source>Edges not parallel</source>
            <translation>Kanten nicht parallel</translation>
        </message>
        <message>
            <source>Edges that meet, end to end</source>
            <translation>Kanten, die ganz anliegen</translation>
        </message>
        <message>
            <source>Edit in a form</source>
            <translation>Im Formular ändern</translation>
        </message>
        <message>
            <source>End of the scale</source>
            <translation>Ende der Skala</translation>
        </message>
        <message>
            <source>End the program</source>
            <translation>Programm beenden</translation>
        </message>
        <message>
            <source>Enter coupons</source>
            <translation>Proben eintragen</translation>
        </message>
        <message>
            <source>Enter the foreman</source>
            <translation>Meister eintragen</translation>
        </message>
        <message>
            <source>Entered on %1 by %2</source>
            <translation>Eingetragen am %1 von %2</translation>
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
            <source>Event %1 of its joint can't be read.</source>
            <translation>Ereignis %1 seiner Schweißung ist nicht lesbar.</translation>
        </message>
        <message>
            <source>Event %1 of this test can't be read.</source>
            <translation>Ereignis %1 dieses Versuchs ist nicht lesbar.</translation>
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
            <source>Every number of a card is for one thickness. Hold it against the sheet before you clamp.</source>
            <translation>Jede Zahl einer Karte gilt für eine Dicke. Vor dem Spannen an die Tafel halten.</translation>
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
            <source>Faces together, at once and without a jerk. It counts, and is in the record.</source>
            <translation>Flächen zusammen, sofort und ohne Ruck. Es zählt und steht im Protokoll.</translation>
        </message>
        <message>
            <source>Fewer than %1 joints: the limits are provisional.</source>
            <translation>Weniger als %1 Schweißungen: die Grenzen sind vorläufig.</translation>
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
            <source>Film melts into the joint and parts it.</source>
            <translation>Folie schmilzt in die Schweißung ein und trennt sie.</translation>
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
            <source>Finish what is open: steps are still kept. The next start sets the log aside and says what is lost.</source>
            <translation>Beenden, was offen ist: Schritte werden noch aufbewahrt. Der nächste Start legt das Logbuch beiseite und sagt, was fehlt.</translation>
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
            <source>First steps</source>
            <translation>Erste Schritte</translation>
        </message>
        <message>
            <source>First steps: %1 of %2 are done. What is done is kept.</source>
            <translation>Erste Schritte: %1 von %2 getan. Getanes bleibt.</translation>
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
            <source>For its materials it alone counts from then on.</source>
            <translation>Für seine Materialien zählt ab dann nur es.</translation>
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
            <source>Force by</source>
            <translation>Kraft durch</translation>
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
            <source>Force that comes at once drives the hot melt out into the bead before it has grown together. A short slam on a soft spring tears the valley and takes little melt besides; on stiff springs, or kept on, it leaves too little.</source>
            <translation>Kraft, die auf einmal kommt, treibt die heiße Schmelze in den Wulst, bevor sie verwachsen ist. Ein kurzer Stoß auf eine weiche Feder reißt den Kerbgrund auf und nimmt sonst wenig Schmelze; auf steifen Federn, oder lange gehalten, lässt er zu wenig übrig.</translation>
        </message>
        <message>
            <source>Forces</source>
            <translation>Kräfte</translation>
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
            <source>Four</source>
            <translation>Vier</translation>
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
            <source>From a table</source>
            <translation>Aus einer Tabelle</translation>
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
            <source>Gap of the tables and the rest stand in Set-up: look at them before the first weld.</source>
            <translation>Abstand der Tische und alles Übrige stehen unter Einrichten: vor der ersten Schweißung ansehen.</translation>
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
            <source>Go on where it stood.</source>
            <translation>Weiter, wo es stand.</translation>
        </message>
        <message>
            <source>Go on where the screen stands.</source>
            <translation>Dort weitermachen, wo der Bildschirm steht.</translation>
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
            <source>Go on, and don't switch off: what is in memory only is lost with the power.</source>
            <translation>Weitermachen und nicht ausschalten: Was nur im Arbeitsspeicher ist, geht mit dem Strom verloren.</translation>
        </message>
        <message>
            <source>Go on, and watch the lamp. "Seen" hides the words; the clock's tile keeps "no sound". It comes back by itself.</source>
            <translation>Weitermachen und die Lampe beobachten. „Gesehen“ verbirgt die Worte; das Feld der Uhr behält „kein Ton“. Der Ton kommt von selbst zurück.</translation>
        </message>
        <message>
            <source>Go on. Look at each bench whose joint is named.</source>
            <translation>Weitermachen. Jede Bank ansehen, deren Schweißung genannt ist.</translation>
        </message>
        <message>
            <source>Go on. Make room, or take the photo again. It tries again at the next closing.</source>
            <translation>Weitermachen. Platz schaffen oder das Foto neu aufnehmen. Beim nächsten Abschluss wird es wieder versucht.</translation>
        </message>
        <message>
            <source>Go on: %1</source>
            <translation>Weiter: %1</translation>
        </message>
        <message>
            <source>Go on: no weld needs them. Ask who looks after the tablet.</source>
            <translation>Weitermachen: Keine Schweißung braucht sie. Den fragen, der das Tablet betreut.</translation>
        </message>
        <message>
            <source>Go on: others read the older copy. It tries again at the next closing.</source>
            <translation>Weitermachen: Andere lesen die ältere Kopie. Beim nächsten Abschluss wird es wieder versucht.</translation>
        </message>
        <message>
            <source>Go on: the log itself is well. Make room, or ask who looks after the tablet. It tries again at the next closing.</source>
            <translation>Weitermachen: Das Logbuch selbst ist heil. Platz schaffen, oder den fragen, der das Tablet betreut. Beim nächsten Abschluss wird es wieder versucht.</translation>
        </message>
        <message>
            <source>Go on; it tries again. Look for a full disk or a stick that was pulled out.</source>
            <translation>Weitermachen; es wird wieder versucht. Nachsehen, ob ein Datenträger voll oder ein Stick abgezogen ist.</translation>
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
            <source>Grade, sheet 1</source>
            <translation>Sorte, Tafel 1</translation>
        </message>
        <message>
            <source>Grade, sheet 2</source>
            <translation>Sorte, Tafel 2</translation>
        </message>
        <message>
            <source>Greatest force over its section.</source>
            <translation>Größte Kraft durch den Querschnitt.</translation>
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
            <source>Heard it</source>
            <translation>Gehört</translation>
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
            <source>Hold the card against the sheet before you clamp: material, thickness, length. Measure the sheet if you are not sure.</source>
            <translation>Vor dem Spannen die Karte an die Tafel halten: Werkstoff, Dicke, Länge. Im Zweifel die Tafel messen.</translation>
        </message>
        <message>
            <source>Holds for %1 days, to %2.</source>
            <translation>Gilt noch %1 Tage, bis %2.</translation>
        </message>
        <message>
            <source>Holds to the end of today.</source>
            <translation>Gilt bis heute Abend.</translation>
        </message>
        <message>
            <source>Holds to the end of tomorrow.</source>
            <translation>Gilt bis morgen Abend.</translation>
        </message>
        <message>
            <source>Hot for 10 min</source>
            <translation>Seit 10 min heiß</translation>
        </message>
        <message>
            <source>How does the bead look to you?</source>
            <translation>Wie sieht der Wulst aus?</translation>
        </message>
        <message>
            <source>How does the laboratory tell it?</source>
            <translation>Wie gibt es das Labor an?</translation>
        </message>
        <message>
            <source>How far did the scale go before you turned back?</source>
            <translation>Wie weit ging die Skala vor dem Zurückdrehen?</translation>
        </message>
        <message>
            <source>How is the spring's force known?</source>
            <translation>Woher ist die Federkraft bekannt?</translation>
        </message>
        <message>
            <source>How it went</source>
            <translation>Wie es lief</translation>
        </message>
        <message>
            <source>How many places of the bead are measured; empty: one.</source>
            <translation>An wie vielen Stellen der Wulst gemessen wird; leer: an einer.</translation>
        </message>
        <message>
            <source>How many springs press together?</source>
            <translation>Wie viele Federn drücken zusammen?</translation>
        </message>
        <message>
            <source>How much is cut away, of both sheets together?</source>
            <translation>Wie viel fällt weg, von beiden Tafeln zusammen?</translation>
        </message>
        <message>
            <source>How often it may be welded again, 0 to 9; empty: not said.</source>
            <translation>Wie oft sie neu geschweißt werden darf, 0 bis 9; leer: nicht gesagt.</translation>
        </message>
        <message>
            <source>How the scale reading comes about</source>
            <translation>So entsteht der Skalenwert</translation>
        </message>
        <message>
            <source>How the shop is doing</source>
            <translation>Wie es im Betrieb steht</translation>
        </message>
        <message>
            <source>I hear it</source>
            <translation>Ich höre es</translation>
        </message>
        <message>
            <source>If the bench is further than the screen, stop the weld.</source>
            <translation>Ist die Bank weiter als der Bildschirm, die Schweißung abbrechen.</translation>
        </message>
        <message>
            <source>In air, and more so in a draught, a skin freezes on the melt. Two skins do not grow together, and the joint breaks flat.</source>
            <translation>In der Luft, und erst recht in Zugluft, erstarrt eine Haut auf der Schmelze. Zwei Häute wachsen nicht zusammen, und die Schweißung bricht glatt.</translation>
        </message>
        <message>
            <source>In limits</source>
            <translation>In Grenzen</translation>
        </message>
        <message>
            <source>In soak go to that bench, hands on the plate and the wheel. In cooling only go there: the wheel stays locked until the time is over.</source>
            <translation>Beim Anwärmen zu dieser Bank gehen, Hände an Heizelement und Handrad. Beim Abkühlen nur hingehen: Das Handrad bleibt gesperrt, bis die Zeit um ist.</translation>
        </message>
        <message>
            <source>In soak the scale can't show it: just in contact.</source>
            <translation>Beim Anwärmen zeigt es die Skala nicht: nur anliegen.</translation>
        </message>
        <message>
            <source>In this draught a face loses its heat six times as fast. A changeover that would do in still air leaves a skin on the melt, and the joint breaks flat along it.</source>
            <translation>In dieser Zugluft verliert eine Fläche ihre Wärme sechsmal so schnell. Ein Umstellen, das in ruhiger Luft genügt, lässt eine Haut auf der Schmelze, und daran bricht die Schweißung glatt.</translation>
        </message>
        <message>
            <source>Incomplete</source>
            <translation>Unvollständig</translation>
        </message>
        <message>
            <source>Into the demo shop</source>
            <translation>In den Demo-Betrieb</translation>
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
            <source>It cracked</source>
            <translation>Gerissen</translation>
        </message>
        <message>
            <source>It guides. The machine's instructions, the standard in force, local rules and a qualified welder decide.</source>
            <translation>Es leitet an. Betriebsanleitung der Maschine, geltende Norm, örtliche Regeln und ein geprüfter Schweißer entscheiden.</translation>
        </message>
        <message>
            <source>It held</source>
            <translation>Gehalten</translation>
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
            <source>It is another material</source>
            <translation>Es ist ein anderer Werkstoff</translation>
        </message>
        <message>
            <source>It is kept by a foreman's PIN.</source>
            <translation>Gespeichert wird mit der PIN eines Meisters.</translation>
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
            <source>It stands on records, reports and cards. Later: papers have none.</source>
            <translation>Er steht auf Protokollen, Berichten und Karten. Später: Papiere haben keinen.</translation>
        </message>
        <message>
            <source>It takes welded coupons and coupons of the parent sheet.</source>
            <translation>Dazu braucht es geschweißte Proben und Proben der Grundtafel.</translation>
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
            <source>Its alignment would end while another bench changes over or builds up.</source>
            <translation>Ihr Angleichen würde enden, während eine andere Bank umstellt oder Druck aufbaut.</translation>
        </message>
        <message>
            <source>Its events make no weld</source>
            <translation>Ergibt keine Schweißung</translation>
        </message>
        <message>
            <source>Its number, as it stands on the sheet.</source>
            <translation>Ihre Nummer, wie sie auf der Tafel steht.</translation>
        </message>
        <message>
            <source>Its order number, 1 to %1 characters: labels are told apart by it.</source>
            <translation>Seine Auftragsnummer, 1 bis %1 Zeichen: sie hält gleiche Namen auseinander.</translation>
        </message>
        <message>
            <source>Its thickness there, without bead.</source>
            <translation>Ihre Dicke dort, ohne Wulst.</translation>
        </message>
        <message>
            <source>Its width where it is narrowest.</source>
            <translation>Ihre Breite an der schmalsten Stelle.</translation>
        </message>
        <message>
            <source>Job</source>
            <translation>Auftrag</translation>
        </message>
        <message>
            <source>Job %1</source>
            <translation>Auftrag %1</translation>
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
            <source>Jobs and seams</source>
            <translation>Aufträge und Nähte</translation>
        </message>
        <message>
            <source>Jobs and shop</source>
            <translation>Aufträge, Betrieb</translation>
        </message>
        <message>
            <source>Jobs and their seams</source>
            <translation>Aufträge und ihre Nähte</translation>
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
            <source>Joint %1 can't be read and is not in this plan.</source>
            <translation>Schweißung %1 ist nicht lesbar und fehlt in diesem Plan.</translation>
        </message>
        <message>
            <source>Joint %1 goes on with a sheet of another material.</source>
            <translation>Schweißung %1 geht mit einer Tafel aus anderem Werkstoff weiter.</translation>
        </message>
        <message>
            <source>Joint %1 goes on without this check.</source>
            <translation>Schweißung %1 geht ohne diese Prüfung weiter.</translation>
        </message>
        <message>
            <source>Joint %1 is above the upper limit: %2.</source>
            <translation>Schweißung %1 liegt über der oberen Grenze: %2.</translation>
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
            <source>Joint %1 is below the lower limit: %2.</source>
            <translation>Schweißung %1 liegt unter der unteren Grenze: %2.</translation>
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
            <source>Joint %1 on bench %2 can't be read and is not in this plan.</source>
            <translation>Schweißung %1 auf Bank %2 ist nicht lesbar und fehlt in diesem Plan.</translation>
        </message>
        <message>
            <source>Joint %1 was broken off when the program ended.</source>
            <translation>Schweißung %1 wurde abgebrochen, als das Programm endete.</translation>
        </message>
        <message>
            <source>Joint %1, seam %2</source>
            <translation>Schweißung %1, Naht %2</translation>
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
            <source>Joint %1: %2</source>
            <translation>Schweißung %1: %2</translation>
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
            <source>Joint %1: to its page</source>
            <translation>Schweißung %1: zu ihrer Seite</translation>
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
            <source>Joints %1 and %2 are further apart than joints here are.</source>
            <translation>Die Schweißungen %1 und %2 liegen weiter auseinander als hier üblich.</translation>
        </message>
        <message>
            <source>Joints %1 to %2: %3 in a row above the mean.</source>
            <translation>Schweißungen %1 bis %2: %3 in Folge über dem Mittel.</translation>
        </message>
        <message>
            <source>Joints %1 to %2: %3 in a row below the mean.</source>
            <translation>Schweißungen %1 bis %2: %3 in Folge unter dem Mittel.</translation>
        </message>
        <message>
            <source>Joints %1 to %2: %3 in a row, each higher.</source>
            <translation>Schweißungen %1 bis %2: %3 in Folge, jede höher.</translation>
        </message>
        <message>
            <source>Joints %1 to %2: %3 in a row, each lower.</source>
            <translation>Schweißungen %1 bis %2: %3 in Folge, jede niedriger.</translation>
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
            <source>Joints that are alike. Limits say that something changed, not that a joint is bad.</source>
            <translation>Gleichartige Schweißungen. Grenzen zeigen eine Änderung, nicht, dass eine schlecht ist.</translation>
        </message>
        <message>
            <source>Joints with the batch "%1": %2.</source>
            <translation>Schweißungen mit der Charge „%1“: %2.</translation>
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
            <source>Just hot now</source>
            <translation>Gerade erst heiß</translation>
        </message>
        <message>
            <source>K %1 mm</source>
            <translation>K %1 mm</translation>
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
            <source>Keep the bench</source>
            <translation>Bank übernehmen</translation>
        </message>
        <message>
            <source>Keep them</source>
            <translation>Speichern</translation>
        </message>
        <message>
            <source>Keep this PIN</source>
            <translation>PIN übernehmen</translation>
        </message>
        <message>
            <source>Kilograms or newtons</source>
            <translation>Kilogramm oder Newton</translation>
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
            <source>Language and units</source>
            <translation>Sprache und Einheiten</translation>
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
            <source>Later</source>
            <translation>Später</translation>
        </message>
        <message>
            <source>Later: without a bench there is no weld card. The demo shop has two.</source>
            <translation>Später: Ohne Bank keine Schweißkarte. Der Demo-Betrieb hat zwei.</translation>
        </message>
        <message>
            <source>Leave it empty where it is measured before the weld.</source>
            <translation>Leer lassen, wenn sie vor dem Schweißen gemessen wird.</translation>
        </message>
        <message>
            <source>Leave it locked. %1</source>
            <translation>Gesperrt lassen. %1</translation>
        </message>
        <message>
            <source>Leave it locked. Nothing else to do.</source>
            <translation>Gesperrt lassen. Sonst nichts zu tun.</translation>
        </message>
        <message>
            <source>Leave it locked. Paint number %1 on the sheet.</source>
            <translation>Gesperrt lassen. Nummer %1 auf die Tafel schreiben.</translation>
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
            <source>Leave the demo</source>
            <translation>Demo verlassen</translation>
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
            <source>Leave the machine on: it is saved by itself. Look for a full disk.</source>
            <translation>Rechner eingeschaltet lassen: Es wird von selbst gespeichert. Nachsehen, ob ein Datenträger voll ist.</translation>
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
            <source>Length [mm]</source>
            <translation>Länge [mm]</translation>
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
            <source>Less than 15 % is left, and nothing charges it.</source>
            <translation>Es sind weniger als 15 % übrig, und nichts lädt.</translation>
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
            <source>Let the plate come to its temperature, and read that place again.</source>
            <translation>Das Heizelement auf Temperatur kommen lassen und die Stelle neu ablesen.</translation>
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
            <source>Line %1</source>
            <translation>Zeile %1</translation>
        </message>
        <message>
            <source>Line %1, %2</source>
            <translation>Zeile %1, %2</translation>
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
            <source>Longer than it was: is the plate cold or dirty?</source>
            <translation>Länger als früher: ist das Heizelement kalt oder schmutzig?</translation>
        </message>
        <message>
            <source>Longest seam</source>
            <translation>Längste Naht</translation>
        </message>
        <message>
            <source>Look</source>
            <translation>Prüfen</translation>
        </message>
        <message>
            <source>Look again by %1.</source>
            <translation>Erneut prüfen bis %1.</translation>
        </message>
        <message>
            <source>Look at another clock. "Seen" if the machine's clock is right; else "Not sure": then only the time that has surely passed counts.</source>
            <translation>Auf eine andere Uhr schauen. „Gesehen“, wenn die Uhr des Rechners stimmt; sonst „Unsicher“: Dann zählt nur die Zeit, die sicher vergangen ist.</translation>
        </message>
        <message>
            <source>Look at both faces of the plate before it goes in, and wipe it with a clean cloth. It is hot: hold the cloth as the machine's instructions say.</source>
            <translation>Beide Flächen des Heizelements ansehen, bevor es hineinkommt, und mit einem sauberen Tuch abwischen. Es ist heiß: das Tuch halten, wie die Anleitung der Maschine sagt.</translation>
        </message>
        <message>
            <source>Look at it where it lies, and tell the foreman: its record is only in the old log, which is kept.</source>
            <translation>Sie dort ansehen, wo sie liegt, und es dem Meister sagen: Ihr Protokoll steht nur im alten Logbuch, das aufbewahrt ist.</translation>
        </message>
        <message>
            <source>Look at joint %1</source>
            <translation>Schweißung %1 ansehen</translation>
        </message>
        <message>
            <source>Look at the edges: gap to %1 mm, step to %2 mm.</source>
            <translation>Kanten ansehen: Spalt bis %1 mm, Versatz bis %2 mm.</translation>
        </message>
        <message>
            <source>Look round the demo shop</source>
            <translation>Demo-Betrieb ansehen</translation>
        </message>
        <message>
            <source>Look whether date and time are right now, then "Seen".</source>
            <translation>Prüfen, ob Datum und Uhrzeit jetzt stimmen, dann „Gesehen“.</translation>
        </message>
        <message>
            <source>Look which bench it is, then press.</source>
            <translation>Nachsehen, welche Bank es ist, dann drücken.</translation>
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
            <source>Lost before the faces press</source>
            <translation>Vorlast, bis die Flächen drücken</translation>
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
            <source>Make the same weld three times, with nothing wrong. It should look like the same weld.</source>
            <translation>Dreimal dieselbe Schweißung machen, nichts ist falsch. Sie soll aussehen wie dieselbe.</translation>
        </message>
        <message>
            <source>Maker, sheet 1</source>
            <translation>Hersteller, Tafel 1</translation>
        </message>
        <message>
            <source>Maker, sheet 2</source>
            <translation>Hersteller, Tafel 2</translation>
        </message>
        <message>
            <source>Mark</source>
            <translation>Markieren</translation>
        </message>
        <message>
            <source>Material</source>
            <translation>Werkstoff</translation>
        </message>
        <message>
            <source>May be rewelded</source>
            <translation>Darf neu geschweißt</translation>
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
            <source>Measure the plate on its face. A plate above its window makes a fast bead and damages the melt; it also burns worse and smells.</source>
            <translation>Das Heizelement auf seiner Fläche messen. Über seinem Bereich macht es schnell einen Wulst und schädigt die Schmelze; man verbrennt sich daran auch schlimmer, und es riecht.</translation>
        </message>
        <message>
            <source>Measure the valley's height above the sheet.</source>
            <translation>Höhe des Kerbgrunds über der Tafel messen.</translation>
        </message>
        <message>
            <source>Melt left</source>
            <translation>Schmelze übrig</translation>
        </message>
        <message>
            <source>Middle</source>
            <translation>Mitte</translation>
        </message>
        <message>
            <source>Monday morning</source>
            <translation>Montagmorgen</translation>
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
            <source>More steps</source>
            <translation>Mehr Schritte</translation>
        </message>
        <message>
            <source>More: %1 of %2</source>
            <translation>Weiter: %1 von %2</translation>
        </message>
        <message>
            <source>Moving air takes the heat off bare faces while the plate leaves. Look for it and shield the seam, and be quick at the changeover.</source>
            <translation>Bewegte Luft nimmt den bloßen Flächen die Wärme, während das Heizelement weggeht. Danach suchen, die Naht schützen und beim Umstellen schnell sein.</translation>
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
            <source>Name of the bench</source>
            <translation>Name der Bank</translation>
        </message>
        <message>
            <source>Name of the shop</source>
            <translation>Name des Betriebs</translation>
        </message>
        <message>
            <source>Near its back end this plate was 40 K colder. The bead stayed small there while the rest was ready; a clock can't see that, only somebody who looks along the seam.</source>
            <translation>Am hinteren Ende war dieses Heizelement 40 K kälter. Dort blieb der Wulst klein, als der Rest fertig war; eine Uhr sieht das nicht, nur wer die Naht entlang schaut.</translation>
        </message>
        <message>
            <source>Neither the log nor the spill file can be written. It sounds like a step that is not on disk.</source>
            <translation>Weder Logbuch noch Auffangdatei lassen sich schreiben. Es klingt wie ein Schritt, der nicht gespeichert ist.</translation>
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
            <source>Newer joints</source>
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
            <source>No coupons are entered yet.</source>
            <translation>Noch sind keine Proben eingetragen.</translation>
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
            <source>No foreman has a PIN on this tablet: nothing can be kept.</source>
            <translation>Kein Meister hat auf diesem Tablet eine PIN: nichts kann gespeichert werden.</translation>
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
            <source>No joint holds the batch "%1".</source>
            <translation>Keine Schweißung enthält die Charge „%1“.</translation>
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
            <source>No joint is there yet to chart.</source>
            <translation>Noch gibt es keine Schweißung dafür.</translation>
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
            <source>No more coupons</source>
            <translation>Keine Probe mehr</translation>
        </message>
        <message>
            <source>No more welded</source>
            <translation>Keine geschweißte mehr</translation>
        </message>
        <message>
            <source>No other bench can take it</source>
            <translation>Keine andere Bank kann es</translation>
        </message>
        <message>
            <source>No other mistake of the hands was found.</source>
            <translation>Sonst wurde kein Fehler der Hände gefunden.</translation>
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
            <source>No required factor is known for this material.</source>
            <translation>Für diesen Werkstoff ist kein verlangter Faktor bekannt.</translation>
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
            <source>No welding factor yet</source>
            <translation>Noch kein Schweißfaktor</translation>
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
            <source>Nobody is entered: the plan is for one operator.</source>
            <translation>Niemand ist eingetragen: der Plan ist für einen Bediener.</translation>
        </message>
        <message>
            <source>Not all of it can be read.</source>
            <translation>Nicht alles davon ist lesbar.</translation>
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
            <source>Nothing is due within %1 days.</source>
            <translation>In %1 Tagen ist nichts fällig.</translation>
        </message>
        <message>
            <source>Nothing is to weld.</source>
            <translation>Nichts ist zu schweißen.</translation>
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
            <source>Nothing is typed; allowed: 1 to %1 characters.</source>
            <translation>Nichts eingetippt; erlaubt: 1 bis %1 Zeichen.</translation>
        </message>
        <message>
            <source>Nothing of that joint could be read.</source>
            <translation>Von dieser Schweißung ließ sich nichts lesen.</translation>
        </message>
        <message>
            <source>Nothing stands out among these joints.</source>
            <translation>Keine dieser Schweißungen fällt auf.</translation>
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
            <source>Of one seam. Others in this clamping are added after it.</source>
            <translation>Von einer Naht. Weitere in dieser Spannung kommen danach dazu.</translation>
        </message>
        <message>
            <source>Of one spring, as its plate says. The springs add.</source>
            <translation>Einer Feder, wie auf ihrem Schild. Die Federn addieren sich.</translation>
        </message>
        <message>
            <source>Of which joint?</source>
            <translation>Von welcher Schweißung?</translation>
        </message>
        <message>
            <source>Older</source>
            <translation>Ältere</translation>
        </message>
        <message>
            <source>Older joints</source>
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
            <source>One</source>
            <translation>Eine</translation>
        </message>
        <message>
            <source>One attested value is withdrawn.</source>
            <translation>Bestätigung entzogen, Werte: 1.</translation>
        </message>
        <message>
            <source>One by one</source>
            <translation>Einzeln</translation>
        </message>
        <message>
            <source>One further seam is not in this plan: it holds %1.</source>
            <translation>Eine weitere Naht steht nicht in diesem Plan: Er fasst %1.</translation>
        </message>
        <message>
            <source>One joint alone gives no limits yet.</source>
            <translation>Eine Schweißung allein gibt noch keine Grenzen.</translation>
        </message>
        <message>
            <source>One joint: no limits yet.</source>
            <translation>Eine Schweißung: noch keine Grenzen.</translation>
        </message>
        <message>
            <source>One long tone of three notes, then two pulses a second until the plate is out.</source>
            <translation>Ein langer Ton aus drei Noten, dann zwei Pulse je Sekunde, bis das Heizelement heraus ist.</translation>
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
            <source>One number</source>
            <translation>Eine Zahl</translation>
        </message>
        <message>
            <source>One place that stays cold</source>
            <translation>Eine Stelle, die kalt bleibt</translation>
        </message>
        <message>
            <source>One seam is kept.</source>
            <translation>Eine Naht ist gespeichert.</translation>
        </message>
        <message>
            <source>One seam is open, and can't be planned.</source>
            <translation>Eine Naht ist offen und nicht planbar.</translation>
        </message>
        <message>
            <source>One short pulse at 3, 2 and 1 s before the soak is over.</source>
            <translation>Ein kurzer Puls 3, 2 und 1 s vor dem Ende der Anwärmzeit.</translation>
        </message>
        <message>
            <source>One value is attested.</source>
            <translation>Bestätigte Werte: 1.</translation>
        </message>
        <message>
            <source>One value loses its standing.</source>
            <translation>Bestätigung entfällt, Werte: 1.</translation>
        </message>
        <message>
            <source>One value of %1.</source>
            <translation>Werte: 1 aus %1.</translation>
        </message>
        <message>
            <source>One weld at a virtual bench; %1 within limits and with a joint that bends.</source>
            <translation>Eine Schweißung an einer virtuellen Bank; %1 in den Grenzen und mit biegbarer Schweißung.</translation>
        </message>
        <message>
            <source>One weld. Touch it to see it again.</source>
            <translation>Eine Schweißung. Antippen zeigt sie noch einmal.</translation>
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
            <source>Only one side was looked at: the other bead was %1 high %2, asked are %3.</source>
            <translation>Nur eine Seite wurde angesehen: der andere Wulst war %1 hoch %2, verlangt sind %3.</translation>
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
            <source>Over for %1 days (%2).</source>
            <translation>Seit %1 Tagen abgelaufen (%2).</translation>
        </message>
        <message>
            <source>Over since yesterday (%1).</source>
            <translation>Seit gestern abgelaufen (%1).</translation>
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
            <source>PDF or on paper</source>
            <translation>PDF oder auf Papier</translation>
        </message>
        <message>
            <source>PIN of %1</source>
            <translation>PIN: %1</translation>
        </message>
        <message>
            <source>PP melts higher and freezes sooner than PE-HD: its changeover leaves less time than the card of PE has taught you.</source>
            <translation>PP schmilzt höher und erstarrt früher als PE-HD: sein Umstellen lässt weniger Zeit, als von der Karte für PE gewohnt.</translation>
        </message>
        <message>
            <source>PP: less force, longer heat</source>
            <translation>PP: weniger Kraft, länger warm</translation>
        </message>
        <message>
            <source>PRACTICE</source>
            <translation>ÜBUNG</translation>
        </message>
        <message>
            <source>PVDF forgives little: the melt is thin and freezes fast, so changeover and build-up are short.</source>
            <translation>PVDF verzeiht wenig: die Schmelze ist dünn und erstarrt schnell; Umstellen und Druckaufbau sind kurz.</translation>
        </message>
        <message>
            <source>PVDF is welded on a much hotter plate. It gives off harmful gas when it is overheated: keep to the window, and air the place as the machine's and the sheet's instructions say.</source>
            <translation>PVDF wird mit viel heißerem Heizelement geschweißt. Überhitzt gibt es schädliches Gas ab: im Bereich bleiben und lüften, wie es die Anleitungen von Maschine und Tafel sagen.</translation>
        </message>
        <message>
            <source>PVDF: hot and short</source>
            <translation>PVDF: heiß und kurz</translation>
        </message>
        <message>
            <source>Paint joint number %1 on the sheet.</source>
            <translation>Nummer %1 auf die Tafel malen.</translation>
        </message>
        <message>
            <source>Parent sheet</source>
            <translation>Grundtafel</translation>
        </message>
        <message>
            <source>Parent sheet: %1</source>
            <translation>Grundtafel: %1</translation>
        </message>
        <message>
            <source>Part</source>
            <translation>Teil</translation>
        </message>
        <message>
            <source>People are entered by a foreman.</source>
            <translation>Personen trägt ein Meister ein.</translation>
        </message>
        <message>
            <source>Photo %1</source>
            <translation>Foto %1</translation>
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
            <source>Place %1 of %2, seam %3 at %4 mm: </source>
            <translation>Stelle %1 von %2, Naht %3 bei %4 mm: </translation>
        </message>
        <message>
            <source>Place %1 of %2: %3.</source>
            <translation>Stelle %1 von %2: %3.</translation>
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
            <source>Plate has settled. Measure it now.</source>
            <translation>Heizelement ist ruhig. Jetzt messen.</translation>
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
            <source>Plate is settling. Measure it at zero.</source>
            <translation>Heizelement wird ruhig. Bei null messen.</translation>
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
            <source>Plug the charger in, and the alarm ends by itself. "Seen" hides it until the battery was charged and is low again.</source>
            <translation>Ladegerät anschließen, dann endet der Alarm von selbst. „Gesehen“ verbirgt ihn, bis der Akku geladen war und wieder schwach ist.</translation>
        </message>
        <message>
            <source>Polypropylene takes another plate temperature, less pressure and a longer soak than PE-HD. Read the whole card, not only the mark on the scale.</source>
            <translation>Polypropylen braucht eine andere Heizelementtemperatur, weniger Druck und längeres Anwärmen als PE-HD. Die ganze Karte lesen, nicht nur die Marke auf der Skala.</translation>
        </message>
        <message>
            <source>Power was off</source>
            <translation>Strom war weg</translation>
        </message>
        <message>
            <source>Power was off.</source>
            <translation>Strom war weg.</translation>
        </message>
        <message>
            <source>Power was off. Last step %1 ago.</source>
            <translation>Strom war weg. Letzter Schritt vor %1.</translation>
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
            <source>Practice was closed in mid-weld: nothing was kept to see again.</source>
            <translation>Die Übung wurde mitten in der Schweißung geschlossen: nichts blieb zum Ansehen.</translation>
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
            <source>Press to work it out anew</source>
            <translation>Drücken, um neu zu rechnen</translation>
        </message>
        <message>
            <source>Pressure</source>
            <translation>Druck</translation>
        </message>
        <message>
            <source>Pressure in soak presses out the melt that soak is there to make: the bead gets fat and the joint brittle.</source>
            <translation>Druck beim Anwärmen presst die Schmelze heraus, die das Anwärmen bilden soll: der Wulst wird dick und die Schweißung spröde.</translation>
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
            <source>Pressure on the faces in soak: %1; at most %2.</source>
            <translation>Druck auf den Flächen beim Anwärmen: %1; höchstens %2.</translation>
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
            <source>Pulled, of a joint</source>
            <translation>Gezogen, Schweißung</translation>
        </message>
        <message>
            <source>Pulled, of a trial</source>
            <translation>Gezogen, Versuch</translation>
        </message>
        <message>
            <source>Pulses that do not rise, until the reading stands.</source>
            <translation>Pulse, die nicht steigen, bis der Skalenwert steht.</translation>
        </message>
        <message>
            <source>Put it right</source>
            <translation>Berichtigen</translation>
        </message>
        <message>
            <source>Put right on %1 by %2</source>
            <translation>Berichtigt am %1 von %2</translation>
        </message>
        <message>
            <source>Rate %1 N for each %2 (± %3 %), zero at %4 %2.</source>
            <translation>Rate %1 N je %2 (± %3 %), Null bei %4 %2.</translation>
        </message>
        <message>
            <source>Rate from its plate</source>
            <translation>Rate vom Schild</translation>
        </message>
        <message>
            <source>Rate of a spring</source>
            <translation>Rate einer Feder</translation>
        </message>
        <message>
            <source>Reaches the required %1 by its means, not with all its interval.</source>
            <translation>Erreicht die verlangten %1 im Mittel, nicht mit dem ganzen Bereich.</translation>
        </message>
        <message>
            <source>Reaches the required %1 by its means; there is no interval.</source>
            <translation>Erreicht die verlangten %1 im Mittel; einen Bereich gibt es nicht.</translation>
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
            <source>Read it where the bench stands. In the plan: %1 °C.</source>
            <translation>Dort ablesen, wo die Bank steht. Im Plan: %1 °C.</translation>
        </message>
        <message>
            <source>Read on the face. %1</source>
            <translation>An der Fläche messen. %1</translation>
        </message>
        <message>
            <source>Read plate</source>
            <translation>Messen</translation>
        </message>
        <message>
            <source>Read scale %1 now and type it in.</source>
            <translation>Skala %1 jetzt ablesen, eintippen.</translation>
        </message>
        <message>
            <source>Read the file that is named, and look at each joint that it names.</source>
            <translation>Die genannte Datei lesen und jede Schweißung ansehen, die sie nennt.</translation>
        </message>
        <message>
            <source>Read the plate on its face</source>
            <translation>Das Heizelement auf der Fläche messen</translation>
        </message>
        <message>
            <source>Read the plate on its face. %1</source>
            <translation>Heizelement an der Fläche messen. %1</translation>
        </message>
        <message>
            <source>Read the scale again after the lock, and again. When it has fallen below its band, turn up to the mark and lock again.</source>
            <translation>Nach dem Sperren die Skala wieder ablesen, und noch einmal. Ist sie unter ihr Band gefallen, zur Marke hochdrehen und wieder sperren.</translation>
        </message>
        <message>
            <source>Read the scale and type it in. If it is too low, turn up to the reading that is shown ("Reading is below …").</source>
            <translation>Skala ablesen und eingeben. Ist der Wert zu niedrig, auf den gezeigten Skalenwert hochdrehen („Wert unter …“).</translation>
        </message>
        <message>
            <source>Reading</source>
            <translation>Ablesung</translation>
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
            <source>Reading without force</source>
            <translation>Wert ohne Kraft</translation>
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
            <source>Remove the demo</source>
            <translation>Demo entfernen</translation>
        </message>
        <message>
            <source>Remove the demo shop</source>
            <translation>Demo-Betrieb entfernen</translation>
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
            <source>Rising pulses, two a second, until the faces are together.</source>
            <translation>Steigende Pulse, zwei je Sekunde, bis die Flächen zusammen sind.</translation>
        </message>
        <message>
            <source>Rising: is the plate cold or dirty?</source>
            <translation>Steigt: ist das Heizelement kalt oder schmutzig?</translation>
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
            <source>SEAMCLOCK_RESOURCES %1 is no folder; allowed: a folder with procedures/ in it, or leave it unset</source>
            <translation>SEAMCLOCK_RESOURCES %1 ist kein Ordner; erlaubt: ein Ordner mit procedures/ darin, oder nicht gesetzt</translation>
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
            <source>Seam %1 alone takes so long. </source>
            <translation>Naht %1 allein dauert so lange. </translation>
        </message>
        <message>
            <source>Seam %1 has no joint yet.</source>
            <translation>Naht %1 hat noch keine Schweißung.</translation>
        </message>
        <message>
            <source>Seam %1 has no joint yet. It is of a job that lies in a file.</source>
            <translation>Naht %1 hat noch keine Schweißung. Ihr Auftrag liegt in einer Datei.</translation>
        </message>
        <message>
            <source>Seam %1 is not planned: %2.</source>
            <translation>Naht %1 ist nicht eingeplant: %2.</translation>
        </message>
        <message>
            <source>Seam %1 is open.</source>
            <translation>Naht %1 ist offen.</translation>
        </message>
        <message>
            <source>Seam %1 is taken away.</source>
            <translation>Naht %1 ist entfernt.</translation>
        </message>
        <message>
            <source>Seam %1 of %2: </source>
            <translation>Naht %1 von %2: </translation>
        </message>
        <message>
            <source>Seam %1 of job %2</source>
            <translation>Naht %1 von Auftrag %2</translation>
        </message>
        <message>
            <source>Seam %1 of job %2 is kept.</source>
            <translation>Naht %1 von Auftrag %2 ist gespeichert.</translation>
        </message>
        <message>
            <source>Seam %1 waits for the foreman's word on joint %2.</source>
            <translation>Naht %1 wartet auf das Wort des Meisters zu Schweißung %2.</translation>
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
            <source>Seam's label</source>
            <translation>Name der Naht</translation>
        </message>
        <message>
            <source>Seamclock</source>
            <translation>Seamclock</translation>
        </message>
        <message>
            <source>Seamclock can't start</source>
            <translation>Seamclock startet nicht</translation>
        </message>
        <message>
            <source>Seamclock can't start.</source>
            <translation>Seamclock startet nicht.</translation>
        </message>
        <message>
            <source>Seamclock guides you. It decides nothing.</source>
            <translation>Seamclock führt. Es entscheidet nichts.</translation>
        </message>
        <message>
            <source>Seamclock, practice: physics in a model, no plastic. It can't teach the feel of a wheel, and it proves no skill at a real bench.</source>
            <translation>Seamclock, Üben: Physik im Modell, kein Kunststoff. Es lehrt nicht das Gefühl im Handrad und beweist kein Können an einer echten Bank.</translation>
        </message>
        <message>
            <source>Seamclock: demo shop</source>
            <translation>Seamclock: Demo-Betrieb</translation>
        </message>
        <message>
            <source>Seamclock: first steps</source>
            <translation>Seamclock: erste Schritte</translation>
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
            <source>Seams made: %1 of %2.</source>
            <translation>Nähte gemacht: %1 von %2.</translation>
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
            <source>Set out seam %1's sheets.</source>
            <translation>Tafeln für Naht %1 bereitlegen.</translation>
        </message>
        <message>
            <source>Set plate</source>
            <translation>Einstellen</translation>
        </message>
        <message>
            <source>Set the gap to %1 mm, the same front and back.</source>
            <translation>Abstand auf %1 mm stellen, vorn wie hinten.</translation>
        </message>
        <message>
            <source>Set the plate of bench %1 to %2 °C for %3. It settles until %4.</source>
            <translation>Heizelement von Bank %1 auf %2 °C für %3 stellen. Es braucht bis %4.</translation>
        </message>
        <message>
            <source>Set up the shop</source>
            <translation>Betrieb einrichten</translation>
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
            <source>Several seams in one clamping with + between them: 620+580.</source>
            <translation>Mehrere Nähte in einer Spannung mit + dazwischen: 620+580.</translation>
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
            <source>Sheet [mm]</source>
            <translation>Tafel [mm]</translation>
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
            <source>Sheets apart, plate out, faces together. Press "Plate out" as the plate leaves.</source>
            <translation>Tafeln auseinander, Heizelement heraus, Flächen zusammen. „Heizelement raus“ drücken, wenn das Heizelement die Tafeln verlässt.</translation>
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
            <source>Shielded from draught</source>
            <translation>Vor Zugluft geschützt</translation>
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
            <source>Smallest division</source>
            <translation>Kleinste Teilung</translation>
        </message>
        <message>
            <source>Smallest division of the scale</source>
            <translation>Kleinste Teilung der Skala</translation>
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
            <source>Soak was counted before the bead stood: it was %1 high, asked are %2.</source>
            <translation>Das Anwärmen zählte, bevor der Wulst stand: er war %1 hoch, verlangt sind %2.</translation>
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
            <source>Some days of joints by a virtual operator. It takes a few seconds.</source>
            <translation>Einige Tage Schweißungen eines gedachten Bedieners. Es dauert ein paar Sekunden.</translation>
        </message>
        <message>
            <source>Some times are chosen, not measured: fewer than five such joints.</source>
            <translation>Manche Zeiten sind gewählt, nicht gemessen: weniger als fünf solche Schweißungen.</translation>
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
            <source>Somebody rings while the plate is in. Soak does not wait, and you can't see the bench with the phone at your ear. Decide.</source>
            <translation>Jemand ruft an, während das Heizelement drin ist. Das Anwärmen wartet nicht, und mit dem Telefon am Ohr ist die Bank nicht zu sehen. Entscheiden.</translation>
        </message>
        <message>
            <source>Somebody took the spring's newtons for kilograms of force, so every reading on the card was ten times too small. A 10 mm seam of this length takes 2700 N, more than a grown man three times over.</source>
            <translation>Jemand hielt die Newton der Feder für Kilogramm Kraft; jeder Skalenwert der Karte war zehnmal zu klein. Eine 10-mm-Naht dieser Länge braucht 2700 N, mehr als drei erwachsene Männer.</translation>
        </message>
        <message>
            <source>Somebody who welds</source>
            <translation>Jemand, der schweißt</translation>
        </message>
        <message>
            <source>Somebody who welds is entered.</source>
            <translation>Jemand, der schweißt, wird eingetragen.</translation>
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
            <source>Springs</source>
            <translation>Federn</translation>
        </message>
        <message>
            <source>Stand at the bench. Can you hear the signal?</source>
            <translation>An die Bank stellen. Ist das Signal zu hören?</translation>
        </message>
        <message>
            <source>Stand ready. Do nothing before zero.</source>
            <translation>Bereitstehen. Vor null nichts tun.</translation>
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
            <source>Steps are written in this name. Later: the log names nobody.</source>
            <translation>Schritte stehen unter diesem Namen. Später: Das Logbuch nennt niemanden.</translation>
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
            <source>Stored at closing. After a correction: %1.</source>
            <translation>So beim Abschluss gespeichert. Nach einer Berichtigung: %1.</translation>
        </message>
        <message>
            <source>Stored at closing. Worked out again: %1.</source>
            <translation>So beim Abschluss gespeichert. Neu ausgewertet: %1.</translation>
        </message>
        <message>
            <source>Stored at closing: %1</source>
            <translation>Beim Abschluss gespeichert: %1</translation>
        </message>
        <message>
            <source>Strength tests</source>
            <translation>Festigkeit</translation>
        </message>
        <message>
            <source>Strengths</source>
            <translation>Festigkeiten</translation>
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
            <source>Take away all without a joint</source>
            <translation>Alle ohne Schweißung entfernen</translation>
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
            <source>Take it away</source>
            <translation>Entfernen</translation>
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
            <source>Taken away it is no longer offered; the log keeps that it was there.</source>
            <translation>Entfernt wird sie nicht mehr angeboten; im Logbuch steht, dass es sie gab.</translation>
        </message>
        <message>
            <source>Ten seconds of soak are left; in cooling, one minute.</source>
            <translation>Noch zehn Sekunden Anwärmen; beim Abkühlen noch eine Minute.</translation>
        </message>
        <message>
            <source>Tested by</source>
            <translation>Geprüft nach</translation>
        </message>
        <message>
            <source>That PIN is wrong.</source>
            <translation>Die PIN ist falsch.</translation>
        </message>
        <message>
            <source>That weld was open when the log was set aside, and nothing of it is lost.</source>
            <translation>Diese Schweißung war offen, als das Logbuch beiseite gelegt wurde, und nichts von ihr fehlt.</translation>
        </message>
        <message>
            <source>The angle at the crack, or at the end.</source>
            <translation>Der Winkel beim Riss oder am Ende.</translation>
        </message>
        <message>
            <source>The battery is low: %1 %. Plug the charger in.</source>
            <translation>Der Akku ist schwach: %1 %. Ladegerät anstecken.</translation>
        </message>
        <message>
            <source>The bead ends alignment, the clock ends soak, and the spring is followed until the melt is stiff. A good weld is the same one again and again.</source>
            <translation>Der Wulst beendet das Angleichen, die Uhr das Anwärmen, und die Feder wird nachgestellt, bis die Schmelze steif ist. Eine gute Schweißung ist immer wieder dieselbe.</translation>
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
            <source>The bench is full: it holds %1 mm of seams.</source>
            <translation>Die Bank ist voll: sie fasst %1 mm Naht.</translation>
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
            <source>The card of another sheet</source>
            <translation>Die Karte einer anderen Tafel</translation>
        </message>
        <message>
            <source>The card was for %1, and %2 lay there.</source>
            <translation>Die Karte galt für %1, und da lagen %2.</translation>
        </message>
        <message>
            <source>The card was made for 4 mm and 10 mm lay there: too little force, too short a soak and far too short a cooling. No step after that can put it right.</source>
            <translation>Die Karte war für 4 mm, und da lagen 10 mm: zu wenig Kraft, zu kurz angewärmt und viel zu kurz gekühlt. Kein Schritt danach macht das gut.</translation>
        </message>
        <message>
            <source>The card's reading was %1; this seam takes %2. Its unit was wrong.</source>
            <translation>Der Skalenwert der Karte war %1; diese Naht braucht %2. Die Einheit war falsch.</translation>
        </message>
        <message>
            <source>The clock on the wall was set by more than 2 s, by hand or by the network, ahead or back. It is a remark in every open weld.</source>
            <translation>Die Uhrzeit wurde um mehr als 2 s gestellt, von Hand oder vom Netz, vor oder zurück. Es ist ein Vermerk in jeder offenen Schweißung.</translation>
        </message>
        <message>
            <source>The day's copy could not be made; the sentence says why.</source>
            <translation>Die Tageskopie ließ sich nicht machen; der Satz sagt, warum.</translation>
        </message>
        <message>
            <source>The day's joints</source>
            <translation>Tagesliste</translation>
        </message>
        <message>
            <source>The day's plan</source>
            <translation>Tagesplan</translation>
        </message>
        <message>
            <source>The demo shop is being made.</source>
            <translation>Der Demo-Betrieb wird angelegt.</translation>
        </message>
        <message>
            <source>The demo shop is removed.</source>
            <translation>Der Demo-Betrieb ist entfernt.</translation>
        </message>
        <message>
            <source>The demo shop is removed. What is not its own stays: %1 in %2.</source>
            <translation>Der Demo-Betrieb ist entfernt. Was nicht ihm gehört, bleibt: %1 in %2.</translation>
        </message>
        <message>
            <source>The desktop's own printer stands first.</source>
            <translation>Der Standarddrucker steht zuerst.</translation>
        </message>
        <message>
            <source>The display shows what the controller believes. Measure the plate on its face, at three places, before you weld.</source>
            <translation>Die Anzeige sagt, was der Regler glaubt. Vor dem Schweißen das Heizelement auf seiner Fläche messen, an drei Stellen.</translation>
        </message>
        <message>
            <source>The edges are planed, the chips are off.</source>
            <translation>Die Kanten sind gehobelt, die Späne weg.</translation>
        </message>
        <message>
            <source>The edges met a dirty plate, %1.</source>
            <translation>Die Kanten trafen auf ein schmutziges Heizelement, %1.</translation>
        </message>
        <message>
            <source>The edges were not parallel: %1, against %2.</source>
            <translation>Die Kanten waren nicht parallel: %1, gegen %2.</translation>
        </message>
        <message>
            <source>The faces had cooled to %1 when they met, by the plan %2, %3.</source>
            <translation>Die Flächen waren beim Fügen auf %1 abgekühlt, nach Plan %2, %3.</translation>
        </message>
        <message>
            <source>The faces never met: there is nothing to bend.</source>
            <translation>Die Flächen trafen sich nie: nichts zu biegen.</translation>
        </message>
        <message>
            <source>The faces stood %1 off the plate in soak.</source>
            <translation>Die Flächen standen beim Anwärmen %1 vom Heizelement ab.</translation>
        </message>
        <message>
            <source>The faces stood in air for %1; at most %2.</source>
            <translation>Die Flächen standen %1 in der Luft; höchstens %2.</translation>
        </message>
        <message>
            <source>The file</source>
            <translation>Die Datei</translation>
        </message>
        <message>
            <source>The film is off the edges.</source>
            <translation>Die Folie ist von den Kanten ab.</translation>
        </message>
        <message>
            <source>The film was still on the edge, %1.</source>
            <translation>Die Folie war noch auf der Kante, %1.</translation>
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
            <source>The folder for it can't be reached.</source>
            <translation>Der Ordner dafür ist nicht erreichbar.</translation>
        </message>
        <message>
            <source>The force is less than this bench holds steadily.</source>
            <translation>Die Kraft ist kleiner, als diese Bank sicher hält.</translation>
        </message>
        <message>
            <source>The force stood after %1; it is built up over %2.</source>
            <translation>Die Kraft stand nach %1; aufgebaut wird sie über %2.</translation>
        </message>
        <message>
            <source>The force to join is at %1. Mark it on the scale.</source>
            <translation>Fügekraft bei %1. Auf der Skala markieren.</translation>
        </message>
        <message>
            <source>The foreman</source>
            <translation>Der Meister</translation>
        </message>
        <message>
            <source>The foreman decided</source>
            <translation>Der Meister entschied</translation>
        </message>
        <message>
            <source>The foreman enters people, keeps benches, seals the day. Later: no bench can be kept, so there is no weld card.</source>
            <translation>Der Meister trägt Personen ein, übernimmt Bänke, siegelt den Tag. Später: keine Bank, also keine Schweißkarte.</translation>
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
            <source>The foreman tests the trial joint of %1 and releases the series by %2.</source>
            <translation>Der Meister prüft die Probe für %1 und gibt die Serie spätestens um %2 frei.</translation>
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
            <source>The greatest force that it held.</source>
            <translation>Die größte Kraft, die sie hielt.</translation>
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
            <source>The horn or the machine's sound is away.</source>
            <translation>Das Horn oder der Ton des Rechners fehlt.</translation>
        </message>
        <message>
            <source>The job lets this seam be welded again %1 times. It is in the record.</source>
            <translation>Laut Auftrag darf diese Naht %1-mal neu geschweißt werden. Es steht im Protokoll.</translation>
        </message>
        <message>
            <source>The job lets this seam be welded again once. It is in the record.</source>
            <translation>Laut Auftrag darf diese Naht einmal neu geschweißt werden. Es steht im Protokoll.</translation>
        </message>
        <message>
            <source>The joining pressure is not there yet, and the time for it has passed.</source>
            <translation>Der Fügedruck ist noch nicht da, und die Zeit dafür ist vorbei.</translation>
        </message>
        <message>
            <source>The joint</source>
            <translation>Die Schweißung</translation>
        </message>
        <message>
            <source>The joint is closed, and some of its rows wait.</source>
            <translation>Die Schweißung ist abgeschlossen, und einige ihrer Zeilen warten.</translation>
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
            <source>The joint was let go after %1; at least %2.</source>
            <translation>Die Schweißung wurde nach %1 losgelassen; mindestens %2.</translation>
        </message>
        <message>
            <source>The key that it types becomes the next step.</source>
            <translation>Die Taste, die er tippt, wird der nächste Schritt.</translation>
        </message>
        <message>
            <source>The last reading that is printed on the scale.</source>
            <translation>Der letzte aufgedruckte Skalenwert.</translation>
        </message>
        <message>
            <source>The last three seconds of the soak.</source>
            <translation>Die letzten drei Sekunden des Anwärmens.</translation>
        </message>
        <message>
            <source>The least cooling time is over. Longer never harms.</source>
            <translation>Die Mindestabkühlzeit ist um. Länger schadet nie.</translation>
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
            <source>The log can't be written just now. The step counts, and waits in the spill file.</source>
            <translation>Das Logbuch lässt sich gerade nicht schreiben. Der Schritt zählt und wartet in der Auffangdatei.</translation>
        </message>
        <message>
            <source>The log is being read.</source>
            <translation>Das Logbuch wird gelesen.</translation>
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
            <source>The longest that fits between the clamps.</source>
            <translation>Die längste, die zwischen die Klemmen passt.</translation>
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
            <source>The materials' values could not be read.</source>
            <translation>Die Werte der Werkstoffe ließen sich nicht lesen.</translation>
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
            <source>The middle of a thick joint stays soft for many minutes after the outside is hard. Opening early bends it, and the spring that was not followed leaves hollow places.</source>
            <translation>Die Mitte einer dicken Schweißung bleibt viele Minuten weich, wenn sie außen schon hart ist. Frühes Öffnen biegt sie, und eine Feder, die nicht nachgestellt wurde, lässt Hohlstellen.</translation>
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
            <source>The plan is being worked out.</source>
            <translation>Der Plan wird gerechnet.</translation>
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
            <source>The plate has been out longer than the procedure allows. The skin is cooling.</source>
            <translation>Das Heizelement ist länger heraus, als die Anweisung erlaubt. Die Haut kühlt ab.</translation>
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
            <source>The plate is outside its window. Say what is wrong, or wait.</source>
            <translation>Heizelement außerhalb seines Bereichs. Melden oder warten.</translation>
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
            <source>The plate of bench %1 settles until %2.</source>
            <translation>Das Heizelement von Bank %1 braucht bis %2.</translation>
        </message>
        <message>
            <source>The plate stuck</source>
            <translation>Heizelement klebte</translation>
        </message>
        <message>
            <source>The plate was %1 on its face, %2; at least %3.</source>
            <translation>Das Heizelement hatte %1 auf seiner Fläche, %2; mindestens %3.</translation>
        </message>
        <message>
            <source>The plate was %1 on its face, %2; at most %3.</source>
            <translation>Das Heizelement hatte %1 auf seiner Fläche, %2; höchstens %3.</translation>
        </message>
        <message>
            <source>The plate was just switched on and the shop is cold. Let the plate come to its heat and settle, then measure it on its face. It takes some twenty minutes: let time run faster meanwhile.</source>
            <translation>Das Heizelement ist eben eingeschaltet, die Halle ist kalt. Das Heizelement warm werden und ausgleichen lassen, dann auf seiner Fläche messen. Das dauert rund zwanzig Minuten: so lange die Zeit schneller laufen lassen.</translation>
        </message>
        <message>
            <source>The plate's face reads %1 °C at the %2.</source>
            <translation>Heizelementfläche: %1 °C, %2.</translation>
        </message>
        <message>
            <source>The power was off before the lock.</source>
            <translation>Der Strom fiel vor dem Sperren aus.</translation>
        </message>
        <message>
            <source>The power was off for more than 12 hours, or the clock shows an earlier time than before.</source>
            <translation>Der Strom war länger als 12 Stunden weg, oder die Uhr zeigt eine frühere Zeit als vorher.</translation>
        </message>
        <message>
            <source>The power was off in cooling.</source>
            <translation>Der Strom fiel beim Abkühlen aus.</translation>
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
            <source>The program stands still or has ended while a weld was running. The horn sounds on what was planned, for 60 s at most.</source>
            <translation>Das Programm steht still oder ist beendet, während eine Schweißung lief. Das Horn gibt weiter, was geplant war, höchstens 60 s lang.</translation>
        </message>
        <message>
            <source>The ram's travel at the crack, or at the end.</source>
            <translation>Der Stempelweg beim Riss oder am Ende.</translation>
        </message>
        <message>
            <source>The reading fell to %1 and was not topped up; at least %2.</source>
            <translation>Der Skalenwert fiel auf %1 und wurde nicht nachgestellt; mindestens %2.</translation>
        </message>
        <message>
            <source>The reading went up to %1, past its mark at %2.</source>
            <translation>Der Skalenwert stieg auf %1, über seine Marke bei %2.</translation>
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
            <source>The report is on the printer: %1</source>
            <translation>Der Bericht ist beim Drucker: %1</translation>
        </message>
        <message>
            <source>The report is saved: %1</source>
            <translation>Der Bericht ist gespeichert: %1</translation>
        </message>
        <message>
            <source>The required factor is from memory of DVS 2203-1, short term.</source>
            <translation>Der verlangte Faktor ist aus dem Gedächtnis nach DVS 2203-1, Kurzzeit.</translation>
        </message>
        <message>
            <source>The rest is in Set-up and under "Who is it?": touch the clock.</source>
            <translation>Alles Übrige unter Einrichten und „Wer ist es?“: Uhr antippen.</translation>
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
            <source>The screen shows that weld where its steps can be read to.</source>
            <translation>Der Bildschirm zeigt diese Schweißung so weit, wie sich ihre Schritte lesen lassen.</translation>
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
            <source>The sheets close up and shrink in cooling, and the reading falls.</source>
            <translation>Die Tafeln rücken beim Abkühlen zusammen und schrumpfen, und der Skalenwert fällt.</translation>
        </message>
        <message>
            <source>The sheets close up as melt flows and shrinks, and the spring loses its rate times that. On a soft spring and a long seam that is a few per cent, which the verdict sees and a bend test does not; on stiff springs, a short seam or a lock that slips it leaves hollow places and a sunk bead.</source>
            <translation>Die Tafeln rücken nach, wenn Schmelze fließt und schrumpft, und die Feder verliert ihre Rate mal diesen Weg. Auf weicher Feder und langer Naht sind das ein paar Prozent, die das Urteil sieht und ein Biegeversuch nicht; auf steifen Federn, kurzer Naht oder mit einer Sperre, die rutscht, bleiben Hohlstellen und eine eingefallene Wulst.</translation>
        </message>
        <message>
            <source>The sheets of joint %1. Each leads to its joints.</source>
            <translation>Die Tafeln von Schweißung %1. Jede führt zu ihren Schweißungen.</translation>
        </message>
        <message>
            <source>The sheets' grades differ: ask first.</source>
            <translation>Die Sorten der Tafeln sind verschieden: erst fragen.</translation>
        </message>
        <message>
            <source>The shop is set up. Next: a weld card.</source>
            <translation>Der Betrieb ist eingerichtet. Nun eine Schweißkarte.</translation>
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
            <source>The smallest step that a hand can set.</source>
            <translation>Der kleinste Schritt, den eine Hand einstellen kann.</translation>
        </message>
        <message>
            <source>The soak is over; from "Soak is over by … s." on it is longer than it may be.</source>
            <translation>Die Anwärmzeit ist um; ab „Anwärmzeit seit … s um.“ ist sie länger, als sie sein darf.</translation>
        </message>
        <message>
            <source>The start before had set a log aside and did not come to its end.</source>
            <translation>Der Start davor hatte ein Logbuch beiseite gelegt und kam nicht zu Ende.</translation>
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
            <source>The test of a trial joint is counted with %1 min: chosen.</source>
            <translation>Die Prüfung einer Probe zählt %1 min: gewählt.</translation>
        </message>
        <message>
            <source>The thickest sheet that the clamps hold.</source>
            <translation>Die dickste Tafel, die die Klemmen halten.</translation>
        </message>
        <message>
            <source>The thinnest sheet that the clamps hold.</source>
            <translation>Die dünnste Tafel, die die Klemmen halten.</translation>
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
            <source>The weld is worked out and kept first.</source>
            <translation>Die Schweißung wird erst ausgerechnet und behalten.</translation>
        </message>
        <message>
            <source>The weld was stopped, so no verdict was stored.</source>
            <translation>Abgebrochen, daher ist kein Urteil gespeichert.</translation>
        </message>
        <message>
            <source>Their rates add.</source>
            <translation>Ihre Raten addieren sich.</translation>
        </message>
        <message>
            <source>Then: %1 mm, %2</source>
            <translation>Damals: %1 mm, %2</translation>
        </message>
        <message>
            <source>Then: %1 °, %2</source>
            <translation>Damals: %1 °, %2</translation>
        </message>
        <message>
            <source>Then: welded %1, parent %2</source>
            <translation>Damals: geschweißt %1, Grundtafel %2</translation>
        </message>
        <message>
            <source>There is no bench yet, so no weld card.</source>
            <translation>Noch keine Bank, also keine Schweißkarte.</translation>
        </message>
        <message>
            <source>There is no folder "%1".</source>
            <translation>Es gibt keinen Ordner „%1“.</translation>
        </message>
        <message>
            <source>There is no job yet. Read a table, or type a seam.</source>
            <translation>Es gibt noch keinen Auftrag. Eine Tabelle lesen oder eine Naht tippen.</translation>
        </message>
        <message>
            <source>There is no joint %1 in this log.</source>
            <translation>In diesem Logbuch gibt es keine Schweißung %1.</translation>
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
            <source>There is none at all.</source>
            <translation>Es gibt gar keine.</translation>
        </message>
        <message>
            <source>These days are not sealed.</source>
            <translation>Diese Tage sind nicht versiegelt.</translation>
        </message>
        <message>
            <source>Thick sheet: patience</source>
            <translation>Dicke Tafel: Geduld</translation>
        </message>
        <message>
            <source>Thickest sheet</source>
            <translation>Dickste Tafel</translation>
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
            <source>Thinnest sheet</source>
            <translation>Dünnste Tafel</translation>
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
            <source>This lock slips. Without topping up the pressure is gone while the middle of the joint is still molten. Tell the foreman: the bench wants repair. On a sound lock this spring loses no more than a few per cent by itself, as it is soft and follows the sheets; the verdict still asks for the reading.</source>
            <translation>Diese Sperre rutscht. Ohne Nachstellen ist der Druck weg, solange die Mitte noch geschmolzen ist. Dem Meister sagen: die Bank braucht eine Reparatur. Mit heiler Sperre verliert diese Feder von selbst nur ein paar Prozent, denn sie ist weich und folgt den Tafeln; das Urteil fragt trotzdem nach dem Skalenwert.</translation>
        </message>
        <message>
            <source>This machine can't be kept awake from here: see its own settings.</source>
            <translation>Dieser Rechner lässt sich von hier nicht wach halten: siehe seine Einstellungen.</translation>
        </message>
        <message>
            <source>This plate was 15 K colder than its display. The bead came slowly and the melt was thin: the first sign is the probe, the second an alignment that takes too long.</source>
            <translation>Dieses Heizelement war 15 K kälter als seine Anzeige. Der Wulst kam langsam und die Schmelze war dünn: das erste Zeichen ist der Fühler, das zweite ein Angleichen, das zu lange dauert.</translation>
        </message>
        <message>
            <source>This plate was 35 K too hot. Melt that hangs in strings on the plate has been harmed, however fine the bead looks. At your bench set it lower and let it settle; here say what is wrong and stop.</source>
            <translation>Dieses Heizelement war 35 K zu heiß. Schmelze, die in Fäden am Heizelement hängt, ist geschädigt, so schön der Wulst auch aussieht. An der Bank niedriger einstellen und ausgleichen lassen; hier melden und abbrechen.</translation>
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
            <source>This scale stood 3 mm too high, so every force was too small by nearly 190 N. It is set right before the weld, never reckoned in the head.</source>
            <translation>Diese Skala stand 3 mm zu hoch; jede Kraft war um fast 190 N zu klein. Das wird vor dem Schweißen eingestellt, nie im Kopf gerechnet.</translation>
        </message>
        <message>
            <source>This sheet leaned: its lower side stood 1.2 mm back. Where edges stand apart the bead comes late or not at all, and pressing harder only takes melt from where they touch. Half a millimetre is enough. Clamps, then Shim, sets it right; who leaves it must wait for the lower bead, too.</source>
            <translation>Diese Tafel war geneigt: ihre Unterseite stand 1,2 mm zurück. Wo Kanten auseinander stehen, kommt der Wulst spät oder nie, und mehr Druck nimmt nur Schmelze von dort, wo sie berühren. Ein halber Millimeter genügt. Klemmen, dann Unterlegen, bringt es in Ordnung; wer es lässt, muss auch auf den unteren Wulst warten.</translation>
        </message>
        <message>
            <source>This soak would end while another bench changes over or builds up.</source>
            <translation>Dieses Anwärmen würde enden, während eine andere Bank umstellt oder Druck aufbaut.</translation>
        </message>
        <message>
            <source>Three</source>
            <translation>Drei</translation>
        </message>
        <message>
            <source>Three in a row</source>
            <translation>Drei hintereinander</translation>
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
            <source>Tick one bench at least.</source>
            <translation>Mindestens eine Bank anhaken.</translation>
        </message>
        <message>
            <source>Tick one person at least.</source>
            <translation>Mindestens eine Person anhaken.</translation>
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
            <source>To the form</source>
            <translation>Zum Formular</translation>
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
            <source>Too hot is not better</source>
            <translation>Zu heiß ist nicht besser</translation>
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
            <source>Travel of the ram</source>
            <translation>Stempelweg</translation>
        </message>
        <message>
            <source>Travel of the ram [mm]</source>
            <translation>Stempelweg [mm]</translation>
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
            <source>Trial joints, not in All</source>
            <translation>Probeschweißungen, nicht in „Alle“</translation>
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
            <source>Trust your own clock and go on by hand. Start the program again: it goes on where the log stands.</source>
            <translation>Der eigenen Uhr trauen und von Hand weitermachen. Das Programm neu starten: Es macht dort weiter, wo das Logbuch steht.</translation>
        </message>
        <message>
            <source>Turn on evenly to the reading. A jerk squeezes the melt out, and letting back repairs nothing.</source>
            <translation>Gleichmäßig bis zum Skalenwert weiterdrehen. Ein Ruck presst die Schmelze heraus, und Zurücklassen macht nichts gut.</translation>
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
            <source>Two</source>
            <translation>Zwei</translation>
        </message>
        <message>
            <source>Two falling tones; again after 30, 60 and 90 s, then every 2 min until it is seen.</source>
            <translation>Zwei fallende Töne; wieder nach 30, 60 und 90 s, dann alle 2 min, bis es gesehen ist.</translation>
        </message>
        <message>
            <source>Two minutes without a press: the desk is closed.</source>
            <translation>Zwei Minuten ohne Druck: Das Pult ist zu.</translation>
        </message>
        <message>
            <source>Two pairs of low tones, every 2 s. They are the horn's own.</source>
            <translation>Zwei Paare tiefer Töne, alle 2 s. Sie kommen vom Horn selbst.</translation>
        </message>
        <message>
            <source>Two pairs of low tones, every 5 s, until it is seen or over.</source>
            <translation>Zwei Paare tiefer Töne, alle 5 s, bis es gesehen oder vorbei ist.</translation>
        </message>
        <message>
            <source>Two pulses, every 30 s, until alignment ends.</source>
            <translation>Zwei Pulse, alle 30 s, bis das Angleichen endet.</translation>
        </message>
        <message>
            <source>Two pulses, every 30 s, until it is typed in, the next reading is due, or two thirds of cooling are over.</source>
            <translation>Zwei Pulse, alle 30 s, bis er eingegeben ist, der nächste fällig ist oder zwei Drittel des Abkühlens um sind.</translation>
        </message>
        <message>
            <source>Two springs, a scale that begins at 2, and clamps that must not be opened under force: here the spring is let off first. Learn your own machine's order from its instructions.</source>
            <translation>Zwei Federn, eine Skala, die bei 2 beginnt, und Klemmen, die unter Kraft nicht aufgehen dürfen: hier wird zuerst die Feder entspannt. Die Folge der eigenen Maschine steht in ihrer Anleitung.</translation>
        </message>
        <message>
            <source>Type a seam</source>
            <translation>Naht tippen</translation>
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
            <source>Type something to look for first.</source>
            <translation>Zuerst tippen, was gesucht wird.</translation>
        </message>
        <message>
            <source>Type the number, then look.</source>
            <translation>Die Nummer tippen, dann suchen.</translation>
        </message>
        <message>
            <source>Type the whole batch as it stands on the sheet, then look.</source>
            <translation>Die ganze Charge tippen, wie sie auf der Tafel steht, dann suchen.</translation>
        </message>
        <message>
            <source>Types</source>
            <translation>Arten</translation>
        </message>
        <message>
            <source>Unit of the scale</source>
            <translation>Einheit der Skala</translation>
        </message>
        <message>
            <source>Unlock</source>
            <translation>Lösen</translation>
        </message>
        <message>
            <source>Unread</source>
            <translation>Unlesbar</translation>
        </message>
        <message>
            <source>Up</source>
            <translation>Hinauf</translation>
        </message>
        <message>
            <source>Valley between the beads above the sheet. 0: not above it.</source>
            <translation>Kerbgrund zwischen den Wülsten über der Tafel. 0: nicht darüber.</translation>
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
            <source>Wait for the bead: it ends alignment, not the clock. Measure the plate before the next joint.</source>
            <translation>Auf den Wulst warten: Er beendet das Angleichen, nicht die Uhr. Das Heizelement vor der nächsten Schweißung messen.</translation>
        </message>
        <message>
            <source>Wait so long, or go on if somebody else is at the other bench.</source>
            <translation>So lange warten, oder weitermachen, wenn jemand anderes an der anderen Bank ist.</translation>
        </message>
        <message>
            <source>Watch</source>
            <translation>Schauen</translation>
        </message>
        <message>
            <source>Weld 10 mm PE-HD by the card, with nothing wrong at the bench. The plate burns and the spring is loaded: at a real machine its own instructions come first.</source>
            <translation>10 mm PE-HD nach Karte schweißen, an der Bank ist nichts falsch. Das Heizelement verbrennt und die Feder ist gespannt: an einer echten Maschine geht deren Anleitung vor.</translation>
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
            <source>Weld plane at release</source>
            <translation>Fügeebene beim Lösen</translation>
        </message>
        <message>
            <source>Welded by</source>
            <translation>Geschweißt von</translation>
        </message>
        <message>
            <source>Welded coupon %1</source>
            <translation>Geschweißte Probe %1</translation>
        </message>
        <message>
            <source>Welded coupons</source>
            <translation>Geschweißte Proben</translation>
        </message>
        <message>
            <source>Welded: %1</source>
            <translation>Geschweißt: %1</translation>
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
            <source>Welding factor %1</source>
            <translation>Schweißfaktor %1</translation>
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
            <source>What do people call the bench?</source>
            <translation>Wie heißt die Bank?</translation>
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
            <source>What is alike three times is a hand that has learned it. Compare the reaction times in the history, and the beads as you see each again.</source>
            <translation>Was dreimal gleich wird, hat die Hand gelernt. Reaktionszeiten im Verlauf vergleichen, und die Wülste beim Wiedersehen.</translation>
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
            <source>What is due</source>
            <translation>Was fällig ist</translation>
        </message>
        <message>
            <source>What is printed on the scale?</source>
            <translation>Was steht auf der Skala?</translation>
        </message>
        <message>
            <source>What is the shop called?</source>
            <translation>Wie heißt der Betrieb?</translation>
        </message>
        <message>
            <source>What is to be put right?</source>
            <translation>Was soll berichtigt werden?</translation>
        </message>
        <message>
            <source>What is wrong here?</source>
            <translation>Was stimmt hier nicht?</translation>
        </message>
        <message>
            <source>What is wrong stands at its field.</source>
            <translation>Was falsch ist, steht an seinem Feld.</translation>
        </message>
        <message>
            <source>What it comes to</source>
            <translation>Was es ergibt</translation>
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
            <source>What only %1 may weld takes so long. </source>
            <translation>Was nur %1 schweißen darf, dauert so lange. </translation>
        </message>
        <message>
            <source>What sticks to the plate goes into the joint and parts it later.</source>
            <translation>Was am Heizelement klebt, kommt in die Schweißung und trennt sie später.</translation>
        </message>
        <message>
            <source>What sticks to the plate is pressed into both faces and stays there. The bead shows nothing of it; the bend test breaks flat.</source>
            <translation>Was am Heizelement klebt, wird in beide Flächen gepresst und bleibt dort. Der Wulst zeigt nichts davon; der Biegeversuch bricht glatt.</translation>
        </message>
        <message>
            <source>What stood there stays in the record, struck.</source>
            <translation>Was dastand, bleibt durchgestrichen im Protokoll.</translation>
        </message>
        <message>
            <source>What the scale reads without any force.</source>
            <translation>Was die Skala ohne jede Kraft zeigt.</translation>
        </message>
        <message>
            <source>What the seal does</source>
            <translation>Was das Siegel tut</translation>
        </message>
        <message>
            <source>What the springs lose before the faces press. 0 if nothing.</source>
            <translation>Was die Federn verlieren, bevor die Flächen drücken. Sonst 0.</translation>
        </message>
        <message>
            <source>What the verdict found</source>
            <translation>Was das Urteil ergab</translation>
        </message>
        <message>
            <source>What was entered before stays in the record, with the reason.</source>
            <translation>Was vorher eingetragen war, bleibt im Protokoll, mit dem Grund.</translation>
        </message>
        <message>
            <source>What was left for later is done here.</source>
            <translation>Was auf später verschoben wurde, geht hier.</translation>
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
            <source>What was tested?</source>
            <translation>Was wurde geprüft?</translation>
        </message>
        <message>
            <source>What was typed is no temperature to weld with; the reading is kept.</source>
            <translation>Mit der eingegebenen Temperatur lässt sich nicht schweißen; die Ablesung ist aufbewahrt.</translation>
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
            <source>What was wrong was found, and the weld stopped.</source>
            <translation>Der Fehler wurde gefunden und die Schweißung abgebrochen.</translation>
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
            <source>Where does the record go?</source>
            <translation>Wohin mit dem Protokoll?</translation>
        </message>
        <message>
            <source>Where does the report go?</source>
            <translation>Wohin mit dem Bericht?</translation>
        </message>
        <message>
            <source>Where the bench stands.</source>
            <translation>Wo die Bank steht.</translation>
        </message>
        <message>
            <source>Where the edges stand apart the bead comes late or not at all, while the other end gives up its melt.</source>
            <translation>Wo die Kanten auseinander stehen, kommt der Wulst spät oder nie, während das andere Ende seine Schmelze verliert.</translation>
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
            <source>Which benches are planned with?</source>
            <translation>Mit welchen Bänken wird geplant?</translation>
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
            <source>Which job are the seams of?</source>
            <translation>Von welchem Auftrag sind die Nähte?</translation>
        </message>
        <message>
            <source>Which joint %1?</source>
            <translation>Welche Schweißung %1?</translation>
        </message>
        <message>
            <source>Which joints hold a batch of sheet?</source>
            <translation>Welche Schweißungen enthalten eine Charge?</translation>
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
            <source>Which number?</source>
            <translation>Welche Zahl?</translation>
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
            <source>Which sheets are in a joint?</source>
            <translation>Welche Tafeln sind in einer Schweißung?</translation>
        </message>
        <message>
            <source>Which sheets, and how long is the seam?</source>
            <translation>Welche Tafeln, und wie lang ist die Naht?</translation>
        </message>
        <message>
            <source>Which table of seams?</source>
            <translation>Welche Tabelle mit Nähten?</translation>
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
            <source>While the plane is soft the force must stay: let back, the melt tears or shrinks into hollow places.</source>
            <translation>Solange die Fügeebene weich ist, muss die Kraft bleiben: lässt sie nach, reißt die Schmelze oder schrumpft zu Hohlstellen.</translation>
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
            <source>Who welded the trial?</source>
            <translation>Wer hat die Probe geschweißt?</translation>
        </message>
        <message>
            <source>Who welds</source>
            <translation>Wer schweißt</translation>
        </message>
        <message>
            <source>Who welds here?</source>
            <translation>Wer schweißt hier?</translation>
        </message>
        <message>
            <source>Who welds today?</source>
            <translation>Wer schweißt heute?</translation>
        </message>
        <message>
            <source>Whoever took the call came back too late or just in time by luck. A weld is not left between alignment and the lock; the phone can be answered in cooling.</source>
            <translation>Wer abgenommen hat, kam zu spät zurück oder mit Glück gerade recht. Zwischen Angleichen und Sperren bleibt man an der Schweißung; ans Telefon geht es beim Abkühlen.</translation>
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
            <source>Why is it put right?</source>
            <translation>Warum wird berichtigt?</translation>
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
            <source>With its process time.</source>
            <translation>Mit der Prozesszeit.</translation>
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
            <source>Work it out</source>
            <translation>Rechnen</translation>
        </message>
        <message>
            <source>Worked out: the bench once more, and the joint of a steady hand.</source>
            <translation>Gerechnet: noch einmal die Bank, und die Schweißung einer ruhigen Hand.</translation>
        </message>
        <message>
            <source>Write the number on the sheet, then release in the order that is shown.</source>
            <translation>Die Nummer auf die Tafel schreiben, dann in der gezeigten Reihenfolge ausspannen.</translation>
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
            <translation>Eigene Schweißung</translation>
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
            <source>[n]: the event in the log of the test itself</source>
            <translation>[n]: das Ereignis im Logbuch des Versuchs selbst</translation>
        </message>
        <message>
            <source>[n]: the event in the log that a value comes from</source>
            <translation>[n]: das Ereignis im Logbuch, aus dem ein Wert kommt</translation>
        </message>
        <message>
            <source>[n]: the event of that joint in the log; sheet, bench, welder and seam stand in [1], verdicts and sums are worked out</source>
            <translation>[n]: das Ereignis dieser Schweißung im Logbuch; Tafel, Bank, Schweißer und Naht stehen in [1], Urteile und Summen sind ausgerechnet</translation>
        </message>
        <message>
            <source>a %1 strength of %2 MPa; allowed: %3 to %4 MPa</source>
            <translation>eine Festigkeit (%1) von %2 MPa; erlaubt: %3 bis %4 MPa</translation>
        </message>
        <message>
            <source>a CSV file</source>
            <translation>eine CSV-Datei</translation>
        </message>
        <message>
            <source>a PIN has %1 to %2 digits; this one has %3</source>
            <translation>eine PIN hat %1 bis %2 Ziffern; diese hat %3</translation>
        </message>
        <message>
            <source>a PIN has 1 to %1 digits and nothing else; this one has %2 characters</source>
            <translation>eine PIN hat 1 bis %1 Ziffern und sonst nichts; diese hat %2 Zeichen</translation>
        </message>
        <message>
            <source>a PIN has 1 to %1 digits and nothing else; this one has %2 digits</source>
            <translation>eine PIN hat 1 bis %1 Ziffern und sonst nichts; diese hat %2 Ziffern</translation>
        </message>
        <message>
            <source>a bench that harms nobody</source>
            <translation>eine Bank ohne Gefahr</translation>
        </message>
        <message>
            <source>a bend angle is outside 0 to 180°</source>
            <translation>ein Biegewinkel liegt außerhalb 0 bis 180°</translation>
        </message>
        <message>
            <source>a bend coupon cracked or not: 1 or 0</source>
            <translation>eine Biegeprobe riss oder nicht: 1 oder 0</translation>
        </message>
        <message>
            <source>a bend test has no strengths; allowed: angles or displacements of the ram</source>
            <translation>ein Biegeversuch hat keine Festigkeiten; erlaubt: Winkel oder Wege des Stempels</translation>
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
            <source>a damaged line of the spill file</source>
            <translation>eine beschädigte Zeile der Auffangdatei</translation>
        </message>
        <message>
            <source>a displacement of the ram is outside 0 to 500 mm</source>
            <translation>ein Weg des Stempels liegt außerhalb 0 bis 500 mm</translation>
        </message>
        <message>
            <source>a document does not have its SHA-256</source>
            <translation>ein Dokument hat nicht sein SHA-256</translation>
        </message>
        <message>
            <source>a fact of a seam can't be read</source>
            <translation>eine Tatsache zu einer Naht ist nicht lesbar</translation>
        </message>
        <message>
            <source>a fact of kind "%1" can't have the subject "%2"</source>
            <translation>ein Eintrag der Art „%1“ kann nicht zu „%2“ gehören</translation>
        </message>
        <message>
            <source>a fault in the bead</source>
            <translation>Fehler im Wulst</translation>
        </message>
        <message>
            <source>a fifth bench, "%1"; allowed: 4</source>
            <translation>eine fünfte Bank, „%1“; erlaubt: 4</translation>
        </message>
        <message>
            <source>a foot lever</source>
            <translation>ein Fußhebel</translation>
        </message>
        <message>
            <source>a foreman needs a PIN, which locks the key of the seal</source>
            <translation>ein Meister braucht eine PIN; sie schützt den Schlüssel des Siegels</translation>
        </message>
        <message>
            <source>a foreman's PIN has %1 to %2 digits; this one has %3</source>
            <translation>die PIN eines Meisters hat %1 bis %2 Ziffern; diese hat %3</translation>
        </message>
        <message>
            <source>a foreman's override needs his PIN</source>
            <translation>wenn ein Meister etwas übergeht, braucht es seine PIN</translation>
        </message>
        <message>
            <source>a gap of %1 mm at the %2 leaves no room for this sheet's edge</source>
            <translation>ein Abstand von %1 mm (%2) lässt der Kante dieser Tafel keinen Platz</translation>
        </message>
        <message>
            <source>a handwheel</source>
            <translation>ein Handrad</translation>
        </message>
        <message>
            <source>a joint of another log</source>
            <translation>einer Schweißung eines anderen Logbuchs</translation>
        </message>
        <message>
            <source>a joint that can't be read</source>
            <translation>einer unlesbaren Schweißung</translation>
        </message>
        <message>
            <source>a length is outside 0 to 100000</source>
            <translation>eine Länge liegt außerhalb von 0 bis 100000</translation>
        </message>
        <message>
            <source>a line a joint</source>
            <translation>Zeile je Schweißung</translation>
        </message>
        <message>
            <source>a line ends with CR alone</source>
            <translation>eine Zeile endet mit CR allein</translation>
        </message>
        <message>
            <source>a new series has no reason; allowed: one only where an earlier series is put right</source>
            <translation>eine neue Reihe hat keinen Grund; erlaubt: einer nur, wo eine frühere Reihe berichtigt wird</translation>
        </message>
        <message>
            <source>a page of 0 lines; at least 1</source>
            <translation>eine Seite mit 0 Zeilen; mindestens 1</translation>
        </message>
        <message>
            <source>a person's, whatever the verdict says</source>
            <translation>von einem Menschen, gleich was das Urteil sagt</translation>
        </message>
        <message>
            <source>a point is not a finite number</source>
            <translation>ein Punkt ist keine endliche Zahl</translation>
        </message>
        <message>
            <source>a power cut of %1 s can't be confirmed: allowed are 0 to 43200 s</source>
            <translation>ein Stromausfall von %1 s lässt sich nicht bestätigen: erlaubt sind 0 bis 43200 s</translation>
        </message>
        <message>
            <source>a procedure trial</source>
            <translation>Versuch zur Anweisung</translation>
        </message>
        <message>
            <source>a quote is opened and never closed</source>
            <translation>ein Anführungszeichen öffnet und schließt nie</translation>
        </message>
        <message>
            <source>a quote stands inside a cell that does not begin with one</source>
            <translation>ein Anführungszeichen steht in einer Zelle, die nicht mit einem beginnt</translation>
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
            <source>a reading is due</source>
            <translation>ein Skalenwert ist fällig</translation>
        </message>
        <message>
            <source>a reason for "%1" can't be empty</source>
            <translation>ein Grund für „%1“ darf nicht leer sein</translation>
        </message>
        <message>
            <source>a remark</source>
            <translation>ein Vermerk</translation>
        </message>
        <message>
            <source>a seam in the same clamping</source>
            <translation>Naht in derselben Spannung</translation>
        </message>
        <message>
            <source>a sheet is of %1, the procedure is for %2: only the same plastic is welded</source>
            <translation>eine Tafel ist aus %1, die Anweisung für %2: geschweißt wird nur gleicher Kunststoff</translation>
        </message>
        <message>
            <source>a sheet of another material: allowed by the foreman</source>
            <translation>eine Tafel aus anderem Werkstoff: vom Meister erlaubt</translation>
        </message>
        <message>
            <source>a sheet slipped</source>
            <translation>Tafel verrutscht</translation>
        </message>
        <message>
            <source>a sheet's batch was not entered</source>
            <translation>Charge einer Tafel nicht eingetragen</translation>
        </message>
        <message>
            <source>a signing key's seed has %1 bytes, expected %2</source>
            <translation>der Ursprung eines Schlüssels hat %1 Bytes, erwartet %2</translation>
        </message>
        <message>
            <source>a step is not on disk</source>
            <translation>ein Schritt ist nicht gespeichert</translation>
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
            <source>a tensile test has no bends; allowed: strengths</source>
            <translation>ein Zugversuch hat keine Biegewerte; erlaubt: Festigkeiten</translation>
        </message>
        <message>
            <source>a tenth of the thickness, as DVS 2207-1</source>
            <translation>ein Zehntel der Dicke, wie DVS 2207-1</translation>
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
            <source>a text of %1 bytes; allowed: up to %2</source>
            <translation>ein Text von %1 Bytes; erlaubt: bis %2</translation>
        </message>
        <message>
            <source>a thickness of %1 mm; allowed: 0.1 to 1000 mm</source>
            <translation>eine Dicke von %1 mm; erlaubt: 0,1 bis 1000 mm</translation>
        </message>
        <message>
            <source>a touch on the name</source>
            <translation>Namen antippen</translation>
        </message>
        <message>
            <source>a value is corrected only after the weld is over</source>
            <translation>ein Wert wird erst berichtigt, wenn die Schweißung vorbei ist</translation>
        </message>
        <message>
            <source>a weld of type %1 can't be opened in a log of %2</source>
            <translation>eine Schweißung der Art „%1“ lässt sich in einem Logbuch „%2“ nicht beginnen</translation>
        </message>
        <message>
            <source>a weld starts with n 1</source>
            <translation>eine Schweißung beginnt mit n 1</translation>
        </message>
        <message>
            <source>a weld starts with weld_opened</source>
            <translation>eine Schweißung beginnt mit weld_opened</translation>
        </message>
        <message>
            <source>a weld without events</source>
            <translation>eine Schweißung ohne Ereignisse</translation>
        </message>
        <message>
            <source>a wrong tap</source>
            <translation>falsch getippt</translation>
        </message>
        <message>
            <source>a zero byte; expected JSON text</source>
            <translation>ein Null-Byte; erwartet: JSON-Text</translation>
        </message>
        <message>
            <source>about %1</source>
            <translation>etwa %1</translation>
        </message>
        <message>
            <source>above %1, to %2 %3</source>
            <translation>über %1, bis %2 %3</translation>
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
            <source>act %1 of the take is at %2 ms, behind its end at %3 ms</source>
            <translation>Handgriff %1 der Aufnahme steht bei %2 ms, hinter ihrem Ende bei %3 ms</translation>
        </message>
        <message>
            <source>act %1 of the take, at %2 ms, can't be done at this bench: %3</source>
            <translation>Handgriff %1 der Aufnahme, bei %2 ms, geht an dieser Bank nicht: %3</translation>
        </message>
        <message>
            <source>act now</source>
            <translation>jetzt</translation>
        </message>
        <message>
            <source>after %1 wrong PINs in a row: wait %2</source>
            <translation>nach %1 falschen PINs hintereinander: %2 warten</translation>
        </message>
        <message>
            <source>after 10 min</source>
            <translation>nach 10 min</translation>
        </message>
        <message>
            <source>after a correction: %1</source>
            <translation>nach einer Berichtigung: %1</translation>
        </message>
        <message>
            <source>again: joint %1 is to be repaired</source>
            <translation>neu: Schweißung %1 ist auszubessern</translation>
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
            <source>alignment at %1</source>
            <translation>Angleichen bei %1</translation>
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
            <source>alignment can't start: %1 checks are open, the first is %2</source>
            <translation>das Angleichen kann nicht beginnen: %1 Prüfungen sind offen, die erste ist %2</translation>
        </message>
        <message>
            <source>alignment force</source>
            <translation>Angleichkraft</translation>
        </message>
        <message>
            <source>alignment is slow</source>
            <translation>Angleichen ist langsam</translation>
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
            <source>alignment started</source>
            <translation>Angleichen begonnen</translation>
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
            <source>all along</source>
            <translation>überall</translation>
        </message>
        <message>
            <source>all anew: %1</source>
            <translation>alles neu: %1</translation>
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
            <source>all readings are the same; a line needs two or more</source>
            <translation>alle Skalenwerte sind gleich; eine Gerade braucht zwei oder mehr</translation>
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
            <source>allowed only in workshop conditions, with hardly any load on the joint at removal and storage, and from %1 mm of wall</source>
            <translation>erlaubt nur unter Werkstattbedingungen, mit kaum Last auf der Schweißung beim Herausnehmen und Lagern, und ab %1 mm Wand</translation>
        </message>
        <message>
            <source>allowed up to %1 %2</source>
            <translation>erlaubt bis %1 %2</translation>
        </message>
        <message>
            <source>allowed: a snapshot, a backup, or what log backup made</source>
            <translation>erlaubt: eine Momentaufnahme, eine Sicherung oder was log backup gemacht hat</translation>
        </message>
        <message>
            <source>allowed: materials and a range, as in "PE-HD, PP 3-20 mm"</source>
            <translation>erlaubt: Werkstoffe und ein Bereich, wie „PE-HD, PP 3-20 mm“</translation>
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
            <source>ambient %1 is not a finite number; allowed %2 to %3 °C</source>
            <translation>Hallentemperatur %1 ist keine endliche Zahl; erlaubt %2 bis %3 °C</translation>
        </message>
        <message>
            <source>ambient %1 is outside %2 to %3 °C</source>
            <translation>Hallentemperatur %1 liegt außerhalb %2 bis %3 °C</translation>
        </message>
        <message>
            <source>ambient %1 is outside 5 to 45 °C</source>
            <translation>Hallentemperatur %1 liegt außerhalb 5 bis 45 °C</translation>
        </message>
        <message>
            <source>ambient %1 °C is outside the classes for which %2 has cooling times</source>
            <translation>Hallentemperatur %1 °C liegt außerhalb der Klassen, für die %2 Abkühlzeiten hat</translation>
        </message>
        <message>
            <source>ambient %1 °C is outside the classes for which %2 has cooling times, from %3 °C</source>
            <translation>Hallentemperatur %1 °C liegt außerhalb der Klassen, für die %2 Abkühlzeiten hat, ab %3 °C</translation>
        </message>
        <message>
            <source>ambient %1 °C is outside the classes for which %2 has cooling times, up to %3 °C</source>
            <translation>Hallentemperatur %1 °C liegt außerhalb der Klassen, für die %2 Abkühlzeiten hat, bis %3 °C</translation>
        </message>
        <message>
            <source>ambient measured</source>
            <translation>Hallentemperatur gemessen</translation>
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
            <source>an event body of %1, n %2 was handed over as %3, n %4</source>
            <translation>ein Ereignis von %1, n %2, wurde als %3, n %4 übergeben</translation>
        </message>
        <message>
            <source>an unconfirmed bridge counts at least 0 ms, not %1</source>
            <translation>eine unbestätigte Überbrückung zählt mindestens 0 ms, nicht %1</translation>
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
            <source>and it is %1 °C</source>
            <translation>und es sind %1 °C</translation>
        </message>
        <message>
            <source>and its report</source>
            <translation>und der Bericht</translation>
        </message>
        <message>
            <source>another log stands there now</source>
            <translation>dort steht jetzt ein anderes Logbuch</translation>
        </message>
        <message>
            <source>another program holds it locked%1</source>
            <translation>ein anderes Programm hält es gesperrt%1</translation>
        </message>
        <message>
            <source>another program is making a backup there</source>
            <translation>ein anderes Programm macht dort gerade eine Sicherung</translation>
        </message>
        <message>
            <source>another program is writing this log; close that one first</source>
            <translation>ein anderes Programm schreibt in dieses Logbuch; erst jenes schließen</translation>
        </message>
        <message>
            <source>another reason</source>
            <translation>anderer Grund</translation>
        </message>
        <message>
            <source>another weld is on that bench by now</source>
            <translation>auf jener Bank ist inzwischen eine andere Schweißung</translation>
        </message>
        <message>
            <source>answered in %1 s</source>
            <translation>Antwort nach %1 s</translation>
        </message>
        <message>
            <source>any that can make it</source>
            <translation>jede, die es kann</translation>
        </message>
        <message>
            <source>as it was</source>
            <translation>wie es war</translation>
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
            <source>asked for by the order, not looked at</source>
            <translation>vom Auftrag verlangt, nicht nachgesehen</translation>
        </message>
        <message>
            <source>asks for "%1", and nothing of that is wrong in this lesson</source>
            <translation>fragt nach „%1“, und davon ist in dieser Lektion nichts falsch</translation>
        </message>
        <message>
            <source>at %1</source>
            <comment>along the seam</comment>
            <translation>bei %1</translation>
        </message>
        <message>
            <source>at 1 min and, for more than 6 min of cooling, at a third of it: our judgement</source>
            <translation>nach 1 min und, bei mehr als 6 min Abkühlen, nach einem Drittel davon: unser Urteil</translation>
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
            <source>at place %1</source>
            <translation>an Stelle %1</translation>
        </message>
        <message>
            <source>at places %1 and %2</source>
            <translation>an den Stellen %1 und %2</translation>
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
            <source>at zero</source>
            <translation>bei null</translation>
        </message>
        <message>
            <source>attested by %1</source>
            <translation>bestätigt von %1</translation>
        </message>
        <message>
            <source>attested by %1, %2, against edition %3</source>
            <translation>bestätigt von %1, %2, gegen Ausgabe %3</translation>
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
            <source>away on the phone in soak</source>
            <translation>beim Anwärmen am Telefon</translation>
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
            <source>back to the log</source>
            <translation>zurück zum Logbuch</translation>
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
            <source>batch %1?</source>
            <translation>Charge %1?</translation>
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
            <source>bead measured</source>
            <translation>Wulst gemessen</translation>
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
            <translation>vor jeder Schweißung</translation>
        </message>
        <message>
            <source>before it was put right (%1): %2 %3</source>
            <translation>bevor es berichtigt wurde (%1): %2 %3</translation>
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
            <source>being made</source>
            <translation>in Arbeit</translation>
        </message>
        <message>
            <source>being made: joint %1, %2</source>
            <translation>in Arbeit: Schweißung %1, %2</translation>
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
            <source>bench %1 · %2 · %3 · %4 mm</source>
            <translation>Bank %1 · %2 · %3 · %4 mm</translation>
        </message>
        <message>
            <source>bench %1 · seams to %2 mm · sheets %3 to %4 mm</source>
            <translation>Bank %1 · Nähte bis %2 mm · Tafeln %3 bis %4 mm</translation>
        </message>
        <message>
            <source>bench document</source>
            <translation>Dokument der Bank</translation>
        </message>
        <message>
            <source>bench of the log</source>
            <translation>Bank im Logbuch</translation>
        </message>
        <message>
            <source>bend angle %1 °</source>
            <translation>Biegewinkel %1 °</translation>
        </message>
        <message>
            <source>bend test</source>
            <translation>Biegeversuch</translation>
        </message>
        <message>
            <source>bends</source>
            <translation>biegt</translation>
        </message>
        <message>
            <source>beside the shop's own log</source>
            <translation>beim Logbuch des Betriebs</translation>
        </message>
        <message>
            <source>between a band's ends</source>
            <translation>zwischen Bereichsenden</translation>
        </message>
        <message>
            <source>both sheets are clamped: now the wheel moves the tables</source>
            <translation>beide Tafeln sind gespannt: jetzt bewegt das Handrad die Tische</translation>
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
            <source>broken off: practice was closed in mid-weld</source>
            <translation>abgebrochen: Übung mittendrin geschlossen</translation>
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
            <source>build-up is late</source>
            <translation>Druckaufbau ist spät</translation>
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
            <source>build-up time</source>
            <translation>Zeit des Druckaufbaus</translation>
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
            <source>by a foreman's PIN</source>
            <translation>mit PIN eines Meisters</translation>
        </message>
        <message>
            <source>by a model of heat in the sheet, no measurement and no part of the verdict; worked out from %1</source>
            <translation>aus einem Modell der Wärme in der Tafel, keine Messung und kein Teil des Urteils; berechnet aus %1</translation>
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
            <source>calibration</source>
            <translation>Kalibrierung</translation>
        </message>
        <message>
            <source>calibration due on %1</source>
            <translation>Kalibrierung fällig am %1</translation>
        </message>
        <message>
            <source>calibration, certificates</source>
            <translation>Kalibrierung, Zeugnisse</translation>
        </message>
        <message>
            <source>can only be read, not written</source>
            <translation>nur lesbar, nicht schreibbar</translation>
        </message>
        <message>
            <source>can only be read, not written%1</source>
            <translation>nur lesbar, nicht schreibbar%1</translation>
        </message>
        <message>
            <source>can't be brought to disk</source>
            <translation>lässt sich nicht auf den Datenträger schreiben</translation>
        </message>
        <message>
            <source>can't be brought to disk (%1)</source>
            <translation>lässt sich nicht auf den Datenträger schreiben (%1)</translation>
        </message>
        <message>
            <source>can't be locked (%1)</source>
            <translation>lässt sich nicht sperren (%1)</translation>
        </message>
        <message>
            <source>can't be made</source>
            <translation>lässt sich nicht anlegen</translation>
        </message>
        <message>
            <source>can't be made (%1)</source>
            <translation>lässt sich nicht anlegen (%1)</translation>
        </message>
        <message>
            <source>can't be made; %1</source>
            <translation>lässt sich nicht anlegen; %1</translation>
        </message>
        <message>
            <source>can't be moved to %1 (%2)</source>
            <translation>lässt sich nicht nach %1 verschieben (%2)</translation>
        </message>
        <message>
            <source>can't be opened</source>
            <translation>lässt sich nicht öffnen</translation>
        </message>
        <message>
            <source>can't be opened (%1)</source>
            <translation>lässt sich nicht öffnen (%1)</translation>
        </message>
        <message>
            <source>can't be opened%1</source>
            <translation>lässt sich nicht öffnen%1</translation>
        </message>
        <message>
            <source>can't be put in its place</source>
            <translation>lässt sich nicht an seinen Platz legen</translation>
        </message>
        <message>
            <source>can't be read</source>
            <translation>nicht lesbar</translation>
        </message>
        <message>
            <source>can't be written</source>
            <translation>lässt sich nicht schreiben</translation>
        </message>
        <message>
            <source>can't be written (%1)</source>
            <translation>lässt sich nicht schreiben (%1)</translation>
        </message>
        <message>
            <source>card</source>
            <translation>Karte</translation>
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
            <source>changed since %1 signed</source>
            <translation>geändert, seit %1 abzeichnete</translation>
        </message>
        <message>
            <source>changeover</source>
            <translation>Umstellen</translation>
        </message>
        <message>
            <source>changeover is over its limit</source>
            <translation>Umstellen über der Grenze</translation>
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
            <source>changeover time</source>
            <translation>Umstellzeit</translation>
        </message>
        <message>
            <source>changeover too late</source>
            <translation>Umstellen zu lang</translation>
        </message>
        <message>
            <source>check made</source>
            <translation>Prüfung gemacht</translation>
        </message>
        <message>
            <source>check overridden</source>
            <translation>Prüfung übergangen</translation>
        </message>
        <message>
            <source>checking a PIN needs %1 MB of memory, and that is not free</source>
            <translation>eine PIN zu prüfen braucht %1 MB Speicher, und so viel ist nicht frei</translation>
        </message>
        <message>
            <source>chosen</source>
            <translation>gewählt</translation>
        </message>
        <message>
            <source>clamp both sheets first; then one can be shimmed against the other</source>
            <translation>erst beide Tafeln spannen; dann lässt sich eine gegen die andere unterlegen</translation>
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
            <source>closing waits for a reason: %1 is out of limits</source>
            <translation>vor dem Abschluss fehlt ein Grund: %1 liegt außerhalb der Grenzen</translation>
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
            <source>comes from the calibration's points; leave it out</source>
            <translation>kommt aus den Kalibrierpunkten; weglassen</translation>
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
            <source>cooling along the table's straight line</source>
            <translation>Abkühlen auf der Geraden der Tabelle</translation>
        </message>
        <message>
            <source>cooling by the upper end of the table's band</source>
            <translation>Abkühlen nach dem oberen Ende des Tabellenbereichs</translation>
        </message>
        <message>
            <source>cooling for each kelvin</source>
            <translation>Abkühlen je Kelvin</translation>
        </message>
        <message>
            <source>cooling is cut by half: full load only after the whole %1 min</source>
            <translation>das Abkühlen ist halbiert: volle Last erst nach den ganzen %1 min</translation>
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
            <source>cooling rule band-end is not offered by %1, whose cooling has no bands; allowed line</source>
            <translation>Abkühlen nach dem Ende der Spanne (band-end) gibt es in %1 nicht, ohne Spannen; erlaubt: line</translation>
        </message>
        <message>
            <source>cooling time</source>
            <translation>Abkühlzeit</translation>
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
            <source>cools</source>
            <translation>kühlt ab</translation>
        </message>
        <message>
            <source>correcting a value needs a foreman's PIN</source>
            <translation>einen Wert zu berichtigen braucht die PIN eines Meisters</translation>
        </message>
        <message>
            <source>could not be done: %1</source>
            <translation>ging nicht: %1</translation>
        </message>
        <message>
            <source>count from here</source>
            <translation>ab jetzt zählen</translation>
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
            <source>coupons, welding factor</source>
            <translation>Proben, Schweißfaktor</translation>
        </message>
        <message>
            <source>cut from another one; the numbers stay</source>
            <translation>aus einer anderen; die Zahlen bleiben</translation>
        </message>
        <message>
            <source>cut out</source>
            <translation>austrennen</translation>
        </message>
        <message>
            <source>d MMM</source>
            <extracomment>Qt's pattern of a date without its year; "'de'" stands for a word</extracomment>
            <translation>d. MMM</translation>
        </message>
        <message>
            <source>d MMM yyyy</source>
            <extracomment>Qt's pattern of a date with its year, short: it stands in narrow columns</extracomment>
            <translation>dd.MM.yyyy</translation>
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
            <source>ddd d MMMM</source>
            <extracomment>Qt's pattern of a date without its year; "'de'" stands for a word</extracomment>
            <translation>ddd d. MMMM</translation>
        </message>
        <message>
            <source>decided</source>
            <translation>entschieden</translation>
        </message>
        <message>
            <source>deciding on a joint needs a foreman's PIN</source>
            <translation>über eine Schweißung zu entscheiden braucht die PIN eines Meisters</translation>
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
            <source>does not begin where the class before it ends</source>
            <translation>beginnt nicht, wo die Klasse davor endet</translation>
        </message>
        <message>
            <source>does not cover the same thicknesses as the table</source>
            <translation>deckt nicht dieselben Dicken wie die Tabelle</translation>
        </message>
        <message>
            <source>does not end with "%1"</source>
            <translation>endet nicht mit „%1“</translation>
        </message>
        <message>
            <source>does something drift?</source>
            <translation>wandert etwas?</translation>
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
            <source>drag %1 N is outside 0 to %2 N</source>
            <translation>Schleppkraft %1 N liegt außerhalb 0 bis %2 N</translation>
        </message>
        <message>
            <source>drag %1 is not a number; allowed 0 to %2 N</source>
            <translation>Schleppkraft %1 ist keine Zahl; erlaubt 0 bis %2 N</translation>
        </message>
        <message>
            <source>drag as read</source>
            <translation>Skala Schleppkraft</translation>
        </message>
        <message>
            <source>drag measured</source>
            <translation>Schleppkraft gemessen</translation>
        </message>
        <message>
            <source>drag read with the sheet clamped</source>
            <translation>Schleppkraft mit gespannter Tafel abgelesen</translation>
        </message>
        <message>
            <source>drag reading %1 is below what the scale shows without any drag, %2</source>
            <translation>Schleppkraft-Anzeige %1 liegt unter dem, was die Skala ganz ohne Schleppkraft zeigt, %2</translation>
        </message>
        <message>
            <source>drag was not measured; it is taken as 0 N</source>
            <translation>Schleppkraft nicht gemessen; mit 0 N gerechnet</translation>
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
            <source>drift of the reading</source>
            <translation>Wandern der Ablesung</translation>
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
            <source>each coupon in N/mm²</source>
            <translation>jede Probe in N/mm²</translation>
        </message>
        <message>
            <source>each coupon in degrees</source>
            <translation>jede Probe in Grad</translation>
        </message>
        <message>
            <source>each coupon in mm</source>
            <translation>jede Probe in mm</translation>
        </message>
        <message>
            <source>each sheet lost</source>
            <translation>jede Tafel verlor</translation>
        </message>
        <message>
            <source>earliest possible %1</source>
            <translation>frühestens möglich %1</translation>
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
            <source>event %1 is another in chain %2 than in chain %3</source>
            <translation>Ereignis %1 ist in Kette %2 ein anderes als in Kette %3</translation>
        </message>
        <message>
            <source>event %1 of %2 can't be read</source>
            <translation>Ereignis %1 von %2 ist nicht lesbar</translation>
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
            <source>expected a JSON object</source>
            <translation>erwartet: ein JSON-Objekt</translation>
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
            <source>faces met</source>
            <translation>Fügen</translation>
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
            <source>fixed side</source>
            <translation>feste Seite</translation>
        </message>
        <message>
            <source>fixed table</source>
            <translation>fester Tisch</translation>
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
            <source>from %1 mm</source>
            <translation>ab %1 mm</translation>
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
            <source>from above</source>
            <translation>von oben</translation>
        </message>
        <message>
            <source>from joint to joint: limit %1</source>
            <translation>von Schweißung zu Schweißung: Grenze %1</translation>
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
            <source>from the end</source>
            <translation>von der Stirnseite</translation>
        </message>
        <message>
            <source>from the job</source>
            <translation>aus dem Auftrag</translation>
        </message>
        <message>
            <source>from the torn end of the write-ahead log; its hash is not that of its body</source>
            <translation>vom abgerissenen Ende des Journals; die Prüfsumme passt nicht zum Inhalt</translation>
        </message>
        <message>
            <source>from when it shows its heat</source>
            <translation>ab Erreichen der Temperatur</translation>
        </message>
        <message>
            <source>from zero to drag</source>
            <translation>von null bis Schleppkraft</translation>
        </message>
        <message>
            <source>front</source>
            <translation>vorn</translation>
        </message>
        <message>
            <source>front and back</source>
            <translation>vorn und hinten</translation>
        </message>
        <message>
            <source>front, middle and back</source>
            <translation>vorn, Mitte und hinten</translation>
        </message>
        <message>
            <source>front, middle and back of both faces</source>
            <translation>vorn, Mitte und hinten auf beiden Flächen</translation>
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
            <source>give %1 at %2 mm, outside %3 to %4%5</source>
            <translation>ergeben %1 bei %2 mm, außerhalb %3 bis %4%5</translation>
        </message>
        <message>
            <source>go on typing</source>
            <translation>weiter tippen</translation>
        </message>
        <message>
            <source>going on without the check "%1" needs a reason</source>
            <translation>ohne die Prüfung „%1“ weiterzumachen braucht einen Grund</translation>
        </message>
        <message>
            <source>grade</source>
            <translation>Bewertung</translation>
        </message>
        <message>
            <source>graded</source>
            <translation>bewertet</translation>
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
            <source>half a division, %1 %2, is more than twice the tolerance of %3 %4 (%5): bench %6 can't show this seam's %7; allowed divisions up to %8 %9</source>
            <translation>ein halber Strich, %1 %2, ist mehr als das Doppelte der Toleranz von %3 %4 (%5): Bank %6 kann die %7 dieser Naht nicht zeigen; erlaubt: Striche bis %8 %9</translation>
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
            <source>half cooling is not allowed by %1; allowed: the whole cooling time</source>
            <translation>halbes Abkühlen ist in %1 nicht erlaubt; erlaubt: die ganze Abkühlzeit</translation>
        </message>
        <message>
            <source>half cooling of %1 mm; %2</source>
            <translation>halbes Abkühlen bei %1 mm; %2</translation>
        </message>
        <message>
            <source>half cooling of a joint that is loaded at once; %1</source>
            <translation>halbes Abkühlen einer Schweißung, die gleich belastet wird; %1</translation>
        </message>
        <message>
            <source>half cooling outside workshop conditions; %1</source>
            <translation>halbes Abkühlen außerhalb von Werkstattbedingungen; %1</translation>
        </message>
        <message>
            <source>hands on</source>
            <translation>Hand an</translation>
        </message>
        <message>
            <source>hands out the right row; leave thickness_mm out</source>
            <translation>gibt die richtige Zeile aus; thickness_mm weglassen</translation>
        </message>
        <message>
            <source>has %1 MB free, too little for the photos and what must stay free beside them</source>
            <translation>hat %1 MB frei, zu wenig für die Fotos und für das, was daneben frei bleiben muss</translation>
        </message>
        <message>
            <source>has %1 free, and a copy of this log takes up to %2</source>
            <translation>hat %1 frei; eine Kopie dieses Logbuchs braucht bis zu %2</translation>
        </message>
        <message>
            <source>has %1 free, and a copy of this log takes up to %2 and must leave %3 free</source>
            <translation>hat %1 frei; eine Kopie dieses Logbuchs braucht bis zu %2 und muss %3 frei lassen</translation>
        </message>
        <message>
            <source>has %1 letters; allowed: up to %2</source>
            <translation>hat %1 Zeichen; erlaubt: bis %2</translation>
        </message>
        <message>
            <source>has %1 signs; allowed: 1 to %2</source>
            <translation>hat %1 Zeichen; erlaubt: 1 bis %2</translation>
        </message>
        <message>
            <source>has 0 bytes, so it is no log</source>
            <translation>hat 0 Bytes, also kein Logbuch</translation>
        </message>
        <message>
            <source>has no value from %1 to %2 mm, and gaps does not declare %3 there</source>
            <translation>hat keinen Wert von %1 bis %2 mm, und gaps erklärt %3 dort nicht</translation>
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
            <source>height %1 mm</source>
            <translation>Höhe %1 mm</translation>
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
            <source>held no longer</source>
            <translation>galt nicht mehr</translation>
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
            <source>holds %1 rows of another log ("%2", expected "%3"); move it away, or put its own log back</source>
            <translation>enthält %1 Zeilen eines anderen Logbuchs („%2“, erwartet „%3“); wegräumen oder sein eigenes Logbuch zurücklegen</translation>
        </message>
        <message>
            <source>holds keys, and others than its owner may read or write it; take that right away (chmod 600)</source>
            <translation>enthält Schlüssel, und andere als der Eigentümer dürfen es lesen oder schreiben; dieses Recht wegnehmen (chmod 600)</translation>
        </message>
        <message>
            <source>holds neither a table nor a formula</source>
            <translation>enthält weder eine Tabelle noch eine Formel</translation>
        </message>
        <message>
            <source>holds no class</source>
            <translation>enthält keine Klasse</translation>
        </message>
        <message>
            <source>holds no lesson (*.json)</source>
            <translation>enthält keine Lektion (*.json)</translation>
        </message>
        <message>
            <source>holds no procedure (*.json)</source>
            <translation>enthält keine Anweisung (*.json)</translation>
        </message>
        <message>
            <source>holds no rows</source>
            <translation>enthält keine Zeilen</translation>
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
            <source>how far it is moved</source>
            <translation>wie weit bewegt wird</translation>
        </message>
        <message>
            <source>how far it is pushed</source>
            <translation>wie weit geschoben wird</translation>
        </message>
        <message>
            <source>how far, cracked or not</source>
            <translation>wie weit, gerissen oder nicht</translation>
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
            <source>in its own log</source>
            <translation>im eigenen Logbuch</translation>
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
            <source>in the day log</source>
            <translation>im Tagesbuch</translation>
        </message>
        <message>
            <source>in the middle</source>
            <translation>in der Mitte</translation>
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
            <source>inch</source>
            <translation>Zoll</translation>
        </message>
        <message>
            <source>inch, lbf, °F</source>
            <translation>inch, lbf, °F</translation>
        </message>
        <message>
            <source>incomplete</source>
            <translation>unvollständig</translation>
        </message>
        <message>
            <source>incomplete: %1</source>
            <translation>unvollständig: %1</translation>
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
            <source>invented; in a folder of its own</source>
            <translation>erfunden; in eigenem Ordner</translation>
        </message>
        <message>
            <source>is a %1 log, expected a %2 log</source>
            <translation>ist ein Logbuch „%1“, erwartet: ein Logbuch „%2“</translation>
        </message>
        <message>
            <source>is a %1 log; practice stands in a practice log only</source>
            <translation>ist ein Logbuch „%1“; Übungen stehen nur in einem Übungslogbuch</translation>
        </message>
        <message>
            <source>is a database, but not a joint log (application id %1, expected %2 or %3)</source>
            <translation>ist eine Datenbank, aber kein Logbuch (Kennung %1, erwartet %2 oder %3)</translation>
        </message>
        <message>
            <source>is a folder, expected a file</source>
            <translation>ist ein Ordner, erwartet: eine Datei</translation>
        </message>
        <message>
            <source>is a folder, expected a log file</source>
            <translation>ist ein Ordner, erwartet: eine Logbuchdatei</translation>
        </message>
        <message>
            <source>is a folder; allowed: the name of a file</source>
            <translation>ist ein Ordner; erlaubt: der Name einer Datei</translation>
        </message>
        <message>
            <source>is a live log and no copy of one</source>
            <translation>ist ein laufendes Logbuch und keine Kopie</translation>
        </message>
        <message>
            <source>is above the solid's density</source>
            <translation>liegt über der Dichte des Festen</translation>
        </message>
        <message>
            <source>is band-end, but a class has no table</source>
            <translation>ist band-end, aber eine Klasse hat keine Tabelle</translation>
        </message>
        <message>
            <source>is empty</source>
            <translation>ist leer</translation>
        </message>
        <message>
            <source>is empty; allowed: %1</source>
            <translation>ist leer; erlaubt: %1</translation>
        </message>
        <message>
            <source>is empty; allowed: %1, several with + between</source>
            <translation>ist leer; erlaubt: %1, mehrere mit + dazwischen</translation>
        </message>
        <message>
            <source>is gone, and its write-ahead log stands there without it</source>
            <translation>ist weg, und sein Journal steht allein da</translation>
        </message>
        <message>
            <source>is it %1, %2 mm?</source>
            <translation>ist es %1, %2 mm?</translation>
        </message>
        <message>
            <source>is missing</source>
            <translation>fehlt</translation>
        </message>
        <message>
            <source>is missing: only the first class may have no lower limit</source>
            <translation>fehlt: nur die erste Klasse darf keine untere Grenze haben</translation>
        </message>
        <message>
            <source>is not %1</source>
            <translation>ist nicht %1</translation>
        </message>
        <message>
            <source>is not %1 hexadecimal digits</source>
            <translation>sind nicht %1 Hexadezimalziffern</translation>
        </message>
        <message>
            <source>is not 32 or 96 hexadecimal digits</source>
            <translation>sind nicht 32 oder 96 Hexadezimalziffern</translation>
        </message>
        <message>
            <source>is not a database, so it is no log</source>
            <translation>ist keine Datenbank, also kein Logbuch</translation>
        </message>
        <message>
            <source>is not a field that is known here</source>
            <translation>ist hier kein bekanntes Feld</translation>
        </message>
        <message>
            <source>is not a list</source>
            <translation>ist keine Liste</translation>
        </message>
        <message>
            <source>is not a list of numbers</source>
            <translation>ist keine Liste von Zahlen</translation>
        </message>
        <message>
            <source>is not a list of texts</source>
            <translation>ist keine Liste von Texten</translation>
        </message>
        <message>
            <source>is not a list of whole numbers</source>
            <translation>ist keine Liste ganzer Zahlen</translation>
        </message>
        <message>
            <source>is not a regular file</source>
            <translation>ist keine gewöhnliche Datei</translation>
        </message>
        <message>
            <source>is not a regular file, expected a log file</source>
            <translation>ist keine gewöhnliche Datei, erwartet: eine Logbuchdatei</translation>
        </message>
        <message>
            <source>is not seamclock-job/1</source>
            <translation>ist nicht seamclock-job/1</translation>
        </message>
        <message>
            <source>is not there</source>
            <translation>ist nicht da</translation>
        </message>
        <message>
            <source>is not what the station signed</source>
            <translation>ist nicht, was das Tablet unterschrieben hat</translation>
        </message>
        <message>
            <source>is the log itself</source>
            <translation>ist das Logbuch selbst</translation>
        </message>
        <message>
            <source>is the rate itself where the unit is mm; leave it out</source>
            <translation>ist die Rate selbst, wo die Einheit mm ist; weglassen</translation>
        </message>
        <message>
            <source>is there already and is no copy of this log but of another; it is left as it is</source>
            <translation>ist schon da, als Kopie eines anderen Logbuchs; bleibt, wie es ist</translation>
        </message>
        <message>
            <source>is there already and is no copy of this log; it is left as it is</source>
            <translation>ist schon da und keine Kopie dieses Logbuchs; bleibt, wie es ist</translation>
        </message>
        <message>
            <source>is there already; it is never overwritten</source>
            <translation>ist schon da; wird nie überschrieben</translation>
        </message>
        <message>
            <source>it answers n %1, the last step that can be is n %2</source>
            <translation>antwortet auf n %1, der letzte mögliche Schritt ist n %2</translation>
        </message>
        <message>
            <source>it belongs to %1, not to %2</source>
            <translation>gehört zu %1, nicht zu %2</translation>
        </message>
        <message>
            <source>it bridges from boot %1, the weld's is %2</source>
            <translation>überbrückt vom Start %1, die Schweißung ist vom Start %2</translation>
        </message>
        <message>
            <source>it burns: keep it guarded</source>
            <translation>verbrennt: gesichert halten</translation>
        </message>
        <message>
            <source>it can't be set aside: %1</source>
            <translation>lässt sich nicht beiseite legen: %1</translation>
        </message>
        <message>
            <source>it comes %1 ms after the step; allowed are 10000 ms on the same boot</source>
            <translation>kommt %1 ms nach dem Schritt; erlaubt sind 10000 ms seit demselben Start</translation>
        </message>
        <message>
            <source>it is in the record</source>
            <translation>es steht im Protokoll</translation>
        </message>
        <message>
            <source>it is wished on the bench "%1", which is not planned for</source>
            <translation>gewünscht ist Bank „%1“, und für die wird nicht geplant</translation>
        </message>
        <message>
            <source>it leaks</source>
            <translation>undicht</translation>
        </message>
        <message>
            <source>it means</source>
            <translation>es bedeutet</translation>
        </message>
        <message>
            <source>it stays</source>
            <translation>bleibt so</translation>
        </message>
        <message>
            <source>it tells of no coupon</source>
            <translation>es erzählt von keiner Probe</translation>
        </message>
        <message>
            <source>it was</source>
            <translation>war es</translation>
        </message>
        <message>
            <source>it was stopped</source>
            <translation>abgebrochen</translation>
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
            <source>its document is not in the log, so there are no actual forces</source>
            <translation>ihr Dokument ist nicht im Logbuch, daher keine Ist-Kräfte</translation>
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
            <source>its folder can't be brought to disk</source>
            <translation>sein Ordner lässt sich nicht auf den Datenträger schreiben</translation>
        </message>
        <message>
            <source>its folder can't be written to (%1)</source>
            <translation>sein Ordner ist nicht schreibbar (%1)</translation>
        </message>
        <message>
            <source>its folder can't hold a write-ahead log (journal mode "%1", expected "wal")</source>
            <translation>sein Ordner erlaubt kein vorausgeschriebenes Journal (Modus „%1“, erwartet „wal“)</translation>
        </message>
        <message>
            <source>its folder, nothing else</source>
            <translation>nur sein Ordner</translation>
        </message>
        <message>
            <source>its head row says %1 rows, and the last row is %2</source>
            <translation>die Kopfzeile nennt %1 Zeilen, und die letzte Zeile ist %2</translation>
        </message>
        <message>
            <source>its head row says %1 rows, and the last row is %2; "log verify" tells more</source>
            <translation>die Kopfzeile nennt %1 Zeilen, und die letzte Zeile ist %2; „log verify“ sagt mehr</translation>
        </message>
        <message>
            <source>its head, row %1, %2; "log verify" tells more</source>
            <translation>ihr Kopf, Zeile %1, %2; „log verify“ sagt mehr</translation>
        </message>
        <message>
            <source>its instant lies before the last event's</source>
            <translation>sein Zeitpunkt liegt vor dem des letzten Ereignisses</translation>
        </message>
        <message>
            <source>its interval runs backwards: %1 to %2 ms</source>
            <translation>seine Spanne läuft rückwärts: %1 bis %2 ms</translation>
        </message>
        <message>
            <source>its joints</source>
            <translation>ihre Schweißungen</translation>
        </message>
        <message>
            <source>its list of files</source>
            <translation>seine Liste von Dateien</translation>
        </message>
        <message>
            <source>its sheets</source>
            <translation>ihre Tafeln</translation>
        </message>
        <message>
            <source>its structure is damaged (%1)</source>
            <translation>der Aufbau ist beschädigt (%1)</translation>
        </message>
        <message>
            <source>its structure is damaged%1</source>
            <translation>der Aufbau ist beschädigt%1</translation>
        </message>
        <message>
            <source>job</source>
            <translation>Auftrag</translation>
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
            <source>joining reading marked on the scale</source>
            <translation>Skalenwert zum Fügen auf der Skala markiert</translation>
        </message>
        <message>
            <source>joins with %1 N</source>
            <translation>fügt mit %1 N</translation>
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
            <source>joint %1 is not finished yet; allowed: a joint that is</source>
            <translation>Schweißung %1 ist noch nicht fertig; erlaubt: eine, die es ist</translation>
        </message>
        <message>
            <source>joint %1 is still open on this bench</source>
            <translation>Schweißung %1 ist auf dieser Bank noch offen</translation>
        </message>
        <message>
            <source>joint %1, event %2, photo "%3": %4</source>
            <translation>Schweißung %1, Ereignis %2, Foto "%3": %4</translation>
        </message>
        <message>
            <source>joint numbered</source>
            <translation>Nummer auf der Tafel</translation>
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
            <source>larger than %1 bytes, the most allowed</source>
            <translation>größer als %1 Bytes, die höchstens erlaubt sind</translation>
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
            <source>length %1 mm is outside %2 to %3 mm of bench %4</source>
            <translation>Länge %1 mm liegt außerhalb %2 bis %3 mm von Bank %4</translation>
        </message>
        <message>
            <source>length of the seam</source>
            <translation>Länge der Naht</translation>
        </message>
        <message>
            <source>lengths in this clamping</source>
            <translation>Längen dieser Spannung</translation>
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
            <source>lies above melting_C</source>
            <translation>liegt über melting_C</translation>
        </message>
        <message>
            <source>lies on a network file system, where a live log can't be used safely; use a log on this machine, or a published copy of it</source>
            <translation>liegt auf einem Netzlaufwerk, wo ein laufendes Logbuch nicht sicher ist; ein Logbuch auf diesem Gerät nehmen oder eine Kopie davon</translation>
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
            <source>line %1</source>
            <translation>Zeile %1</translation>
        </message>
        <message>
            <source>line %1, %2: %3</source>
            <translation>Zeile %1, %2: %3</translation>
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
            <source>look so far ahead</source>
            <translation>so weit vorausschauen</translation>
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
            <source>lower limit %1</source>
            <translation>untere Grenze %1</translation>
        </message>
        <message>
            <source>lowest</source>
            <translation>tiefster</translation>
        </message>
        <message>
            <source>made</source>
            <translation>gemacht</translation>
        </message>
        <message>
            <source>made %1</source>
            <translation>Stand %1</translation>
        </message>
        <message>
            <source>made, open, to decide</source>
            <translation>gemacht, offen, zu entscheiden</translation>
        </message>
        <message>
            <source>made: joint %1, %2</source>
            <translation>gemacht: Schweißung %1, %2</translation>
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
            <source>mean %1</source>
            <translation>Mittel %1</translation>
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
            <source>median of alignment %1 ms is outside 1 to %2 ms</source>
            <translation>der Median des Angleichens von %1 ms liegt außerhalb 1 bis %2 ms</translation>
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
            <source>melt flow rate %1 is outside 0.2 to 1.7 g/10 min (190/5), the ranges of DVS 2207-1</source>
            <translation>Schmelzindex %1 liegt außerhalb 0,2 bis 1,7 g/10 min (190/5), der Bereiche von DVS 2207-1</translation>
        </message>
        <message>
            <source>melt flow rates %1 and %2 are far apart: %3</source>
            <translation>die Schmelzindizes %1 und %2 liegen weit auseinander: %3</translation>
        </message>
        <message>
            <source>melt flow rates %1 and %2 were measured differently and can't be compared</source>
            <translation>die Schmelzindizes %1 und %2 sind verschieden gemessen und nicht vergleichbar</translation>
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
            <source>mm</source>
            <translation>mm</translation>
        </message>
        <message>
            <source>mm, N, °C</source>
            <translation>mm, N, °C</translation>
        </message>
        <message>
            <source>molten at the end of soak</source>
            <translation>geschmolzen nach dem Anwärmen</translation>
        </message>
        <message>
            <source>more points than the %1 that are allowed</source>
            <translation>mehr Punkte als die %1, die erlaubt sind</translation>
        </message>
        <message>
            <source>more than %1 lengths in one clamping; allowed: up to %2</source>
            <translation>mehr als %1 Längen in einer Spannung; erlaubt: bis %2</translation>
        </message>
        <message>
            <source>most of soak's pressure</source>
            <translation>Höchster Anwärmdruck</translation>
        </message>
        <message>
            <source>moving side</source>
            <translation>bewegliche Seite</translation>
        </message>
        <message>
            <source>moving table</source>
            <translation>beweglicher Tisch</translation>
        </message>
        <message>
            <source>n %1 is not an event that still stands</source>
            <translation>n %1 ist kein Ereignis, das noch gilt</translation>
        </message>
        <message>
            <source>name and PIN</source>
            <translation>Name und PIN</translation>
        </message>
        <message>
            <source>name of the bench</source>
            <translation>Name der Bank</translation>
        </message>
        <message>
            <source>name of the shop</source>
            <translation>Name des Betriebs</translation>
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
            <source>names "%1" twice</source>
            <translation>nennt „%1“ zweimal</translation>
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
            <source>needs one class with from_C or to_C, beyond which it corrects</source>
            <translation>braucht eine Klasse mit from_C oder to_C, jenseits derer berichtigt wird</translation>
        </message>
        <message>
            <source>nested deeper than %1 levels, the most allowed</source>
            <translation>tiefer verschachtelt als %1 Ebenen, die höchstens erlaubt sind</translation>
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
            <source>no %1 coupon is given; allowed: 1 to %2</source>
            <translation>keine Probe angegeben (%1); erlaubt: 1 bis %2</translation>
        </message>
        <message>
            <source>no batch is named; allowed: its name as it is on the sheet</source>
            <translation>keine Charge genannt; erlaubt: ihr Name, wie er auf der Tafel steht</translation>
        </message>
        <message>
            <source>no batch noted</source>
            <translation>keine Charge notiert</translation>
        </message>
        <message>
            <source>no bench that is here can make it</source>
            <translation>keine Bank, die da ist, kann sie machen</translation>
        </message>
        <message>
            <source>no calibration is on record</source>
            <translation>keine Kalibrierung eingetragen</translation>
        </message>
        <message>
            <source>no cell is named; allowed: one or more cells of %1</source>
            <translation>kein Feld genannt; erlaubt: ein oder mehrere Felder von %1</translation>
        </message>
        <message>
            <source>no certificate noted</source>
            <translation>kein Zeugnis notiert</translation>
        </message>
        <message>
            <source>no column has a value for any thickness</source>
            <translation>keine Spalte hat einen Wert für irgendeine Dicke</translation>
        </message>
        <message>
            <source>no crack seen</source>
            <translation>kein Riss zu sehen</translation>
        </message>
        <message>
            <source>no edition is named; allowed: the edition of the shop's copy of the standard, as it is printed on it</source>
            <translation>keine Ausgabe genannt; erlaubt: die Ausgabe der Norm im Betrieb, wie sie darauf gedruckt ist</translation>
        </message>
        <message>
            <source>no folder for %1: neither %2 nor HOME is an absolute path; %3</source>
            <translation>kein Ordner für %1: weder %2 noch HOME ist ein absoluter Pfad; %3</translation>
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
            <source>no heat estimate: alignment has not begun</source>
            <translation>keine Wärmeschätzung: das Angleichen hat nicht begonnen</translation>
        </message>
        <message>
            <source>no heat estimate: procedure %1 lacks %2 for %3 mm</source>
            <translation>keine Wärmeschätzung: der Anweisung %1 fehlt für %3 mm: %2</translation>
        </message>
        <message>
            <source>no heat values for the material "%1"; allowed: %2</source>
            <translation>keine Wärmewerte für den Werkstoff „%1“; erlaubt: %2</translation>
        </message>
        <message>
            <source>no load</source>
            <translation>ohne Last</translation>
        </message>
        <message>
            <source>no lower limit</source>
            <translation>keine untere Grenze</translation>
        </message>
        <message>
            <source>no material is named; allowed: as PE-HD</source>
            <translation>kein Werkstoff genannt; erlaubt: wie PE-HD</translation>
        </message>
        <message>
            <source>no more chimes</source>
            <translation>kein Gong mehr</translation>
        </message>
        <message>
            <source>no offcut that this bench can take would help; take a spring of at most %1 N for one %2</source>
            <translation>kein Reststück, das auf diese Bank passt, würde helfen; eine Feder mit höchstens %1 N je %2 nehmen</translation>
        </message>
        <message>
            <source>no one range of DVS 2207-1 (0.3 to 1.7, 0.2 to 0.7) holds both</source>
            <translation>kein Bereich von DVS 2207-1 (0,3 bis 1,7; 0,2 bis 0,7) enthält beide</translation>
        </message>
        <message>
            <source>no photo is kept</source>
            <translation>kein Foto übernommen</translation>
        </message>
        <message>
            <source>no practice with this plan: it lacks %1</source>
            <translation>Üben geht mit diesem Plan nicht: es fehlt %1</translation>
        </message>
        <message>
            <source>no procedure named</source>
            <translation>keine Anweisung genannt</translation>
        </message>
        <message>
            <source>no reason is given; allowed: a few words why</source>
            <translation>kein Grund genannt; erlaubt: ein paar Worte, warum</translation>
        </message>
        <message>
            <source>no reason is owed for "%1"</source>
            <translation>für „%1“ wird kein Grund verlangt</translation>
        </message>
        <message>
            <source>no seam length is given; allowed %1 to %2 mm of bench %3</source>
            <translation>keine Nahtlänge angegeben; erlaubt %1 bis %2 mm von Bank %3</translation>
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
            <source>no such file</source>
            <translation>keine solche Datei</translation>
        </message>
        <message>
            <source>no such file, or not readable</source>
            <translation>keine solche Datei, oder nicht lesbar</translation>
        </message>
        <message>
            <source>no such folder, or not readable</source>
            <translation>kein solcher Ordner, oder nicht lesbar</translation>
        </message>
        <message>
            <source>no such row</source>
            <translation>keine solche Zeile</translation>
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
            <source>no valid certificate: allowed by the foreman</source>
            <translation>kein gültiges Zeugnis: vom Meister erlaubt</translation>
        </message>
        <message>
            <source>no weather guard noted</source>
            <translation>kein Wetterschutz notiert</translation>
        </message>
        <message>
            <source>no weld "%1" is in this log</source>
            <translation>keine Schweißung „%1“ ist in diesem Logbuch</translation>
        </message>
        <message>
            <source>no weld "%1" is open here</source>
            <translation>keine Schweißung „%1“ ist hier offen</translation>
        </message>
        <message>
            <source>no welder named</source>
            <translation>kein Schweißer genannt</translation>
        </message>
        <message>
            <source>nobody attested "%1" of %2; allowed: a cell that is attested</source>
            <translation>niemand hat „%1“ von %2 bestätigt; erlaubt: ein bestätigtes Feld</translation>
        </message>
        <message>
            <source>nobody here is "%1"</source>
            <translation>niemand hier ist „%1“</translation>
        </message>
        <message>
            <source>nobody here is "%1"; allowed: one of this log's people, as person:ID</source>
            <translation>niemand hier ist „%1“; erlaubt: eine Person dieses Logbuchs, als person:ID</translation>
        </message>
        <message>
            <source>nobody who is here has a certificate for its sheets that holds today</source>
            <translation>niemand von den Anwesenden hat für die Tafeln ein heute gültiges Zeugnis</translation>
        </message>
        <message>
            <source>nobody who is here may weld it</source>
            <translation>niemand von den Anwesenden darf sie schweißen</translation>
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
            <source>none was typed</source>
            <translation>keine eingetippt</translation>
        </message>
        <message>
            <source>none: the source lacks nothing</source>
            <translation>keine: der Quelle fehlt nichts</translation>
        </message>
        <message>
            <source>not all of it can be read</source>
            <translation>nicht alles davon ist lesbar</translation>
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
            <source>not read for this seam yet</source>
            <translation>für diese Naht nicht abgelesen</translation>
        </message>
        <message>
            <source>not readable</source>
            <translation>nicht lesbar</translation>
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
            <translation>laut Protokoll nicht gut</translation>
        </message>
        <message>
            <source>not straight enough: point %1 (reading %2, %3 N) is %4 N off the line; allowed %5 N, 2 % of the largest force (our judgement)</source>
            <translation>nicht gerade genug: Punkt %1 (Skalenwert %2, %3 N) liegt %4 N neben der Geraden; erlaubt %5 N, 2 % der größten Kraft (unser Urteil)</translation>
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
            <source>not told yet</source>
            <translation>noch nicht gesagt</translation>
        </message>
        <message>
            <source>not valid JSON</source>
            <translation>kein gültiges JSON</translation>
        </message>
        <message>
            <source>not yet</source>
            <translation>noch nicht</translation>
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
            <source>nothing came since the last seal, which covers row %1</source>
            <translation>seit dem letzten Siegel, das Zeile %1 deckt, kam nichts dazu</translation>
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
            <source>noticed %1 of %2</source>
            <translation>%1 von %2 bemerkt</translation>
        </message>
        <message>
            <source>noticed at %1</source>
            <translation>bemerkt bei %1</translation>
        </message>
        <message>
            <source>now</source>
            <translation>jetzt</translation>
        </message>
        <message>
            <source>now the parent sheet</source>
            <translation>jetzt die Grundtafel</translation>
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
            <source>of cards</source>
            <translation>der Karten</translation>
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
            <source>of the job %1</source>
            <translation>des Auftrags %1</translation>
        </message>
        <message>
            <source>of the scale</source>
            <translation>der Skala</translation>
        </message>
        <message>
            <source>of the seam %1</source>
            <translation>der Naht %1</translation>
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
            <source>of what is wrong</source>
            <translation>vom Fehler</translation>
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
            <source>on its face</source>
            <translation>auf der Fläche</translation>
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
            <source>one by one</source>
            <translation>eine nach der anderen</translation>
        </message>
        <message>
            <source>one end to the other</source>
            <translation>von Ende zu Ende</translation>
        </message>
        <message>
            <source>one is more than %1 times the other (our judgement)</source>
            <translation>einer ist mehr als das %1fache des anderen (unser Urteil)</translation>
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
            <source>only a foreman can allow this weld</source>
            <translation>nur ein Meister kann diese Schweißung erlauben</translation>
        </message>
        <message>
            <source>only a foreman may go on with a sheet of another material</source>
            <translation>nur ein Meister darf mit einer Tafel aus anderem Werkstoff weitermachen</translation>
        </message>
        <message>
            <source>only what can't be read</source>
            <translation>nur was nicht lesbar ist</translation>
        </message>
        <message>
            <source>open</source>
            <translation>offen</translation>
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
            <source>or another °C</source>
            <translation>oder andere °C</translation>
        </message>
        <message>
            <source>or broke</source>
            <translation>oder gebrochen</translation>
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
            <source>out of limits: %1</source>
            <translation>außerhalb: %1</translation>
        </message>
        <message>
            <source>out of line</source>
            <translation>Versatz</translation>
        </message>
        <message>
            <source>out of order: %1</source>
            <translation>falsche Folge: %1</translation>
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
            <source>parent</source>
            <translation>Grundwerkstoff</translation>
        </message>
        <message>
            <source>parent sheet %1 N/mm²</source>
            <translation>Grundtafel %1 N/mm²</translation>
        </message>
        <message>
            <source>parent sheet %1 psi</source>
            <translation>Grundtafel %1 psi</translation>
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
            <source>photo added</source>
            <translation>Foto dazu</translation>
        </message>
        <message>
            <source>plan</source>
            <translation>Plan</translation>
        </message>
        <message>
            <source>plan replaced</source>
            <translation>Plan ersetzt</translation>
        </message>
        <message>
            <source>plan replaced %1</source>
            <translation>Plan ersetzt %1</translation>
        </message>
        <message>
            <source>plan replaced: %1</source>
            <translation>Plan ersetzt: %1</translation>
        </message>
        <message>
            <source>plan, tests, charts, due</source>
            <translation>Plan, Proben, Karten, Fristen</translation>
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
            <source>plate target %1 °C can't be judged: %2 has no plate window</source>
            <translation>Heizelement-Soll %1 °C nicht zu beurteilen: %2 hat dafür keinen Bereich</translation>
        </message>
        <message>
            <source>plate target %1 °C is outside %2 to %3 °C of %4</source>
            <translation>Heizelement-Soll %1 °C liegt außerhalb %2 bis %3 °C von %4</translation>
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
            <source>plate warms up</source>
            <translation>Heizelement heizt auf</translation>
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
            <source>power was off; %1 since the step before, by a clock that nobody confirmed</source>
            <translation>Strom war weg; %1 seit dem Schritt davor, nach einer Uhr, die niemand bestätigt hat</translation>
        </message>
        <message>
            <source>power was off; %1 since the step before, confirmed by a person</source>
            <translation>Strom war weg; %1 seit dem Schritt davor, von einer Person bestätigt</translation>
        </message>
        <message>
            <source>power was off; %1 since the step before; the clock went back</source>
            <translation>Strom war weg; %1 seit dem Schritt davor; die Uhr ging zurück</translation>
        </message>
        <message>
            <source>practice</source>
            <translation>Übung</translation>
        </message>
        <message>
            <source>practice record</source>
            <translation>Übungsprotokoll</translation>
        </message>
        <message>
            <source>practice was left</source>
            <translation>die Übung verlassen wurde</translation>
        </message>
        <message>
            <source>practice weld %1 was broken off when %2: no take was kept</source>
            <translation>Übungsschweißung %1 brach ab, als %2: keine Aufnahme</translation>
        </message>
        <message>
            <source>preparation time</source>
            <translation>Vorbereitungszeit</translation>
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
            <source>pressure locked</source>
            <translation>Handrad gesperrt</translation>
        </message>
        <message>
            <source>pressure times thickness times length: common practice, no source</source>
            <translation>Druck mal Dicke mal Länge: übliche Praxis, keine Quelle</translation>
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
            <source>print there</source>
            <translation>dort drucken</translation>
        </message>
        <message>
            <source>printed %1</source>
            <translation>gedruckt %1</translation>
        </message>
        <message>
            <source>printed on spring or machine</source>
            <translation>auf Feder oder Maschine</translation>
        </message>
        <message>
            <source>procedure</source>
            <translation>Anweisung</translation>
        </message>
        <message>
            <source>procedure %1 can't be welded with yet: it lacks %2, which the shop fills and attests first</source>
            <translation>mit der Anweisung %1 lässt sich noch nicht schweißen: es fehlt, der Betrieb trägt ein und bestätigt zuerst: %2</translation>
        </message>
        <message>
            <source>procedure %1 can't be welded with yet: the shop filled in %2, which a foreman attests first</source>
            <translation>mit der Anweisung %1 lässt sich noch nicht schweißen: vom Betrieb eingetragen, ein Meister bestätigt zuerst: %2</translation>
        </message>
        <message>
            <source>procedure of the log</source>
            <translation>Anweisung im Logbuch</translation>
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
            <source>put right</source>
            <translation>berichtigt</translation>
        </message>
        <message>
            <source>put right: %1</source>
            <translation>berichtigt: %1</translation>
        </message>
        <message>
            <source>rate from its plate</source>
            <translation>Rate vom Schild</translation>
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
            <source>read on the face</source>
            <translation>auf der Fläche ablesen</translation>
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
            <source>reading marked to join</source>
            <translation>Marke zum Fügen</translation>
        </message>
        <message>
            <source>reading taken</source>
            <translation>Skala abgelesen</translation>
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
            <source>readings against a load cell</source>
            <translation>Werte gegen Kraftmessdose</translation>
        </message>
        <message>
            <source>readings in cooling</source>
            <translation>Skalenwerte beim Abkühlen</translation>
        </message>
        <message>
            <source>readings off: %1</source>
            <translation>falsch gelesen: %1</translation>
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
            <source>reason given</source>
            <translation>Grund genannt</translation>
        </message>
        <message>
            <source>recheck</source>
            <translation>Ablesen beim Abkühlen</translation>
        </message>
        <message>
            <source>record</source>
            <translation>Protokoll</translation>
        </message>
        <message>
            <source>recursive triggers can't be turned on</source>
            <translation>verschachtelte Auslöser lassen sich nicht einschalten</translation>
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
            <source>release step</source>
            <translation>Schritt beim Ausspannen</translation>
        </message>
        <message>
            <source>release step "%1" does not fit while %2: this bench's next is "%3"</source>
            <translation>der Schritt „%1“ passt nicht in dieser Phase: %2. Als nächstes kommt an dieser Bank „%3“</translation>
        </message>
        <message>
            <source>release time</source>
            <translation>Ausspannzeit</translation>
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
            <source>remark made</source>
            <translation>Vermerk gemacht</translation>
        </message>
        <message>
            <source>remark: %1</source>
            <translation>Vermerk: %1</translation>
        </message>
        <message>
            <source>remarks, reasons, photos, grading</source>
            <translation>Vermerke, Gründe, Fotos, Bewertung</translation>
        </message>
        <message>
            <source>remarks: %1</source>
            <translation>Bemerkungen: %1</translation>
        </message>
        <message>
            <source>report</source>
            <translation>Bericht</translation>
        </message>
        <message>
            <source>row %1, an event of %2, is not what was written</source>
            <translation>Zeile %1, ein Ereignis von %2, ist nicht, was geschrieben wurde</translation>
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
            <source>scale in %1 from %2, %3</source>
            <translation>Skala in %1 ab %2, %3</translation>
        </message>
        <message>
            <source>scale is read in %1</source>
            <translation>Skala ablesen in %1</translation>
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
            <source>scale zero</source>
            <translation>Nullpunkt der Skala</translation>
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
            <source>seal of %1 by %2, made %3 (event %7 of that day), rows 1 to %4; fingerprint %5; key %6</source>
            <translation>Siegel für %1 von %2, gemacht %3 (Ereignis %7 dieses Tages), Zeilen 1 bis %4; Fingerabdruck %5; Schlüssel %6</translation>
        </message>
        <message>
            <source>sealed as far as it is; the rest comes behind</source>
            <translation>versiegelt, so weit sie ist; der Rest kommt danach</translation>
        </message>
        <message>
            <source>seam "%1" lacks something; allowed: one with a job, a label, a procedure, a length and two sheets</source>
            <translation>der Naht „%1“ fehlt etwas; erlaubt: eine mit Auftrag, Bezeichnung, Anweisung, Länge und zwei Tafeln</translation>
        </message>
        <message>
            <source>seam %1</source>
            <translation>Naht %1</translation>
        </message>
        <message>
            <source>seam %1 asks for the procedure "%2", which is not there; allowed: %3</source>
            <translation>Naht %1 verlangt die Anweisung „%2“, und die ist nicht da; erlaubt: %3</translation>
        </message>
        <message>
            <source>seam of the log</source>
            <translation>Naht des Logbuchs</translation>
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
            <source>set by the foreman inside the window</source>
            <translation>vom Meister innerhalb des Bereichs gewählt</translation>
        </message>
        <message>
            <source>set: %1 °C</source>
            <translation>Soll: %1 °C</translation>
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
            <source>sheet %1: %2</source>
            <translation>Tafel %1: %2</translation>
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
            <source>shop's name, demo shop</source>
            <translation>Name, Demo-Betrieb</translation>
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
            <source>signal seen</source>
            <translation>Signal gesehen</translation>
        </message>
        <message>
            <source>signal seen: %1</source>
            <translation>Signal gesehen: %1</translation>
        </message>
        <message>
            <source>signals: %1</source>
            <translation>Signale: %1</translation>
        </message>
        <message>
            <source>signed by %1</source>
            <translation>gezeichnet: %1</translation>
        </message>
        <message>
            <source>signed off</source>
            <translation>abgezeichnet</translation>
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
            <source>signing off needs a foreman's PIN</source>
            <translation>Abzeichnen braucht die PIN eines Meisters</translation>
        </message>
        <message>
            <source>since the last step</source>
            <translation>seit dem letzten Schritt</translation>
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
            <source>soak started</source>
            <translation>Anwärmen begonnen</translation>
        </message>
        <message>
            <source>soak time</source>
            <translation>Anwärmzeit</translation>
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
            <source>soak: just in contact; %1</source>
            <translation>Anwärmen: nur in Berührung; %1</translation>
        </message>
        <message>
            <source>soak: just in contact; the drag, %1 %2, is under the scale's first division</source>
            <translation>Anwärmen: nur in Berührung; die Schleppkraft, %1 %2, liegt unter dem ersten Strich der Skala</translation>
        </message>
        <message>
            <source>soak: the drag of %1 holds the table on by more than the %2 that soak allows: the reading would have to be %3</source>
            <translation>Anwärmen: die Schleppkraft von %1 hält den Tisch fester an als die %2, die das Anwärmen erlaubt: der Skalenwert müsste %3 sein</translation>
        </message>
        <message>
            <source>soak: the reading %1 %2 is below %3 %4, the lowest that the calibration covers: its force is worked out, not measured</source>
            <translation>Anwärmen: der Skalenwert %1 %2 liegt unter %3 %4, dem kleinsten kalibrierten: seine Kraft ist gerechnet, nicht gemessen</translation>
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
            <source>something else stands in its place</source>
            <translation>dort steht etwas anderes</translation>
        </message>
        <message>
            <source>something stands behind a cell's closing quote</source>
            <translation>hinter dem schließenden Anführungszeichen einer Zelle steht etwas</translation>
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
            <source>spring scale</source>
            <translation>Federskala</translation>
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
            <source>stands beside soak_aim or soak_max; only one can hold</source>
            <translation>steht neben soak_aim oder soak_max; nur eins kann gelten</translation>
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
            <source>step backdated</source>
            <translation>Schritt früher gesetzt</translation>
        </message>
        <message>
            <source>step taken back</source>
            <translation>Schritt zurückgenommen</translation>
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
            <source>stopped by a person's word after a power cut</source>
            <translation>nach einem Stromausfall auf das Wort einer Person hin abgebrochen</translation>
        </message>
        <message>
            <source>stopped: %1</source>
            <translation>Abbruch: %1</translation>
        </message>
        <message>
            <source>stored: %1</source>
            <translation>gespeichert: %1</translation>
        </message>
        <message>
            <source>supervisor</source>
            <translation>Aufsicht</translation>
        </message>
        <message>
            <source>synchronous writing can't be turned on</source>
            <translation>sicheres Schreiben lässt sich nicht einschalten</translation>
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
            <source>tensile test</source>
            <translation>Zugversuch</translation>
        </message>
        <message>
            <source>test, event %1</source>
            <translation>Versuch, Ereignis %1</translation>
        </message>
        <message>
            <source>tests in all: %1</source>
            <translation>Prüfungen insgesamt: %1</translation>
        </message>
        <message>
            <source>that no job was told of</source>
            <translation>ohne genannten Auftrag</translation>
        </message>
        <message>
            <source>that seam is made by now</source>
            <translation>jene Naht ist inzwischen gemacht</translation>
        </message>
        <message>
            <source>the %1 can't be begun</source>
            <translation>lässt sich nicht beginnen: %1</translation>
        </message>
        <message>
            <source>the %1 can't be ended</source>
            <translation>lässt sich nicht abschließen: %1</translation>
        </message>
        <message>
            <source>the %1 can't be painted</source>
            <translation>%1 lässt sich nicht zeichnen</translation>
        </message>
        <message>
            <source>the %1 can't be written to "%2"</source>
            <translation>%1: lässt sich nicht nach „%2“ schreiben</translation>
        </message>
        <message>
            <source>the %1 can't be written to "%2": %3</source>
            <translation>%1: lässt sich nicht nach „%2“ schreiben: %3</translation>
        </message>
        <message>
            <source>the PDF can't be given bookmarks: %1</source>
            <translation>Das PDF kann keine Lesezeichen bekommen: %1</translation>
        </message>
        <message>
            <source>the PIN is wrong</source>
            <translation>die PIN ist falsch</translation>
        </message>
        <message>
            <source>the PIN is wrong; the next try in %1</source>
            <translation>die PIN ist falsch; nächster Versuch in %1</translation>
        </message>
        <message>
            <source>the angle</source>
            <translation>den Winkel</translation>
        </message>
        <message>
            <source>the bars are closed: the sheet can't be lifted out</source>
            <translation>die Balken sind zu: die Tafel lässt sich nicht herausheben</translation>
        </message>
        <message>
            <source>the bars aren't closed on a sheet</source>
            <translation>die Balken sind auf keiner Tafel zu</translation>
        </message>
        <message>
            <source>the batch</source>
            <translation>die Charge</translation>
        </message>
        <message>
            <source>the battery is low</source>
            <translation>der Akku ist schwach</translation>
        </message>
        <message>
            <source>the bead ends it, not the clock</source>
            <translation>der Wulst beendet es, nicht die Uhr</translation>
        </message>
        <message>
            <source>the beginning of the chain was changed</source>
            <translation>der Anfang der Kette wurde verändert</translation>
        </message>
        <message>
            <source>the bench "%1" is there already</source>
            <translation>die Bank „%1“ ist schon da</translation>
        </message>
        <message>
            <source>the bench %1</source>
            <translation>die Bank %1</translation>
        </message>
        <message>
            <source>the bench can't be set so</source>
            <translation>Bank lässt sich nicht so stellen</translation>
        </message>
        <message>
            <source>the bench of %1</source>
            <translation>die Bank von %1</translation>
        </message>
        <message>
            <source>the bench was needed</source>
            <translation>Bank wurde gebraucht</translation>
        </message>
        <message>
            <source>the bench's own data</source>
            <translation>eigene Angaben der Bank</translation>
        </message>
        <message>
            <source>the benches</source>
            <translation>den Bänken</translation>
        </message>
        <message>
            <source>the boot is still the same; there is nothing to bridge</source>
            <translation>das Gerät läuft noch seit demselben Start; es gibt nichts zu überbrücken</translation>
        </message>
        <message>
            <source>the calibration's 95 % band is ± %1 at the set reading, more than half of the force's tolerance of ± %2 (our judgement)</source>
            <translation>das 95-%-Band der Kalibrierung ist ± %1 beim Sollwert, mehr als die halbe Toleranz der Kraft von ± %2 (unser Urteil)</translation>
        </message>
        <message>
            <source>the card of %1 has %2 sources and %3 warnings, more than one page holds at 5.5 points; allowed: one page</source>
            <translation>die Karte von %1 hat %2 Quellen und %3 Warnungen, mehr als mit 5,5 Punkt auf eine Seite passen; erlaubt: eine Seite</translation>
        </message>
        <message>
            <source>the card that this lesson hands out lacks what a weld needs</source>
            <translation>der Karte, die diese Lektion ausgibt, fehlt, was eine Schweißung braucht</translation>
        </message>
        <message>
            <source>the card's bench</source>
            <translation>die Bank der Karte</translation>
        </message>
        <message>
            <source>the card's page can't be begun in memory</source>
            <translation>die Seite der Karte lässt sich nicht beginnen</translation>
        </message>
        <message>
            <source>the card's page can't be ended in memory</source>
            <translation>die Seite der Karte lässt sich nicht abschließen</translation>
        </message>
        <message>
            <source>the chain is of the world "%1", and the file of "%2"</source>
            <translation>die Kette ist von der Welt „%1“, die Datei von „%2“</translation>
        </message>
        <message>
            <source>the chain is of the world "%1", expected "%2"</source>
            <translation>die Kette ist von der Welt „%1“, erwartet „%2“</translation>
        </message>
        <message>
            <source>the check "%1" can only be overridden by a foreman</source>
            <translation>die Prüfung „%1“ kann nur ein Meister übergehen</translation>
        </message>
        <message>
            <source>the check "%1" can only be overridden by a foreman: the scale doesn't show what it asks</source>
            <translation>die Prüfung „%1“ kann nur ein Meister übergehen: die Skala zeigt nicht, was sie verlangt</translation>
        </message>
        <message>
            <source>the check "%1" is not one of this weld's checks</source>
            <translation>die Prüfung „%1“ gehört nicht zu dieser Schweißung</translation>
        </message>
        <message>
            <source>the check of the guard was passed over</source>
            <translation>die Prüfung des Schutzes wurde übergangen</translation>
        </message>
        <message>
            <source>the clamps aren't closed on both sheets</source>
            <translation>die Klemmen sind nicht auf beiden Tafeln zu</translation>
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
            <source>the cold spot's depth [K]</source>
            <translation>die Tiefe der kalten Stelle [K]</translation>
        </message>
        <message>
            <source>the cold spot's place</source>
            <translation>der Ort der kalten Stelle</translation>
        </message>
        <message>
            <source>the cold spot's width</source>
            <translation>die Breite der kalten Stelle</translation>
        </message>
        <message>
            <source>the column is missing; allowed: %1</source>
            <translation>die Spalte fehlt; erlaubt: %1</translation>
        </message>
        <message>
            <source>the column stands there twice; allowed: once</source>
            <translation>die Spalte steht zweimal da; erlaubt: einmal</translation>
        </message>
        <message>
            <source>the columns are parted by ";"; allowed: commas</source>
            <translation>die Spalten sind mit „;“ getrennt; erlaubt: Kommas</translation>
        </message>
        <message>
            <source>the columns label, material, procedure, thickness_mm, length_mm</source>
            <translation>die Spalten label, material, procedure, thickness_mm, length_mm</translation>
        </message>
        <message>
            <source>the copy can't be brought to disk</source>
            <translation>die Kopie lässt sich nicht auf den Datenträger schreiben</translation>
        </message>
        <message>
            <source>the copy was stopped before it was complete</source>
            <translation>die Kopie wurde abgebrochen, bevor sie vollständig war</translation>
        </message>
        <message>
            <source>the copy's folder can't be brought to disk</source>
            <translation>der Ordner der Kopie lässt sich nicht auf den Datenträger schreiben</translation>
        </message>
        <message>
            <source>the date "%1" is none; allowed 0000-01-01 to 9999-12-31</source>
            <translation>das Datum „%1“ gibt es nicht; erlaubt 0000-01-01 bis 9999-12-31</translation>
        </message>
        <message>
            <source>the day %1</source>
            <translation>Tag %1</translation>
        </message>
        <message>
            <source>the day %1 has not come yet; allowed: up to %2</source>
            <translation>der Tag %1 ist noch nicht da; erlaubt: bis %2</translation>
        </message>
        <message>
            <source>the day can't be sealed yet: %1</source>
            <translation>der Tag lässt sich noch nicht siegeln: %1</translation>
        </message>
        <message>
            <source>the decision on a trial joint takes %1 ms; allowed: 0 to %2</source>
            <translation>die Entscheidung über eine Probe dauert %1 ms; erlaubt: 0 bis %2</translation>
        </message>
        <message>
            <source>the demo shop in %1 can't be taken away: %2</source>
            <translation>der Demo-Betrieb in %1 lässt sich nicht entfernen: %2</translation>
        </message>
        <message>
            <source>the demo shop's place %1 is taken; allowed: a name at which nothing stands</source>
            <translation>der Platz %1 des Demo-Betriebs ist belegt; erlaubt: ein Name, unter dem nichts steht</translation>
        </message>
        <message>
            <source>the demo's folder %1 can't be read: %2</source>
            <translation>der Ordner %1 der Demo ist nicht lesbar: %2</translation>
        </message>
        <message>
            <source>the disk is full%1</source>
            <translation>der Datenträger ist voll%1</translation>
        </message>
        <message>
            <source>the disk reports an error%1</source>
            <translation>der Datenträger meldet einen Fehler%1</translation>
        </message>
        <message>
            <source>the document %1 is gone</source>
            <translation>das Dokument %1 ist weg</translation>
        </message>
        <message>
            <source>the document %1 of a take is gone</source>
            <translation>das Dokument %1 einer Aufnahme fehlt</translation>
        </message>
        <message>
            <source>the document of %1: %2</source>
            <translation>das Dokument von %1: %2</translation>
        </message>
        <message>
            <source>the drag [N]</source>
            <translation>die Schleppkraft [N]</translation>
        </message>
        <message>
            <source>the draught's factor</source>
            <translation>der Faktor der Zugluft</translation>
        </message>
        <message>
            <source>the edge's lean [mm]</source>
            <translation>die Neigung der Kante [mm]</translation>
        </message>
        <message>
            <source>the edges are hot: a sheet is shimmed before the plate comes in</source>
            <translation>die Kanten sind heiß: unterlegt wird, bevor das Heizelement kommt</translation>
        </message>
        <message>
            <source>the edges are joined: nobody can touch them</source>
            <translation>die Kanten sind gefügt: niemand kann sie berühren</translation>
        </message>
        <message>
            <source>the faces of joint %1 never met; allowed: a joint that was made</source>
            <translation>die Flächen der Schweißung %1 kamen nie zusammen; erlaubt: eine Schweißung, die gemacht wurde</translation>
        </message>
        <message>
            <source>the field "%1" stands twice</source>
            <translation>das Feld „%1“ steht zweimal da</translation>
        </message>
        <message>
            <source>the file is empty; expected a JSON object</source>
            <translation>die Datei ist leer; erwartet: ein JSON-Objekt</translation>
        </message>
        <message>
            <source>the file is empty; expected the header reading,force_N</source>
            <translation>die Datei ist leer; erwartet: die Kopfzeile reading,force_N</translation>
        </message>
        <message>
            <source>the folder "%1" for photos can't be made</source>
            <translation>der Ordner „%1“ für Fotos lässt sich nicht anlegen</translation>
        </message>
        <message>
            <source>the folder "%1" for tables can't be made</source>
            <translation>der Ordner „%1“ für Tabellen lässt sich nicht anlegen</translation>
        </message>
        <message>
            <source>the folder "%1" for the practice log can't be made; allowed: a folder that can be written</source>
            <translation>der Ordner „%1“ für das Übungslogbuch lässt sich nicht anlegen; erlaubt: ein schreibbarer Ordner</translation>
        </message>
        <message>
            <source>the folder %1 is not there</source>
            <translation>der Ordner %1 ist nicht da</translation>
        </message>
        <message>
            <source>the folder can't be made</source>
            <translation>der Ordner lässt sich nicht anlegen</translation>
        </message>
        <message>
            <source>the folder for photos can't be made</source>
            <translation>der Ordner für Fotos lässt sich nicht anlegen</translation>
        </message>
        <message>
            <source>the folder for published copies is not there; allowed: a folder</source>
            <translation>der Ordner für Kopien ist nicht da; erlaubt: ein Ordner</translation>
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
            <source>the foreman's PIN is asked</source>
            <translation>die PIN des Meisters wird verlangt</translation>
        </message>
        <message>
            <source>the gap</source>
            <translation>der Abstand</translation>
        </message>
        <message>
            <source>the gap is the sheet's thickness, twice that before the second sheet, by the bench's rule: common practice, no source</source>
            <translation>Abstand gleich Tafeldicke, doppelt vor der zweiten Tafel, nach der Regel der Bank: übliche Praxis, keine Quelle</translation>
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
            <source>the heat estimate was stopped</source>
            <translation>die Wärmeschätzung wurde abgebrochen</translation>
        </message>
        <message>
            <source>the id "%1" is another file's too</source>
            <translation>die Kennung „%1“ hat auch eine andere Datei</translation>
        </message>
        <message>
            <source>the job "%1" has a seam "%2" already; allowed: each label once in a job</source>
            <translation>der Auftrag „%1“ hat schon eine Naht „%2“; erlaubt: jede Bezeichnung einmal je Auftrag</translation>
        </message>
        <message>
            <source>the job folder "%1" has no job; allowed: a folder with job-*.json</source>
            <translation>der Auftragsordner „%1“ hat keinen Auftrag; erlaubt: ein Ordner mit job-*.json</translation>
        </message>
        <message>
            <source>the job's seams: %1</source>
            <translation>Nähte des Auftrags: %1</translation>
        </message>
        <message>
            <source>the joining pressure</source>
            <translation>der Fügedruck</translation>
        </message>
        <message>
            <source>the joint's number</source>
            <translation>Nummer der Schweißung</translation>
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
            <source>the last day %1 is no date; allowed: as in "2031-06-30"</source>
            <translation>der letzte Tag %1 ist kein Datum; erlaubt: wie „2031-06-30“</translation>
        </message>
        <message>
            <source>the last number</source>
            <translation>die letzte Zahl</translation>
        </message>
        <message>
            <source>the last seconds of soak</source>
            <translation>die letzten Sekunden des Anwärmens</translation>
        </message>
        <message>
            <source>the lesson %1</source>
            <translation>die Lektion %1</translation>
        </message>
        <message>
            <source>the lesson needs the %1 "%2", and this shop has none of that name</source>
            <translation>die Lektion braucht: %1 „%2“, und in diesem Betrieb gibt es nichts dieses Namens</translation>
        </message>
        <message>
            <source>the line has no force at a reading of %1, which is outside -%2 to %3</source>
            <translation>die Gerade hat keine Kraft bei einem Skalenwert von %1; der liegt außerhalb -%2 bis %3</translation>
        </message>
        <message>
            <source>the list of joints has no place for more than %1 opened at one instant</source>
            <translation>die Liste fasst nicht mehr als %1 Schweißungen, die im selben Augenblick begonnen wurden</translation>
        </message>
        <message>
            <source>the list of joints is being made anew, %1 rows are still to be read</source>
            <translation>die Liste der Schweißungen entsteht gerade neu, %1 Zeilen sind noch zu lesen</translation>
        </message>
        <message>
            <source>the lock's creep [mm/min]</source>
            <translation>das Kriechen der Sperre [mm/min]</translation>
        </message>
        <message>
            <source>the log has no chain</source>
            <translation>das Logbuch hat keine Kette</translation>
        </message>
        <message>
            <source>the log has no rows, so there is nothing to seal</source>
            <translation>das Logbuch hat keine Zeilen, also gibt es nichts zu siegeln</translation>
        </message>
        <message>
            <source>the log holds an open weld on the bench "%1" but not the bench itself</source>
            <translation>das Logbuch enthält eine offene Schweißung auf der Bank „%1“, aber nicht die Bank selbst</translation>
        </message>
        <message>
            <source>the log names a document of the bench "%1" that is not in it</source>
            <translation>das Logbuch nennt ein Dokument der Bank „%1“, das es nicht enthält</translation>
        </message>
        <message>
            <source>the log names the procedure %1 and lacks it</source>
            <translation>das Logbuch nennt die Anweisung %1 und enthält sie nicht</translation>
        </message>
        <message>
            <source>the log of real joints is not touched</source>
            <translation>das echte Logbuch bleibt unberührt</translation>
        </message>
        <message>
            <source>the log was moved or deleted while it was in use</source>
            <translation>das Logbuch wurde bei der Arbeit verschoben oder gelöscht</translation>
        </message>
        <message>
            <source>the machine was started again before the lock: cut back and plane again</source>
            <translation>das Gerät wurde vor dem Sperren neu gestartet: zurückschneiden und neu hobeln</translation>
        </message>
        <message>
            <source>the machine was started again meanwhile; the clock must be bridged</source>
            <translation>das Gerät wurde inzwischen neu gestartet; die Uhr muss überbrückt werden</translation>
        </message>
        <message>
            <source>the machine's boot id can't be read from %1: without it no time can be trusted after a restart</source>
            <translation>die Startkennung des Geräts ist nicht lesbar in %1: ohne sie ist nach einem Neustart keiner Zeit zu trauen</translation>
        </message>
        <message>
            <source>the machine's boot id in %1 is "%2", not 32 hexadecimal digits in groups</source>
            <translation>die Startkennung des Geräts in %1 ist „%2“, nicht 32 Hexadezimalziffern in Gruppen</translation>
        </message>
        <message>
            <source>the middle of the procedure's window</source>
            <translation>die Mitte des Bereichs der Anweisung</translation>
        </message>
        <message>
            <source>the most allowed, %1, is under the scale's first division</source>
            <translation>das höchste Erlaubte, %1, liegt unter dem ersten Strich der Skala</translation>
        </message>
        <message>
            <source>the name has %1 characters; allowed: 1 to %2</source>
            <translation>der Name hat %1 Zeichen; erlaubt: 1 bis %2</translation>
        </message>
        <message>
            <source>the name holds a control character, or begins or ends with a blank</source>
            <translation>der Name enthält ein Steuerzeichen oder beginnt oder endet mit einem Leerzeichen</translation>
        </message>
        <message>
            <source>the name stays in the log</source>
            <translation>der Name bleibt im Logbuch</translation>
        </message>
        <message>
            <source>the nearest division, %1 %2, lies outside %3 to %4 %5; the band is extended to it</source>
            <translation>der nächste Strich, %1 %2, liegt außerhalb %3 bis %4 %5; das Band reicht jetzt bis zu ihm</translation>
        </message>
        <message>
            <source>the next n is %1</source>
            <translation>das nächste n ist %1</translation>
        </message>
        <message>
            <source>the number of stations</source>
            <translation>die Zahl der Stellen</translation>
        </message>
        <message>
            <source>the old one is forgotten</source>
            <translation>die alte ist vergessen</translation>
        </message>
        <message>
            <source>the one was right</source>
            <translation>die eine stimmte</translation>
        </message>
        <message>
            <source>the operator</source>
            <translation>Bediener</translation>
        </message>
        <message>
            <source>the order stays</source>
            <translation>die Folge bleibt</translation>
        </message>
        <message>
            <source>the others stay</source>
            <translation>die anderen bleiben</translation>
        </message>
        <message>
            <source>the person's id "%1" is not "person:" and 1 to 40 of a-z, 0-9 and "-"</source>
            <translation>die Kennung „%1“ ist nicht „person:“ und 1 bis 40 Zeichen aus a-z, 0-9 und „-“</translation>
        </message>
        <message>
            <source>the photo "%1"</source>
            <translation>das Foto „%1“</translation>
        </message>
        <message>
            <source>the photos can't be listed (%1)</source>
            <translation>die Fotos lassen sich nicht auflisten (%1)</translation>
        </message>
        <message>
            <source>the place</source>
            <translation>die Stelle</translation>
        </message>
        <message>
            <source>the place can't be reached</source>
            <translation>Stelle nicht erreichbar</translation>
        </message>
        <message>
            <source>the plan has no release order: it needs at least one step</source>
            <translation>der Plan hat keine Folge zum Ausspannen: mindestens ein Schritt ist nötig</translation>
        </message>
        <message>
            <source>the plan has no scale: a weld needs a bench</source>
            <translation>der Plan hat keine Skala: eine Schweißung braucht eine Bank</translation>
        </message>
        <message>
            <source>the plan is not ready to weld: %1 is missing</source>
            <translation>der Plan ist noch nicht zum Schweißen: es fehlt %1</translation>
        </message>
        <message>
            <source>the plan is not ready to weld: %1 was filled in by the shop and is not attested</source>
            <translation>der Plan ist noch nicht zum Schweißen: vom Betrieb eingetragen und nicht bestätigt: %1</translation>
        </message>
        <message>
            <source>the plan of seam %1 has no times</source>
            <translation>der Plan von Naht %1 hat keine Zeiten</translation>
        </message>
        <message>
            <source>the plate can't be wiped between the edges; bring it out first</source>
            <translation>das Heizelement lässt sich zwischen den Kanten nicht putzen; erst herausnehmen</translation>
        </message>
        <message>
            <source>the plate is between the edges; bring it out first</source>
            <translation>das Heizelement ist zwischen den Kanten; erst herausnehmen</translation>
        </message>
        <message>
            <source>the plate is between the tables; bring it out first</source>
            <translation>das Heizelement ist zwischen den Tischen; erst herausnehmen</translation>
        </message>
        <message>
            <source>the plate is in already, or on its way</source>
            <translation>das Heizelement ist schon drin oder auf dem Weg</translation>
        </message>
        <message>
            <source>the plate is out already, or on its way</source>
            <translation>das Heizelement ist schon draußen oder auf dem Weg</translation>
        </message>
        <message>
            <source>the plate stuck</source>
            <translation>Heizelement klebte</translation>
        </message>
        <message>
            <source>the plate's offset [K]</source>
            <translation>die Abweichung des Heizelements [K]</translation>
        </message>
        <message>
            <source>the plate's target</source>
            <translation>Soll des Heizelements</translation>
        </message>
        <message>
            <source>the plate's temperature</source>
            <translation>die Temperatur des Heizelements</translation>
        </message>
        <message>
            <source>the points are too large for a line to be fitted</source>
            <translation>die Punkte sind zu groß, um eine Gerade hindurchzulegen</translation>
        </message>
        <message>
            <source>the practice record can't be begun in memory</source>
            <translation>das Übungsprotokoll lässt sich nicht beginnen</translation>
        </message>
        <message>
            <source>the practice record can't be ended in memory</source>
            <translation>das Übungsprotokoll lässt sich nicht abschließen</translation>
        </message>
        <message>
            <source>the printer "%1" can't be used</source>
            <translation>der Drucker „%1“ ist nicht zu benutzen</translation>
        </message>
        <message>
            <source>the printer "%1" does not take the %2</source>
            <translation>der Drucker „%1“ nimmt nicht an: %2</translation>
        </message>
        <message>
            <source>the procedure "%1" is not there</source>
            <translation>die Anweisung „%1“ ist nicht da</translation>
        </message>
        <message>
            <source>the procedure "%1" of that joint is not here any more</source>
            <translation>die Anweisung „%1“ jener Schweißung ist nicht mehr da</translation>
        </message>
        <message>
            <source>the procedure %1</source>
            <translation>die Anweisung %1</translation>
        </message>
        <message>
            <source>the procedure %1 is not attested in %2; allowed: one that is</source>
            <translation>die Anweisung %1 ist nicht bestätigt in %2; erlaubt: eine bestätigte</translation>
        </message>
        <message>
            <source>the procedure %1 says nothing of %2; allowed: one that a foreman filled</source>
            <translation>die Anweisung %1 sagt nichts zu %2; erlaubt: eine, die ein Meister ausgefüllt hat</translation>
        </message>
        <message>
            <source>the procedure of this weld, %1, is neither on this tablet nor in its log</source>
            <translation>die Anweisung dieser Schweißung, %1, ist weder auf diesem Tablet noch in ihrem Logbuch</translation>
        </message>
        <message>
            <source>the procedures that come with the program are not there: neither %1 nor its source tree; name their folder in SEAMCLOCK_RESOURCES</source>
            <translation>die Anweisungen des Programms sind nicht da: weder %1 noch sein Quellbaum; ihren Ordner in SEAMCLOCK_RESOURCES nennen</translation>
        </message>
        <message>
            <source>the program ended</source>
            <translation>das Programm endete</translation>
        </message>
        <message>
            <source>the program ended in mid-weld, and the virtual bench with it</source>
            <translation>das Programm endete mitten in der Schweißung, und die virtuelle Bank mit ihm</translation>
        </message>
        <message>
            <source>the program stood still</source>
            <translation>das Programm stand still</translation>
        </message>
        <message>
            <source>the rate %1 N per unit is not positive: a spring's force must rise with its reading</source>
            <translation>die Rate von %1 N je Einheit ist nicht positiv: die Kraft einer Feder muss mit dem Skalenwert steigen</translation>
        </message>
        <message>
            <source>the reading</source>
            <translation>der Skalenwert</translation>
        </message>
        <message>
            <source>the reason, for the record</source>
            <translation>der Grund, fürs Protokoll</translation>
        </message>
        <message>
            <source>the replay was stopped</source>
            <translation>die Wiedergabe wurde abgebrochen</translation>
        </message>
        <message>
            <source>the report can't be written to "%1": %2</source>
            <translation>der Bericht lässt sich nicht nach „%1“ schreiben: %2</translation>
        </message>
        <message>
            <source>the report would have more than %1 joints; allowed: a shorter time or a narrower filter, or the joints as CSV</source>
            <translation>der Bericht hätte mehr als %1 Schweißungen; erlaubt: kürzere Zeit oder engerer Filter, oder die Schweißungen als CSV</translation>
        </message>
        <message>
            <source>the ribbon is lifted</source>
            <translation>das Band hebt sich</translation>
        </message>
        <message>
            <source>the same</source>
            <translation>gleich</translation>
        </message>
        <message>
            <source>the same seam</source>
            <translation>dieselbe Naht</translation>
        </message>
        <message>
            <source>the scale's divisions of %1 %2 can hardly show the tolerance of %3 %4: %5</source>
            <translation>die Striche der Skala von %1 %2 zeigen die Toleranz von %3 %4 kaum: %5</translation>
        </message>
        <message>
            <source>the scale's readings</source>
            <translation>die Skalenwerte</translation>
        </message>
        <message>
            <source>the scale's zero error</source>
            <translation>der Nullfehler der Skala</translation>
        </message>
        <message>
            <source>the scope %1 can't be read; %2</source>
            <translation>der Geltungsbereich %1 ist nicht lesbar; %2</translation>
        </message>
        <message>
            <source>the scope %1 goes from %2 to %3 mm; allowed: 0.1 to 1000 mm, from thin to thick</source>
            <translation>der Geltungsbereich %1 geht von %2 bis %3 mm; erlaubt: 0,1 bis 1000 mm, von dünn nach dick</translation>
        </message>
        <message>
            <source>the scope has %1 signs; allowed: up to %2</source>
            <translation>der Geltungsbereich hat %1 Zeichen; erlaubt: bis %2</translation>
        </message>
        <message>
            <source>the score is not wanted any more</source>
            <translation>die Auswertung ist nicht mehr gefragt</translation>
        </message>
        <message>
            <source>the seal waits for them</source>
            <translation>das Siegel wartet auf sie</translation>
        </message>
        <message>
            <source>the sheet</source>
            <translation>die Tafel</translation>
        </message>
        <message>
            <source>the sheet is clamped; its edge can't be got at</source>
            <translation>die Tafel ist gespannt; an ihre Kante kommt niemand heran</translation>
        </message>
        <message>
            <source>the sheet is out already</source>
            <translation>die Tafel ist schon draußen</translation>
        </message>
        <message>
            <source>the sheet would no longer stand out of its clamps</source>
            <translation>die Tafel stünde nicht mehr aus ihren Klemmen heraus</translation>
        </message>
        <message>
            <source>the sheets are %1 and %2 mm thick, %3 mm apart; allowed a tenth of the thinner, %4 mm</source>
            <translation>die Tafeln sind %1 und %2 mm dick, %3 mm Unterschied; erlaubt ein Zehntel der dünneren, %4 mm</translation>
        </message>
        <message>
            <source>the sheets aren't joined: there is nothing to lift out</source>
            <translation>die Tafeln sind nicht gefügt: es gibt nichts herauszuheben</translation>
        </message>
        <message>
            <source>the sheets' grades differ, %1 and %2: colour does not matter, but conductive, flame-retardant or other types (PP-H, PP-B, PP-R) are not mixed unasked</source>
            <translation>die Tafeln sind verschiedene Typen, %1 und %2: die Farbe zählt nicht, aber leitfähige, flammgeschützte oder andere Typen (PP-H, PP-B, PP-R) werden nicht ohne Rückfrage gemischt</translation>
        </message>
        <message>
            <source>the soak time, while there is no median of this bench: common practice, no source</source>
            <translation>die Anwärmzeit, solange es keinen Median dieser Bank gibt: übliche Praxis, keine Quelle</translation>
        </message>
        <message>
            <source>the spring is loaded</source>
            <translation>die Feder ist gespannt</translation>
        </message>
        <message>
            <source>the spring's rate in N/mm</source>
            <translation>die Federrate in N/mm</translation>
        </message>
        <message>
            <source>the standard</source>
            <translation>die Norm</translation>
        </message>
        <message>
            <source>the step would come before the one it follows</source>
            <translation>der Schritt käme vor den, dem er folgt</translation>
        </message>
        <message>
            <source>the table "%1" is gone</source>
            <translation>die Tabelle „%1“ fehlt</translation>
        </message>
        <message>
            <source>the table can't be written to "%1" (%2)</source>
            <translation>die Tabelle lässt sich nicht nach „%1“ schreiben (%2)</translation>
        </message>
        <message>
            <source>the take %1</source>
            <translation>die Aufnahme %1</translation>
        </message>
        <message>
            <source>the take's weld is "%1"; allowed: weld: and its UUID</source>
            <translation>die Schweißung der Aufnahme ist „%1“; erlaubt: weld: und ihre UUID</translation>
        </message>
        <message>
            <source>the travel</source>
            <translation>den Weg</translation>
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
            <source>the user guide</source>
            <translation>das Handbuch</translation>
        </message>
        <message>
            <source>the user guide is not there: neither %1 nor its source tree; it comes with the program's package</source>
            <translation>die Anleitung ist nicht da: weder %1 noch der Quellbaum; sie kommt mit dem Paket des Programms</translation>
        </message>
        <message>
            <source>the value falls before %1 mm; a source that says so needs "falls_by_declaration": true</source>
            <translation>der Wert fällt vor %1 mm; eine Quelle, die das sagt, braucht "falls_by_declaration": true</translation>
        </message>
        <message>
            <source>the value jumps down from %1 to %2 at %3 mm; a source that says so needs "falls_by_declaration": true</source>
            <translation>der Wert springt von %1 auf %2 herunter bei %3 mm; eine Quelle, die das sagt, braucht "falls_by_declaration": true</translation>
        </message>
        <message>
            <source>the wall clock went back</source>
            <translation>die Uhr ging zurück</translation>
        </message>
        <message>
            <source>the weld "%1" is open elsewhere</source>
            <translation>die Schweißung „%1“ ist anderswo offen</translation>
        </message>
        <message>
            <source>the weld is over</source>
            <translation>die Schweißung ist vorbei</translation>
        </message>
        <message>
            <source>the wheel is locked; unlock it first</source>
            <translation>das Handrad ist gesperrt; erst lösen</translation>
        </message>
        <message>
            <source>the wheel isn't locked</source>
            <translation>das Handrad ist nicht gesperrt</translation>
        </message>
        <message>
            <source>the wheel's speed</source>
            <translation>die Geschwindigkeit des Handrads</translation>
        </message>
        <message>
            <source>the whole</source>
            <translation>das Ganze</translation>
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
            <source>there are %1 files like "%2" already</source>
            <translation>es gibt schon %1 Dateien wie „%2“</translation>
        </message>
        <message>
            <source>there are %1 mm between the edges; the plate needs %2 mm</source>
            <translation>zwischen den Kanten sind %1 mm; das Heizelement braucht %2 mm</translation>
        </message>
        <message>
            <source>there are %1 of that day already</source>
            <translation>es gibt schon %1 von diesem Tag</translation>
        </message>
        <message>
            <source>there are %1 of that name already</source>
            <translation>es gibt schon %1 dieses Namens</translation>
        </message>
        <message>
            <source>there is a file of that name</source>
            <translation>es gibt dort eine Datei dieses Namens</translation>
        </message>
        <message>
            <source>there is a foreman already, who adds everybody else</source>
            <translation>es gibt schon einen Meister; der trägt alle anderen ein</translation>
        </message>
        <message>
            <source>there is no "%1" in this log; allowed: one that it has</source>
            <translation>„%1“ steht nicht in diesem Logbuch; erlaubt: eine, die darin steht</translation>
        </message>
        <message>
            <source>there is no chapter of the guide in "%1"; allowed: files as "01-cautions.md"</source>
            <translation>in „%1“ ist kein Kapitel des Handbuchs; erlaubt: Dateien wie „01-cautions.md“</translation>
        </message>
        <message>
            <source>there is no column %1; allowed: %2</source>
            <translation>es gibt keine Spalte %1; erlaubt: %2</translation>
        </message>
        <message>
            <source>there is no guide</source>
            <translation>es gibt keine Anleitung</translation>
        </message>
        <message>
            <source>there is no header line; allowed: %1</source>
            <translation>es gibt keine Kopfzeile; erlaubt: %1</translation>
        </message>
        <message>
            <source>there is no joint on this bench to go on from</source>
            <translation>auf dieser Bank gibt es keine Schweißung, nach der es weitergehen könnte</translation>
        </message>
        <message>
            <source>there is no lesson "%1"; allowed: %2</source>
            <translation>es gibt keine Lektion „%1“; erlaubt: %2</translation>
        </message>
        <message>
            <source>there is no printer</source>
            <translation>kein Drucker da</translation>
        </message>
        <message>
            <source>there is no printer "%1"; allowed: %2</source>
            <translation>es gibt keinen Drucker „%1“; erlaubt: %2</translation>
        </message>
        <message>
            <source>there is no printer on this machine; the %1 can be kept as a PDF</source>
            <translation>an diesem Gerät ist kein Drucker; als PDF geht es: %1</translation>
        </message>
        <message>
            <source>there is no seam</source>
            <translation>es gibt keine Naht</translation>
        </message>
        <message>
            <source>there is no seam "%1" in this log; allowed: one that it keeps</source>
            <translation>in diesem Logbuch gibt es keine Naht „%1“; erlaubt: eine, die es führt</translation>
        </message>
        <message>
            <source>there is no seam under the header</source>
            <translation>unter der Kopfzeile steht keine Naht</translation>
        </message>
        <message>
            <source>there is no seam; allowed: one or more</source>
            <translation>es gibt keine Naht; erlaubt: eine oder mehr</translation>
        </message>
        <message>
            <source>there is no series "%1"; allowed: one that coupons list shows</source>
            <translation>es gibt keine Reihe „%1“; erlaubt: eine, die coupons list zeigt</translation>
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
            <source>thickness %1 mm is outside %2 to %3 mm of %4</source>
            <translation>Dicke %1 mm liegt außerhalb %2 bis %3 mm von %4</translation>
        </message>
        <message>
            <source>thickness %1 mm is outside %2 to %3 mm of bench %4</source>
            <translation>Dicke %1 mm liegt außerhalb %2 bis %3 mm von Bank %4</translation>
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
            <source>this is a copy: nothing can be written to it</source>
            <translation>das ist eine Kopie: nichts lässt sich hineinschreiben</translation>
        </message>
        <message>
            <source>this job</source>
            <translation>dieser Auftrag</translation>
        </message>
        <message>
            <source>this log has no take of %1</source>
            <translation>dieses Logbuch hat keine Aufnahme von %1</translation>
        </message>
        <message>
            <source>this plan %1</source>
            <translation>dieser Plan %1</translation>
        </message>
        <message>
            <source>this sheet is clamped already</source>
            <translation>diese Tafel ist schon gespannt</translation>
        </message>
        <message>
            <source>this weld</source>
            <translation>diese Naht</translation>
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
            <source>to decide</source>
            <translation>zu entscheiden</translation>
        </message>
        <message>
            <source>to decide: %1</source>
            <translation>zu entscheiden: %1</translation>
        </message>
        <message>
            <source>to decide: joint %1 can't be read</source>
            <translation>zu entscheiden: Schweißung %1 ist nicht lesbar</translation>
        </message>
        <message>
            <source>to decide: joint %1 is %2</source>
            <translation>zu entscheiden: Schweißung %1 ist %2</translation>
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
            <source>to the result</source>
            <translation>zum Ergebnis</translation>
        </message>
        <message>
            <source>to the shop</source>
            <translation>zum Betrieb</translation>
        </message>
        <message>
            <source>to the shop's own log</source>
            <translation>ins eigene Logbuch</translation>
        </message>
        <message>
            <source>to the signal</source>
            <translation>bis zum Signal</translation>
        </message>
        <message>
            <source>to weld again</source>
            <translation>neu zu schweißen</translation>
        </message>
        <message>
            <source>to weld again: %1</source>
            <translation>neu zu schweißen: %1</translation>
        </message>
        <message>
            <source>to weld again: joint %1 is to be repaired</source>
            <translation>neu zu schweißen: Schweißung %1 ist auszubessern</translation>
        </message>
        <message>
            <source>to weld again: joint %1 was cut out</source>
            <translation>neu zu schweißen: Schweißung %1 wurde ausgetrennt</translation>
        </message>
        <message>
            <source>to weld again: joint %1 was stopped</source>
            <translation>neu zu schweißen: Schweißung %1 wurde abgebrochen</translation>
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
            <source>total length %1 mm is outside %2 to %3 mm of bench %4</source>
            <translation>Gesamtlänge %1 mm liegt außerhalb %2 bis %3 mm von Bank %4</translation>
        </message>
        <message>
            <source>touch to say the standard</source>
            <translation>antippen: die Norm nennen</translation>
        </message>
        <message>
            <source>touch to say who welded</source>
            <translation>antippen: wer geschweißt hat</translation>
        </message>
        <message>
            <source>trainee</source>
            <translation>Lehrling</translation>
        </message>
        <message>
            <source>travel of the ram %1 in</source>
            <translation>Stempelweg %1 in</translation>
        </message>
        <message>
            <source>travel of the ram %1 mm</source>
            <translation>Stempelweg %1 mm</translation>
        </message>
        <message>
            <source>trial</source>
            <translation>Probe</translation>
        </message>
        <message>
            <source>trial %1</source>
            <translation>Probe %1</translation>
        </message>
        <message>
            <source>trial is tested</source>
            <translation>Probe wird geprüft</translation>
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
            <source>twice the median of this bench's last such welds: our judgement</source>
            <translation>das Doppelte des Medians der letzten solchen Schweißungen dieser Bank: unser Urteil</translation>
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
            <source>until</source>
            <translation>bis</translation>
        </message>
        <message>
            <source>upper %1</source>
            <translation>oben %1</translation>
        </message>
        <message>
            <source>upper limit %1</source>
            <translation>obere Grenze %1</translation>
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
            <source>value corrected</source>
            <translation>Wert berichtigt</translation>
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
            <source>waits for release</source>
            <translation>wartet aufs Ausspannen</translation>
        </message>
        <message>
            <source>waits in the spill file</source>
            <translation>wartet in der Auffangdatei</translation>
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
            <source>was deleted</source>
            <translation>wurde gelöscht</translation>
        </message>
        <message>
            <source>was not noticed</source>
            <translation>nicht bemerkt</translation>
        </message>
        <message>
            <source>was not written as it was read</source>
            <translation>wurde nicht so geschrieben, wie es gelesen wurde</translation>
        </message>
        <message>
            <source>was written by a newer program (version %1, this program reads 1 to %2)</source>
            <translation>stammt von einem neueren Programm (Version %1, dieses liest 1 bis %2)</translation>
        </message>
        <message>
            <source>weld %1 such seams in one clamping, or take a spring of at most %2 N for one %3</source>
            <translation>%1 solche Nähte in einer Spannung schweißen, oder eine Feder mit höchstens %2 N je %3</translation>
        </message>
        <message>
            <source>weld an offcut of %1 mm beside it, or %2 such seams in one clamping, or take a spring of at most %3 N for one %4</source>
            <translation>ein Reststück von %1 mm danebenschweißen, oder %2 solche Nähte in einer Spannung, oder eine Feder mit höchstens %3 N je %4</translation>
        </message>
        <message>
            <source>weld an offcut of %1 mm beside it, or take a spring of at most %2 N for one %3</source>
            <translation>ein Reststück von %1 mm danebenschweißen, oder eine Feder mit höchstens %2 N je %3</translation>
        </message>
        <message>
            <source>weld closed</source>
            <translation>Schweißung abgeschlossen</translation>
        </message>
        <message>
            <source>weld opened</source>
            <translation>Schweißung begonnen</translation>
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
            <source>weld stopped</source>
            <translation>Schweißung abgebrochen</translation>
        </message>
        <message>
            <source>welded</source>
            <translation>geschweißt</translation>
        </message>
        <message>
            <source>welded %1 N/mm²</source>
            <translation>geschweißt %1 N/mm²</translation>
        </message>
        <message>
            <source>welded %1 psi</source>
            <translation>geschweißt %1 psi</translation>
        </message>
        <message>
            <source>welded again more often than the job allows</source>
            <translation>öfter neu geschweißt, als der Auftrag erlaubt</translation>
        </message>
        <message>
            <source>welded and parent strength</source>
            <translation>Festigkeit Naht und Tafel</translation>
        </message>
        <message>
            <source>welded by %1</source>
            <translation>geschweißt von %1</translation>
        </message>
        <message>
            <source>welder</source>
            <translation>Schweißer</translation>
        </message>
        <message>
            <source>welding factor %1</source>
            <translation>Schweißfaktor %1</translation>
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
            <source>what is left of it</source>
            <translation>was davon übrig ist</translation>
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
            <source>what to do</source>
            <translation>was tun</translation>
        </message>
        <message>
            <source>what was made</source>
            <translation>was gemacht wurde</translation>
        </message>
        <message>
            <source>what was made at the practice bench can't be kept in a log of %1</source>
            <translation>was an der Übungsbank gemacht wurde, kommt nicht in ein Logbuch für: %1</translation>
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
            <source>where its faces are read</source>
            <translation>wo seine Flächen gemessen werden</translation>
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
            <source>which joints hold one</source>
            <translation>welche Schweißungen</translation>
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
            <source>who, where, until when</source>
            <translation>wer, wo, bis wann</translation>
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
            <source>width %1 mm</source>
            <translation>Breite %1 mm</translation>
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
            <source>with width and thickness</source>
            <translation>mit Breite und Dicke</translation>
        </message>
        <message>
            <source>without a joint here</source>
            <translation>ohne Schweißung hier</translation>
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
            <source>you hear</source>
            <translation>Sie hören</translation>
        </message>
        <message>
            <source>you see</source>
            <translation>Sie sehen</translation>
        </message>
        <message>
            <source>zero</source>
            <translation>Null</translation>
        </message>
        <message>
            <source>zero and (force, drag and preload) by the spring's rate, from the bench's own data: common practice, no source</source>
            <translation>Null und (Kraft, Schleppkraft und Vorlast) durch die Federrate, aus den Angaben der Bank: übliche Praxis, keine Quelle</translation>
        </message>
        <message>
            <source>zero and rate come from the calibration</source>
            <translation>Null und Rate aus der Kalibrierung</translation>
        </message>
        <message>
            <source>zero is the division nearest to the aim</source>
            <translation>null ist der Strich, der dem Ziel am nächsten ist</translation>
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

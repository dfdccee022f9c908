<?xml version="1.0" encoding="utf-8"?>
<!DOCTYPE TS>
<TS version="2.1" language="es" sourcelanguage="en">
    <context>
        <name>seamclock</name>
        <message>
            <source> (%1 to %2)</source>
            <translation> (%1 a %2)</translation>
        </message>
        <message>
            <source> (%1, pressed %2)</source>
            <translation> (%1, pulsado %2)</translation>
        </message>
        <message>
            <source> (as it was corrected)</source>
            <translation> (como se corrigió)</translation>
        </message>
        <message>
            <source> (as it was noted at first)</source>
            <translation> (como se anotó al principio)</translation>
        </message>
        <message>
            <source> And %1 more: see the printed card.</source>
            <translation> Y %1 más: ver la ficha impresa.</translation>
        </message>
        <message>
            <source> and </source>
            <translation> y </translation>
        </message>
        <message>
            <source> ± %1</source>
            <translation> ± %1</translation>
        </message>
        <message>
            <source> · %1 ticked</source>
            <translation> · marcados: %1</translation>
        </message>
        <message>
            <source> · bench %1</source>
            <translation> · banco %1</translation>
        </message>
        <message>
            <source> · put right</source>
            <translation> · corregido</translation>
        </message>
        <message>
            <source> · welded by %1</source>
            <translation> · soldado por %1</translation>
        </message>
        <message>
            <source>"%1" can't be corrected in %2; these can: %3</source>
            <translation>«%1» no se puede corregir en %2; sí estos: %3</translation>
        </message>
        <message>
            <source>"%1" can't be read; allowed: a file that can be read</source>
            <translation>no se puede leer «%1»; permitido: un archivo legible</translation>
        </message>
        <message>
            <source>"%1" can't be read; allowed: a table of up to %2 bytes.</source>
            <translation>«%1» no se puede leer; permitido: una tabla de hasta %2 bytes.</translation>
        </message>
        <message>
            <source>"%1" can't be written (%2)</source>
            <translation>no se puede escribir «%1» (%2)</translation>
        </message>
        <message>
            <source>"%1" can't be written: %2; allowed: a folder that can be written</source>
            <translation>«%1» no se puede escribir: %2; permitido: una carpeta en la que se pueda escribir</translation>
        </message>
        <message>
            <source>"%1" does not name a weld</source>
            <translation>«%1» no nombra ninguna soldadura</translation>
        </message>
        <message>
            <source>"%1" holds %2 bytes; allowed: to %3</source>
            <translation>«%1» contiene %2 bytes; permitido: hasta %3</translation>
        </message>
        <message>
            <source>"%1" holds more than small letters, digits and hyphens</source>
            <translation>«%1» contiene algo más que minúsculas, cifras y guiones</translation>
        </message>
        <message>
            <source>"%1" is no cell of %2; allowed: a name that the procedure's list of cells shows</source>
            <translation>«%1» no es una casilla de %2; permitido: un nombre de la lista de casillas del procedimiento</translation>
        </message>
        <message>
            <source>"%1" is no id; allowed: small letters, digits and hyphens</source>
            <translation>«%1» no es un identificador; permitido: minúsculas, cifras y guiones</translation>
        </message>
        <message>
            <source>"%1" is no joint's number; allowed: 1 and up.</source>
            <translation>«%1» no es número de unión; permitido: desde 1.</translation>
        </message>
        <message>
            <source>"%1" is no test; allowed: tensile, bend</source>
            <translation>«%1» no es un ensayo; permitido: tensile, bend</translation>
        </message>
        <message>
            <source>"%1" is no value for %2; allowed: %3.</source>
            <translation>«%1» no es un valor para %2; permitido: %3.</translation>
        </message>
        <message>
            <source>"%1" is no verdict of this program</source>
            <translation>«%1» no es un dictamen de este programa</translation>
        </message>
        <message>
            <source>"%1" is not "%2"</source>
            <translation>«%1» no es «%2»</translation>
        </message>
        <message>
            <source>"%1" is not %2</source>
            <translation>«%1» no es %2</translation>
        </message>
        <message>
            <source>"%1" is not a date like 2030-01-07</source>
            <translation>«%1» no es una fecha como 2030-01-07</translation>
        </message>
        <message>
            <source>"%1" is not a date; allowed: 0000-01-01 to 9999-12-31</source>
            <translation>«%1» no es una fecha; permitido: 0000-01-01 a 9999-12-31</translation>
        </message>
        <message>
            <source>"%1" is not a number; allowed: numbers with a dot, parted by commas</source>
            <translation>«%1» no es un número; permitido: números con punto, separados por comas</translation>
        </message>
        <message>
            <source>"%1" is not a whole number for %2</source>
            <translation>«%1» no es un número entero para %2</translation>
        </message>
        <message>
            <source>"%1" is not in %2; allowed: a weld that the list of joints shows</source>
            <translation>«%1» no está en %2; permitido: una soldadura que muestre la lista</translation>
        </message>
        <message>
            <source>"%1" is not one of %2</source>
            <translation>«%1» no es ninguno de %2</translation>
        </message>
        <message>
            <source>"%1" is not one of handwheel, foot_lever</source>
            <translation>«%1» no es ninguno de handwheel, foot_lever</translation>
        </message>
        <message>
            <source>"%1" is not one of line, band-end</source>
            <translation>«%1» no es ninguno de line, band-end</translation>
        </message>
        <message>
            <source>"%1" is not one of middle, ends, three, each_face</source>
            <translation>«%1» no es ninguno de middle, ends, three, each_face</translation>
        </message>
        <message>
            <source>"%1" is not one of seen, memory, common_practice, derived</source>
            <translation>«%1» no es ninguno de seen, memory, common_practice, derived</translation>
        </message>
        <message>
            <source>"%1" is not one of warmer, colder</source>
            <translation>«%1» no es ninguno de warmer, colder</translation>
        </message>
        <message>
            <source>"%1" is not the plastic of joint %2; allowed: %3</source>
            <translation>«%1» no es el plástico de la unión %2; permitido: %3</translation>
        </message>
        <message>
            <source>"%1" is there twice; allowed: each label once</source>
            <translation>«%1» está dos veces; permitido: cada etiqueta una vez</translation>
        </message>
        <message>
            <source>"%1" is what %2 is called once it is welded again; allowed: a label that does not end so</source>
            <translation>«%1» es como se llama %2 cuando se suelda de nuevo; permitido: una etiqueta que no termine así</translation>
        </message>
        <message>
            <source>"%1" stands twice</source>
            <translation>«%1» está dos veces</translation>
        </message>
        <message>
            <source>"Seen", and go on.</source>
            <translation>«Visto», y seguir.</translation>
        </message>
        <message>
            <source>"Seen". Cooling takes that much longer.</source>
            <translation>«Visto». El enfriamiento dura eso de más.</translation>
        </message>
        <message>
            <source>"Stop: cut out", cut back and plane. Going on is in the record.</source>
            <translation>«Parar: cortar», recortar y cepillar. Si se sigue, queda en el registro.</translation>
        </message>
        <message>
            <source>"attested" is what a foreman says in a log, with his PIN; a file says seen, memory, common_practice or derived</source>
            <translation>«attested» lo dice un encargado en un registro, con su PIN; un archivo dice seen, memory, common_practice o derived</translation>
        </message>
        <message>
            <source>% for each kelvin</source>
            <translation>% por cada kelvin</translation>
        </message>
        <message>
            <source>%1 % a kelvin, longer when colder, %2 to %3 °C</source>
            <translation>%1 % por kelvin, más largo con más frío, %2 a %3 °C</translation>
        </message>
        <message>
            <source>%1 % a kelvin, longer when warmer, %2 to %3 °C</source>
            <translation>%1 % por kelvin, más largo con más calor, %2 a %3 °C</translation>
        </message>
        <message>
            <source>%1 %2</source>
            <translation>%1 %2</translation>
        </message>
        <message>
            <source>%1 %2 coupons; allowed: 1 to %3</source>
            <translation>%1 probetas (%2); permitido: 1 a %3</translation>
        </message>
        <message>
            <source>%1 %2 is not a finite number with a decimal point</source>
            <translation>%1 %2 no es un número finito con punto decimal</translation>
        </message>
        <message>
            <source>%1 %2 is outside %3 to %4</source>
            <translation>%1 %2 está fuera de %3 a %4</translation>
        </message>
        <message>
            <source>%1 %2 is outside %3 to %4%5</source>
            <translation>%1 %2 está fuera de %3 a %4%5</translation>
        </message>
        <message>
            <source>%1 %2 is outside: allowed %3 to %4.</source>
            <translation>%1 %2 queda fuera: permitido de %3 a %4.</translation>
        </message>
        <message>
            <source>%1 %2 mm, %3 mm long</source>
            <translation>%1 %2 mm, %3 mm de largo</translation>
        </message>
        <message>
            <source>%1 %2 would be %3 %4</source>
            <translation>%1 %2 serían %3 %4</translation>
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
            <translation>%1 %2, límite %3</translation>
        </message>
        <message>
            <source>%1 %2, plan %3</source>
            <translation>%1 %2, plan %3</translation>
        </message>
        <message>
            <source>%1 %2, plan %3, out of limits</source>
            <translation>%1 %2, plan %3, fuera de límites</translation>
        </message>
        <message>
            <source>%1 (%2 to %3)</source>
            <translation>%1 (%2 a %3)</translation>
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
            <translation>%1 (del archivo del trabajo)</translation>
        </message>
        <message>
            <source>%1 / %2 mm</source>
            <translation>%1 / %2 mm</translation>
        </message>
        <message>
            <source>%1 It is in the record.</source>
            <translation>%1 Consta en el registro.</translation>
        </message>
        <message>
            <source>%1 N is lost before the load cell shows anything: with calibration points it is 0 or left out</source>
            <translation>%1 N se pierden antes de que la célula de carga marque algo: con puntos de calibración es 0 o no se indica</translation>
        </message>
        <message>
            <source>%1 N/mm²</source>
            <translation>%1 N/mm²</translation>
        </message>
        <message>
            <source>%1 Next try in %2.</source>
            <translation>%1 Próximo intento en %2.</translation>
        </message>
        <message>
            <source>%1 There are %2 such files.</source>
            <translation>%1 Hay %2 archivos así.</translation>
        </message>
        <message>
            <source>%1 all along</source>
            <translation>%1 en todo el largo</translation>
        </message>
        <message>
            <source>%1 angles and %2 displacements for %3 bend coupons; allowed: one of either for each</source>
            <translation>%1 ángulos y %2 recorridos para %3 probetas de doblado; permitido: uno de los dos por probeta</translation>
        </message>
        <message>
            <source>%1 as before</source>
            <translation>%1 como antes</translation>
        </message>
        <message>
            <source>%1 at place %2</source>
            <translation>%1 en el punto %2</translation>
        </message>
        <message>
            <source>%1 at places %2 and %3</source>
            <translation>%1 en los puntos %2 y %3</translation>
        </message>
        <message>
            <source>%1 attested values are withdrawn.</source>
            <translation>Cotejos retirados: %1.</translation>
        </message>
        <message>
            <source>%1 bend coupons; allowed: 1 to %2</source>
            <translation>%1 probetas de doblado; permitido: 1 a %2</translation>
        </message>
        <message>
            <source>%1 beside the shop's own log</source>
            <translation>%1 junto al registro del taller</translation>
        </message>
        <message>
            <source>%1 by %2</source>
            <translation>%1 según %2</translation>
        </message>
        <message>
            <source>%1 by %2, %3: %4</source>
            <translation>%1 (%2, %3): %4</translation>
        </message>
        <message>
            <source>%1 bytes are no job; allowed: up to %2</source>
            <translation>%1 bytes no son un trabajo; permitido: hasta %2</translation>
        </message>
        <message>
            <source>%1 bytes do not fit; it has room for %2</source>
            <translation>%1 bytes no caben; hay sitio para %2</translation>
        </message>
        <message>
            <source>%1 came %2 ms after the step before; less than %3 ms is taken for one press</source>
            <translation>%1 llegó %2 ms tras el paso anterior; menos de %3 ms cuenta como una sola pulsación</translation>
        </message>
        <message>
            <source>%1 can't be kept: %2.</source>
            <translation>%1 no se guarda: %2.</translation>
        </message>
        <message>
            <source>%1 can't be meant: %2 to %3 %4.</source>
            <translation>%1 no puede ser: %2 a %3 %4.</translation>
        </message>
        <message>
            <source>%1 can't be on bench "%2": it is on bench "%3"</source>
            <translation>%1 no puede estar en el banco «%2»: está en el banco «%3»</translation>
        </message>
        <message>
            <source>%1 can't be read (%2)</source>
            <translation>%1 no se puede leer (%2)</translation>
        </message>
        <message>
            <source>%1 can't be read: %2</source>
            <translation>%1 no se puede leer: %2</translation>
        </message>
        <message>
            <source>%1 can't be read: expected SHA-256 %2</source>
            <translation>%1 no se puede leer: se esperaba SHA-256 %2</translation>
        </message>
        <message>
            <source>%1 can't be read; expected SHA-256 %2</source>
            <translation>%1 no se puede leer; se esperaba SHA-256 %2</translation>
        </message>
        <message>
            <source>%1 can't be taken</source>
            <translation>%1 no se puede aceptar</translation>
        </message>
        <message>
            <source>%1 can't be welded here: %2.</source>
            <translation>%1 no se puede soldar aquí: %2.</translation>
        </message>
        <message>
            <source>%1 can't be written: %2; allowed: a folder that can be written</source>
            <translation>%1 no se puede escribir: %2; permitido: una carpeta en la que se pueda escribir</translation>
        </message>
        <message>
            <source>%1 cells under %2 columns; allowed: one for each, a text with a comma in quotes</source>
            <translation>%1 celdas bajo %2 columnas; permitido: una por columna, un texto con coma entre comillas</translation>
        </message>
        <message>
            <source>%1 characters are too many; allowed: 1 to %2.</source>
            <translation>%1 caracteres son demasiados; permitido: de 1 a %2.</translation>
        </message>
        <message>
            <source>%1 classes of air temperature</source>
            <translation>%1 clases de temperatura del aire</translation>
        </message>
        <message>
            <source>%1 coefficients are outside 1 to %2</source>
            <translation>%1 coeficientes están fuera de 1 a %2</translation>
        </message>
        <message>
            <source>%1 columns; allowed: the %2 that there are</source>
            <translation>%1 columnas; permitido: las %2 que hay</translation>
        </message>
        <message>
            <source>%1 coupons, mean %2 N/mm², scatter %3 N/mm²</source>
            <translation>%1 probetas, media %2 N/mm², dispersión %3 N/mm²</translation>
        </message>
        <message>
            <source>%1 days</source>
            <translation>%1 días</translation>
        </message>
        <message>
            <source>%1 days; allowed: 0 to %2</source>
            <translation>%1 días; permitido: 0 a %2</translation>
        </message>
        <message>
            <source>%1 does not fit while %2</source>
            <translation>%1 no encaja en esta fase: %2</translation>
        </message>
        <message>
            <source>%1 for people</source>
            <translation>%1 para personas</translation>
        </message>
        <message>
            <source>%1 from memory: not attested</source>
            <translation>%1 de memoria: sin cotejar</translation>
        </message>
        <message>
            <source>%1 further seams are not in this plan: it holds %2.</source>
            <translation>%1 juntas más no entran en este plan: caben %2.</translation>
        </message>
        <message>
            <source>%1 h</source>
            <translation>%1 h</translation>
        </message>
        <message>
            <source>%1 has %2 bytes; allowed: up to %3</source>
            <translation>%1 tiene %2 bytes; permitido: hasta %3</translation>
        </message>
        <message>
            <source>%1 has %2 signs; allowed: %3</source>
            <translation>%1 tiene %2 signos; permitido: %3</translation>
        </message>
        <message>
            <source>%1 has a new PIN.</source>
            <translation>%1 tiene un PIN nuevo.</translation>
        </message>
        <message>
            <source>%1 has left the shop</source>
            <translation>%1 ya no está en el taller</translation>
        </message>
        <message>
            <source>%1 has n %2 where n %3 belongs</source>
            <translation>%1 tiene n %2 donde va n %3</translation>
        </message>
        <message>
            <source>%1 has no PIN yet</source>
            <translation>%1 aún no tiene PIN</translation>
        </message>
        <message>
            <source>%1 has no key that the log knows; a new PIN, given by a foreman, makes one</source>
            <translation>%1 no tiene clave conocida por el registro; un PIN nuevo, dado por un encargado, crea una</translation>
        </message>
        <message>
            <source>%1 has no row</source>
            <translation>%1 no tiene ninguna fila</translation>
        </message>
        <message>
            <source>%1 holds %2 value; expected 2, with a decimal point</source>
            <translation>%1 contiene %2 valor; se esperan 2, con punto decimal</translation>
        </message>
        <message>
            <source>%1 holds %2 values; expected 2, with a decimal point</source>
            <translation>%1 contiene %2 valores; se esperan 2, con punto decimal</translation>
        </message>
        <message>
            <source>%1 holds %2 values; expected 2, with a decimal point (1.5, not 1,5)</source>
            <translation>%1 contiene %2 valores; se esperan 2, con punto decimal (1.5, no 1,5)</translation>
        </message>
        <message>
            <source>%1 holds a line end or another control sign; allowed: %2</source>
            <translation>%1 contiene un fin de línea u otro signo de control; permitido: %2</translation>
        </message>
        <message>
            <source>%1 in all</source>
            <translation>%1 en total</translation>
        </message>
        <message>
            <source>%1 in the list is not a number</source>
            <translation>%1 en la lista no es un número</translation>
        </message>
        <message>
            <source>%1 in the list is not a text</source>
            <translation>%1 en la lista no es un texto</translation>
        </message>
        <message>
            <source>%1 in the list is not a whole number from %2 to %3</source>
            <translation>%1 en la lista no es un número entero de %2 a %3</translation>
        </message>
        <message>
            <source>%1 in the list is not an object</source>
            <translation>%1 en la lista no es un objeto</translation>
        </message>
        <message>
            <source>%1 is %2 %3; allowed: %4 to %5 %6</source>
            <translation>%1: %2 %3; permitido: %4 a %5 %6</translation>
        </message>
        <message>
            <source>%1 is %2 and not decided</source>
            <translation>%1 está %2 y sin decidir</translation>
        </message>
        <message>
            <source>%1 is %2, not %3</source>
            <translation>%1 es %2, no %3</translation>
        </message>
        <message>
            <source>%1 is %2. What is right?</source>
            <translation>%1: %2. ¿Qué es lo correcto?</translation>
        </message>
        <message>
            <source>%1 is %2; allowed: %3 to %4</source>
            <translation>%1: %2; permitido: %3 a %4</translation>
        </message>
        <message>
            <source>%1 is above %2 %3.</source>
            <translation>%1 supera %2 %3.</translation>
        </message>
        <message>
            <source>%1 is above joining %2</source>
            <translation>%1 está por encima de joining %2</translation>
        </message>
        <message>
            <source>%1 is above soak_max %2</source>
            <translation>%1 está por encima de soak_max %2</translation>
        </message>
        <message>
            <source>%1 is as it was kept</source>
            <translation>%1 está como se guardó</translation>
        </message>
        <message>
            <source>%1 is before done_on %2</source>
            <translation>%1 es anterior a done_on %2</translation>
        </message>
        <message>
            <source>%1 is below %2. Keep it, turn up.</source>
            <translation>%1 no llega a %2. Anotar y subir.</translation>
        </message>
        <message>
            <source>%1 is below floor_mm %2</source>
            <translation>%1 está por debajo de floor_mm %2</translation>
        </message>
        <message>
            <source>%1 is below min %2</source>
            <translation>%1 está por debajo de min %2</translation>
        </message>
        <message>
            <source>%1 is below min_C %2</source>
            <translation>%1 está por debajo de min_C %2</translation>
        </message>
        <message>
            <source>%1 is below thinnest_sheet_mm %2</source>
            <translation>%1 está por debajo de thinnest_sheet_mm %2</translation>
        </message>
        <message>
            <source>%1 is finer than a thousandth of the unit</source>
            <translation>%1 es más fino que una milésima de la unidad</translation>
        </message>
        <message>
            <source>%1 is line %2's seam already; allowed: each label once</source>
            <translation>%1 ya es la junta de la línea %2; permitido: cada etiqueta una vez</translation>
        </message>
        <message>
            <source>%1 is marked</source>
            <translation>%1 marcado</translation>
        </message>
        <message>
            <source>%1 is missing: expected SHA-256 %2</source>
            <translation>%1 falta: se esperaba SHA-256 %2</translation>
        </message>
        <message>
            <source>%1 is missing; expected SHA-256 %2</source>
            <translation>%1 falta; se esperaba SHA-256 %2</translation>
        </message>
        <message>
            <source>%1 is neither; allowed: yes, no</source>
            <translation>%1 no es ninguno; permitido: yes, no</translation>
        </message>
        <message>
            <source>%1 is no demo shop and is left as it is; allowed: a folder with the mark %2</source>
            <translation>%1 no es un taller de demostración y queda como está; permitido: una carpeta con la marca %2</translation>
        </message>
        <message>
            <source>%1 is no foreman; only a foreman may do that</source>
            <translation>%1 no es encargado; eso solo puede hacerlo un encargado</translation>
        </message>
        <message>
            <source>%1 is no picture; allowed: JPEG or PNG</source>
            <translation>%1 no es una imagen; permitido: JPEG o PNG</translation>
        </message>
        <message>
            <source>%1 is not UTF-8; allowed: %2</source>
            <translation>%1 no es UTF-8; permitido: %2</translation>
        </message>
        <message>
            <source>%1 is not a division above zero %2</source>
            <translation>%1 no es una división sobre cero %2</translation>
        </message>
        <message>
            <source>%1 is not a number; allowed %2 to %3</source>
            <translation>%1 no es un número; permitido %2 a %3</translation>
        </message>
        <message>
            <source>%1 is not a number; allowed: %2, decimals after a dot</source>
            <translation>%1 no es un número; permitido: %2, decimales tras un punto</translation>
        </message>
        <message>
            <source>%1 is not a text</source>
            <translation>%1 no es un texto</translation>
        </message>
        <message>
            <source>%1 is not a whole number; allowed %2 to %3</source>
            <translation>%1 no es un número entero; permitido %2 a %3</translation>
        </message>
        <message>
            <source>%1 is not a whole number; allowed: %2 to %3</source>
            <translation>%1 no es un número entero; permitido: %2 a %3</translation>
        </message>
        <message>
            <source>%1 is not above %2</source>
            <translation>%1 no está por encima de %2</translation>
        </message>
        <message>
            <source>%1 is not above from_C %2</source>
            <translation>%1 no está por encima de from_C %2</translation>
        </message>
        <message>
            <source>%1 is not above from_mm %2</source>
            <translation>%1 no está por encima de from_mm %2</translation>
        </message>
        <message>
            <source>%1 is not above the one before</source>
            <translation>%1 no está por encima del anterior</translation>
        </message>
        <message>
            <source>%1 is not an object</source>
            <translation>%1 no es un objeto</translation>
        </message>
        <message>
            <source>%1 is not below the pressure %2 it belongs to</source>
            <translation>%1 no está por debajo de la presión %2 a la que pertenece</translation>
        </message>
        <message>
            <source>%1 is not in this log</source>
            <translation>%1 no está en este registro</translation>
        </message>
        <message>
            <source>%1 is not the header; expected reading,force_N (or reading_mm)</source>
            <translation>%1 no es la cabecera; se espera reading,force_N (o reading_mm)</translation>
        </message>
        <message>
            <source>%1 is not the header; expected reading,force_N (or reading_mm), with a comma, not a semicolon</source>
            <translation>%1 no es la cabecera; se espera reading,force_N (o reading_mm), con coma, no con punto y coma</translation>
        </message>
        <message>
            <source>%1 is not the plastic that %2 is for; allowed: %3</source>
            <translation>%1 no es el plástico para el que vale %2; permitido: %3</translation>
        </message>
        <message>
            <source>%1 is not there; allowed: %2</source>
            <translation>%1 no está; permitido: %2</translation>
        </message>
        <message>
            <source>%1 is not too far: %2.</source>
            <translation>%1 no es excesivo: %2.</translation>
        </message>
        <message>
            <source>%1 is not true or false</source>
            <translation>%1 no es verdadero ni falso (true, false)</translation>
        </message>
        <message>
            <source>%1 is open</source>
            <translation>%1: abierta</translation>
        </message>
        <message>
            <source>%1 is out of range; allowed: %2</source>
            <translation>%1 está fuera; permitido: %2</translation>
        </message>
        <message>
            <source>%1 is outside %2 to %3</source>
            <translation>%1 está fuera de %2 a %3</translation>
        </message>
        <message>
            <source>%1 is outside %2 to %3%4</source>
            <translation>%1 está fuera de %2 a %3%4</translation>
        </message>
        <message>
            <source>%1 is outside %2.</source>
            <translation>%1 está fuera: %2.</translation>
        </message>
        <message>
            <source>%1 is outside 0 to 100000</source>
            <translation>%1 está fuera de 0 a 100000</translation>
        </message>
        <message>
            <source>%1 is separated by semicolons; expected a comma between the two values and a decimal point in each</source>
            <translation>%1 está separado con puntos y comas; se espera una coma entre los dos valores y un punto decimal en cada uno</translation>
        </message>
        <message>
            <source>%1 is separated by tabs; expected a comma between the two values</source>
            <translation>%1 está separado con tabuladores; se espera una coma entre los dos valores</translation>
        </message>
        <message>
            <source>%1 is the last foreman; somebody else must become one first</source>
            <translation>%1 es el último encargado; antes debe serlo otra persona</translation>
        </message>
        <message>
            <source>%1 is to be repaired</source>
            <translation>%1 está por reparar</translation>
        </message>
        <message>
            <source>%1 is too cold: %2.</source>
            <translation>%1: muy frío, %2.</translation>
        </message>
        <message>
            <source>%1 is too hot: %2.</source>
            <translation>%1: muy caliente, %2.</translation>
        </message>
        <message>
            <source>%1 joints</source>
            <translation>%1 uniones</translation>
        </message>
        <message>
            <source>%1 joints can't be read and may hold it, too. %2</source>
            <translation>%1 uniones no se pueden leer y podrían tenerlo también. %2</translation>
        </message>
        <message>
            <source>%1 joints were broken off when the program ended.</source>
            <translation>Uniones interrumpidas al acabar el programa: %1.</translation>
        </message>
        <message>
            <source>%1 joints, mean %2</source>
            <translation>%1 uniones, media %2</translation>
        </message>
        <message>
            <source>%1 kept</source>
            <translation>hay %1</translation>
        </message>
        <message>
            <source>%1 leaves a gap after %2</source>
            <translation>%1 deja un vacío tras %2</translation>
        </message>
        <message>
            <source>%1 lies beside the shop's own log, not beside this copy: SHA-256 %2</source>
            <translation>%1 está junto al registro del taller, no junto a esta copia: SHA-256 %2</translation>
        </message>
        <message>
            <source>%1 min</source>
            <translation>%1 min</translation>
        </message>
        <message>
            <source>%1 missing or altered</source>
            <translation>perdidas o alteradas: %1</translation>
        </message>
        <message>
            <source>%1 mm</source>
            <translation>%1 mm</translation>
        </message>
        <message>
            <source>%1 mm apart</source>
            <translation>separadas %1 mm</translation>
        </message>
        <message>
            <source>%1 mm apart, %2 more above</source>
            <translation>%1 mm abierto, arriba %2 más</translation>
        </message>
        <message>
            <source>%1 mm apart, %2 more below</source>
            <translation>%1 mm abierto, abajo %2 más</translation>
        </message>
        <message>
            <source>%1 mm is not the seam's %2 mm; allowed a tenth apart, %3 to %4 mm</source>
            <translation>%1 mm no son los %2 mm de la junta; se permite una décima parte, de %3 a %4 mm</translation>
        </message>
        <message>
            <source>%1 mm is not the sheet of joint %2; allowed: a tenth apart from %3 mm</source>
            <translation>%1 mm no es la placa de la unión %2; permitido: hasta un décimo de %3 mm</translation>
        </message>
        <message>
            <source>%1 mm is outside what %2 is for; allowed: %3 to %4 mm</source>
            <translation>%1 mm está fuera de aquello para lo que vale %2; permitido: de %3 a %4 mm</translation>
        </message>
        <message>
            <source>%1 mm to the plate</source>
            <translation>a %1 mm del espejo</translation>
        </message>
        <message>
            <source>%1 mm, formula</source>
            <translation>%1 mm, fórmula</translation>
        </message>
        <message>
            <source>%1 mm, planned %2 mm</source>
            <translation>%1 mm, previsto %2 mm</translation>
        </message>
        <message>
            <source>%1 ms can't be confirmed: allowed is one value from 0 to 12 h</source>
            <translation>%1 ms no se pueden confirmar: permitido un valor de 0 a 12 h</translation>
        </message>
        <message>
            <source>%1 ms earlier is not allowed: 1 to 10000 ms in all</source>
            <translation>%1 ms antes no está permitido: 1 a 10000 ms en total</translation>
        </message>
        <message>
            <source>%1 names no last day; allowed: as in "PE-HD, PP 3-20 mm until 2031-06-30"</source>
            <translation>%1 no dice el último día; permitido: como «PE-HD, PP 3-20 mm hasta 2031-06-30»</translation>
        </message>
        <message>
            <source>%1 needs %2 at the spring, with drag and preload, above %3, the most that bench %4 can hold</source>
            <translation>%1 necesita %2 en el muelle, con arrastre y precarga: más de %3, lo máximo que sostiene el banco %4</translation>
        </message>
        <message>
            <source>%1 needs %2 at the spring, with drag and preload, below %3, the least that bench %4 holds steadily: weld an offcut beside it, or pair seams</source>
            <translation>%1 necesita %2 en el muelle, con arrastre y precarga: menos de %3, lo mínimo que el banco %4 sostiene firme. Soldar un recorte al lado o juntar dos juntas</translation>
        </message>
        <message>
            <source>%1 noted; the first ends %2</source>
            <translation>%1 anotados; el primero acaba el %2</translation>
        </message>
        <message>
            <source>%1 of %2</source>
            <translation>%1 de %2</translation>
        </message>
        <message>
            <source>%1 of %2 attested</source>
            <translation>%1 de %2 cotejados</translation>
        </message>
        <message>
            <source>%1 of %2 cracked</source>
            <translation>%1 de %2 agrietadas</translation>
        </message>
        <message>
            <source>%1 of %2 s</source>
            <translation>%1 de %2 s</translation>
        </message>
        <message>
            <source>%1 of %2 seams are made</source>
            <translation>%1 de %2 juntas hechas</translation>
        </message>
        <message>
            <source>%1 of %2 values</source>
            <translation>%1 de %2 valores</translation>
        </message>
        <message>
            <source>%1 of %2 values attested</source>
            <translation>%1 de %2 valores cotejados</translation>
        </message>
        <message>
            <source>%1 of at least %2 digits.</source>
            <translation>%1 de al menos %2 cifras.</translation>
        </message>
        <message>
            <source>%1 of job %2</source>
            <translation>%1 del trabajo %2</translation>
        </message>
        <message>
            <source>%1 of them</source>
            <translation>%1 en total</translation>
        </message>
        <message>
            <source>%1 overlaps the row that ends at %2</source>
            <translation>%1 se solapa con la fila que acaba en %2</translation>
        </message>
        <message>
            <source>%1 photo is not what was kept: %2</source>
            <translation>%1 foto no es lo que se guardó: %2</translation>
        </message>
        <message>
            <source>%1 photos are named, and no folder of photos lies beside this copy: they were not looked at</source>
            <translation>se nombran %1 fotos y no hay carpeta de fotos junto a esta copia: no se han mirado</translation>
        </message>
        <message>
            <source>%1 photos are not as they were kept. The first: %2</source>
            <translation>%1 fotos no están como se guardaron. La primera: %2</translation>
        </message>
        <message>
            <source>%1 photos are not what was kept: %2</source>
            <translation>%1 fotos no son lo que se guardó: %2</translation>
        </message>
        <message>
            <source>%1 planned</source>
            <translation>previstos: %1</translation>
        </message>
        <message>
            <source>%1 points are more than %2</source>
            <translation>%1 puntos son más de %2</translation>
        </message>
        <message>
            <source>%1 points, due on %2</source>
            <translation>%1 puntos, vence el %2</translation>
        </message>
        <message>
            <source>%1 points; a line with its uncertainty needs 3 or more</source>
            <translation>%1 puntos; una recta con su incertidumbre necesita 3 o más</translation>
        </message>
        <message>
            <source>%1 prepares a trial joint for %2 on bench %3, and locks it by %4.</source>
            <translation>%1 prepara una unión de prueba para %2 en el banco %3 y bloquea antes de las %4.</translation>
        </message>
        <message>
            <source>%1 prepares seam %2 on bench %3, and locks it by %4.</source>
            <translation>%1 prepara la junta %2 en el banco %3 y bloquea antes de las %4.</translation>
        </message>
        <message>
            <source>%1 reading %2 %3 is above %4 %5, the end of the scale of bench %6: the seam needs %7, with a drag of %8 the scale shows up to %9</source>
            <translation>%1: la lectura %2 %3 supera %4 %5, el final de la escala del banco %6: la junta necesita %7, con un arrastre de %8 la escala muestra hasta %9</translation>
        </message>
        <message>
            <source>%1 reading %2 %3 is outside %4 to %5 %6, the readings that the calibration of bench %7 covers</source>
            <translation>%1: la lectura %2 %3 está fuera de %4 a %5 %6, el margen calibrado del banco %7</translation>
        </message>
        <message>
            <source>%1 readings and %2 forces; they must be as many</source>
            <translation>%1 lecturas y %2 fuerzas; debe haber las mismas</translation>
        </message>
        <message>
            <source>%1 releases seam %2 on bench %3.</source>
            <translation>%1 saca la junta %2 del banco %3.</translation>
        </message>
        <message>
            <source>%1 rows</source>
            <translation>%1 filas</translation>
        </message>
        <message>
            <source>%1 rows are not on disk yet</source>
            <translation>%1 filas aún no están en disco</translation>
        </message>
        <message>
            <source>%1 rows stand in the spill file and %2 in memory only: %3</source>
            <translation>%1 filas están en el archivo de reserva y %2 solo en memoria: %3</translation>
        </message>
        <message>
            <source>%1 s</source>
            <translation>%1 s</translation>
        </message>
        <message>
            <source>%1 s left</source>
            <translation>aún %1 s</translation>
        </message>
        <message>
            <source>%1 seams are kept.</source>
            <translation>%1 juntas guardadas.</translation>
        </message>
        <message>
            <source>%1 seams are open, and none can be planned.</source>
            <translation>Hay %1 juntas abiertas y ninguna se puede planificar.</translation>
        </message>
        <message>
            <source>%1 seams are taken away.</source>
            <translation>%1 juntas quitadas.</translation>
        </message>
        <message>
            <source>%1 seams of the job %2, by a foreman's PIN</source>
            <translation>%1 juntas del trabajo %2, con PIN de un encargado</translation>
        </message>
        <message>
            <source>%1 seams; allowed: up to %2</source>
            <translation>%1 juntas; permitido: hasta %2</translation>
        </message>
        <message>
            <source>%1 set</source>
            <translation>plan %1</translation>
        </message>
        <message>
            <source>%1 sheets given, a butt weld joins 2</source>
            <translation>%1 placas indicadas, una soldadura a tope une 2</translation>
        </message>
        <message>
            <source>%1 sheets instead of 2</source>
            <translation>%1 placas en vez de 2</translation>
        </message>
        <message>
            <source>%1 springs are outside 1 to %2</source>
            <translation>%1 muelles están fuera de 1 a %2</translation>
        </message>
        <message>
            <source>%1 stays at seam %2 on bench %3, to the lock at %4.</source>
            <translation>%1 sigue en la junta %2 del banco %3, hasta bloquear a las %4.</translation>
        </message>
        <message>
            <source>%1 stays at the trial joint of %2 on bench %3, to the lock at %4.</source>
            <translation>%1 sigue en la unión de prueba de %2 en el banco %3, hasta bloquear a las %4.</translation>
        </message>
        <message>
            <source>%1 steps</source>
            <translation>%1 pasos</translation>
        </message>
        <message>
            <source>%1 takes the trial joint of %2 off bench %3.</source>
            <translation>%1 saca la unión de prueba de %2 del banco %3.</translation>
        </message>
        <message>
            <source>%1 things are to be put right before it can be kept.</source>
            <translation>Hay que corregir %1 cosas antes de poder guardar.</translation>
        </message>
        <message>
            <source>%1 things are to be put right in the file.</source>
            <translation>Hay %1 cosas que corregir en el archivo.</translation>
        </message>
        <message>
            <source>%1 things to put right</source>
            <translation>%1 cosas por corregir</translation>
        </message>
        <message>
            <source>%1 to %2</source>
            <translation>%1 a %2</translation>
        </message>
        <message>
            <source>%1 to %2 %3</source>
            <translation>%1 a %2 %3</translation>
        </message>
        <message>
            <source>%1 to %2 digits.</source>
            <translation>%1 a %2 cifras.</translation>
        </message>
        <message>
            <source>%1 to %2 digits: it locks the key of the seal.</source>
            <translation>%1 a %2 cifras: protege la clave del sello.</translation>
        </message>
        <message>
            <source>%1 to %2 mm</source>
            <translation>%1 a %2 mm</translation>
        </message>
        <message>
            <source>%1 to %2 s</source>
            <translation>%1 a %2 s</translation>
        </message>
        <message>
            <source>%1 to %2 signs on one line</source>
            <translation>%1 a %2 signos en una línea</translation>
        </message>
        <message>
            <source>%1 to %2 °C</source>
            <translation>%1 a %2 °C</translation>
        </message>
        <message>
            <source>%1 to %2 °C, aim %3 °C</source>
            <translation>%1 a %2 °C, objetivo %3 °C</translation>
        </message>
        <message>
            <source>%1 took %2: out of limits. Let it cool, or cut it out.</source>
            <translation>%1: %2, fuera de límites. Dejar enfriar o cortar.</translation>
        </message>
        <message>
            <source>%1 values</source>
            <translation>%1 valores</translation>
        </message>
        <message>
            <source>%1 values are attested.</source>
            <translation>Valores cotejados: %1.</translation>
        </message>
        <message>
            <source>%1 values lose their standing.</source>
            <translation>Valores que pierden el cotejo: %1.</translation>
        </message>
        <message>
            <source>%1 values of %2.</source>
            <translation>Valores: %1, de %2.</translation>
        </message>
        <message>
            <source>%1 was changed: expected SHA-256 %2, found %3</source>
            <translation>%1 fue modificada: se esperaba SHA-256 %2, hay %3</translation>
        </message>
        <message>
            <source>%1 was changed; expected SHA-256 %2, found %3</source>
            <translation>%1 fue modificada; se esperaba SHA-256 %2, hay %3</translation>
        </message>
        <message>
            <source>%1 was cut out</source>
            <translation>%1 fue cortada</translation>
        </message>
        <message>
            <source>%1 was meant for step %2, the last one is %3</source>
            <translation>%1 era para el paso %2, el último es el %3</translation>
        </message>
        <message>
            <source>%1 was stopped</source>
            <translation>%1 se paró</translation>
        </message>
        <message>
            <source>%1 welds at a virtual bench; %2 within limits and with a joint that bends.</source>
            <translation>Soldaduras en un banco virtual: %1; dentro de límites y con una unión que dobla: %2.</translation>
        </message>
        <message>
            <source>%1 welds. Touch one to see it again.</source>
            <translation>Soldaduras: %1. Tocar una para verla otra vez.</translation>
        </message>
        <message>
            <source>%1 would leave %2 % of the cooling time; allowed at least %3 %</source>
            <translation>%1 dejaría el %2 % del tiempo de enfriamiento; permitido al menos el %3 %</translation>
        </message>
        <message>
            <source>%1 °C</source>
            <translation>%1 °C</translation>
        </message>
        <message>
            <source>%1 °C, planned %2 °C</source>
            <translation>%1 °C, previsto %2 °C</translation>
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
            <translation>%1 · trabaja: %2</translation>
        </message>
        <message>
            <source>%1 · bench %2 · %3</source>
            <translation>%1 · banco %2 · %3</translation>
        </message>
        <message>
            <source>%1%2. Shop %3.</source>
            <translation>%1%2. Taller %3.</translation>
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
            <translation>%1, %2 uniones</translation>
        </message>
        <message>
            <source>%1, %2 mm</source>
            <translation>%1, %2 mm</translation>
        </message>
        <message>
            <source>%1, %2 mm thick, %3 mm long</source>
            <translation>%1, espesor %2 mm, largo %3 mm</translation>
        </message>
        <message>
            <source>%1, %2 mm, %3 mm long</source>
            <translation>%1, %2 mm, %3 mm de largo</translation>
        </message>
        <message>
            <source>%1, %2 mm: %3.</source>
            <translation>%1, %2 mm: %3.</translation>
        </message>
        <message>
            <source>%1, %2 of %3 in limits, %4</source>
            <translation>%1, %2 de %3 en límites, %4</translation>
        </message>
        <message>
            <source>%1, %2 thick, %3 long</source>
            <translation>%1, espesor %2, largo %3</translation>
        </message>
        <message>
            <source>%1, %2 welds</source>
            <translation>%1, %2 soldaduras</translation>
        </message>
        <message>
            <source>%1, %2, %3</source>
            <translation>%1, %2, %3</translation>
        </message>
        <message>
            <source>%1, 1 joint</source>
            <translation>%1, 1 unión</translation>
        </message>
        <message>
            <source>%1, and %2 more.</source>
            <translation>%1, y %2 más.</translation>
        </message>
        <message>
            <source>%1, at %2</source>
            <translation>%1, en %2</translation>
        </message>
        <message>
            <source>%1, batch</source>
            <translation>%1, lote</translation>
        </message>
        <message>
            <source>%1, by PIN</source>
            <translation>%1, con PIN</translation>
        </message>
        <message>
            <source>%1, cut to half: full load only after the whole time</source>
            <translation>%1, a la mitad: carga plena solo tras el tiempo completo</translation>
        </message>
        <message>
            <source>%1, edition %2</source>
            <translation>%1, edición %2</translation>
        </message>
        <message>
            <source>%1, edition %2. %3</source>
            <translation>%1, edición %2. %3</translation>
        </message>
        <message>
            <source>%1, entered %2 by %3: %4</source>
            <translation>%1, anotado el %2 por %3: %4</translation>
        </message>
        <message>
            <source>%1, event %2</source>
            <translation>%1, evento %2</translation>
        </message>
        <message>
            <source>%1, event %2: %3</source>
            <translation>%1, evento %2: %3</translation>
        </message>
        <message>
            <source>%1, has left</source>
            <translation>%1, se ha ido</translation>
        </message>
        <message>
            <source>%1, it strings</source>
            <translation>%1, hace hilos</translation>
        </message>
        <message>
            <source>%1, joint %2</source>
            <translation>%1, unión %2</translation>
        </message>
        <message>
            <source>%1, limit %2</source>
            <translation>%1, límite %2</translation>
        </message>
        <message>
            <source>%1, line %2, %3: %4</source>
            <translation>%1, línea %2, %3: %4</translation>
        </message>
        <message>
            <source>%1, line %2: %3</source>
            <translation>%1, línea %2: %3</translation>
        </message>
        <message>
            <source>%1, maker</source>
            <translation>%1, fabricante</translation>
        </message>
        <message>
            <source>%1, material</source>
            <translation>%1, material</translation>
        </message>
        <message>
            <source>%1, n %2: the log holds another event there</source>
            <translation>%1, n %2: el registro tiene allí otro evento</translation>
        </message>
        <message>
            <source>%1, no PIN</source>
            <translation>%1, sin PIN</translation>
        </message>
        <message>
            <source>%1, no interval: too few coupons, or too much scatter</source>
            <translation>%1, sin intervalo: pocas probetas o mucha dispersión</translation>
        </message>
        <message>
            <source>%1, skin %2 °C</source>
            <translation>%1, piel %2 °C</translation>
        </message>
        <message>
            <source>%1, then %2 for the second sheet</source>
            <translation>%1, luego %2 para la segunda placa</translation>
        </message>
        <message>
            <source>%1, thickness</source>
            <translation>%1, espesor</translation>
        </message>
        <message>
            <source>%1, to %2, event %3 of %4</source>
            <translation>%1, hasta %2, evento %3 de %4</translation>
        </message>
        <message>
            <source>%1, until %2</source>
            <translation>%1, hasta %2</translation>
        </message>
        <message>
            <source>%1, was %2</source>
            <translation>%1, era %2</translation>
        </message>
        <message>
            <source>%1, with 95 % between %2 and %3</source>
            <translation>%1, con 95 % entre %2 y %3</translation>
        </message>
        <message>
            <source>%1, with other reasons</source>
            <translation>%1, con otros motivos</translation>
        </message>
        <message>
            <source>%1-wal: is damaged, and whole transactions stand behind that</source>
            <translation>%1-wal: está dañado, y detrás hay entradas enteras</translation>
        </message>
        <message>
            <source>%1. %2</source>
            <translation>%1. %2</translation>
        </message>
        <message>
            <source>%1. All else within limits.</source>
            <translation>%1. Lo demás, dentro de límites.</translation>
        </message>
        <message>
            <source>%1. Its place is the folder %2.</source>
            <translation>%1. Su lugar es la carpeta %2.</translation>
        </message>
        <message>
            <source>%1. Let it cool, or cut it out.</source>
            <translation>%1. Dejar enfriar o cortar.</translation>
        </message>
        <message>
            <source>%1.txt: can't be brought to disk</source>
            <translation>%1.txt: no se puede llevar al disco</translation>
        </message>
        <message>
            <source>%1: %2</source>
            <translation>%1: %2</translation>
        </message>
        <message>
            <source>%1: %2 (event %3 of the test)</source>
            <translation>%1: %2 (evento %3 del ensayo)</translation>
        </message>
        <message>
            <source>%1: %2 instead of %3. Why?</source>
            <translation>%1: %2 en vez de %3. ¿Por qué?</translation>
        </message>
        <message>
            <source>%1: %2 s before</source>
            <translation>%1: %2 s antes</translation>
        </message>
        <message>
            <source>%1: %2 seams for job %3</source>
            <translation>%1: %2 juntas del trabajo %3</translation>
        </message>
        <message>
            <source>%1: after %2 s</source>
            <translation>%1: tras %2 s</translation>
        </message>
        <message>
            <source>%1: go on, or later.</source>
            <translation>%1: seguir, o más tarde.</translation>
        </message>
        <message>
            <source>%1: is it so?</source>
            <translation>%1: ¿es así?</translation>
        </message>
        <message>
            <source>%1: kept.</source>
            <translation>%1: guardado.</translation>
        </message>
        <message>
            <source>%1: not joined</source>
            <translation>%1: sin unir</translation>
        </message>
        <message>
            <source>%1: one seam for job %2</source>
            <translation>%1: una junta del trabajo %2</translation>
        </message>
        <message>
            <source>%1: set %2, done %3</source>
            <translation>%1: plan %2, hecho %3</translation>
        </message>
        <message>
            <source>%1: skin %2 °C and melt %3 mm as the faces met, bead %4 / %5 mm, K %6 mm</source>
            <translation>%1: piel a %2 °C y %3 mm fundidos al juntar las caras, cordón %4 / %5 mm, K %6 mm</translation>
        </message>
        <message>
            <source>%1: the certificate is kept.</source>
            <translation>%1: certificado guardado.</translation>
        </message>
        <message>
            <source>%1: told %2, it was %3</source>
            <translation>%1: dicho %2, era %3</translation>
        </message>
        <message>
            <source>%1: what the source lacks, and what it says instead</source>
            <translation>%1: lo que falta en la fuente y lo que dice en su lugar</translation>
        </message>
        <message>
            <source>%1: ÷ %2 = %3 %4, set to %5 %4</source>
            <translation>%1: ÷ %2 = %3 %4, poner a %5 %4</translation>
        </message>
        <message>
            <source>%1; %2</source>
            <translation>%1; %2</translation>
        </message>
        <message>
            <source>%1; after a correction %2</source>
            <translation>%1; tras una corrección %2</translation>
        </message>
        <message>
            <source>%1; and %2 more</source>
            <translation>%1; y %2 más</translation>
        </message>
        <message>
            <source>%1; by today's rules %2</source>
            <translation>%1; con las reglas de hoy, %2</translation>
        </message>
        <message>
            <source>(%1, limit %2)</source>
            <translation>(%1, límite %2)</translation>
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
            <translation>, %1 cortados de las dos placas juntas</translation>
        </message>
        <message>
            <source>, batch %1</source>
            <translation>, lote %1</translation>
        </message>
        <message>
            <source>, batches %1</source>
            <translation>, lotes %1</translation>
        </message>
        <message>
            <source>, changed since</source>
            <translation>, cambiada después</translation>
        </message>
        <message>
            <source>, preload %1</source>
            <translation>, precarga %1</translation>
        </message>
        <message>
            <source>, taken %1</source>
            <translation>, hecho %1</translation>
        </message>
        <message>
            <source>, zero at %1</source>
            <translation>, cero en %1</translation>
        </message>
        <message>
            <source>. %1, %2.</source>
            <translation>. %1, %2.</translation>
        </message>
        <message>
            <source>0.5 mm, as for pipe up to 355 mm; for sheet from memory</source>
            <translation>0,5 mm, como en tubo hasta 355 mm; para placas de memoria</translation>
        </message>
        <message>
            <source>1 class of air temperature</source>
            <translation>1 clase de temperatura del aire</translation>
        </message>
        <message>
            <source>1 joint</source>
            <translation>1 unión</translation>
        </message>
        <message>
            <source>1 photo is named, and no folder of photos lies beside this copy: it was not looked at</source>
            <translation>se nombra 1 foto y no hay carpeta de fotos junto a esta copia: no se ha mirado</translation>
        </message>
        <message>
            <source>1 row</source>
            <translation>1 fila</translation>
        </message>
        <message>
            <source>1 row is not on disk yet</source>
            <translation>1 fila aún no está en disco</translation>
        </message>
        <message>
            <source>1 step</source>
            <translation>1 paso</translation>
        </message>
        <message>
            <source>1 thing is to be put right before it can be kept.</source>
            <translation>Hay que corregir 1 cosa antes de poder guardar.</translation>
        </message>
        <message>
            <source>1 thing is to be put right in the file.</source>
            <translation>Hay 1 cosa que corregir en el archivo.</translation>
        </message>
        <message>
            <source>1 thing to put right</source>
            <translation>1 cosa por corregir</translation>
        </message>
        <message>
            <source>1 to %1 characters</source>
            <translation>1 a %1 caracteres</translation>
        </message>
        <message>
            <source>1 to %1 characters, by the keyboard.</source>
            <translation>1 a %1 caracteres, con el teclado.</translation>
        </message>
        <message>
            <source>1 value</source>
            <translation>1 valor</translation>
        </message>
        <message>
            <source>10 s are over</source>
            <translation>pasaron 10 s</translation>
        </message>
        <message>
            <source>100, 125, 150, 200 %</source>
            <translation>100, 125, 150, 200 %</translation>
        </message>
        <message>
            <source>25 mm of PE-HD: more than five minutes of soak, and half an hour of cooling under pressure. Read the scale again each time it is due; it falls for a long while.</source>
            <translation>25 mm de PE-HD: más de cinco minutos de calentamiento y media hora de enfriamiento con presión. Leer la escala cada vez que toque; baja durante mucho tiempo.</translation>
        </message>
        <message>
            <source>3 places</source>
            <translation>3 puntos</translation>
        </message>
        <message>
            <source>4 s ago</source>
            <translation>Hace 4 s</translation>
        </message>
        <message>
            <source>60 to 130 % of the target: our judgement</source>
            <translation>60 a 130 % del objetivo: juicio nuestro</translation>
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
            <translation>: leerla a los %1</translation>
        </message>
        <message>
            <source>; </source>
            <translation>; </translation>
        </message>
        <message>
            <source>; after a correction: %1</source>
            <translation>; tras una corrección: %1</translation>
        </message>
        <message>
            <source>; also %1 %2</source>
            <translation>; también %1 %2</translation>
        </message>
        <message>
            <source>; by the rules now: %1</source>
            <translation>; con las reglas de hoy: %1</translation>
        </message>
        <message>
            <source>; changed since %1</source>
            <translation>; cambiada desde %1</translation>
        </message>
        <message>
            <source>; cut to half: full load only after the whole time</source>
            <translation>; a la mitad: carga plena solo tras el tiempo completo</translation>
        </message>
        <message>
            <source>; ± %1 at %2 %3 (95 %)</source>
            <translation>; ± %1 a %2 %3 (95 %)</translation>
        </message>
        <message>
            <source>A PIN</source>
            <translation>Un PIN</translation>
        </message>
        <message>
            <source>A PIN for %1?</source>
            <translation>¿Un PIN para %1?</translation>
        </message>
        <message>
            <source>A bench</source>
            <translation>Un banco</translation>
        </message>
        <message>
            <source>A bench is kept in a foreman's name.</source>
            <translation>Un banco se guarda a nombre de un encargado.</translation>
        </message>
        <message>
            <source>A bend test has no factor. What it must reach is in your standard.</source>
            <translation>Un ensayo de doblado no tiene factor. Lo exigido está en su norma.</translation>
        </message>
        <message>
            <source>A call in soak</source>
            <translation>Una llamada al calentar</translation>
        </message>
        <message>
            <source>A clean plate</source>
            <translation>Un espejo limpio</translation>
        </message>
        <message>
            <source>A cold plate melts less in the same time, and the display does not know its own faces. Measure them.</source>
            <translation>Un espejo frío funde menos en el mismo tiempo, y el indicador no conoce sus propias caras. Medirlas.</translation>
        </message>
        <message>
            <source>A cold plate takes its twenty minutes here; at a real one the display reaches its mark before the faces have settled. Waiting costs nothing; a weld on a cold plate costs the seam.</source>
            <translation>Un espejo frío tarda aquí sus veinte minutos; en uno real el indicador llega a su marca antes que las caras. Esperar no cuesta nada; soldar con el espejo frío cuesta la junta.</translation>
        </message>
        <message>
            <source>A door stands open</source>
            <translation>Una puerta abierta</translation>
        </message>
        <message>
            <source>A few words, by the keyboard.</source>
            <translation>Unas palabras, con el teclado.</translation>
        </message>
        <message>
            <source>A fifth bench is one too many: 4 are allowed.</source>
            <translation>Un quinto banco sobra: se permiten 4.</translation>
        </message>
        <message>
            <source>A first good weld</source>
            <translation>Una primera soldadura buena</translation>
        </message>
        <message>
            <source>A first row</source>
            <translation>Primera fila</translation>
        </message>
        <message>
            <source>A foreman comes first, enters the others and seals the day.</source>
            <translation>Primero va un encargado, que da de alta a los demás y sella el día.</translation>
        </message>
        <message>
            <source>A hand leaves grease and sweat, and melt does not join over them.</source>
            <translation>Una mano deja grasa y sudor, y encima el fundido no se une.</translation>
        </message>
        <message>
            <source>A job without a name</source>
            <translation>Un trabajo sin nombre</translation>
        </message>
        <message>
            <source>A job's seams, and what is made of each.</source>
            <translation>Las juntas de un trabajo y qué hay hecho de cada una.</translation>
        </message>
        <message>
            <source>A joint that is let go warm bends by its own weight and can open in the middle.</source>
            <translation>Una unión que se suelta caliente se dobla por su peso y puede abrirse en el centro.</translation>
        </message>
        <message>
            <source>A joint whose number can't be read is not in this plan.</source>
            <translation>Una unión cuyo número no se puede leer no entra en este plan.</translation>
        </message>
        <message>
            <source>A kilogram of force is nearly ten newtons: the wrong one is off by a factor that anybody can see who asks whether the reading can be right.</source>
            <translation>Un kilogramo de fuerza son casi diez newtons: el erróneo se desvía por un factor que ve cualquiera que se pregunte si la lectura puede ser.</translation>
        </message>
        <message>
            <source>A lesson of the shop is left out: %1.</source>
            <translation>Falta una lección del taller: %1.</translation>
        </message>
        <message>
            <source>A lock that gives way</source>
            <translation>Un bloqueo que cede</translation>
        </message>
        <message>
            <source>A log of many joints is looked through while the program runs, and its file is not whole.</source>
            <translation>Un registro de muchas uniones se revisa con el programa en marcha, y su archivo no está entero.</translation>
        </message>
        <message>
            <source>A melt flow rate is outside the printed ranges.</source>
            <translation>Un índice de fluidez está fuera de los márgenes impresos.</translation>
        </message>
        <message>
            <source>A new PIN</source>
            <translation>PIN nuevo</translation>
        </message>
        <message>
            <source>A photo</source>
            <translation>Una foto</translation>
        </message>
        <message>
            <source>A photo of a bead could not be copied, or is not what was kept.</source>
            <translation>Una foto de un cordón no se pudo copiar, o no es la guardada.</translation>
        </message>
        <message>
            <source>A plate can be right in the middle and cold at one end. Measure it front, middle and back, and watch the bead along the whole seam.</source>
            <translation>Un espejo puede estar bien en el centro y frío en un extremo. Medirlo delante, en el centro y detrás, y vigilar el cordón en toda la junta.</translation>
        </message>
        <message>
            <source>A plate's rate stands in the record as not calibrated.</source>
            <translation>La rigidez de una chapa figura en el registro como sin calibrar.</translation>
        </message>
        <message>
            <source>A scale that does not start at zero</source>
            <translation>Una escala que no empieza en cero</translation>
        </message>
        <message>
            <source>A screen can't teach the feel of a wheel. That comes at the bench.</source>
            <translation>Una pantalla no enseña el tacto del volante. Eso llega en el banco.</translation>
        </message>
        <message>
            <source>A seam can't be read</source>
            <translation>No se puede leer una junta</translation>
        </message>
        <message>
            <source>A seam leads to the joint that decides.</source>
            <translation>Una junta lleva a la unión que decide.</translation>
        </message>
        <message>
            <source>A seam of a job</source>
            <translation>Una junta de un trabajo</translation>
        </message>
        <message>
            <source>A sheet has no batch, so this joint is not found by it: a foreman enters it in the day log.</source>
            <translation>Una placa no tiene lote y por él no se halla esta unión: un encargado lo anota en el registro.</translation>
        </message>
        <message>
            <source>A sheet has no batch, so this joint is not found by it: a foreman enters it with the job, or later in the day log.</source>
            <translation>Una placa no tiene lote y por él no se halla esta unión: un encargado lo anota en el trabajo, o luego en el registro.</translation>
        </message>
        <message>
            <source>A sheet has no batch, so this joint is not found by it: type it where the thickness is typed.</source>
            <translation>Una placa no tiene lote y por él no se halla esta unión: anotarlo donde se anota el espesor.</translation>
        </message>
        <message>
            <source>A sheet slipped</source>
            <translation>Se movió una placa</translation>
        </message>
        <message>
            <source>A spring that is still loaded throws the bars open. Bring the force to zero first where the bench asks for it, then ease the clamps. Two springs are stiff: they lose twice as much as one when the sheets close up, so read again; and a jerk on them costs melt that one soft spring would spare.</source>
            <translation>Un muelle aún cargado abre las barras de golpe. Donde el banco lo pida, llevar primero la fuerza a cero y después aflojar las mordazas. Dos muelles son rígidos: pierden el doble que uno al cerrarse las placas, así que leer otra vez; y un tirón cuesta fundido que un muelle blando ahorra.</translation>
        </message>
        <message>
            <source>A test that can't be read stands last.</source>
            <translation>Un ensayo ilegible está al final.</translation>
        </message>
        <message>
            <source>A trial joint is welded first, tested, and released by the supervisor.</source>
            <translation>Primero se suelda una unión de prueba, se ensaya y el supervisor la libera.</translation>
        </message>
        <message>
            <source>A verdict tells how a joint was made, by what people typed and tapped; it does not prove that the joint is good, and no bead does.</source>
            <translation>Un dictamen dice cómo se hizo una unión, según lo que se tecleó y pulsó; no demuestra que la unión sea buena, y ningún cordón lo hace.</translation>
        </message>
        <message>
            <source>A weld card</source>
            <translation>Una ficha</translation>
        </message>
        <message>
            <source>A weld is open. The first steps come when it is saved.</source>
            <translation>Hay una soldadura abierta. Los primeros pasos vienen tras guardarla.</translation>
        </message>
        <message>
            <source>A word, or its beginning</source>
            <translation>Una palabra o su comienzo</translation>
        </message>
        <message>
            <source>A wrong tap</source>
            <translation>Toque erróneo</translation>
        </message>
        <message>
            <source>Above its window the melt is damaged and strings on the plate, however fine the bead looks.</source>
            <translation>Por encima de su margen el fundido se daña y hace hilos en el espejo, por bueno que parezca el cordón.</translation>
        </message>
        <message>
            <source>Above the required %1, with all its interval.</source>
            <translation>Por encima del %1 exigido, con todo su intervalo.</translation>
        </message>
        <message>
            <source>Accept</source>
            <translation>Aceptar</translation>
        </message>
        <message>
            <source>Actual</source>
            <translation>Real</translation>
        </message>
        <message>
            <source>Add a correction for each kelvin of air</source>
            <translation>Añadir corrección por cada kelvin del aire</translation>
        </message>
        <message>
            <source>Add a formula</source>
            <translation>Añadir fórmula</translation>
        </message>
        <message>
            <source>Add a length</source>
            <translation>Añadir longitud</translation>
        </message>
        <message>
            <source>Add a most of soak</source>
            <translation>Añadir máximo al calentar</translation>
        </message>
        <message>
            <source>Add a table</source>
            <translation>Añadir tabla</translation>
        </message>
        <message>
            <source>Add a tolerance</source>
            <translation>Añadir tolerancia</translation>
        </message>
        <message>
            <source>Add an aim of soak</source>
            <translation>Añadir objetivo al calentar</translation>
        </message>
        <message>
            <source>Add cooling</source>
            <translation>Añadir enfriado</translation>
        </message>
        <message>
            <source>Add the plate's window</source>
            <translation>Añadir margen del espejo</translation>
        </message>
        <message>
            <source>Add the relief of half cooling</source>
            <translation>Añadir la reducción a medio enfriado</translation>
        </message>
        <message>
            <source>Add this column</source>
            <translation>Añadir columna</translation>
        </message>
        <message>
            <source>After a correction: %1</source>
            <translation>Tras una corrección: %1</translation>
        </message>
        <message>
            <source>After the lock the wheel was let back while the joint was soft: %1, at least %2.</source>
            <translation>Tras bloquear se aflojó el volante con la unión blanda: %1, al menos %2.</translation>
        </message>
        <message>
            <source>Air between face and plate keeps the heat away, so the melt stays thin and its skin cools.</source>
            <translation>El aire entre cara y espejo frena el calor: el fundido queda fino y su piel se enfría.</translation>
        </message>
        <message>
            <source>Align</source>
            <translation>Igualar</translation>
        </message>
        <message>
            <source>Align and join</source>
            <translation>Igualar y unir</translation>
        </message>
        <message>
            <source>Alignment bead</source>
            <translation>Cordón al igualar</translation>
        </message>
        <message>
            <source>Alignment takes longer than it did: often a cold or a dirty plate. Measure it on its face, and wipe it.</source>
            <translation>La igualación tarda más que antes: suele ser un espejo frío o sucio. Medirlo en su cara y limpiarlo.</translation>
        </message>
        <message>
            <source>Alignment takes twice as long as the last ten on this bench; where there are not five yet, longer than the soak.</source>
            <translation>La igualación dura el doble que las diez últimas de este banco; donde aún no hay cinco, más que el calentamiento.</translation>
        </message>
        <message>
            <source>All</source>
            <translation>Todo</translation>
        </message>
        <message>
            <source>All are out at %1. It can't be earlier.</source>
            <translation>Todo sale a las %1. Antes no se puede.</translation>
        </message>
        <message>
            <source>All days</source>
            <translation>Todos los días</translation>
        </message>
        <message>
            <source>All done</source>
            <translation>Todo hecho</translation>
        </message>
        <message>
            <source>All hands are full so long. </source>
            <translation>Todas las manos ocupadas hasta ahí. </translation>
        </message>
        <message>
            <source>All is as it may be. It is kept by a foreman's PIN.</source>
            <translation>Todo está en regla. Se guarda con el PIN de un encargado.</translation>
        </message>
        <message>
            <source>All joints</source>
            <translation>Todas las uniones</translation>
        </message>
        <message>
            <source>Allow it</source>
            <translation>Permitir</translation>
        </message>
        <message>
            <source>Allowed</source>
            <translation>Permitido</translation>
        </message>
        <message>
            <source>Allowed in grey, took in black</source>
            <translation>Permitido en gris, real en negro</translation>
        </message>
        <message>
            <source>Allowed: %1.</source>
            <translation>Permitido: %1.</translation>
        </message>
        <message>
            <source>An edge that leans melts at the top first. Both beads end alignment, not the one that is seen.</source>
            <translation>Un canto inclinado funde primero arriba. La igualación acaba con los dos cordones, no con el que se ve.</translation>
        </message>
        <message>
            <source>An edge was touched after it was planed, %1.</source>
            <translation>Se tocó un canto ya cepillado, %1.</translation>
        </message>
        <message>
            <source>An estimate. It explains a weld and judges none; the procedure's limits decide.</source>
            <translation>Una estimación. Explica una soldadura y no juzga ninguna; deciden los límites del procedimiento.</translation>
        </message>
        <message>
            <source>Angles</source>
            <translation>Ángulos</translation>
        </message>
        <message>
            <source>Another</source>
            <translation>Otro</translation>
        </message>
        <message>
            <source>Another bench</source>
            <translation>Otro banco</translation>
        </message>
        <message>
            <source>Another bench called for hands while you pressed. The press did not count.</source>
            <translation>Otro banco pidió manos mientras se pulsaba. La pulsación no contó.</translation>
        </message>
        <message>
            <source>Another bench, another order</source>
            <translation>Otro banco, otro orden</translation>
        </message>
        <message>
            <source>Another class</source>
            <translation>Otra clase</translation>
        </message>
        <message>
            <source>Another coupon</source>
            <translation>Otra probeta</translation>
        </message>
        <message>
            <source>Another gap</source>
            <translation>Otro vacío</translation>
        </message>
        <message>
            <source>Another joint</source>
            <translation>Otra unión</translation>
        </message>
        <message>
            <source>Another log tells this joint differently: %1.</source>
            <translation>Otro registro cuenta esta unión de otro modo: %1.</translation>
        </message>
        <message>
            <source>Another name</source>
            <translation>Otro nombre</translation>
        </message>
        <message>
            <source>Another note</source>
            <translation>Otra nota</translation>
        </message>
        <message>
            <source>Another point</source>
            <translation>Otro punto</translation>
        </message>
        <message>
            <source>Another procedure</source>
            <translation>Otro procedimiento</translation>
        </message>
        <message>
            <source>Another reason</source>
            <translation>Otro motivo</translation>
        </message>
        <message>
            <source>Another role</source>
            <translation>Otra función</translation>
        </message>
        <message>
            <source>Another seam</source>
            <translation>Otra junta</translation>
        </message>
        <message>
            <source>Another shop temperature</source>
            <translation>Otra temperatura del taller</translation>
        </message>
        <message>
            <source>Another spring</source>
            <translation>Otro muelle</translation>
        </message>
        <message>
            <source>Another tablet's log, which was brought in, has that number, too.</source>
            <translation>El registro de otra tableta, que se incorporó, también tiene ese número.</translation>
        </message>
        <message>
            <source>Another unit: Set-up has a form for it.</source>
            <translation>Otra unidad: Ajustes tiene un formulario.</translation>
        </message>
        <message>
            <source>Answer to a signal</source>
            <translation>Respuesta a señales</translation>
        </message>
        <message>
            <source>Anybody may look. What is kept takes a foreman's PIN.</source>
            <translation>Mirar puede cualquiera. Para guardar hace falta el PIN de un encargado.</translation>
        </message>
        <message>
            <source>As before</source>
            <translation>Como antes</translation>
        </message>
        <message>
            <source>As in: PE-HD, PP 3-20 mm until 2031-06-30</source>
            <translation>Así: PE-HD, PP 3-20 mm hasta 2031-06-30</translation>
        </message>
        <message>
            <source>As it stands on the laboratory's paper.</source>
            <translation>Como consta en el informe del laboratorio.</translation>
        </message>
        <message>
            <source>As many pulses as the bench's place: one for A, two for B. Once more after 1 s.</source>
            <translation>Tantos pulsos como el puesto del banco: uno para A, dos para B. Otra vez después de 1 s.</translation>
        </message>
        <message>
            <source>As measured, both the same.</source>
            <translation>El medido, igual en las dos.</translation>
        </message>
        <message>
            <source>As measured, in millimetres.</source>
            <translation>Como se midió, en milímetros.</translation>
        </message>
        <message>
            <source>As planned</source>
            <translation>Según plan</translation>
        </message>
        <message>
            <source>As the spring's or the machine's plate says.</source>
            <translation>Como dice la chapa del muelle o de la máquina.</translation>
        </message>
        <message>
            <source>Ask</source>
            <translation>Llamar</translation>
        </message>
        <message>
            <source>Asked for</source>
            <translation>Selección</translation>
        </message>
        <message>
            <source>At %1</source>
            <translation>A %1</translation>
        </message>
        <message>
            <source>At the start; every row could be read.</source>
            <translation>Al arrancar; se pudo leer cada fila.</translation>
        </message>
        <message>
            <source>At the start; the new log has what could be read.</source>
            <translation>Al arrancar; el registro nuevo tiene lo que se pudo leer.</translation>
        </message>
        <message>
            <source>At the worst place, above the sheet.</source>
            <translation>En el peor sitio, sobre la placa.</translation>
        </message>
        <message>
            <source>Attest</source>
            <translation>Cotejar</translation>
        </message>
        <message>
            <source>Attest instead</source>
            <translation>Mejor cotejar</translation>
        </message>
        <message>
            <source>Attested over a year ago: look again (since %1).</source>
            <translation>Cotejados hace más de un año: revisar (desde el %1).</translation>
        </message>
        <message>
            <source>Attested values of %1</source>
            <translation>Valores cotejados de %1</translation>
        </message>
        <message>
            <source>Back</source>
            <translation>Atrás</translation>
        </message>
        <message>
            <source>Back +</source>
            <translation>Atrás +</translation>
        </message>
        <message>
            <source>Back to practice</source>
            <translation>Volver a práctica</translation>
        </message>
        <message>
            <source>Back to the bench</source>
            <translation>Volver al banco</translation>
        </message>
        <message>
            <source>Back to the charts</source>
            <translation>A las gráficas</translation>
        </message>
        <message>
            <source>Back to the jobs</source>
            <translation>A los trabajos</translation>
        </message>
        <message>
            <source>Back to the log</source>
            <translation>Volver al registro</translation>
        </message>
        <message>
            <source>Back to the shop</source>
            <translation>Al taller</translation>
        </message>
        <message>
            <source>Back to the weld</source>
            <translation>A la soldadura</translation>
        </message>
        <message>
            <source>Back −</source>
            <translation>Atrás −</translation>
        </message>
        <message>
            <source>Backed off in soak</source>
            <translation>Aflojado al calentar</translation>
        </message>
        <message>
            <source>Bars are open</source>
            <translation>Barras abiertas</translation>
        </message>
        <message>
            <source>Batch, sheet 1</source>
            <translation>Lote, placa 1</translation>
        </message>
        <message>
            <source>Batch, sheet 2</source>
            <translation>Lote, placa 2</translation>
        </message>
        <message>
            <source>Batches of sheet</source>
            <translation>Lotes de placa</translation>
        </message>
        <message>
            <source>Bead all along? Turn down to %1 and lock.</source>
            <translation>¿Cordón en todo el largo? Bajar a %1 y bloquear.</translation>
        </message>
        <message>
            <source>Bead height</source>
            <translation>Altura cordón</translation>
        </message>
        <message>
            <source>Bead is slow. Is the plate cold or dirty?</source>
            <translation>Cordón lento. ¿Espejo frío o sucio?</translation>
        </message>
        <message>
            <source>Bead missing at one end</source>
            <translation>Falta cordón en un extremo</translation>
        </message>
        <message>
            <source>Bead places</source>
            <translation>Sitios del cordón</translation>
        </message>
        <message>
            <source>Bead width</source>
            <translation>Ancho cordón</translation>
        </message>
        <message>
            <source>Bead: %1.</source>
            <translation>Cordón: %1.</translation>
        </message>
        <message>
            <source>Before anything presses, read the scale without force. What it shows then is wrong with every reading that follows.</source>
            <translation>Antes de que algo apriete, leer la escala sin fuerza. Lo que muestra entonces está mal en cada lectura siguiente.</translation>
        </message>
        <message>
            <source>Before the bead stands the faces do not touch everywhere, so a clock that runs from first contact ends soak too soon: the melt is thin.</source>
            <translation>Antes de formarse el cordón las caras no tocan en todas partes; un reloj desde el primer contacto acaba el calentamiento antes de tiempo: el fundido es fino.</translation>
        </message>
        <message>
            <source>Before you set a reading, ask whether it can be right: about how much force does such a seam take, and what does the scale say to that?</source>
            <translation>Antes de fijar una lectura, preguntarse si puede ser: ¿cuánta fuerza pide más o menos una junta así, y qué dice la escala?</translation>
        </message>
        <message>
            <source>Begin</source>
            <translation>Empezar</translation>
        </message>
        <message>
            <source>Begun</source>
            <translation>Inicio</translation>
        </message>
        <message>
            <source>Below +</source>
            <translation>Abajo +</translation>
        </message>
        <message>
            <source>Below the required %1.</source>
            <translation>Por debajo del %1 exigido.</translation>
        </message>
        <message>
            <source>Below −</source>
            <translation>Abajo −</translation>
        </message>
        <message>
            <source>Bench</source>
            <translation>Banco</translation>
        </message>
        <message>
            <source>Bench "%1" at place %2: a place is 1 to %3</source>
            <translation>Banco «%1» en el puesto %2: un puesto es 1 a %3</translation>
        </message>
        <message>
            <source>Bench "%1" can't have place %2: bench "%3" has it; each of 1 to %4 is given once</source>
            <translation>El banco «%1» no puede tener el puesto %2: lo tiene el banco «%3»; cada uno de 1 a %4 se da una vez</translation>
        </message>
        <message>
            <source>Bench "%1" is in the shift already, at place %2</source>
            <translation>El banco «%1» ya está en el turno, en el puesto %2</translation>
        </message>
        <message>
            <source>Bench "%1" is not in the shift</source>
            <translation>El banco «%1» no está en el turno</translation>
        </message>
        <message>
            <source>Bench "%1" would be number %2: a shift has 1 to %3 benches</source>
            <translation>El banco «%1» sería el número %2: un turno tiene 1 a %3 bancos</translation>
        </message>
        <message>
            <source>Bench "%1": %2</source>
            <translation>Banco «%1»: %2</translation>
        </message>
        <message>
            <source>Bench %1</source>
            <translation>Banco %1</translation>
        </message>
        <message>
            <source>Bench %1 has an open weld. Practise when it is saved.</source>
            <translation>El banco %1 tiene una soldadura abierta. Practicar tras guardarla.</translation>
        </message>
        <message>
            <source>Bench %1 is free. No seam of the job is open.</source>
            <translation>Banco %1 libre. El trabajo no tiene juntas abiertas.</translation>
        </message>
        <message>
            <source>Bench %1 is free. Which seam?</source>
            <translation>Banco %1 libre. ¿Qué junta?</translation>
        </message>
        <message>
            <source>Bench %1 is free. Which seams are made is being read.</source>
            <translation>Banco %1 libre. Se está leyendo qué juntas están hechas.</translation>
        </message>
        <message>
            <source>Bench %1 is free: seam %2.</source>
            <translation>Banco %1 libre: junta %2.</translation>
        </message>
        <message>
            <source>Bench %1 is taken so long. </source>
            <translation>El banco %1 está ocupado hasta ahí. </translation>
        </message>
        <message>
            <source>Bench %1: %2</source>
            <translation>Banco %1: %2</translation>
        </message>
        <message>
            <source>Benches</source>
            <translation>Bancos</translation>
        </message>
        <message>
            <source>Benches %1 are taken so long. </source>
            <translation>Los bancos %1 están ocupados hasta ahí. </translation>
        </message>
        <message>
            <source>Bend angle [°]</source>
            <translation>Ángulo de doblado [°]</translation>
        </message>
        <message>
            <source>Bend coupon %1</source>
            <translation>Probeta de doblado %1</translation>
        </message>
        <message>
            <source>Bend coupon %1.</source>
            <translation>Probeta de doblado %1.</translation>
        </message>
        <message>
            <source>Bend test, front to back: the joint bends everywhere.</source>
            <translation>Ensayo de doblado, de delante atrás: la unión dobla en todo el largo.</translation>
        </message>
        <message>
            <source>Bend test, front to back: the joint breaks.</source>
            <translation>Ensayo de doblado, de delante atrás: la unión rompe.</translation>
        </message>
        <message>
            <source>Bent, of a joint</source>
            <translation>Doblado, de una unión</translation>
        </message>
        <message>
            <source>Bent, of a trial</source>
            <translation>Doblado, de una prueba</translation>
        </message>
        <message>
            <source>Beside the weld</source>
            <translation>Además de soldar</translation>
        </message>
        <message>
            <source>Besides, %1 broken off in mid-weld.</source>
            <translation>Además, %1 interrumpidas a medias.</translation>
        </message>
        <message>
            <source>Both can be changed at any time: touch the clock.</source>
            <translation>Se pueden cambiar en todo momento: tocar el reloj.</translation>
        </message>
        <message>
            <source>Both sheets: %1</source>
            <translation>Ambas placas: %1</translation>
        </message>
        <message>
            <source>Both stay in the record. The foreman's PIN is asked next.</source>
            <translation>Los dos quedan en el registro. Después se pide el PIN del encargado.</translation>
        </message>
        <message>
            <source>Bring the force to zero, never past it.</source>
            <translation>Llevar la fuerza a cero, nunca más allá.</translation>
        </message>
        <message>
            <source>Build-up</source>
            <translation>Aumento</translation>
        </message>
        <message>
            <source>By a model of heat and melt in the sheet, no measurement; in brackets what uncertain inputs make of it.</source>
            <translation>Por un modelo de calor y fundido en la placa, sin medición; entre paréntesis, el efecto de los datos inciertos.</translation>
        </message>
        <message>
            <source>By a steady hand</source>
            <translation>Con mano firme</translation>
        </message>
        <message>
            <source>By the batch</source>
            <translation>Por el lote</translation>
        </message>
        <message>
            <source>By the joint</source>
            <translation>Por la unión</translation>
        </message>
        <message>
            <source>By the rules now: %1</source>
            <translation>Con las reglas de hoy: %1</translation>
        </message>
        <message>
            <source>By which procedure was the trial welded?</source>
            <translation>¿Con qué procedimiento se soldó la prueba?</translation>
        </message>
        <message>
            <source>By which standard was it tested?</source>
            <translation>¿Según qué norma se ensayó?</translation>
        </message>
        <message>
            <source>CSV or JSON of these</source>
            <translation>CSV o JSON de estas</translation>
        </message>
        <message>
            <source>Calibrate it</source>
            <translation>Calibrar</translation>
        </message>
        <message>
            <source>Calibration</source>
            <translation>Calibración</translation>
        </message>
        <message>
            <source>Calibration of bench %1</source>
            <translation>Calibración del banco %1</translation>
        </message>
        <message>
            <source>Calibrations, certificates, attestations within %1 days.</source>
            <translation>Calibraciones, certificados, cotejos en %1 días.</translation>
        </message>
        <message>
            <source>Can't be read, or told in two ways</source>
            <translation>Ilegibles o contadas de dos modos</translation>
        </message>
        <message>
            <source>Cannot set it</source>
            <translation>No se puede</translation>
        </message>
        <message>
            <source>Card in inch, lbf, °F</source>
            <translation>Ficha en pulg, lbf, °F</translation>
        </message>
        <message>
            <source>Card in mm, N, °C</source>
            <translation>Ficha en mm, N, °C</translation>
        </message>
        <message>
            <source>Card is for another sheet</source>
            <translation>Ficha de otra placa</translation>
        </message>
        <message>
            <source>Card's unit is wrong</source>
            <translation>Unidad errónea en la ficha</translation>
        </message>
        <message>
            <source>Certificate</source>
            <translation>Certificado</translation>
        </message>
        <message>
            <source>Certificate of %1</source>
            <translation>Certificado de %1</translation>
        </message>
        <message>
            <source>Change an entry</source>
            <translation>Cambiar datos</translation>
        </message>
        <message>
            <source>Changed since they were attested.</source>
            <translation>Cambiados desde que se cotejaron.</translation>
        </message>
        <message>
            <source>Changeover</source>
            <translation>Cambio</translation>
        </message>
        <message>
            <source>Changeover too late</source>
            <translation>Cambio demasiado tarde</translation>
        </message>
        <message>
            <source>Changes are kept by a foreman's PIN and hold for new welds.</source>
            <translation>Los cambios se guardan con PIN de encargado y valen para soldaduras nuevas.</translation>
        </message>
        <message>
            <source>Chapter before</source>
            <translation>Capítulo anterior</translation>
        </message>
        <message>
            <source>Charts</source>
            <translation>Gráficas</translation>
        </message>
        <message>
            <source>Check anew</source>
            <translation>Comprobar todo</translation>
        </message>
        <message>
            <source>Checking</source>
            <translation>En curso</translation>
        </message>
        <message>
            <source>Checks</source>
            <translation>Controles</translation>
        </message>
        <message>
            <source>Checks and release</source>
            <translation>Controles y sacado</translation>
        </message>
        <message>
            <source>Choose</source>
            <translation>Elegir</translation>
        </message>
        <message>
            <source>Choose a seam first: its plan is what is looked at.</source>
            <translation>Elegir antes una junta: lo que se mira es su plan.</translation>
        </message>
        <message>
            <source>Choose a table, then its rows. They lose their standing.</source>
            <translation>Elegir una tabla y sus filas. Pierden el cotejo.</translation>
        </message>
        <message>
            <source>Choose a table, then the rows that were compared.</source>
            <translation>Elegir una tabla y las filas comparadas.</translation>
        </message>
        <message>
            <source>Clamp</source>
            <translation>Sujetar</translation>
        </message>
        <message>
            <source>Clamp it</source>
            <translation>Sujetarla</translation>
        </message>
        <message>
            <source>Clamp the first sheet evenly, end to end.</source>
            <translation>Sujetar la primera placa por igual, de punta a punta.</translation>
        </message>
        <message>
            <source>Clamp the second sheet against the first.</source>
            <translation>Sujetar la segunda placa contra la primera.</translation>
        </message>
        <message>
            <source>Clamps</source>
            <translation>Mordazas</translation>
        </message>
        <message>
            <source>Clamps are eased</source>
            <translation>Mordazas flojas</translation>
        </message>
        <message>
            <source>Clear</source>
            <translation>Sin filtro</translation>
        </message>
        <message>
            <source>Clock from first contact</source>
            <translation>Reloj desde el primer contacto</translation>
        </message>
        <message>
            <source>Clock was set %1 ahead. No time of a weld changed.</source>
            <translation>Reloj adelantado %1. Ningún tiempo de soldadura cambió.</translation>
        </message>
        <message>
            <source>Clock was set %1 back. No time of a weld changed.</source>
            <translation>Reloj atrasado %1. Ningún tiempo de soldadura cambió.</translation>
        </message>
        <message>
            <source>Close</source>
            <translation>Cerrar</translation>
        </message>
        <message>
            <source>Close the day</source>
            <translation>Cerrar el día</translation>
        </message>
        <message>
            <source>Closed as: %1</source>
            <translation>Cerrada como: %1</translation>
        </message>
        <message>
            <source>Cold place on the plate</source>
            <translation>Zona fría en el espejo</translation>
        </message>
        <message>
            <source>Contents</source>
            <translation>Índice</translation>
        </message>
        <message>
            <source>Cooling</source>
            <translation>Enfriar</translation>
        </message>
        <message>
            <source>Cooling %1 °C</source>
            <translation>Enfriar %1 °C</translation>
        </message>
        <message>
            <source>Cooling has gone on.</source>
            <translation>El enfriamiento ha seguido.</translation>
        </message>
        <message>
            <source>Cooling is %1 short. Why?</source>
            <translation>Faltan %1 de enfriar. ¿Por qué?</translation>
        </message>
        <message>
            <source>Cooling is over by now. Release it in its order.</source>
            <translation>El enfriamiento ya terminó. Soltar en su orden.</translation>
        </message>
        <message>
            <source>Cooling is over. Number on the sheet? Then release.</source>
            <translation>Ya enfriado. ¿Número en la placa? Después, sacar.</translation>
        </message>
        <message>
            <source>Cooling time</source>
            <translation>Tiempo de enfriar</translation>
        </message>
        <message>
            <source>Cooling, air %1</source>
            <translation>Enfriar, aire %1</translation>
        </message>
        <message>
            <source>Copy of practice, read only: made %1, last entry %2.</source>
            <translation>Copia de práctica, solo lectura: hecha %1, última entrada %2.</translation>
        </message>
        <message>
            <source>Copy of practice, read only: made %1.</source>
            <translation>Copia de práctica, solo lectura: hecha %1.</translation>
        </message>
        <message>
            <source>Copy, read only: made %1, last entry %2.</source>
            <translation>Copia, solo lectura: hecha %1, última entrada %2.</translation>
        </message>
        <message>
            <source>Copy, read only: made %1.</source>
            <translation>Copia, solo lectura: hecha %1.</translation>
        </message>
        <message>
            <source>Correct a value</source>
            <translation>Corregir un valor</translation>
        </message>
        <message>
            <source>Coupon %1 of the parent sheet</source>
            <translation>Probeta %1 de la placa base</translation>
        </message>
        <message>
            <source>Coupons are entered.</source>
            <translation>Probetas anotadas.</translation>
        </message>
        <message>
            <source>Coupons are put right.</source>
            <translation>Probetas corregidas.</translation>
        </message>
        <message>
            <source>Coupons cut from a joint, or from a trial that a procedure was tried with.</source>
            <translation>Probetas de una unión, o de una prueba de un procedimiento.</translation>
        </message>
        <message>
            <source>Coupons cut from it</source>
            <translation>Probetas de esta unión</translation>
        </message>
        <message>
            <source>Coupons cut from these joints</source>
            <translation>Probetas de estas uniones</translation>
        </message>
        <message>
            <source>Coupons of joints and of procedure trials, the newest first.</source>
            <translation>Probetas de uniones y de pruebas, las más nuevas primero.</translation>
        </message>
        <message>
            <source>Course</source>
            <translation>Proceso</translation>
        </message>
        <message>
            <source>Cut out</source>
            <translation>Cortar</translation>
        </message>
        <message>
            <source>DEMO SHOP</source>
            <translation>TALLER DEMO</translation>
        </message>
        <message>
            <source>DVS 2203-1, short term, heated-tool butt (memory)</source>
            <translation>DVS 2203-1, corto plazo, a tope con elemento calefactor (de memoria)</translation>
        </message>
        <message>
            <source>Date</source>
            <translation>Fecha</translation>
        </message>
        <message>
            <source>Day report</source>
            <translation>Informe diario</translation>
        </message>
        <message>
            <source>Day report, %1</source>
            <translation>Informe del día, %1</translation>
        </message>
        <message>
            <source>Day, people, screen and hands</source>
            <translation>Día, personas, pantalla y manos</translation>
        </message>
        <message>
            <source>Decision</source>
            <translation>Decisión</translation>
        </message>
        <message>
            <source>Decision and sign-off</source>
            <translation>Decisión y firma</translation>
        </message>
        <message>
            <source>Demo shop: all invented, and no joint here counts. PINs are shown.</source>
            <translation>Taller demo: todo inventado, ninguna unión cuenta. Se muestran los PIN.</translation>
        </message>
        <message>
            <source>Demo shop: shop, people and joint are invented. This is no certificate.</source>
            <translation>Taller demo: taller, personas y unión son inventados. No es un certificado.</translation>
        </message>
        <message>
            <source>Demo shop: shop, people and joints are invented. This is no certificate.</source>
            <translation>Taller demo: taller, personas y uniones son inventados. No es un certificado.</translation>
        </message>
        <message>
            <source>Demo shop: the PIN is %1.</source>
            <translation>Taller demo: el PIN es %1.</translation>
        </message>
        <message>
            <source>Did it crack or break?</source>
            <translation>¿Se agrietó o se rompió?</translation>
        </message>
        <message>
            <source>Do</source>
            <translation>Hacer</translation>
        </message>
        <message>
            <source>Done</source>
            <translation>Hecho</translation>
        </message>
        <message>
            <source>Down</source>
            <translation>Bajar</translation>
        </message>
        <message>
            <source>Drag</source>
            <translation>Arrastre</translation>
        </message>
        <message>
            <source>Drag [N]</source>
            <translation>Arrastre [N]</translation>
        </message>
        <message>
            <source>Drag is above the soak force: just in contact.</source>
            <translation>Arrastre mayor que la fuerza al calentar: contacto justo.</translation>
        </message>
        <message>
            <source>Drag is not measured: taken as nothing.</source>
            <translation>Arrastre sin medir: se toma como cero.</translation>
        </message>
        <message>
            <source>Drag, bench %1</source>
            <translation>Arrastre, banco %1</translation>
        </message>
        <message>
            <source>Draught at the seam</source>
            <translation>Corriente de aire</translation>
        </message>
        <message>
            <source>Each sheet loses about %1 of its length in this seam: cut it longer by that, and by twice that with a seam at both ends: %2.</source>
            <translation>Cada placa pierde unos %1 de su largo en esta junta: cortarla así de más larga, y el doble si lleva junta en ambos extremos: %2.</translation>
        </message>
        <message>
            <source>Each step</source>
            <translation>Cada paso</translation>
        </message>
        <message>
            <source>Each step of your hands</source>
            <translation>Cada paso de las manos</translation>
        </message>
        <message>
            <source>Earlier …</source>
            <translation>Anteriores …</translation>
        </message>
        <message>
            <source>Earliest possible %1, this plan %2.</source>
            <translation>Lo más temprano %1, este plan %2.</translation>
        </message>
        <message>
            <source>Ease clamps</source>
            <translation>Aflojar</translation>
        </message>
        <message>
            <source>Ease the clamps on both sides.</source>
            <translation>Aflojar las mordazas de los dos lados.</translation>
        </message>
        <message>
            <source>Edge leans</source>
            <translation>Canto ladeado</translation>
        </message>
        <message>
            <source>Edge touched</source>
            <translation>Canto tocado</translation>
        </message>
        <message>
            <source>Edges</source>
            <translation>Cantos</translation>
        </message>
        <message>
            <source>Edges are clean</source>
            <translation>Cantos limpios</translation>
        </message>
        <message>
            <source>Edges meet</source>
            <translation>Cantos a tope</translation>
        </message>
        <message>
            <source>Edges meet along the seam and from top to bottom, or they melt where they touch first. Plane both, set the gap at both ends, look along them and from their end, and shim what stands back before the plate comes in.</source>
            <translation>Los cantos casan a lo largo de la junta y de arriba abajo, o funden donde tocan primero. Cepillar los dos, fijar el hueco en ambos extremos, mirar a lo largo y desde la punta, y calzar lo que queda atrás antes de entrar el espejo.</translation>
        </message>
        <message>
            <source>Edges not parallel</source>
            <translation>Cantos no paralelos</translation>
        </message>
        <message>
            <source>Edges that meet, end to end</source>
            <translation>Cantos que casan de punta a punta</translation>
        </message>
        <message>
            <source>Edit in a form</source>
            <translation>Editar datos</translation>
        </message>
        <message>
            <source>End of the scale</source>
            <translation>Final de la escala</translation>
        </message>
        <message>
            <source>End the program</source>
            <translation>Cerrar el programa</translation>
        </message>
        <message>
            <source>Enter coupons</source>
            <translation>Anotar probetas</translation>
        </message>
        <message>
            <source>Enter the foreman</source>
            <translation>Inscribir encargado</translation>
        </message>
        <message>
            <source>Entered on %1 by %2</source>
            <translation>Anotado el %1 por %2</translation>
        </message>
        <message>
            <source>Erase all</source>
            <translation>Borrar todo</translation>
        </message>
        <message>
            <source>Estimate, not a limit</source>
            <translation>Estimación, no límite</translation>
        </message>
        <message>
            <source>Estimate: each sheet loses about %1.</source>
            <translation>Estimación: cada placa pierde unos %1.</translation>
        </message>
        <message>
            <source>Estimate: it is being worked out.</source>
            <translation>Estimación: se está calculando.</translation>
        </message>
        <message>
            <source>Estimate: it will fall by about %1 %2 and stay in its band. Each sheet loses %3.</source>
            <translation>Estimación: bajará unos %1 %2, dentro de su banda. Cada placa pierde %3.</translation>
        </message>
        <message>
            <source>Estimate: it will fall by about %1 %2, below its band: top it up. Each sheet loses %3.</source>
            <translation>Estimación: bajará unos %1 %2, por debajo de su banda: reponer. Cada placa pierde %3.</translation>
        </message>
        <message>
            <source>Estimate: melt %1 mm deep</source>
            <translation>Estimado: %1 mm fundidos</translation>
        </message>
        <message>
            <source>Estimate: soft %1 mm deep</source>
            <translation>Estimado: %1 mm blandos</translation>
        </message>
        <message>
            <source>Estimates, not limits</source>
            <translation>Estimaciones, no límites</translation>
        </message>
        <message>
            <source>Even motion</source>
            <translation>Avance continuo</translation>
        </message>
        <message>
            <source>Event</source>
            <translation>Evento</translation>
        </message>
        <message>
            <source>Event %1 of its joint can't be read.</source>
            <translation>El evento %1 de su unión no se puede leer.</translation>
        </message>
        <message>
            <source>Event %1 of this test can't be read.</source>
            <translation>El evento %1 de este ensayo no se puede leer.</translation>
        </message>
        <message>
            <source>Events</source>
            <translation>Eventos</translation>
        </message>
        <message>
            <source>Events %1 to %2: %3</source>
            <translation>Eventos %1 a %2: %3</translation>
        </message>
        <message>
            <source>Events %1 to %2: not sealed yet.</source>
            <translation>Eventos %1 a %2: aún sin sellar.</translation>
        </message>
        <message>
            <source>Every event</source>
            <translation>Cada evento</translation>
        </message>
        <message>
            <source>Every number of a card is for one thickness. Hold it against the sheet before you clamp.</source>
            <translation>Cada número de una ficha vale para un espesor. Compararla con la placa antes de sujetar.</translation>
        </message>
        <message>
            <source>Every value</source>
            <translation>Cada valor</translation>
        </message>
        <message>
            <source>Every value is within its limits.</source>
            <translation>Todos los valores están dentro de sus límites.</translation>
        </message>
        <message>
            <source>Every value, CSV</source>
            <translation>Cada valor, CSV</translation>
        </message>
        <message>
            <source>Extraction on. Film off, edges clean, plate wiped.</source>
            <translation>Extracción. Film quitado, cantos limpios, espejo limpio.</translation>
        </message>
        <message>
            <source>Faces cooled in the air</source>
            <translation>Caras enfriadas al aire</translation>
        </message>
        <message>
            <source>Faces out of line</source>
            <translation>Caras desalineadas</translation>
        </message>
        <message>
            <source>Faces together</source>
            <translation>Caras juntas</translation>
        </message>
        <message>
            <source>Faces together now</source>
            <translation>Caras juntas ya</translation>
        </message>
        <message>
            <source>Faces together now. The limit is passed.</source>
            <translation>Caras juntas ya. Límite superado.</translation>
        </message>
        <message>
            <source>Faces together, at once and without a jerk. It counts, and is in the record.</source>
            <translation>Juntar las caras, ya y sin tirón. Cuenta y queda en el registro.</translation>
        </message>
        <message>
            <source>Fewer than %1 joints: the limits are provisional.</source>
            <translation>Menos de %1 uniones: los límites son provisionales.</translation>
        </message>
        <message>
            <source>Film</source>
            <translation>Film</translation>
        </message>
        <message>
            <source>Film is off</source>
            <translation>Film quitado</translation>
        </message>
        <message>
            <source>Film left on the edge</source>
            <translation>Film dejado en el canto</translation>
        </message>
        <message>
            <source>Film melts into the joint and parts it.</source>
            <translation>El film se funde dentro de la unión y la separa.</translation>
        </message>
        <message>
            <source>Film off</source>
            <translation>Film fuera</translation>
        </message>
        <message>
            <source>Film off, edges planed and clean, plate wiped.</source>
            <translation>Film quitado, cantos cepillados y limpios, espejo limpio.</translation>
        </message>
        <message>
            <source>Fingerprint of the seal</source>
            <translation>Huella del sello</translation>
        </message>
        <message>
            <source>Finish what is open: steps are still kept. The next start sets the log aside and says what is lost.</source>
            <translation>Acabar lo abierto: los pasos se siguen guardando. El próximo arranque aparta el registro y dice qué se perdió.</translation>
        </message>
        <message>
            <source>First foreman</source>
            <translation>Primer encargado</translation>
        </message>
        <message>
            <source>First sheet</source>
            <translation>Primera placa</translation>
        </message>
        <message>
            <source>First sheet is clamped</source>
            <translation>Primera placa sujeta</translation>
        </message>
        <message>
            <source>First steps</source>
            <translation>Primeros pasos</translation>
        </message>
        <message>
            <source>First steps: %1 of %2 are done. What is done is kept.</source>
            <translation>Primeros pasos: %1 de %2 hechos. Lo hecho queda.</translation>
        </message>
        <message>
            <source>First the one that holds now.</source>
            <translation>Primero, el PIN vigente.</translation>
        </message>
        <message>
            <source>Follow</source>
            <translation>Girar</translation>
        </message>
        <message>
            <source>Foot switch: %1</source>
            <translation>Pedal: %1</translation>
        </message>
        <message>
            <source>Foot switch: none</source>
            <translation>Pedal: ninguno</translation>
        </message>
        <message>
            <source>For its materials it alone counts from then on.</source>
            <translation>Para sus materiales solo cuenta este desde entonces.</translation>
        </message>
        <message>
            <source>For people, PINs and the day's seal.</source>
            <translation>Para personas, PIN y el sello del día.</translation>
        </message>
        <message>
            <source>For spreadsheets and other programs; as the list is narrowed now.</source>
            <translation>Para hojas de cálculo y otros programas; con la lista filtrada como ahora.</translation>
        </message>
        <message>
            <source>For the customer</source>
            <translation>Por el cliente</translation>
        </message>
        <message>
            <source>For the day's seal.</source>
            <translation>Para el sello del día.</translation>
        </message>
        <message>
            <source>Force by</source>
            <translation>Fuerza por</translation>
        </message>
        <message>
            <source>Force is off</source>
            <translation>Fuerza quitada</translation>
        </message>
        <message>
            <source>Force set</source>
            <translation>Fuerza plan</translation>
        </message>
        <message>
            <source>Force that comes at once drives the hot melt out into the bead before it has grown together. A short slam on a soft spring tears the valley and takes little melt besides; on stiff springs, or kept on, it leaves too little.</source>
            <translation>La fuerza de golpe echa el fundido caliente al cordón antes de que se una. Un golpe corto con un muelle blando rasga el valle y quita poco fundido más; con muelles rígidos, o mantenido, deja demasiado poco.</translation>
        </message>
        <message>
            <source>Forces</source>
            <translation>Fuerzas</translation>
        </message>
        <message>
            <source>Foreman</source>
            <translation>Encargado</translation>
        </message>
        <message>
            <source>Foreman is here</source>
            <translation>Encargado presente</translation>
        </message>
        <message>
            <source>Foreman's desk</source>
            <translation>Panel del encargado</translation>
        </message>
        <message>
            <source>Foreman's desk: %1</source>
            <translation>Panel del encargado: %1</translation>
        </message>
        <message>
            <source>Four</source>
            <translation>Cuatro</translation>
        </message>
        <message>
            <source>From</source>
            <translation>Desde</translation>
        </message>
        <message>
            <source>From %1 °C this plastic gives off harmful gas. Never weld so.</source>
            <translation>Desde %1 °C este plástico desprende gas nocivo. No soldar nunca así.</translation>
        </message>
        <message>
            <source>From a table</source>
            <translation>De una tabla</translation>
        </message>
        <message>
            <source>Front</source>
            <translation>Delante</translation>
        </message>
        <message>
            <source>Front +</source>
            <translation>Delante +</translation>
        </message>
        <message>
            <source>Front −</source>
            <translation>Delante −</translation>
        </message>
        <message>
            <source>Gap</source>
            <translation>Hueco</translation>
        </message>
        <message>
            <source>Gap between the tables</source>
            <translation>Hueco entre mesas</translation>
        </message>
        <message>
            <source>Gap is %1 mm</source>
            <translation>Hueco de %1 mm</translation>
        </message>
        <message>
            <source>Gap of the tables and the rest stand in Set-up: look at them before the first weld.</source>
            <translation>El hueco de las mesas y lo demás está en Ajustes: mirarlo antes de la primera soldadura.</translation>
        </message>
        <message>
            <source>Gaps</source>
            <translation>Vacíos</translation>
        </message>
        <message>
            <source>Gaps: %1</source>
            <translation>Vacíos: %1</translation>
        </message>
        <message>
            <source>Gaps: %1 values</source>
            <translation>Vacíos: %1 valores</translation>
        </message>
        <message>
            <source>Get ready</source>
            <translation>Atención</translation>
        </message>
        <message>
            <source>Give the reason</source>
            <translation>Dar el motivo</translation>
        </message>
        <message>
            <source>Go on</source>
            <translation>Seguir</translation>
        </message>
        <message>
            <source>Go on evenly to %1. Do not jerk.</source>
            <translation>Seguir por igual hasta %1. Sin tirones.</translation>
        </message>
        <message>
            <source>Go on where it stood.</source>
            <translation>Seguir donde estaba.</translation>
        </message>
        <message>
            <source>Go on where the screen stands.</source>
            <translation>Seguir donde está la pantalla.</translation>
        </message>
        <message>
            <source>Go on without a trial</source>
            <translation>Seguir sin prueba</translation>
        </message>
        <message>
            <source>Go on without this check? Say why.</source>
            <translation>¿Seguir sin este control? ¿Por qué?</translation>
        </message>
        <message>
            <source>Go on, and don't switch off: what is in memory only is lost with the power.</source>
            <translation>Seguir y no apagar: lo que solo está en memoria se pierde con la corriente.</translation>
        </message>
        <message>
            <source>Go on, and watch the lamp. "Seen" hides the words; the clock's tile keeps "no sound". It comes back by itself.</source>
            <translation>Seguir y vigilar la lámpara. «Visto» oculta las palabras; la casilla del reloj conserva «sin sonido». Vuelve solo.</translation>
        </message>
        <message>
            <source>Go on. Look at each bench whose joint is named.</source>
            <translation>Seguir. Mirar cada banco cuya unión se nombra.</translation>
        </message>
        <message>
            <source>Go on. Make room, or take the photo again. It tries again at the next closing.</source>
            <translation>Seguir. Hacer sitio o repetir la foto. Se intenta de nuevo en el próximo cierre.</translation>
        </message>
        <message>
            <source>Go on: %1</source>
            <translation>Seguir: %1</translation>
        </message>
        <message>
            <source>Go on: no weld needs them. Ask who looks after the tablet.</source>
            <translation>Seguir: ninguna soldadura los necesita. Preguntar a quien cuida la tableta.</translation>
        </message>
        <message>
            <source>Go on: others read the older copy. It tries again at the next closing.</source>
            <translation>Seguir: los demás leen la copia anterior. Se intenta de nuevo en el próximo cierre.</translation>
        </message>
        <message>
            <source>Go on: the log itself is well. Make room, or ask who looks after the tablet. It tries again at the next closing.</source>
            <translation>Seguir: el registro está bien. Hacer sitio, o preguntar a quien cuida la tableta. Se intenta de nuevo en el próximo cierre.</translation>
        </message>
        <message>
            <source>Go on; it tries again. Look for a full disk or a stick that was pulled out.</source>
            <translation>Seguir; se intenta de nuevo. Mirar si el disco está lleno o se quitó una memoria.</translation>
        </message>
        <message>
            <source>Grade</source>
            <translation>Grado</translation>
        </message>
        <message>
            <source>Grade, photo</source>
            <translation>Valorar, foto</translation>
        </message>
        <message>
            <source>Grade, sheet 1</source>
            <translation>Tipo, placa 1</translation>
        </message>
        <message>
            <source>Grade, sheet 2</source>
            <translation>Tipo, placa 2</translation>
        </message>
        <message>
            <source>Greatest force over its section.</source>
            <translation>Fuerza máxima entre su sección.</translation>
        </message>
        <message>
            <source>Group %1</source>
            <translation>Grupo %1</translation>
        </message>
        <message>
            <source>Guard</source>
            <translation>Protección</translation>
        </message>
        <message>
            <source>Half cooling: full load only after the whole time.</source>
            <translation>Medio enfriado: carga plena solo tras el tiempo completo.</translation>
        </message>
        <message>
            <source>Hands on the plate and the wheel. Wait for zero.</source>
            <translation>Manos en el espejo y el volante. Esperar a cero.</translation>
        </message>
        <message>
            <source>Has left</source>
            <translation>Se ha ido</translation>
        </message>
        <message>
            <source>Heard it</source>
            <translation>Oído</translation>
        </message>
        <message>
            <source>Heat in the sheet: %1, %2 mm</source>
            <translation>Calor en la placa: %1, %2 mm</translation>
        </message>
        <message>
            <source>Heat, an estimate: it never judges</source>
            <translation>Calor, una estimación: nunca juzga</translation>
        </message>
        <message>
            <source>Height</source>
            <translation>Altura</translation>
        </message>
        <message>
            <source>Help</source>
            <translation>Ayuda</translation>
        </message>
        <message>
            <source>Help: the user guide</source>
            <translation>Ayuda: la guía</translation>
        </message>
        <message>
            <source>History</source>
            <translation>Historial</translation>
        </message>
        <message>
            <source>Hold the card against the sheet before you clamp: material, thickness, length. Measure the sheet if you are not sure.</source>
            <translation>Comparar la ficha con la placa antes de sujetar: material, espesor, longitud. En caso de duda, medir la placa.</translation>
        </message>
        <message>
            <source>Holds for %1 days, to %2.</source>
            <translation>Vale %1 días, hasta %2.</translation>
        </message>
        <message>
            <source>Holds to the end of today.</source>
            <translation>Vale hasta el final de hoy.</translation>
        </message>
        <message>
            <source>Holds to the end of tomorrow.</source>
            <translation>Vale hasta el final de mañana.</translation>
        </message>
        <message>
            <source>Hot for 10 min</source>
            <translation>Caliente hace 10 min</translation>
        </message>
        <message>
            <source>How does the bead look to you?</source>
            <translation>¿Qué aspecto tiene el cordón?</translation>
        </message>
        <message>
            <source>How does the laboratory tell it?</source>
            <translation>¿Cómo lo da el laboratorio?</translation>
        </message>
        <message>
            <source>How far did the scale go before you turned back?</source>
            <translation>¿Hasta dónde llegó la escala antes de volver atrás?</translation>
        </message>
        <message>
            <source>How is the spring's force known?</source>
            <translation>¿Cómo se conoce la fuerza del muelle?</translation>
        </message>
        <message>
            <source>How it went</source>
            <translation>Cómo fue</translation>
        </message>
        <message>
            <source>How many places of the bead are measured; empty: one.</source>
            <translation>En cuántos sitios se mide el cordón; vacío: en uno.</translation>
        </message>
        <message>
            <source>How many springs press together?</source>
            <translation>¿Cuántos muelles aprietan juntos?</translation>
        </message>
        <message>
            <source>How much is cut away, of both sheets together?</source>
            <translation>¿Cuánto se corta, de las dos placas juntas?</translation>
        </message>
        <message>
            <source>How often it may be welded again, 0 to 9; empty: not said.</source>
            <translation>Cuántas veces se puede resoldar, de 0 a 9; vacío: no se dice.</translation>
        </message>
        <message>
            <source>How the scale reading comes about</source>
            <translation>Cómo se obtiene la lectura de la escala</translation>
        </message>
        <message>
            <source>How the shop is doing</source>
            <translation>Cómo va el taller</translation>
        </message>
        <message>
            <source>I hear it</source>
            <translation>Se oye</translation>
        </message>
        <message>
            <source>If the bench is further than the screen, stop the weld.</source>
            <translation>Si el banco va por delante de la pantalla, parar la soldadura.</translation>
        </message>
        <message>
            <source>In air, and more so in a draught, a skin freezes on the melt. Two skins do not grow together, and the joint breaks flat.</source>
            <translation>Al aire, y más con corriente, se enfría una piel sobre el fundido. Dos pieles no se unen, y la unión rompe plana.</translation>
        </message>
        <message>
            <source>In limits</source>
            <translation>En límites</translation>
        </message>
        <message>
            <source>In soak go to that bench, hands on the plate and the wheel. In cooling only go there: the wheel stays locked until the time is over.</source>
            <translation>En calentamiento ir a ese banco, manos en el espejo y el volante. En enfriamiento solo ir: el volante sigue bloqueado hasta que acabe el tiempo.</translation>
        </message>
        <message>
            <source>In soak the scale can't show it: just in contact.</source>
            <translation>Al calentar la escala no lo muestra: contacto justo.</translation>
        </message>
        <message>
            <source>In this draught a face loses its heat six times as fast. A changeover that would do in still air leaves a skin on the melt, and the joint breaks flat along it.</source>
            <translation>Con esta corriente una cara pierde su calor seis veces más deprisa. Un cambio que bastaría en aire quieto deja una piel en el fundido, y por ella la unión rompe plana.</translation>
        </message>
        <message>
            <source>Incomplete</source>
            <translation>Incompleta</translation>
        </message>
        <message>
            <source>Into the demo shop</source>
            <translation>Al taller demo</translation>
        </message>
        <message>
            <source>Is back</source>
            <translation>Ha vuelto</translation>
        </message>
        <message>
            <source>It came with another log; its seal stands in that one.</source>
            <translation>Vino con otro registro; su sello está en aquel.</translation>
        </message>
        <message>
            <source>It can't be counted as cooling.</source>
            <translation>No puede contar como enfriamiento.</translation>
        </message>
        <message>
            <source>It closes by itself after two minutes.</source>
            <translation>Se cierra solo a los dos minutos.</translation>
        </message>
        <message>
            <source>It cracked</source>
            <translation>Se agrietó</translation>
        </message>
        <message>
            <source>It guides. The machine's instructions, the standard in force, local rules and a qualified welder decide.</source>
            <translation>Orienta. Deciden las instrucciones de la máquina, la norma vigente, la normativa local y un soldador cualificado.</translation>
        </message>
        <message>
            <source>It held</source>
            <translation>Aguantó</translation>
        </message>
        <message>
            <source>It held: go on with the series</source>
            <translation>Aguantó: seguir con la serie</translation>
        </message>
        <message>
            <source>It is %1.</source>
            <translation>Estado: %1.</translation>
        </message>
        <message>
            <source>It is a trial</source>
            <translation>Es una prueba</translation>
        </message>
        <message>
            <source>It is another material</source>
            <translation>Es otro material</translation>
        </message>
        <message>
            <source>It is kept by a foreman's PIN.</source>
            <translation>Se guarda con el PIN de un encargado.</translation>
        </message>
        <message>
            <source>It is kept with its time, and told when the weld is over.</source>
            <translation>Queda anotado con su hora y se cuenta al acabar la soldadura.</translation>
        </message>
        <message>
            <source>It signs all rows up to now with your key. Its fingerprint then goes on paper or by mail: on this tablet alone it proves nothing to others.</source>
            <translation>Firma con la clave propia todas las filas hasta ahora. Después su huella va a papel o por correo: solo en esta tableta no prueba nada a otros.</translation>
        </message>
        <message>
            <source>It stands on records, reports and cards. Later: papers have none.</source>
            <translation>Figura en registros, informes y fichas. Más tarde: los papeles no lo llevan.</translation>
        </message>
        <message>
            <source>It takes welded coupons and coupons of the parent sheet.</source>
            <translation>Hacen falta probetas soldadas y de la placa base.</translation>
        </message>
        <message>
            <source>It will be cut out</source>
            <translation>Se va a cortar</translation>
        </message>
        <message>
            <source>It will be in the record.</source>
            <translation>Constará en el registro.</translation>
        </message>
        <message>
            <source>It will be out of limits.</source>
            <translation>Quedará fuera de límites.</translation>
        </message>
        <message>
            <source>Its alignment would end while another bench changes over or builds up.</source>
            <translation>Su igualación acabaría durante el cambio o el aumento de presión de otro banco.</translation>
        </message>
        <message>
            <source>Its events make no weld</source>
            <translation>Sus eventos no forman soldadura</translation>
        </message>
        <message>
            <source>Its number, as it stands on the sheet.</source>
            <translation>Su número, como está en la placa.</translation>
        </message>
        <message>
            <source>Its order number, 1 to %1 characters: labels are told apart by it.</source>
            <translation>Su número de pedido, de 1 a %1 caracteres: distingue nombres iguales.</translation>
        </message>
        <message>
            <source>Its thickness there, without bead.</source>
            <translation>Su espesor ahí, sin el cordón.</translation>
        </message>
        <message>
            <source>Its width where it is narrowest.</source>
            <translation>Su ancho donde es más estrecha.</translation>
        </message>
        <message>
            <source>Job</source>
            <translation>Trabajo</translation>
        </message>
        <message>
            <source>Job %1</source>
            <translation>Trabajo %1</translation>
        </message>
        <message>
            <source>Job report</source>
            <translation>Informe del trabajo</translation>
        </message>
        <message>
            <source>Job report, %1</source>
            <translation>Informe del trabajo, %1</translation>
        </message>
        <message>
            <source>Jobs and seams</source>
            <translation>Trabajos y juntas</translation>
        </message>
        <message>
            <source>Jobs and shop</source>
            <translation>Trabajos y taller</translation>
        </message>
        <message>
            <source>Jobs and their seams</source>
            <translation>Trabajos y sus juntas</translation>
        </message>
        <message>
            <source>Join</source>
            <translation>Unir</translation>
        </message>
        <message>
            <source>Joint</source>
            <translation>Unión</translation>
        </message>
        <message>
            <source>Joint %1</source>
            <translation>Unión %1</translation>
        </message>
        <message>
            <source>Joint %1 (%2): %3</source>
            <translation>Unión %1 (%2): %3</translation>
        </message>
        <message>
            <source>Joint %1 can't be read and is not in this plan.</source>
            <translation>La unión %1 no se puede leer y no entra en este plan.</translation>
        </message>
        <message>
            <source>Joint %1 goes on with a sheet of another material.</source>
            <translation>La unión %1 sigue con una placa de otro material.</translation>
        </message>
        <message>
            <source>Joint %1 goes on without this check.</source>
            <translation>La unión %1 sigue sin este control.</translation>
        </message>
        <message>
            <source>Joint %1 is above the upper limit: %2.</source>
            <translation>La unión %1 supera el límite superior: %2.</translation>
        </message>
        <message>
            <source>Joint %1 is accepted. Why?</source>
            <translation>Se acepta la unión %1. ¿Por qué?</translation>
        </message>
        <message>
            <source>Joint %1 is accepted: %2.</source>
            <translation>Unión %1 aceptada: %2.</translation>
        </message>
        <message>
            <source>Joint %1 is below the lower limit: %2.</source>
            <translation>La unión %1 está bajo el límite inferior: %2.</translation>
        </message>
        <message>
            <source>Joint %1 is cut out</source>
            <translation>Se corta la unión %1</translation>
        </message>
        <message>
            <source>Joint %1 is not on disk yet. Trying again.</source>
            <translation>La unión %1 aún no está en disco. Se reintenta.</translation>
        </message>
        <message>
            <source>Joint %1 is saved. %2.</source>
            <translation>Unión %1 guardada. %2.</translation>
        </message>
        <message>
            <source>Joint %1 is signed off.</source>
            <translation>Unión %1 firmada.</translation>
        </message>
        <message>
            <source>Joint %1 is stopped. Cut back and plane again.</source>
            <translation>Unión %1 parada. Recortar y cepillar otra vez.</translation>
        </message>
        <message>
            <source>Joint %1 is stopped. Cut it out and plane again.</source>
            <translation>Unión %1 parada. Cortarla y cepillar otra vez.</translation>
        </message>
        <message>
            <source>Joint %1 is to be cut out. Why?</source>
            <translation>Hay que cortar la unión %1. ¿Por qué?</translation>
        </message>
        <message>
            <source>Joint %1 is to be cut out: %2.</source>
            <translation>Unión %1, a cortar: %2.</translation>
        </message>
        <message>
            <source>Joint %1 is to be repaired. Why?</source>
            <translation>Hay que reparar la unión %1. ¿Por qué?</translation>
        </message>
        <message>
            <source>Joint %1 is to be repaired: %2.</source>
            <translation>Unión %1, a reparar: %2.</translation>
        </message>
        <message>
            <source>Joint %1 on bench %2</source>
            <translation>Unión %1 en el banco %2</translation>
        </message>
        <message>
            <source>Joint %1 on bench %2 can't be read and is not in this plan.</source>
            <translation>La unión %1 en el banco %2 no se puede leer y no entra en este plan.</translation>
        </message>
        <message>
            <source>Joint %1 was broken off when the program ended.</source>
            <translation>La unión %1 se interrumpió al acabar el programa.</translation>
        </message>
        <message>
            <source>Joint %1, seam %2</source>
            <translation>Unión %1, junta %2</translation>
        </message>
        <message>
            <source>Joint %1. %2 %3, %4</source>
            <translation>Unión %1. %2 %3, %4</translation>
        </message>
        <message>
            <source>Joint %1. %2.</source>
            <translation>Unión %1. %2.</translation>
        </message>
        <message>
            <source>Joint %1: %2</source>
            <translation>Unión %1: %2</translation>
        </message>
        <message>
            <source>Joint %1: %2 is corrected.</source>
            <translation>Unión %1: se corrige %2.</translation>
        </message>
        <message>
            <source>Joint %1: %2.</source>
            <translation>Unión %1: %2.</translation>
        </message>
        <message>
            <source>Joint %1: all steps are there.</source>
            <translation>Unión %1: están todos los pasos.</translation>
        </message>
        <message>
            <source>Joint %1: not taken over.</source>
            <translation>Unión %1: no recuperada.</translation>
        </message>
        <message>
            <source>Joint %1: steps are lost, look at the bench before you go on.</source>
            <translation>Unión %1: faltan pasos; mirar el banco antes de seguir.</translation>
        </message>
        <message>
            <source>Joint %1: to its page</source>
            <translation>Unión %1: a su página</translation>
        </message>
        <message>
            <source>Joint number</source>
            <translation>Unión número</translation>
        </message>
        <message>
            <source>Joints</source>
            <translation>Uniones</translation>
        </message>
        <message>
            <source>Joints %1 and %2 are further apart than joints here are.</source>
            <translation>Las uniones %1 y %2 se separan más de lo normal aquí.</translation>
        </message>
        <message>
            <source>Joints %1 to %2: %3 in a row above the mean.</source>
            <translation>Uniones %1 a %2: %3 seguidas sobre la media.</translation>
        </message>
        <message>
            <source>Joints %1 to %2: %3 in a row below the mean.</source>
            <translation>Uniones %1 a %2: %3 seguidas bajo la media.</translation>
        </message>
        <message>
            <source>Joints %1 to %2: %3 in a row, each higher.</source>
            <translation>Uniones %1 a %2: %3 seguidas, cada una más alta.</translation>
        </message>
        <message>
            <source>Joints %1 to %2: %3 in a row, each lower.</source>
            <translation>Uniones %1 a %2: %3 seguidas, cada una más baja.</translation>
        </message>
        <message>
            <source>Joints in which material?</source>
            <translation>¿Uniones de qué material?</translation>
        </message>
        <message>
            <source>Joints of which bench?</source>
            <translation>¿Uniones de qué banco?</translation>
        </message>
        <message>
            <source>Joints of which day?</source>
            <translation>¿Uniones de qué día?</translation>
        </message>
        <message>
            <source>Joints of which job?</source>
            <translation>¿Uniones de qué trabajo?</translation>
        </message>
        <message>
            <source>Joints of which operator?</source>
            <translation>¿Uniones de qué operario?</translation>
        </message>
        <message>
            <source>Joints that are alike. Limits say that something changed, not that a joint is bad.</source>
            <translation>Uniones iguales. Los límites dicen que algo cambió, no que una unión sea mala.</translation>
        </message>
        <message>
            <source>Joints with the batch "%1": %2.</source>
            <translation>Uniones con el lote «%1»: %2.</translation>
        </message>
        <message>
            <source>Joints with which verdict?</source>
            <translation>¿Uniones con qué dictamen?</translation>
        </message>
        <message>
            <source>Judged by the top bead</source>
            <translation>Juzgado solo por arriba</translation>
        </message>
        <message>
            <source>Just hot now</source>
            <translation>Caliente ahora</translation>
        </message>
        <message>
            <source>K %1 mm</source>
            <translation>K %1 mm</translation>
        </message>
        <message>
            <source>K value</source>
            <translation>Valor K</translation>
        </message>
        <message>
            <source>Keep %1</source>
            <translation>Anotar %1</translation>
        </message>
        <message>
            <source>Keep it</source>
            <translation>Guardar</translation>
        </message>
        <message>
            <source>Keep the bench</source>
            <translation>Guardar el banco</translation>
        </message>
        <message>
            <source>Keep them</source>
            <translation>Guardarlas</translation>
        </message>
        <message>
            <source>Keep this PIN</source>
            <translation>Guardar este PIN</translation>
        </message>
        <message>
            <source>Kilograms or newtons</source>
            <translation>Kilogramos o newtons</translation>
        </message>
        <message>
            <source>Kilograms taken for newtons</source>
            <translation>Kilogramos tomados por newtons</translation>
        </message>
        <message>
            <source>Know before you start</source>
            <translation>Saber antes de empezar</translation>
        </message>
        <message>
            <source>Known before</source>
            <translation>Sabido antes</translation>
        </message>
        <message>
            <source>Language and units</source>
            <translation>Idioma y unidades</translation>
        </message>
        <message>
            <source>Last step is in memory only: leave the machine on. %1</source>
            <translation>Último paso solo en memoria: no apagar la máquina. %1</translation>
        </message>
        <message>
            <source>Last step is not on disk yet. Trying again. %1</source>
            <translation>El último paso aún no está en disco. Se reintenta. %1</translation>
        </message>
        <message>
            <source>Late</source>
            <translation>Tarde</translation>
        </message>
        <message>
            <source>Later</source>
            <translation>Más tarde</translation>
        </message>
        <message>
            <source>Later: without a bench there is no weld card. The demo shop has two.</source>
            <translation>Más tarde: sin banco no hay ficha. El taller demo tiene dos.</translation>
        </message>
        <message>
            <source>Leave it empty where it is measured before the weld.</source>
            <translation>Déjelo vacío si se mide antes de soldar.</translation>
        </message>
        <message>
            <source>Leave it locked. %1</source>
            <translation>Dejarlo bloqueado. %1</translation>
        </message>
        <message>
            <source>Leave it locked. Nothing else to do.</source>
            <translation>Dejarlo bloqueado. Nada más que hacer.</translation>
        </message>
        <message>
            <source>Leave it locked. Paint number %1 on the sheet.</source>
            <translation>Dejarlo bloqueado. Pintar el número %1 en la placa.</translation>
        </message>
        <message>
            <source>Leave it locked. Read the scale in %1.</source>
            <translation>Dejarlo bloqueado. Leer la escala en %1.</translation>
        </message>
        <message>
            <source>Leave practice</source>
            <translation>Salir de práctica</translation>
        </message>
        <message>
            <source>Leave the demo</source>
            <translation>Salir del demo</translation>
        </message>
        <message>
            <source>Leave the desk</source>
            <translation>Salir del panel</translation>
        </message>
        <message>
            <source>Leave the lesson</source>
            <translation>Dejar la lección</translation>
        </message>
        <message>
            <source>Leave the machine on: it is saved by itself. Look for a full disk.</source>
            <translation>Dejar el equipo encendido: se guarda solo. Mirar si el disco está lleno.</translation>
        </message>
        <message>
            <source>Left-handed</source>
            <translation>Zurdo</translation>
        </message>
        <message>
            <source>Length</source>
            <translation>Longitud</translation>
        </message>
        <message>
            <source>Length [mm]</source>
            <translation>Largo [mm]</translation>
        </message>
        <message>
            <source>Length of the seam</source>
            <translation>Longitud de la junta</translation>
        </message>
        <message>
            <source>Less motion</source>
            <translation>Avance a pasos</translation>
        </message>
        <message>
            <source>Less than 15 % is left, and nothing charges it.</source>
            <translation>Queda menos del 15 % y nada lo carga.</translation>
        </message>
        <message>
            <source>Lesson %1</source>
            <translation>Lección %1</translation>
        </message>
        <message>
            <source>Lesson %1, weld %2 of %3</source>
            <translation>Lección %1, soldadura %2 de %3</translation>
        </message>
        <message>
            <source>Lesson %1: %2</source>
            <translation>Lección %1: %2</translation>
        </message>
        <message>
            <source>Let back after the lock</source>
            <translation>Aflojado tras bloquear</translation>
        </message>
        <message>
            <source>Let it cool</source>
            <translation>Dejar enfriar</translation>
        </message>
        <message>
            <source>Let it ring</source>
            <translation>Dejar sonar</translation>
        </message>
        <message>
            <source>Let the plate come to its temperature, and read that place again.</source>
            <translation>Dejar que el espejo llegue a su temperatura y leer ese punto otra vez.</translation>
        </message>
        <message>
            <source>Let the spring off.</source>
            <translation>Soltar el muelle.</translation>
        </message>
        <message>
            <source>Let the spring off. Scale must read %1.</source>
            <translation>Soltar el muelle. La escala debe marcar %1.</translation>
        </message>
        <message>
            <source>Level %1</source>
            <translation>Nivel %1</translation>
        </message>
        <message>
            <source>Lift sheet</source>
            <translation>Sacar placa</translation>
        </message>
        <message>
            <source>Lift the sheet out, seam supported.</source>
            <translation>Sacar la placa con la junta apoyada.</translation>
        </message>
        <message>
            <source>Limit</source>
            <translation>Límite</translation>
        </message>
        <message>
            <source>Limits</source>
            <translation>Límites</translation>
        </message>
        <message>
            <source>Line %1</source>
            <translation>Línea %1</translation>
        </message>
        <message>
            <source>Line %1, %2</source>
            <translation>Línea %1, %2</translation>
        </message>
        <message>
            <source>Listen</source>
            <translation>Escuchar</translation>
        </message>
        <message>
            <source>Lock</source>
            <translation>Bloquear</translation>
        </message>
        <message>
            <source>Lock gives way</source>
            <translation>El bloqueo cede</translation>
        </message>
        <message>
            <source>Lock the wheel at %1.</source>
            <translation>Bloquear el volante a %1.</translation>
        </message>
        <message>
            <source>Longer than it was: is the plate cold or dirty?</source>
            <translation>Más que antes: ¿espejo frío o sucio?</translation>
        </message>
        <message>
            <source>Longest seam</source>
            <translation>Junta más larga</translation>
        </message>
        <message>
            <source>Look</source>
            <translation>Mirar</translation>
        </message>
        <message>
            <source>Look again by %1.</source>
            <translation>Revisar antes del %1.</translation>
        </message>
        <message>
            <source>Look at another clock. "Seen" if the machine's clock is right; else "Not sure": then only the time that has surely passed counts.</source>
            <translation>Mirar otro reloj. «Visto» si el reloj del equipo es correcto; si no, «Hay duda»: entonces solo cuenta el tiempo que seguro pasó.</translation>
        </message>
        <message>
            <source>Look at both faces of the plate before it goes in, and wipe it with a clean cloth. It is hot: hold the cloth as the machine's instructions say.</source>
            <translation>Mirar las dos caras del espejo antes de meterlo y limpiarlo con un paño limpio. Está caliente: sujetar el paño como dicen las instrucciones de la máquina.</translation>
        </message>
        <message>
            <source>Look at it where it lies, and tell the foreman: its record is only in the old log, which is kept.</source>
            <translation>Mirarla donde está y decirlo al encargado: su registro está solo en el registro antiguo, que se conserva.</translation>
        </message>
        <message>
            <source>Look at joint %1</source>
            <translation>Ver la unión %1</translation>
        </message>
        <message>
            <source>Look at the edges: gap to %1 mm, step to %2 mm.</source>
            <translation>Mirar cantos: hueco hasta %1 mm, escalón hasta %2 mm.</translation>
        </message>
        <message>
            <source>Look round the demo shop</source>
            <translation>Ver el taller demo</translation>
        </message>
        <message>
            <source>Look whether date and time are right now, then "Seen".</source>
            <translation>Mirar si fecha y hora son correctas ahora; luego «Visto».</translation>
        </message>
        <message>
            <source>Look which bench it is, then press.</source>
            <translation>Mirar qué banco es y pulsar.</translation>
        </message>
        <message>
            <source>Looked at</source>
            <translation>Examen</translation>
        </message>
        <message>
            <source>Looked for in %1.</source>
            <translation>Buscadas en %1.</translation>
        </message>
        <message>
            <source>Lost before the faces press</source>
            <translation>Perdida antes de apretar las caras</translation>
        </message>
        <message>
            <source>Made %1 times, best: %2, %3.</source>
            <translation>Hecha %1 veces, la mejor: %2, %3.</translation>
        </message>
        <message>
            <source>Made by %1</source>
            <translation>Hecho por %1</translation>
        </message>
        <message>
            <source>Made once: %1, %2.</source>
            <translation>Hecha una vez: %1, %2.</translation>
        </message>
        <message>
            <source>Make a trial</source>
            <translation>Hacer prueba</translation>
        </message>
        <message>
            <source>Make another trial</source>
            <translation>Hacer otra prueba</translation>
        </message>
        <message>
            <source>Make the same weld three times, with nothing wrong. It should look like the same weld.</source>
            <translation>Hacer tres veces la misma soldadura, sin nada mal. Debe parecer la misma.</translation>
        </message>
        <message>
            <source>Maker, sheet 1</source>
            <translation>Fabricante, placa 1</translation>
        </message>
        <message>
            <source>Maker, sheet 2</source>
            <translation>Fabricante, placa 2</translation>
        </message>
        <message>
            <source>Mark</source>
            <translation>Marcar</translation>
        </message>
        <message>
            <source>Material</source>
            <translation>Material</translation>
        </message>
        <message>
            <source>May be rewelded</source>
            <translation>Se puede resoldar</translation>
        </message>
        <message>
            <source>May fall</source>
            <translation>Puede bajar</translation>
        </message>
        <message>
            <source>May not fall</source>
            <translation>No puede bajar</translation>
        </message>
        <message>
            <source>Measure</source>
            <translation>Medir</translation>
        </message>
        <message>
            <source>Measure how far the faces are out of line.</source>
            <translation>Medir cuánto se desalinean las caras.</translation>
        </message>
        <message>
            <source>Measure its width, over both beads.</source>
            <translation>Medir su ancho, sobre los dos cordones.</translation>
        </message>
        <message>
            <source>Measure the bead's height at its worst place.</source>
            <translation>Medir la altura del cordón en su peor sitio.</translation>
        </message>
        <message>
            <source>Measure the plate</source>
            <translation>Medir el espejo</translation>
        </message>
        <message>
            <source>Measure the plate on its face. A plate above its window makes a fast bead and damages the melt; it also burns worse and smells.</source>
            <translation>Medir el espejo en su cara. Por encima de su margen hace un cordón rápido y daña el fundido; también quema más y huele.</translation>
        </message>
        <message>
            <source>Measure the valley's height above the sheet.</source>
            <translation>Medir la altura del valle sobre la placa.</translation>
        </message>
        <message>
            <source>Melt left</source>
            <translation>Fundido que queda</translation>
        </message>
        <message>
            <source>Middle</source>
            <translation>Centro</translation>
        </message>
        <message>
            <source>Monday morning</source>
            <translation>Lunes por la mañana</translation>
        </message>
        <message>
            <source>More</source>
            <translation>Más</translation>
        </message>
        <message>
            <source>More rows</source>
            <translation>Más abajo</translation>
        </message>
        <message>
            <source>More steps</source>
            <translation>Más pasos</translation>
        </message>
        <message>
            <source>More: %1 of %2</source>
            <translation>Más: %1 de %2</translation>
        </message>
        <message>
            <source>Moving air takes the heat off bare faces while the plate leaves. Look for it and shield the seam, and be quick at the changeover.</source>
            <translation>El aire en movimiento quita calor a las caras desnudas mientras sale el espejo. Buscarlo, proteger la junta y ser rápido en el cambio.</translation>
        </message>
        <message>
            <source>My own PIN</source>
            <translation>Mi PIN</translation>
        </message>
        <message>
            <source>N/mm²: alignment, soak, joining</source>
            <translation>N/mm²: igualar, calentar, unir</translation>
        </message>
        <message>
            <source>Name and drive</source>
            <translation>Nombre y mando</translation>
        </message>
        <message>
            <source>Name of the bench</source>
            <translation>Nombre del banco</translation>
        </message>
        <message>
            <source>Name of the shop</source>
            <translation>Nombre del taller</translation>
        </message>
        <message>
            <source>Near its back end this plate was 40 K colder. The bead stayed small there while the rest was ready; a clock can't see that, only somebody who looks along the seam.</source>
            <translation>Cerca de su extremo trasero este espejo estaba 40 K más frío. Allí el cordón quedó pequeño cuando el resto ya estaba; un reloj no lo ve, solo quien mira a lo largo de la junta.</translation>
        </message>
        <message>
            <source>Neither the log nor the spill file can be written. It sounds like a step that is not on disk.</source>
            <translation>No se puede escribir ni el registro ni el archivo de reserva. Suena como un paso que no está guardado.</translation>
        </message>
        <message>
            <source>New PIN of %1</source>
            <translation>PIN nuevo de %1</translation>
        </message>
        <message>
            <source>Newer</source>
            <translation>Más nuevas</translation>
        </message>
        <message>
            <source>Newer joints</source>
            <translation>Más nuevas</translation>
        </message>
        <message>
            <source>Next chapter</source>
            <translation>Capítulo siguiente</translation>
        </message>
        <message>
            <source>Next seam</source>
            <translation>Próxima junta</translation>
        </message>
        <message>
            <source>Next weld</source>
            <translation>Siguiente</translation>
        </message>
        <message>
            <source>Next: %1</source>
            <translation>Sigue: %1</translation>
        </message>
        <message>
            <source>No *.%1 lies in %2.</source>
            <translation>No hay ningún *.%1 en %2.</translation>
        </message>
        <message>
            <source>No backup of the log. %1</source>
            <translation>Registro sin respaldo. %1</translation>
        </message>
        <message>
            <source>No cooling time is printed for this shop temperature.</source>
            <translation>No hay tiempo de enfriar impreso para esta temperatura del taller.</translation>
        </message>
        <message>
            <source>No copy of the log for others. %1</source>
            <translation>Registro sin copia para otros. %1</translation>
        </message>
        <message>
            <source>No coupons are entered yet.</source>
            <translation>Aún no hay probetas anotadas.</translation>
        </message>
        <message>
            <source>No decision and no sign-off yet.</source>
            <translation>Aún sin decisión ni firma.</translation>
        </message>
        <message>
            <source>No foreman has a PIN on this tablet.</source>
            <translation>Ningún encargado tiene PIN en esta tableta.</translation>
        </message>
        <message>
            <source>No foreman has a PIN on this tablet: nothing can be kept.</source>
            <translation>Ningún encargado tiene PIN en esta tableta: no se puede guardar nada.</translation>
        </message>
        <message>
            <source>No gauge at hand</source>
            <translation>No hay medidor a mano</translation>
        </message>
        <message>
            <source>No heat estimate: %1.</source>
            <translation>Sin estimación térmica: %1.</translation>
        </message>
        <message>
            <source>No joint here is wholly covered by a seal.</source>
            <translation>Ninguna unión de aquí está del todo cubierta por un sello.</translation>
        </message>
        <message>
            <source>No joint holds the batch "%1".</source>
            <translation>Ninguna unión tiene el lote «%1».</translation>
        </message>
        <message>
            <source>No joint is in this log yet.</source>
            <translation>Aún no hay uniones en este registro.</translation>
        </message>
        <message>
            <source>No joint is like that.</source>
            <translation>Ninguna unión es así.</translation>
        </message>
        <message>
            <source>No joint is there yet to chart.</source>
            <translation>Aún no hay uniones para la gráfica.</translation>
        </message>
        <message>
            <source>No joint on this day</source>
            <translation>Ninguna unión ese día</translation>
        </message>
        <message>
            <source>No mark of the scale lies in the band.</source>
            <translation>Ninguna marca de la escala cae en la banda.</translation>
        </message>
        <message>
            <source>No mistake was found.</source>
            <translation>Ningún fallo encontrado.</translation>
        </message>
        <message>
            <source>No more coupons</source>
            <translation>No hay más</translation>
        </message>
        <message>
            <source>No more welded</source>
            <translation>No hay más soldadas</translation>
        </message>
        <message>
            <source>No other bench can take it</source>
            <translation>Ningún otro banco puede hacerla</translation>
        </message>
        <message>
            <source>No other mistake of the hands was found.</source>
            <translation>No se halló otro error de las manos.</translation>
        </message>
        <message>
            <source>No page in practice: nothing on it would tell it from a real one.</source>
            <translation>En prácticas no hay página: nada la distinguiría de una real.</translation>
        </message>
        <message>
            <source>No phase was begun.</source>
            <translation>No se empezó ninguna fase.</translation>
        </message>
        <message>
            <source>No place in the guide holds these words.</source>
            <translation>Ningún lugar de la guía contiene estas palabras.</translation>
        </message>
        <message>
            <source>No plastic, no heat, no harm: make your mistakes here.</source>
            <translation>Sin plástico, sin calor, sin daño: los errores, aquí.</translation>
        </message>
        <message>
            <source>No reason was stored.</source>
            <translation>No se guardó ningún motivo.</translation>
        </message>
        <message>
            <source>No required factor is known for this material.</source>
            <translation>No se conoce factor exigido para este material.</translation>
        </message>
        <message>
            <source>No sound. Watch this screen. The weld goes on.</source>
            <translation>Sin sonido. Mirar esta pantalla. La soldadura sigue.</translation>
        </message>
        <message>
            <source>No tool at hand</source>
            <translation>Sin herramienta</translation>
        </message>
        <message>
            <source>No trial joint yet today of this sheet on bench %1.</source>
            <translation>Hoy aún no hay unión de prueba de esta placa en el banco %1.</translation>
        </message>
        <message>
            <source>No welding factor yet</source>
            <translation>Aún sin factor de soldadura</translation>
        </message>
        <message>
            <source>Nobody has attested: %1.</source>
            <translation>Nadie ha cotejado: %1.</translation>
        </message>
        <message>
            <source>Nobody has looked at this joint yet.</source>
            <translation>Nadie ha examinado aún esta unión.</translation>
        </message>
        <message>
            <source>Nobody in particular</source>
            <translation>Nadie en concreto</translation>
        </message>
        <message>
            <source>Nobody is entered: the plan is for one operator.</source>
            <translation>No hay nadie anotado: el plan es para un operario.</translation>
        </message>
        <message>
            <source>Not all of it can be read.</source>
            <translation>No todo se puede leer.</translation>
        </message>
        <message>
            <source>Not finished</source>
            <translation>Sin terminar</translation>
        </message>
        <message>
            <source>Not finished: %1</source>
            <translation>Sin terminar: %1</translation>
        </message>
        <message>
            <source>Not good: cut it out</source>
            <translation>No vale: cortarla</translation>
        </message>
        <message>
            <source>Not made yet.</source>
            <translation>Aún sin hacer.</translation>
        </message>
        <message>
            <source>Not measured</source>
            <translation>Sin medir</translation>
        </message>
        <message>
            <source>Not needed for this weld</source>
            <translation>No hace falta en esta soldadura</translation>
        </message>
        <message>
            <source>Not ready to weld</source>
            <translation>No apto para soldar</translation>
        </message>
        <message>
            <source>Not ready to weld.</source>
            <translation>No apto para soldar.</translation>
        </message>
        <message>
            <source>Not sealed yet</source>
            <translation>Aún sin sellar</translation>
        </message>
        <message>
            <source>Not sealed yet.</source>
            <translation>Aún sin sellar.</translation>
        </message>
        <message>
            <source>Not sure</source>
            <translation>Hay duda</translation>
        </message>
        <message>
            <source>Not wholly covered by a seal: joints %1.</source>
            <translation>No cubiertas del todo por un sello: uniones %1.</translation>
        </message>
        <message>
            <source>Not yet</source>
            <translation>Aún no</translation>
        </message>
        <message>
            <source>Noted: %1.</source>
            <translation>Anotado: %1.</translation>
        </message>
        <message>
            <source>Notes</source>
            <translation>Notas</translation>
        </message>
        <message>
            <source>Nothing is changed yet.</source>
            <translation>Aún no se ha cambiado nada.</translation>
        </message>
        <message>
            <source>Nothing is due within %1 days.</source>
            <translation>No vence nada en %1 días.</translation>
        </message>
        <message>
            <source>Nothing is to weld.</source>
            <translation>No hay nada que soldar.</translation>
        </message>
        <message>
            <source>Nothing is typed: a few words say why.</source>
            <translation>No hay nada escrito: unas palabras dan el motivo.</translation>
        </message>
        <message>
            <source>Nothing is typed: the edition is printed on the cover.</source>
            <translation>No hay nada escrito: la edición figura en la portada.</translation>
        </message>
        <message>
            <source>Nothing is typed; allowed: 1 to %1 characters.</source>
            <translation>Nada escrito; se permite: 1 a %1 caracteres.</translation>
        </message>
        <message>
            <source>Nothing of that joint could be read.</source>
            <translation>No se pudo leer nada de esa unión.</translation>
        </message>
        <message>
            <source>Nothing stands out among these joints.</source>
            <translation>Nada destaca en estas uniones.</translation>
        </message>
        <message>
            <source>Nothing touching: move the table. Read the scale.</source>
            <translation>Sin contacto: mover la mesa. Leer la escala.</translation>
        </message>
        <message>
            <source>Nothing touching: what the scale reads while the table moves.</source>
            <translation>Sin contacto: lo que marca la escala al mover la mesa.</translation>
        </message>
        <message>
            <source>Nothing wrong there</source>
            <translation>Ahí no había fallo</translation>
        </message>
        <message>
            <source>Nothing yet.</source>
            <translation>Nada todavía.</translation>
        </message>
        <message>
            <source>Nothing.</source>
            <translation>Nada.</translation>
        </message>
        <message>
            <source>Now</source>
            <translation>Ya</translation>
        </message>
        <message>
            <source>Number</source>
            <translation>Numerar</translation>
        </message>
        <message>
            <source>Numbered</source>
            <translation>Numerada</translation>
        </message>
        <message>
            <source>Numbers</source>
            <translation>Números</translation>
        </message>
        <message>
            <source>Of one seam. Others in this clamping are added after it.</source>
            <translation>De una junta. Otras en esta sujeción se añaden después.</translation>
        </message>
        <message>
            <source>Of one spring, as its plate says. The springs add.</source>
            <translation>De un muelle, como dice su chapa. Los muelles se suman.</translation>
        </message>
        <message>
            <source>Of which joint?</source>
            <translation>¿De qué unión?</translation>
        </message>
        <message>
            <source>Older</source>
            <translation>Más antiguas</translation>
        </message>
        <message>
            <source>Older joints</source>
            <translation>Más antiguas</translation>
        </message>
        <message>
            <source>On the sheet</source>
            <translation>En la placa</translation>
        </message>
        <message>
            <source>Once the wheel is locked the reading will fall by about %1 %2 (%3 to %4), as the sheets close up and shrink</source>
            <translation>Una vez bloqueado el volante, la lectura bajará unos %1 %2 (%3 a %4), al cerrarse y contraerse las placas</translation>
        </message>
        <message>
            <source>One</source>
            <translation>Uno</translation>
        </message>
        <message>
            <source>One attested value is withdrawn.</source>
            <translation>Cotejos retirados: 1.</translation>
        </message>
        <message>
            <source>One by one</source>
            <translation>Uno a uno</translation>
        </message>
        <message>
            <source>One further seam is not in this plan: it holds %1.</source>
            <translation>Una junta más no entra en este plan: caben %1.</translation>
        </message>
        <message>
            <source>One joint alone gives no limits yet.</source>
            <translation>Una sola unión no da límites todavía.</translation>
        </message>
        <message>
            <source>One joint: no limits yet.</source>
            <translation>Una unión: aún sin límites.</translation>
        </message>
        <message>
            <source>One long tone of three notes, then two pulses a second until the plate is out.</source>
            <translation>Un tono largo de tres notas y luego dos pulsos por segundo hasta que el espejo esté fuera.</translation>
        </message>
        <message>
            <source>One moment</source>
            <translation>Un momento</translation>
        </message>
        <message>
            <source>One moment: it is being checked.</source>
            <translation>Un momento: se está comprobando.</translation>
        </message>
        <message>
            <source>One number</source>
            <translation>Un número</translation>
        </message>
        <message>
            <source>One place that stays cold</source>
            <translation>Un punto que sigue frío</translation>
        </message>
        <message>
            <source>One seam is kept.</source>
            <translation>Una junta guardada.</translation>
        </message>
        <message>
            <source>One seam is open, and can't be planned.</source>
            <translation>Hay una junta abierta que no se puede planificar.</translation>
        </message>
        <message>
            <source>One short pulse at 3, 2 and 1 s before the soak is over.</source>
            <translation>Un pulso corto 3, 2 y 1 s antes de que acabe el calentamiento.</translation>
        </message>
        <message>
            <source>One value is attested.</source>
            <translation>Valores cotejados: 1.</translation>
        </message>
        <message>
            <source>One value loses its standing.</source>
            <translation>Valores que pierden el cotejo: 1.</translation>
        </message>
        <message>
            <source>One value of %1.</source>
            <translation>Valores: 1, de %1.</translation>
        </message>
        <message>
            <source>One weld at a virtual bench; %1 within limits and with a joint that bends.</source>
            <translation>Soldaduras en un banco virtual: 1; dentro de límites y con una unión que dobla: %1.</translation>
        </message>
        <message>
            <source>One weld. Touch it to see it again.</source>
            <translation>Una soldadura. Tocarla para verla otra vez.</translation>
        </message>
        <message>
            <source>Only a foreman may go on here.</source>
            <translation>Aquí solo puede seguir un encargado.</translation>
        </message>
        <message>
            <source>Only a foreman releases a trial joint.</source>
            <translation>Solo un encargado libera una unión de prueba.</translation>
        </message>
        <message>
            <source>Only one side was looked at: the other bead was %1 high %2, asked are %3.</source>
            <translation>Solo se miró un lado: el otro cordón tenía %1 de alto %2, se piden %3.</translation>
        </message>
        <message>
            <source>Open</source>
            <translation>Abiertas</translation>
        </message>
        <message>
            <source>Open bars</source>
            <translation>Abrir barras</translation>
        </message>
        <message>
            <source>Open the clamp bars.</source>
            <translation>Abrir las barras.</translation>
        </message>
        <message>
            <source>Open the desk</source>
            <translation>Abrir el panel</translation>
        </message>
        <message>
            <source>Open the first</source>
            <translation>Abrir la primera</translation>
        </message>
        <message>
            <source>Open the gap to %1 mm, the same front and back.</source>
            <translation>Abrir el hueco a %1 mm, igual delante y atrás.</translation>
        </message>
        <message>
            <source>Operator</source>
            <translation>Operario</translation>
        </message>
        <message>
            <source>Order</source>
            <translation>Pedido</translation>
        </message>
        <message>
            <source>Order of release</source>
            <translation>Orden al sacar</translation>
        </message>
        <message>
            <source>Order of steps</source>
            <translation>Orden de pasos</translation>
        </message>
        <message>
            <source>Other lessons</source>
            <translation>Otras lecciones</translation>
        </message>
        <message>
            <source>Other seam</source>
            <translation>Otra junta</translation>
        </message>
        <message>
            <source>Out</source>
            <translation>Fuera</translation>
        </message>
        <message>
            <source>Out of limits</source>
            <translation>Fuera de límites</translation>
        </message>
        <message>
            <source>Out of limits: %1.</source>
            <translation>Fuera de límites: %1.</translation>
        </message>
        <message>
            <source>Out of limits: %1. Say why.</source>
            <translation>Fuera de límites: %1. ¿Por qué?</translation>
        </message>
        <message>
            <source>Over both beads, at the same place.</source>
            <translation>Sobre los dos cordones, en el mismo sitio.</translation>
        </message>
        <message>
            <source>Over for %1 days (%2).</source>
            <translation>Vencido hace %1 días (%2).</translation>
        </message>
        <message>
            <source>Over since yesterday (%1).</source>
            <translation>Vencido desde ayer (%1).</translation>
        </message>
        <message>
            <source>Overheated plastic and coatings give off harmful fume: run the extraction, do not smoke, never burn residue off the plate.</source>
            <translation>El plástico y los recubrimientos sobrecalentados desprenden humos nocivos: poner la extracción, no fumar, no quemar nunca restos del espejo.</translation>
        </message>
        <message>
            <source>PDF of these joints</source>
            <translation>PDF de estas uniones</translation>
        </message>
        <message>
            <source>PDF or on paper</source>
            <translation>PDF o en papel</translation>
        </message>
        <message>
            <source>PIN of %1</source>
            <translation>PIN de %1</translation>
        </message>
        <message>
            <source>PP melts higher and freezes sooner than PE-HD: its changeover leaves less time than the card of PE has taught you.</source>
            <translation>El PP funde a más temperatura y solidifica antes que el PE-HD: su cambio deja menos tiempo que el de la ficha de PE.</translation>
        </message>
        <message>
            <source>PP: less force, longer heat</source>
            <translation>PP: menos fuerza, más calor</translation>
        </message>
        <message>
            <source>PRACTICE</source>
            <translation>PRÁCTICA</translation>
        </message>
        <message>
            <source>PVDF forgives little: the melt is thin and freezes fast, so changeover and build-up are short.</source>
            <translation>El PVDF perdona poco: el fundido es fino y solidifica deprisa; cambio y aumento son cortos.</translation>
        </message>
        <message>
            <source>PVDF is welded on a much hotter plate. It gives off harmful gas when it is overheated: keep to the window, and air the place as the machine's and the sheet's instructions say.</source>
            <translation>El PVDF se suelda con un espejo mucho más caliente. Recalentado suelta gas nocivo: mantenerse en el margen y ventilar como dicen las instrucciones de la máquina y de la placa.</translation>
        </message>
        <message>
            <source>PVDF: hot and short</source>
            <translation>PVDF: caliente y corto</translation>
        </message>
        <message>
            <source>Paint joint number %1 on the sheet.</source>
            <translation>Pintar el número de unión %1 en la placa.</translation>
        </message>
        <message>
            <source>Parent sheet</source>
            <translation>Placa base</translation>
        </message>
        <message>
            <source>Parent sheet: %1</source>
            <translation>Placa base: %1</translation>
        </message>
        <message>
            <source>Part</source>
            <translation>Pieza</translation>
        </message>
        <message>
            <source>People are entered by a foreman.</source>
            <translation>A las personas las inscribe un encargado.</translation>
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
            <translation>Fotos sin respaldo. %1</translation>
        </message>
        <message>
            <source>Place %1 of %2, at %3 mm: </source>
            <translation>Punto %1 de %2, a %3 mm: </translation>
        </message>
        <message>
            <source>Place %1 of %2, seam %3 at %4 mm: </source>
            <translation>Punto %1 de %2, junta %3 a %4 mm: </translation>
        </message>
        <message>
            <source>Place %1 of %2: %3.</source>
            <translation>Punto %1 de %2: %3.</translation>
        </message>
        <message>
            <source>Plane</source>
            <translation>Cepillar</translation>
        </message>
        <message>
            <source>Plane both edges. Do not touch them by hand.</source>
            <translation>Cepillar los dos cantos. No tocarlos con la mano.</translation>
        </message>
        <message>
            <source>Plane edges</source>
            <translation>Cepillar</translation>
        </message>
        <message>
            <source>Plate</source>
            <translation>Espejo</translation>
        </message>
        <message>
            <source>Plate and air</source>
            <translation>Espejo y aire</translation>
        </message>
        <message>
            <source>Plate cold or dirty</source>
            <translation>Espejo frío o sucio</translation>
        </message>
        <message>
            <source>Plate has settled. Measure it now.</source>
            <translation>Espejo asentado. Medirlo ahora.</translation>
        </message>
        <message>
            <source>Plate in</source>
            <translation>Meter espejo</translation>
        </message>
        <message>
            <source>Plate in, sheets against it. Turn up to %1.</source>
            <translation>Espejo dentro, placas contra él. Subir a %1.</translation>
        </message>
        <message>
            <source>Plate is dirty</source>
            <translation>Espejo sucio</translation>
        </message>
        <message>
            <source>Plate is hot. Let it settle for 10 minutes.</source>
            <translation>Espejo caliente. Dejarlo asentar 10 minutos.</translation>
        </message>
        <message>
            <source>Plate is settling. Measure it at zero.</source>
            <translation>El espejo se asienta. Medirlo en cero.</translation>
        </message>
        <message>
            <source>Plate is wiped</source>
            <translation>Espejo limpio</translation>
        </message>
        <message>
            <source>Plate out</source>
            <translation>Espejo fuera</translation>
        </message>
        <message>
            <source>Plate out, faces together</source>
            <translation>Espejo fuera, caras juntas</translation>
        </message>
        <message>
            <source>Plate temperature, bench %1</source>
            <translation>Temperatura del espejo, banco %1</translation>
        </message>
        <message>
            <source>Plate too cold</source>
            <translation>Espejo muy frío</translation>
        </message>
        <message>
            <source>Plate too hot</source>
            <translation>Espejo muy caliente</translation>
        </message>
        <message>
            <source>Plate was dirty</source>
            <translation>Espejo sucio</translation>
        </message>
        <message>
            <source>Play</source>
            <translation>Ver</translation>
        </message>
        <message>
            <source>Plug the charger in, and the alarm ends by itself. "Seen" hides it until the battery was charged and is low again.</source>
            <translation>Conectar el cargador y la alarma acaba sola. «Visto» la oculta hasta que la batería se cargue y baje de nuevo.</translation>
        </message>
        <message>
            <source>Polypropylene takes another plate temperature, less pressure and a longer soak than PE-HD. Read the whole card, not only the mark on the scale.</source>
            <translation>El polipropileno pide otra temperatura del espejo, menos presión y más calentamiento que el PE-HD. Leer toda la ficha, no solo la marca de la escala.</translation>
        </message>
        <message>
            <source>Power was off</source>
            <translation>Corte de luz</translation>
        </message>
        <message>
            <source>Power was off.</source>
            <translation>Corte de luz.</translation>
        </message>
        <message>
            <source>Power was off. Last step %1 ago.</source>
            <translation>Corte de luz. Último paso hace %1.</translation>
        </message>
        <message>
            <source>Practice</source>
            <translation>Práctica</translation>
        </message>
        <message>
            <source>Practice of %1</source>
            <translation>Práctica de %1</translation>
        </message>
        <message>
            <source>Practice record</source>
            <translation>Informe de prácticas</translation>
        </message>
        <message>
            <source>Practice record. Not a certificate.</source>
            <translation>Informe de prácticas. No es un certificado.</translation>
        </message>
        <message>
            <source>Practice was closed in mid-weld: nothing was kept to see again.</source>
            <translation>La práctica se cerró a media soldadura: no quedó nada que ver.</translation>
        </message>
        <message>
            <source>Practice, up to %1 times as fast. No joint here counts.</source>
            <translation>Práctica, hasta %1 veces más rápida. Ninguna unión de aquí cuenta.</translation>
        </message>
        <message>
            <source>Practice. No joint here counts, and this report is no certificate.</source>
            <translation>Práctica. Ninguna unión de aquí cuenta y este informe no es un certificado.</translation>
        </message>
        <message>
            <source>Practice. This joint counts for nothing, and this record is no certificate.</source>
            <translation>Práctica. Esta unión no cuenta para nada y este informe no es un certificado.</translation>
        </message>
        <message>
            <source>Prepare</source>
            <translation>Preparar</translation>
        </message>
        <message>
            <source>Press the foot switch now.</source>
            <translation>Pisar ahora el pedal.</translation>
        </message>
        <message>
            <source>Press to work it out anew</source>
            <translation>Pulsar para calcular de nuevo</translation>
        </message>
        <message>
            <source>Pressure</source>
            <translation>Presión</translation>
        </message>
        <message>
            <source>Pressure in soak presses out the melt that soak is there to make: the bead gets fat and the joint brittle.</source>
            <translation>La presión al calentar expulsa el fundido que el calentamiento debe formar: el cordón engorda y la unión queda frágil.</translation>
        </message>
        <message>
            <source>Pressure is off</source>
            <translation>Presión quitada</translation>
        </message>
        <message>
            <source>Pressure is on</source>
            <translation>Presión puesta</translation>
        </message>
        <message>
            <source>Pressure on the faces in soak: %1; at most %2.</source>
            <translation>Presión en las caras al calentar: %1; como máximo %2.</translation>
        </message>
        <message>
            <source>Pressure set</source>
            <translation>Presión plan</translation>
        </message>
        <message>
            <source>Pressure, plate</source>
            <translation>Presión, espejo</translation>
        </message>
        <message>
            <source>Pressures</source>
            <translation>Presiones</translation>
        </message>
        <message>
            <source>Pressures, plate</source>
            <translation>Presiones, espejo</translation>
        </message>
        <message>
            <source>Print</source>
            <translation>Imprimir</translation>
        </message>
        <message>
            <source>Print or mail it today: whoever has this tablet could seal anew, and only a fingerprint elsewhere shows it.</source>
            <translation>Imprimir o enviar hoy: quien tenga esta tableta podría sellar de nuevo, y solo lo delata una huella guardada fuera.</translation>
        </message>
        <message>
            <source>Procedure</source>
            <translation>Procedimiento</translation>
        </message>
        <message>
            <source>Procedures</source>
            <translation>Procedimientos</translation>
        </message>
        <message>
            <source>Pulled, of a joint</source>
            <translation>Tracción, de una unión</translation>
        </message>
        <message>
            <source>Pulled, of a trial</source>
            <translation>Tracción, de una prueba</translation>
        </message>
        <message>
            <source>Pulses that do not rise, until the reading stands.</source>
            <translation>Pulsos que no suben, hasta que esté la lectura.</translation>
        </message>
        <message>
            <source>Put it right</source>
            <translation>Corregir</translation>
        </message>
        <message>
            <source>Put right on %1 by %2</source>
            <translation>Corregido el %1 por %2</translation>
        </message>
        <message>
            <source>Rate %1 N for each %2 (± %3 %), zero at %4 %2.</source>
            <translation>Rigidez %1 N por cada %2 (± %3 %), cero en %4 %2.</translation>
        </message>
        <message>
            <source>Rate from its plate</source>
            <translation>Rigidez de la chapa</translation>
        </message>
        <message>
            <source>Rate of a spring</source>
            <translation>Rigidez de un muelle</translation>
        </message>
        <message>
            <source>Reaches the required %1 by its means, not with all its interval.</source>
            <translation>Llega al %1 exigido por sus medias, no con todo su intervalo.</translation>
        </message>
        <message>
            <source>Reaches the required %1 by its means; there is no interval.</source>
            <translation>Alcanza el %1 exigido por sus medias; no hay intervalo.</translation>
        </message>
        <message>
            <source>Read</source>
            <translation>Leer</translation>
        </message>
        <message>
            <source>Read a CSV file</source>
            <translation>Leer archivo CSV</translation>
        </message>
        <message>
            <source>Read it</source>
            <translation>Leerlo</translation>
        </message>
        <message>
            <source>Read it where the bench stands. In the plan: %1 °C.</source>
            <translation>Leerla donde está el banco. En el plan: %1 °C.</translation>
        </message>
        <message>
            <source>Read on the face. %1</source>
            <translation>Leer en la cara. %1</translation>
        </message>
        <message>
            <source>Read plate</source>
            <translation>Medir</translation>
        </message>
        <message>
            <source>Read scale %1 now and type it in.</source>
            <translation>Leer ahora la escala %1 y teclearla.</translation>
        </message>
        <message>
            <source>Read the file that is named, and look at each joint that it names.</source>
            <translation>Leer el archivo nombrado y mirar cada unión que nombra.</translation>
        </message>
        <message>
            <source>Read the plate on its face</source>
            <translation>Medir el espejo en su cara</translation>
        </message>
        <message>
            <source>Read the plate on its face. %1</source>
            <translation>Leer el espejo en su cara. %1</translation>
        </message>
        <message>
            <source>Read the scale again after the lock, and again. When it has fallen below its band, turn up to the mark and lock again.</source>
            <translation>Tras bloquear, leer otra vez la escala, y otra. Si ha bajado de su banda, girar hasta la marca y bloquear de nuevo.</translation>
        </message>
        <message>
            <source>Read the scale and type it in. If it is too low, turn up to the reading that is shown ("Reading is below …").</source>
            <translation>Leer la escala y escribirla. Si es baja, subir a la lectura mostrada («La lectura no llega a …»).</translation>
        </message>
        <message>
            <source>Reading</source>
            <translation>Lectura</translation>
        </message>
        <message>
            <source>Reading is below %1. Turn up to %2.</source>
            <translation>La lectura no llega a %1. Subir a %2.</translation>
        </message>
        <message>
            <source>Reading not followed</source>
            <translation>Lectura no seguida</translation>
        </message>
        <message>
            <source>Reading without force</source>
            <translation>Lectura sin fuerza</translation>
        </message>
        <message>
            <source>Readings</source>
            <translation>Lecturas</translation>
        </message>
        <message>
            <source>Readings and measures</source>
            <translation>Lecturas y medidas</translation>
        </message>
        <message>
            <source>Readings of the scale against the forces that a load cell shows: at least 3, over the whole range that is welded with.</source>
            <translation>Lecturas de la escala frente a las fuerzas que marca una célula de carga: al menos 3, en todo el margen con que se suelda.</translation>
        </message>
        <message>
            <source>Reason</source>
            <translation>Motivo</translation>
        </message>
        <message>
            <source>Record</source>
            <translation>Informe</translation>
        </message>
        <message>
            <source>Record of a heated-tool butt weld</source>
            <translation>Informe de soldadura a tope con elemento calefactor</translation>
        </message>
        <message>
            <source>Record of joint %1</source>
            <translation>Informe de la unión %1</translation>
        </message>
        <message>
            <source>Release</source>
            <translation>Sacar</translation>
        </message>
        <message>
            <source>Release</source>
            <comment>a trial joint, by the foreman</comment>
            <translation>Liberar</translation>
        </message>
        <message>
            <source>Release it</source>
            <translation>Liberarla</translation>
        </message>
        <message>
            <source>Released too early</source>
            <translation>Sacada antes de tiempo</translation>
        </message>
        <message>
            <source>Remarks</source>
            <translation>Observ.</translation>
        </message>
        <message>
            <source>Remove the demo</source>
            <translation>Quitar el demo</translation>
        </message>
        <message>
            <source>Remove the demo shop</source>
            <translation>Quitar el taller demo</translation>
        </message>
        <message>
            <source>Repair</source>
            <translation>Reparar</translation>
        </message>
        <message>
            <source>Report</source>
            <translation>Informe</translation>
        </message>
        <message>
            <source>Report of chosen joints</source>
            <translation>Informe de uniones elegidas</translation>
        </message>
        <message>
            <source>Right-handed</source>
            <translation>Diestro</translation>
        </message>
        <message>
            <source>Rising pulses, two a second, until the faces are together.</source>
            <translation>Pulsos que suben, dos por segundo, hasta que las caras estén juntas.</translation>
        </message>
        <message>
            <source>Rising: is the plate cold or dirty?</source>
            <translation>Sube: ¿espejo frío o sucio?</translation>
        </message>
        <message>
            <source>Row below</source>
            <translation>Fila debajo</translation>
        </message>
        <message>
            <source>Rows after</source>
            <translation>Más abajo</translation>
        </message>
        <message>
            <source>Rows before</source>
            <translation>Más arriba</translation>
        </message>
        <message>
            <source>SEAMCLOCK_RESOURCES %1 is no folder; allowed: a folder with procedures/ in it, or leave it unset</source>
            <translation>SEAMCLOCK_RESOURCES %1 no es una carpeta; permitido: una carpeta con procedures/ dentro, o sin definir</translation>
        </message>
        <message>
            <source>Said, changed and seen</source>
            <translation>Dicho, cambiado y visto</translation>
        </message>
        <message>
            <source>Same again</source>
            <translation>Otra igual</translation>
        </message>
        <message>
            <source>Save</source>
            <translation>Guardar</translation>
        </message>
        <message>
            <source>Save as PDF</source>
            <translation>Guardar PDF</translation>
        </message>
        <message>
            <source>Save report</source>
            <translation>Guardar informe</translation>
        </message>
        <message>
            <source>Save the joint</source>
            <translation>Guardar la unión</translation>
        </message>
        <message>
            <source>Saved: %1</source>
            <translation>Guardado: %1</translation>
        </message>
        <message>
            <source>Say why</source>
            <translation>Motivo</translation>
        </message>
        <message>
            <source>Scale</source>
            <translation>Escala</translation>
        </message>
        <message>
            <source>Scale %1</source>
            <translation>Escala %1</translation>
        </message>
        <message>
            <source>Scale %1 in cooling</source>
            <translation>Escala %1 al enfriar</translation>
        </message>
        <message>
            <source>Scale and force</source>
            <translation>Escala y fuerza</translation>
        </message>
        <message>
            <source>Scale and springs</source>
            <translation>Escala y muelles</translation>
        </message>
        <message>
            <source>Scale at %1, wheel locked. Wait for the signal.</source>
            <translation>Escala a %1, volante bloqueado. Esperar la señal.</translation>
        </message>
        <message>
            <source>Scale is not on zero</source>
            <translation>Escala fuera de cero</translation>
        </message>
        <message>
            <source>Scale of bench %1</source>
            <translation>Escala del banco %1</translation>
        </message>
        <message>
            <source>Scale reading</source>
            <translation>Leer escala</translation>
        </message>
        <message>
            <source>Scale reads %1</source>
            <translation>Escala: %1</translation>
        </message>
        <message>
            <source>Scale reads %1 %2</source>
            <translation>La escala marca %1 %2</translation>
        </message>
        <message>
            <source>Scale too coarse: only a foreman may allow it.</source>
            <translation>Escala muy basta: solo un encargado puede permitirla.</translation>
        </message>
        <message>
            <source>Scatter %1 N; the line is known to ± %2 N, a reading to ± %3 N (95 %, at the middle).</source>
            <translation>Dispersión %1 N; la recta se conoce a ± %2 N, una lectura a ± %3 N (95 %, en el centro).</translation>
        </message>
        <message>
            <source>Screen: %1</source>
            <translation>Pantalla: %1</translation>
        </message>
        <message>
            <source>Seal</source>
            <translation>Sello</translation>
        </message>
        <message>
            <source>Seal again</source>
            <translation>Resellar</translation>
        </message>
        <message>
            <source>Seal the day</source>
            <translation>Sellar el día</translation>
        </message>
        <message>
            <source>Sealed</source>
            <translation>Sellada</translation>
        </message>
        <message>
            <source>Sealed at %1 by %2</source>
            <translation>Sellado a las %1 por %2</translation>
        </message>
        <message>
            <source>Seals</source>
            <translation>Sellos</translation>
        </message>
        <message>
            <source>Seam</source>
            <translation>Junta</translation>
        </message>
        <message>
            <source>Seam %1</source>
            <translation>Junta %1</translation>
        </message>
        <message>
            <source>Seam %1 alone takes so long. </source>
            <translation>La junta %1 sola tarda eso. </translation>
        </message>
        <message>
            <source>Seam %1 has no joint yet.</source>
            <translation>La junta %1 aún no tiene unión.</translation>
        </message>
        <message>
            <source>Seam %1 has no joint yet. It is of a job that lies in a file.</source>
            <translation>La junta %1 aún no tiene unión. Su trabajo está en un archivo.</translation>
        </message>
        <message>
            <source>Seam %1 is not planned: %2.</source>
            <translation>La junta %1 no entra en el plan: %2.</translation>
        </message>
        <message>
            <source>Seam %1 is open.</source>
            <translation>La junta %1 está abierta.</translation>
        </message>
        <message>
            <source>Seam %1 is taken away.</source>
            <translation>Junta %1 quitada.</translation>
        </message>
        <message>
            <source>Seam %1 of %2: </source>
            <translation>Junta %1 de %2: </translation>
        </message>
        <message>
            <source>Seam %1 of job %2</source>
            <translation>Junta %1 del trabajo %2</translation>
        </message>
        <message>
            <source>Seam %1 of job %2 is kept.</source>
            <translation>Junta %1 del trabajo %2 guardada.</translation>
        </message>
        <message>
            <source>Seam %1 waits for the foreman's word on joint %2.</source>
            <translation>La junta %1 espera la palabra del encargado sobre la unión %2.</translation>
        </message>
        <message>
            <source>Seam %1, %2</source>
            <translation>Junta %1, %2</translation>
        </message>
        <message>
            <source>Seam is shielded</source>
            <translation>Junta protegida</translation>
        </message>
        <message>
            <source>Seam's label</source>
            <translation>Nombre de la junta</translation>
        </message>
        <message>
            <source>Seamclock</source>
            <translation>Seamclock</translation>
        </message>
        <message>
            <source>Seamclock can't start</source>
            <translation>Seamclock no arranca</translation>
        </message>
        <message>
            <source>Seamclock can't start.</source>
            <translation>Seamclock no puede arrancar.</translation>
        </message>
        <message>
            <source>Seamclock guides you. It decides nothing.</source>
            <translation>Seamclock guía. No decide nada.</translation>
        </message>
        <message>
            <source>Seamclock, practice: physics in a model, no plastic. It can't teach the feel of a wheel, and it proves no skill at a real bench.</source>
            <translation>Seamclock, práctica: física de un modelo, sin plástico. No puede enseñar el tacto del volante ni demuestra destreza en un banco real.</translation>
        </message>
        <message>
            <source>Seamclock: demo shop</source>
            <translation>Seamclock: taller demo</translation>
        </message>
        <message>
            <source>Seamclock: first steps</source>
            <translation>Seamclock: primeros pasos</translation>
        </message>
        <message>
            <source>Seamclock: practice</source>
            <translation>Seamclock: práctica</translation>
        </message>
        <message>
            <source>Seamclock; log %1</source>
            <translation>Seamclock; registro %1</translation>
        </message>
        <message>
            <source>Seamclock; log %1, %2</source>
            <translation>Seamclock; registro %1, %2</translation>
        </message>
        <message>
            <source>Seams</source>
            <translation>Juntas</translation>
        </message>
        <message>
            <source>Seams made: %1 of %2.</source>
            <translation>Juntas hechas: %1 de %2.</translation>
        </message>
        <message>
            <source>Search</source>
            <translation>Buscar</translation>
        </message>
        <message>
            <source>Search for what?</source>
            <translation>¿Qué se busca?</translation>
        </message>
        <message>
            <source>Search the guide</source>
            <translation>Buscar en la guía</translation>
        </message>
        <message>
            <source>Second sheet</source>
            <translation>Segunda placa</translation>
        </message>
        <message>
            <source>Second sheet is clamped</source>
            <translation>Segunda placa sujeta</translation>
        </message>
        <message>
            <source>See it again</source>
            <translation>Ver otra vez</translation>
        </message>
        <message>
            <source>See the result</source>
            <translation>Ver el resultado</translation>
        </message>
        <message>
            <source>Seen</source>
            <translation>Visto</translation>
        </message>
        <message>
            <source>Seen again: %1</source>
            <translation>Vista otra vez: %1</translation>
        </message>
        <message>
            <source>Set</source>
            <translation>Poner</translation>
        </message>
        <message>
            <source>Set</source>
            <comment>what was to be, beside what was</comment>
            <translation>Plan</translation>
        </message>
        <message>
            <source>Set and actual</source>
            <translation>Plan y valor real</translation>
        </message>
        <message>
            <source>Set gap</source>
            <translation>Poner hueco</translation>
        </message>
        <message>
            <source>Set out seam %1's sheets.</source>
            <translation>Preparar las placas de %1.</translation>
        </message>
        <message>
            <source>Set plate</source>
            <translation>Ajustar</translation>
        </message>
        <message>
            <source>Set the gap to %1 mm, the same front and back.</source>
            <translation>Poner el hueco a %1 mm, igual delante y atrás.</translation>
        </message>
        <message>
            <source>Set the plate of bench %1 to %2 °C for %3. It settles until %4.</source>
            <translation>Poner el espejo del banco %1 a %2 °C para %3. Se asienta hasta las %4.</translation>
        </message>
        <message>
            <source>Set up the shop</source>
            <translation>Preparar el taller</translation>
        </message>
        <message>
            <source>Set-up</source>
            <translation>Ajustes</translation>
        </message>
        <message>
            <source>Set-up: procedures and benches</source>
            <translation>Ajustes: procedimientos y bancos</translation>
        </message>
        <message>
            <source>Several seams in one clamping with + between them: 620+580.</source>
            <translation>Varias juntas en una sujeción con + entre ellas: 620+580.</translation>
        </message>
        <message>
            <source>Sheet</source>
            <translation>Placa</translation>
        </message>
        <message>
            <source>Sheet %1</source>
            <translation>Placa %1</translation>
        </message>
        <message>
            <source>Sheet %1: %2</source>
            <translation>Placa %1: %2</translation>
        </message>
        <message>
            <source>Sheet 1</source>
            <translation>Placa 1</translation>
        </message>
        <message>
            <source>Sheet 2</source>
            <translation>Placa 2</translation>
        </message>
        <message>
            <source>Sheet [mm]</source>
            <translation>Placa [mm]</translation>
        </message>
        <message>
            <source>Sheet is out</source>
            <translation>Placa fuera</translation>
        </message>
        <message>
            <source>Sheets</source>
            <translation>Placas</translation>
        </message>
        <message>
            <source>Sheets apart, plate out, faces together.</source>
            <translation>Separar placas, espejo fuera, caras juntas.</translation>
        </message>
        <message>
            <source>Sheets apart, plate out, faces together. Press "Plate out" as the plate leaves.</source>
            <translation>Separar placas, espejo fuera, juntar caras. Pulsar «Espejo fuera» cuando el espejo sale.</translation>
        </message>
        <message>
            <source>Shield</source>
            <translation>Proteger</translation>
        </message>
        <message>
            <source>Shield the seam. Wipe it dry.</source>
            <translation>Proteger la junta. Secarla.</translation>
        </message>
        <message>
            <source>Shielded from draught</source>
            <translation>Protegida del aire</translation>
        </message>
        <message>
            <source>Shim</source>
            <translation>Calzar</translation>
        </message>
        <message>
            <source>Shop</source>
            <translation>Taller</translation>
        </message>
        <message>
            <source>Shop temperature</source>
            <translation>Temperatura del taller</translation>
        </message>
        <message>
            <source>Sign in</source>
            <translation>Entrar</translation>
        </message>
        <message>
            <source>Sign it off</source>
            <translation>Firmarla</translation>
        </message>
        <message>
            <source>Signal</source>
            <translation>Señal</translation>
        </message>
        <message>
            <source>Slammed together</source>
            <translation>Unidas de golpe</translation>
        </message>
        <message>
            <source>Slow</source>
            <translation>Lento</translation>
        </message>
        <message>
            <source>Smallest division</source>
            <translation>División menor</translation>
        </message>
        <message>
            <source>Smallest division of the scale</source>
            <translation>División menor de la escala</translation>
        </message>
        <message>
            <source>Soak</source>
            <translation>Calentar</translation>
        </message>
        <message>
            <source>Soak from zero to drag</source>
            <translation>Calentar de cero a arrastre</translation>
        </message>
        <message>
            <source>Soak is over by %1 s. Plate out now.</source>
            <translation>Calentado %1 s de más. Espejo fuera ya.</translation>
        </message>
        <message>
            <source>Soak was counted before the bead stood: it was %1 high, asked are %2.</source>
            <translation>El calentamiento contó antes de formarse el cordón: tenía %1 de alto, se piden %2.</translation>
        </message>
        <message>
            <source>Soak's reading lies below the calibration.</source>
            <translation>La lectura al calentar queda bajo la calibración.</translation>
        </message>
        <message>
            <source>Soak, at most</source>
            <translation>Calentar, máximo</translation>
        </message>
        <message>
            <source>Soaked under pressure</source>
            <translation>Calentado con presión</translation>
        </message>
        <message>
            <source>Some days of joints by a virtual operator. It takes a few seconds.</source>
            <translation>Unos días de uniones de un operario virtual. Tarda unos segundos.</translation>
        </message>
        <message>
            <source>Some times are chosen, not measured: fewer than five such joints.</source>
            <translation>Algunos tiempos son elegidos, no medidos: menos de cinco uniones así.</translation>
        </message>
        <message>
            <source>Somebody disturbed it</source>
            <translation>Alguien interrumpió</translation>
        </message>
        <message>
            <source>Somebody new</source>
            <translation>Persona nueva</translation>
        </message>
        <message>
            <source>Somebody rings while the plate is in. Soak does not wait, and you can't see the bench with the phone at your ear. Decide.</source>
            <translation>Alguien llama con el espejo dentro. El calentamiento no espera, y con el teléfono al oído no se ve el banco. Decidir.</translation>
        </message>
        <message>
            <source>Somebody took the spring's newtons for kilograms of force, so every reading on the card was ten times too small. A 10 mm seam of this length takes 2700 N, more than a grown man three times over.</source>
            <translation>Alguien tomó los newtons del muelle por kilogramos de fuerza; cada lectura de la ficha era diez veces menor. Una junta de 10 mm de esta longitud pide 2700 N, más que tres hombres adultos.</translation>
        </message>
        <message>
            <source>Somebody who welds</source>
            <translation>Alguien que suelda</translation>
        </message>
        <message>
            <source>Somebody who welds is entered.</source>
            <translation>Se inscribe a alguien que suelda.</translation>
        </message>
        <message>
            <source>Something else</source>
            <translation>Otro motivo</translation>
        </message>
        <message>
            <source>Something is wrong</source>
            <translation>Algo va mal</translation>
        </message>
        <message>
            <source>Something sticks to it.</source>
            <translation>Tiene algo pegado.</translation>
        </message>
        <message>
            <source>Speed × %1</source>
            <translation>Velocidad × %1</translation>
        </message>
        <message>
            <source>Spring is off</source>
            <translation>Muelle suelto</translation>
        </message>
        <message>
            <source>Spring off</source>
            <translation>Soltar muelle</translation>
        </message>
        <message>
            <source>Springs</source>
            <translation>Muelles</translation>
        </message>
        <message>
            <source>Stand at the bench. Can you hear the signal?</source>
            <translation>Ponerse junto al banco. ¿Se oye la señal?</translation>
        </message>
        <message>
            <source>Stand ready. Do nothing before zero.</source>
            <translation>Estar listo. No hacer nada antes de cero.</translation>
        </message>
        <message>
            <source>Step</source>
            <translation>Escalón</translation>
        </message>
        <message>
            <source>Step from one sheet to the other.</source>
            <translation>Escalón de una placa a la otra.</translation>
        </message>
        <message>
            <source>Steps are written in this name. Later: the log names nobody.</source>
            <translation>Los pasos llevan este nombre. Más tarde: el registro no nombra a nadie.</translation>
        </message>
        <message>
            <source>Stop</source>
            <translation>Parar</translation>
        </message>
        <message>
            <source>Stop this weld</source>
            <translation>Parar soldadura</translation>
        </message>
        <message>
            <source>Stop this weld? Say why.</source>
            <translation>¿Parar esta soldadura? ¿Por qué?</translation>
        </message>
        <message>
            <source>Stop: cut out</source>
            <translation>Parar: cortar</translation>
        </message>
        <message>
            <source>Stop: plate too cold</source>
            <translation>Parar: espejo frío</translation>
        </message>
        <message>
            <source>Stop: plate too hot</source>
            <translation>Parar: muy caliente</translation>
        </message>
        <message>
            <source>Stopped</source>
            <translation>Parada</translation>
        </message>
        <message>
            <source>Stopped: %1</source>
            <translation>Parada: %1</translation>
        </message>
        <message>
            <source>Stored at closing, by rules %1. By today's rules %2: %3.</source>
            <translation>Guardado al cerrar, con reglas %1. Con las reglas de hoy (%2): %3.</translation>
        </message>
        <message>
            <source>Stored at closing. After a correction: %1.</source>
            <translation>Así guardado al cerrar. Tras una corrección: %1.</translation>
        </message>
        <message>
            <source>Stored at closing. Worked out again: %1.</source>
            <translation>Así guardado al cerrar. Evaluado de nuevo: %1.</translation>
        </message>
        <message>
            <source>Stored at closing: %1</source>
            <translation>Guardado al cerrar: %1</translation>
        </message>
        <message>
            <source>Strength tests</source>
            <translation>Ensayos</translation>
        </message>
        <message>
            <source>Strengths</source>
            <translation>Resistencias</translation>
        </message>
        <message>
            <source>Sums by sheet</source>
            <translation>Sumas por placa</translation>
        </message>
        <message>
            <source>Supervisor</source>
            <translation>Supervisor</translation>
        </message>
        <message>
            <source>Tables</source>
            <translation>Tablas</translation>
        </message>
        <message>
            <source>Take away all without a joint</source>
            <translation>Quitar todas las que no tienen unión</translation>
        </message>
        <message>
            <source>Take back</source>
            <translation>Deshacer</translation>
        </message>
        <message>
            <source>Take care</source>
            <translation>Precaución</translation>
        </message>
        <message>
            <source>Take it away</source>
            <translation>Quitarla</translation>
        </message>
        <message>
            <source>Take off</source>
            <translation>Quitar</translation>
        </message>
        <message>
            <source>Take out</source>
            <translation>Quitar</translation>
        </message>
        <message>
            <source>Take out early</source>
            <translation>Sacar antes</translation>
        </message>
        <message>
            <source>Take the call</source>
            <translation>Contestar</translation>
        </message>
        <message>
            <source>Take the film off both edges.</source>
            <translation>Quitar el film de los dos cantos.</translation>
        </message>
        <message>
            <source>Taken away it is no longer offered; the log keeps that it was there.</source>
            <translation>Quitada ya no se ofrece; el registro guarda que estuvo.</translation>
        </message>
        <message>
            <source>Ten seconds of soak are left; in cooling, one minute.</source>
            <translation>Quedan diez segundos de calentamiento; en enfriamiento, un minuto.</translation>
        </message>
        <message>
            <source>Tested by</source>
            <translation>Ensayado según</translation>
        </message>
        <message>
            <source>That PIN is wrong.</source>
            <translation>PIN incorrecto.</translation>
        </message>
        <message>
            <source>That weld was open when the log was set aside, and nothing of it is lost.</source>
            <translation>Esa soldadura estaba abierta cuando se apartó el registro, y no se perdió nada de ella.</translation>
        </message>
        <message>
            <source>The angle at the crack, or at the end.</source>
            <translation>El ángulo al agrietarse, o al final.</translation>
        </message>
        <message>
            <source>The battery is low: %1 %. Plug the charger in.</source>
            <translation>Batería baja: %1 %. Conectar el cargador.</translation>
        </message>
        <message>
            <source>The bead ends alignment, the clock ends soak, and the spring is followed until the melt is stiff. A good weld is the same one again and again.</source>
            <translation>El cordón acaba la igualación, el reloj el calentamiento, y se sigue al muelle hasta que el fundido está rígido. Una buena soldadura es la misma una y otra vez.</translation>
        </message>
        <message>
            <source>The bead is not measured. Say why.</source>
            <translation>El cordón no se mide. ¿Por qué?</translation>
        </message>
        <message>
            <source>The bench "%1" is changed.</source>
            <translation>El banco «%1» está cambiado.</translation>
        </message>
        <message>
            <source>The bench can't be set so</source>
            <translation>El banco no se ajusta así</translation>
        </message>
        <message>
            <source>The bench is full: it holds %1 mm of seams.</source>
            <translation>El banco está lleno: caben %1 mm de juntas.</translation>
        </message>
        <message>
            <source>The bench is kept.</source>
            <translation>Banco guardado.</translation>
        </message>
        <message>
            <source>The bench is needed</source>
            <translation>Se necesita el banco</translation>
        </message>
        <message>
            <source>The bench that harms nobody</source>
            <translation>El banco que no daña a nadie</translation>
        </message>
        <message>
            <source>The calibration is too uncertain for this seam.</source>
            <translation>La calibración es muy incierta para esta junta.</translation>
        </message>
        <message>
            <source>The card is saved: %1</source>
            <translation>Ficha guardada: %1</translation>
        </message>
        <message>
            <source>The card of another sheet</source>
            <translation>La ficha de otra placa</translation>
        </message>
        <message>
            <source>The card was for %1, and %2 lay there.</source>
            <translation>La ficha era para %1, y allí había %2.</translation>
        </message>
        <message>
            <source>The card was made for 4 mm and 10 mm lay there: too little force, too short a soak and far too short a cooling. No step after that can put it right.</source>
            <translation>La ficha era para 4 mm y allí había 10 mm: muy poca fuerza, calentamiento corto y enfriamiento demasiado corto. Ningún paso posterior lo arregla.</translation>
        </message>
        <message>
            <source>The card's reading was %1; this seam takes %2. Its unit was wrong.</source>
            <translation>La lectura de la ficha era %1; esta junta pide %2. La unidad estaba mal.</translation>
        </message>
        <message>
            <source>The clock on the wall was set by more than 2 s, by hand or by the network, ahead or back. It is a remark in every open weld.</source>
            <translation>La hora se cambió en más de 2 s, a mano o por la red, adelante o atrás. Es una observación en cada soldadura abierta.</translation>
        </message>
        <message>
            <source>The day's copy could not be made; the sentence says why.</source>
            <translation>No se pudo hacer la copia del día; la frase dice por qué.</translation>
        </message>
        <message>
            <source>The day's joints</source>
            <translation>Uniones del día</translation>
        </message>
        <message>
            <source>The day's plan</source>
            <translation>Plan del día</translation>
        </message>
        <message>
            <source>The demo shop is being made.</source>
            <translation>Se está creando el taller demo.</translation>
        </message>
        <message>
            <source>The demo shop is removed.</source>
            <translation>El taller demo está quitado.</translation>
        </message>
        <message>
            <source>The demo shop is removed. What is not its own stays: %1 in %2.</source>
            <translation>El taller demo está quitado. Lo que no es suyo queda: %1 en %2.</translation>
        </message>
        <message>
            <source>The desktop's own printer stands first.</source>
            <translation>La impresora predeterminada va primero.</translation>
        </message>
        <message>
            <source>The display shows what the controller believes. Measure the plate on its face, at three places, before you weld.</source>
            <translation>El indicador muestra lo que cree el regulador. Antes de soldar, medir el espejo en su cara, en tres puntos.</translation>
        </message>
        <message>
            <source>The edges are planed, the chips are off.</source>
            <translation>Los cantos están cepillados, sin virutas.</translation>
        </message>
        <message>
            <source>The edges met a dirty plate, %1.</source>
            <translation>Los cantos tocaron un espejo sucio, %1.</translation>
        </message>
        <message>
            <source>The edges were not parallel: %1, against %2.</source>
            <translation>Los cantos no eran paralelos: %1, frente a %2.</translation>
        </message>
        <message>
            <source>The faces had cooled to %1 when they met, by the plan %2, %3.</source>
            <translation>Las caras se habían enfriado a %1 al juntarse, según el plan %2, %3.</translation>
        </message>
        <message>
            <source>The faces never met: there is nothing to bend.</source>
            <translation>Las caras no se juntaron: no hay nada que doblar.</translation>
        </message>
        <message>
            <source>The faces stood %1 off the plate in soak.</source>
            <translation>Al calentar, las caras estaban a %1 del espejo.</translation>
        </message>
        <message>
            <source>The faces stood in air for %1; at most %2.</source>
            <translation>Las caras estuvieron al aire %1; como máximo %2.</translation>
        </message>
        <message>
            <source>The file</source>
            <translation>El archivo</translation>
        </message>
        <message>
            <source>The film is off the edges.</source>
            <translation>El film ya no está en los cantos.</translation>
        </message>
        <message>
            <source>The film was still on the edge, %1.</source>
            <translation>El film seguía en el canto, %1.</translation>
        </message>
        <message>
            <source>The first one is entered under "Who is it?".</source>
            <translation>El primero se da de alta en «¿Quién es?».</translation>
        </message>
        <message>
            <source>The folder above</source>
            <translation>La carpeta superior</translation>
        </message>
        <message>
            <source>The folder for it can't be reached.</source>
            <translation>No se llega a su carpeta.</translation>
        </message>
        <message>
            <source>The force is less than this bench holds steadily.</source>
            <translation>La fuerza es menor que la que este banco mantiene estable.</translation>
        </message>
        <message>
            <source>The force stood after %1; it is built up over %2.</source>
            <translation>La fuerza estaba completa a los %1; se aumenta durante %2.</translation>
        </message>
        <message>
            <source>The force to join is at %1. Mark it on the scale.</source>
            <translation>La fuerza de unión está en %1. Márquela en la escala.</translation>
        </message>
        <message>
            <source>The foreman</source>
            <translation>El encargado</translation>
        </message>
        <message>
            <source>The foreman decided</source>
            <translation>Lo decidió el encargado</translation>
        </message>
        <message>
            <source>The foreman enters people, keeps benches, seals the day. Later: no bench can be kept, so there is no weld card.</source>
            <translation>El encargado inscribe personas, guarda bancos, sella el día. Más tarde: sin banco guardado no hay ficha.</translation>
        </message>
        <message>
            <source>The foreman may go on. Why?</source>
            <translation>El encargado puede seguir. ¿Por qué?</translation>
        </message>
        <message>
            <source>The foreman releases it</source>
            <translation>El encargado la libera</translation>
        </message>
        <message>
            <source>The foreman tests the trial joint of %1 and releases the series by %2.</source>
            <translation>El encargado ensaya la unión de prueba de %1 y libera la serie antes de las %2.</translation>
        </message>
        <message>
            <source>The foreman's PIN is asked next; the record keeps the name.</source>
            <translation>Después se pide el PIN del encargado; el registro guarda su nombre.</translation>
        </message>
        <message>
            <source>The foreman's PIN is asked next; the verdict stays as it is.</source>
            <translation>Después se pide el PIN del encargado; el dictamen no cambia.</translation>
        </message>
        <message>
            <source>The greatest force that it held.</source>
            <translation>La fuerza máxima que aguantó.</translation>
        </message>
        <message>
            <source>The guide itself is in English.</source>
            <translation>La guía misma está en inglés.</translation>
        </message>
        <message>
            <source>The hand was slow</source>
            <translation>La mano fue lenta</translation>
        </message>
        <message>
            <source>The horn or the machine's sound is away.</source>
            <translation>Falta la bocina o el sonido del equipo.</translation>
        </message>
        <message>
            <source>The job lets this seam be welded again %1 times. It is in the record.</source>
            <translation>Resoldaduras permitidas en esta junta: %1. Consta en el registro.</translation>
        </message>
        <message>
            <source>The job lets this seam be welded again once. It is in the record.</source>
            <translation>Resoldaduras permitidas en esta junta: 1. Consta en el registro.</translation>
        </message>
        <message>
            <source>The joining pressure is not there yet, and the time for it has passed.</source>
            <translation>La presión al unir aún no está, y su tiempo ya pasó.</translation>
        </message>
        <message>
            <source>The joint</source>
            <translation>La unión</translation>
        </message>
        <message>
            <source>The joint is closed, and some of its rows wait.</source>
            <translation>La unión está cerrada y algunas de sus filas esperan.</translation>
        </message>
        <message>
            <source>The joint is cut out and kept in the list as stopped.</source>
            <translation>La unión se corta y queda en la lista como parada.</translation>
        </message>
        <message>
            <source>The joint of that photo is gone from its bench.</source>
            <translation>La unión de esa foto ya no está en su banco.</translation>
        </message>
        <message>
            <source>The joint was let go after %1; at least %2.</source>
            <translation>La unión se soltó a los %1; al menos %2.</translation>
        </message>
        <message>
            <source>The key that it types becomes the next step.</source>
            <translation>La tecla que envía pasa a ser el paso siguiente.</translation>
        </message>
        <message>
            <source>The last reading that is printed on the scale.</source>
            <translation>La última lectura impresa en la escala.</translation>
        </message>
        <message>
            <source>The last three seconds of the soak.</source>
            <translation>Los últimos tres segundos del calentamiento.</translation>
        </message>
        <message>
            <source>The least cooling time is over. Longer never harms.</source>
            <translation>El enfriamiento mínimo terminó. Más tiempo nunca daña.</translation>
        </message>
        <message>
            <source>The limit is passed. It counts, and is in the record.</source>
            <translation>Límite superado. Cuenta y consta en el registro.</translation>
        </message>
        <message>
            <source>The list, CSV</source>
            <translation>La lista, CSV</translation>
        </message>
        <message>
            <source>The list, JSON</source>
            <translation>La lista, JSON</translation>
        </message>
        <message>
            <source>The log can't be written just now. The step counts, and waits in the spill file.</source>
            <translation>El registro no se puede escribir ahora. El paso cuenta y espera en el archivo de reserva.</translation>
        </message>
        <message>
            <source>The log is being read.</source>
            <translation>Se lee el registro.</translation>
        </message>
        <message>
            <source>The log is damaged. Finish the weld, end the program, start it again. %1</source>
            <translation>El registro está dañado. Acabar la soldadura, cerrar el programa y volver a abrirlo. %1</translation>
        </message>
        <message>
            <source>The log keeps what was, and who changed it.</source>
            <translation>El registro guarda lo anterior y quién lo cambió.</translation>
        </message>
        <message>
            <source>The log knows no people yet.</source>
            <translation>El registro aún no conoce a nadie.</translation>
        </message>
        <message>
            <source>The log was damaged and is kept aside; %1 tells what was taken over.</source>
            <translation>El registro estaba dañado y queda apartado; %1 dice qué se recuperó.</translation>
        </message>
        <message>
            <source>The log was damaged and is kept aside; a new one goes on.</source>
            <translation>El registro estaba dañado y queda apartado; sigue uno nuevo.</translation>
        </message>
        <message>
            <source>The log's file was damaged. Nothing is lost: the log goes on in a new file, the old one is kept.</source>
            <translation>El archivo del registro estaba dañado. No se ha perdido nada: el registro sigue en un archivo nuevo y el viejo se conserva.</translation>
        </message>
        <message>
            <source>The longest that fits between the clamps.</source>
            <translation>La más larga que cabe entre las mordazas.</translation>
        </message>
        <message>
            <source>The machine's own instructions decide in which order a joint is released: the program has no order of its own.</source>
            <translation>Las instrucciones de la máquina deciden en qué orden se saca una unión: el programa no tiene orden propio.</translation>
        </message>
        <message>
            <source>The machine's own instructions decide. The last step is the sheet.</source>
            <translation>Deciden las instrucciones de la máquina. El último paso es la placa.</translation>
        </message>
        <message>
            <source>The machine's own instructions, the standard in force, local rules and a qualified welder decide.</source>
            <translation>Deciden las instrucciones de la máquina, la norma vigente, la normativa local y un soldador cualificado.</translation>
        </message>
        <message>
            <source>The materials' values could not be read.</source>
            <translation>No se pudieron leer los valores de los materiales.</translation>
        </message>
        <message>
            <source>The melt flow rates are far apart.</source>
            <translation>Los índices de fluidez están muy separados.</translation>
        </message>
        <message>
            <source>The melt flow rates can't be compared.</source>
            <translation>Los índices de fluidez no se pueden comparar.</translation>
        </message>
        <message>
            <source>The middle of a thick joint stays soft for many minutes after the outside is hard. Opening early bends it, and the spring that was not followed leaves hollow places.</source>
            <translation>El centro de una unión gruesa sigue blando muchos minutos después de endurecer por fuera. Abrir antes la dobla, y un muelle que no se siguió deja huecos.</translation>
        </message>
        <message>
            <source>The phone rings.</source>
            <translation>Suena el teléfono.</translation>
        </message>
        <message>
            <source>The photo is kept: %1</source>
            <translation>Foto guardada: %1</translation>
        </message>
        <message>
            <source>The place can't be reached</source>
            <translation>No se llega al sitio</translation>
        </message>
        <message>
            <source>The plan is being worked out.</source>
            <translation>Se calcula el plan.</translation>
        </message>
        <message>
            <source>The plan names no source.</source>
            <translation>El plan no nombra ninguna fuente.</translation>
        </message>
        <message>
            <source>The plate burns at once. Gloves for heat, but never on planed faces; park the plate guarded.</source>
            <translation>El espejo calefactor quema al instante. Guantes térmicos, pero nunca en caras cepilladas; dejar el espejo protegido.</translation>
        </message>
        <message>
            <source>The plate burns at once; the tables crush, and the spring stores its force; overheated plastic and coatings give off harmful fume.</source>
            <translation>El espejo calefactor quema al instante; las mesas aplastan y el muelle guarda su fuerza; el plástico y los recubrimientos sobrecalentados desprenden humos nocivos.</translation>
        </message>
        <message>
            <source>The plate can't be set so</source>
            <translation>El espejo no se ajusta así</translation>
        </message>
        <message>
            <source>The plate has been out longer than the procedure allows. The skin is cooling.</source>
            <translation>El espejo lleva fuera más de lo que permite el procedimiento. La piel se enfría.</translation>
        </message>
        <message>
            <source>The plate has cooled. Cut back and plane.</source>
            <translation>El espejo se ha enfriado. Recortar y cepillar.</translation>
        </message>
        <message>
            <source>The plate is between the edges: its face can't be read.</source>
            <translation>El espejo está entre los cantos: no se puede leer su cara.</translation>
        </message>
        <message>
            <source>The plate is outside its window. Say what is wrong, or wait.</source>
            <translation>El espejo está fuera de su margen. Decir qué pasa, o esperar.</translation>
        </message>
        <message>
            <source>The plate is outside its window. Wait, then read it again.</source>
            <translation>El espejo está fuera de su margen. Esperar y leerlo otra vez.</translation>
        </message>
        <message>
            <source>The plate is wiped.</source>
            <translation>El espejo está limpio.</translation>
        </message>
        <message>
            <source>The plate of bench %1 settles until %2.</source>
            <translation>El espejo del banco %1 se asienta hasta las %2.</translation>
        </message>
        <message>
            <source>The plate stuck</source>
            <translation>El espejo se pegó</translation>
        </message>
        <message>
            <source>The plate was %1 on its face, %2; at least %3.</source>
            <translation>El espejo tenía %1 en su cara, %2; al menos %3.</translation>
        </message>
        <message>
            <source>The plate was %1 on its face, %2; at most %3.</source>
            <translation>El espejo tenía %1 en su cara, %2; como máximo %3.</translation>
        </message>
        <message>
            <source>The plate was just switched on and the shop is cold. Let the plate come to its heat and settle, then measure it on its face. It takes some twenty minutes: let time run faster meanwhile.</source>
            <translation>El espejo se acaba de encender y el taller está frío. Dejar que el espejo se caliente y se asiente, y después medirlo en su cara. Tarda unos veinte minutos: mientras, dejar correr el tiempo más deprisa.</translation>
        </message>
        <message>
            <source>The plate's face reads %1 °C at the %2.</source>
            <translation>La cara del espejo marca %1 °C, %2.</translation>
        </message>
        <message>
            <source>The power was off before the lock.</source>
            <translation>Faltó la corriente antes de bloquear.</translation>
        </message>
        <message>
            <source>The power was off for more than 12 hours, or the clock shows an earlier time than before.</source>
            <translation>Faltó la corriente más de 12 horas, o el reloj marca una hora anterior.</translation>
        </message>
        <message>
            <source>The power was off in cooling.</source>
            <translation>Faltó la corriente en el enfriamiento.</translation>
        </message>
        <message>
            <source>The procedure "%1" is changed.</source>
            <translation>El procedimiento «%1» está cambiado.</translation>
        </message>
        <message>
            <source>The procedure is kept.</source>
            <translation>Procedimiento guardado.</translation>
        </message>
        <message>
            <source>The procedure lacks a value for this sheet.</source>
            <translation>Al procedimiento le falta un valor para esta placa.</translation>
        </message>
        <message>
            <source>The procedure lacks: %1.</source>
            <translation>Al procedimiento le falta: %1.</translation>
        </message>
        <message>
            <source>The program ended in mid-weld: nothing was kept to see again.</source>
            <translation>El programa acabó a media soldadura: no quedó nada que ver.</translation>
        </message>
        <message>
            <source>The program stands still or has ended while a weld was running. The horn sounds on what was planned, for 60 s at most.</source>
            <translation>El programa está parado o terminó durante una soldadura. La bocina sigue con lo previsto, 60 s como mucho.</translation>
        </message>
        <message>
            <source>The ram's travel at the crack, or at the end.</source>
            <translation>El recorrido del punzón al agrietarse, o al final.</translation>
        </message>
        <message>
            <source>The reading fell to %1 and was not topped up; at least %2.</source>
            <translation>La lectura bajó a %1 y no se repuso; al menos %2.</translation>
        </message>
        <message>
            <source>The reading went up to %1, past its mark at %2.</source>
            <translation>La lectura subió a %1, más allá de su marca en %2.</translation>
        </message>
        <message>
            <source>The record is on the printer: %1</source>
            <translation>Informe en la impresora: %1</translation>
        </message>
        <message>
            <source>The record is saved: %1</source>
            <translation>Informe guardado: %1</translation>
        </message>
        <message>
            <source>The report is on the printer: %1</source>
            <translation>El informe está en la impresora: %1</translation>
        </message>
        <message>
            <source>The report is saved: %1</source>
            <translation>Informe guardado: %1</translation>
        </message>
        <message>
            <source>The required factor is from memory of DVS 2203-1, short term.</source>
            <translation>El factor exigido es de memoria de DVS 2203-1, a corto plazo.</translation>
        </message>
        <message>
            <source>The rest is in Set-up and under "Who is it?": touch the clock.</source>
            <translation>Lo demás, en Ajustes y en «¿Quién es?»: tocar el reloj.</translation>
        </message>
        <message>
            <source>The same PIN once more</source>
            <translation>El mismo PIN otra vez</translation>
        </message>
        <message>
            <source>The same was stored at closing %1, by rules %2.</source>
            <translation>Lo mismo se guardó al cerrar %1, con reglas %2.</translation>
        </message>
        <message>
            <source>The screen has just come to this bench. Press again.</source>
            <translation>La pantalla acaba de pasar a este banco. Pulsar otra vez.</translation>
        </message>
        <message>
            <source>The screen is kept on. The tablet may sleep: see its own settings.</source>
            <translation>La pantalla sigue encendida. La tableta puede dormirse: ver sus ajustes.</translation>
        </message>
        <message>
            <source>The screen shows that weld where its steps can be read to.</source>
            <translation>La pantalla muestra esa soldadura hasta donde se leen sus pasos.</translation>
        </message>
        <message>
            <source>The sheets are molten %1 deep after soak, and their skin is at %2 when the faces meet after the longest changeover; it melts at %3.</source>
            <translation>Tras calentar, las placas están fundidas %1 de hondo y su piel está a %2 al juntarse las caras tras el cambio más largo; funde a %3.</translation>
        </message>
        <message>
            <source>The sheets are soft %1 deep after soak, and their skin is at %2 when the faces meet after the longest changeover; it is soft above %3.</source>
            <translation>Tras calentar, las placas están blandas %1 de hondo y su piel está a %2 al juntarse las caras tras el cambio más largo; es blanda por encima de %3.</translation>
        </message>
        <message>
            <source>The sheets close up and shrink in cooling, and the reading falls.</source>
            <translation>Las placas se acercan y encogen al enfriarse, y la lectura baja.</translation>
        </message>
        <message>
            <source>The sheets close up as melt flows and shrinks, and the spring loses its rate times that. On a soft spring and a long seam that is a few per cent, which the verdict sees and a bend test does not; on stiff springs, a short seam or a lock that slips it leaves hollow places and a sunk bead.</source>
            <translation>Las placas se cierran al fluir y contraerse el fundido, y el muelle pierde su rigidez por ese recorrido. Con muelle blando y junta larga es un pequeño porcentaje, que el dictamen ve y un ensayo de doblado no; con muelles rígidos, junta corta o un bloqueo que resbala deja huecos y un cordón hundido.</translation>
        </message>
        <message>
            <source>The sheets of joint %1. Each leads to its joints.</source>
            <translation>Las placas de la unión %1. Cada una lleva a sus uniones.</translation>
        </message>
        <message>
            <source>The sheets' grades differ: ask first.</source>
            <translation>Los tipos de placa difieren: preguntar antes.</translation>
        </message>
        <message>
            <source>The shop is set up. Next: a weld card.</source>
            <translation>El taller está preparado. Ahora, una ficha.</translation>
        </message>
        <message>
            <source>The shop is too cold or too warm for this procedure.</source>
            <translation>El taller está demasiado frío o cálido para este procedimiento.</translation>
        </message>
        <message>
            <source>The skin may no longer be molten when the faces meet.</source>
            <translation>La piel puede no estar ya fundida al juntarse las caras.</translation>
        </message>
        <message>
            <source>The smallest step that a hand can set.</source>
            <translation>El menor paso que una mano puede ajustar.</translation>
        </message>
        <message>
            <source>The soak is over; from "Soak is over by … s." on it is longer than it may be.</source>
            <translation>El calentamiento terminó; desde «Calentado … s de más.» dura más de lo permitido.</translation>
        </message>
        <message>
            <source>The start before had set a log aside and did not come to its end.</source>
            <translation>El arranque anterior apartó un registro y no llegó a acabar.</translation>
        </message>
        <message>
            <source>The steps are then written in this name.</source>
            <translation>Los pasos se anotan entonces con este nombre.</translation>
        </message>
        <message>
            <source>The steps are written in this name.</source>
            <translation>Los pasos se anotan con este nombre.</translation>
        </message>
        <message>
            <source>The table is saved: %1</source>
            <translation>Tabla guardada: %1</translation>
        </message>
        <message>
            <source>The tables crush, and the spring stores its force: keep hands out, and ease it before you open a clamp.</source>
            <translation>Las mesas aplastan y el muelle guarda su fuerza: manos fuera, y quitarla antes de abrir una mordaza.</translation>
        </message>
        <message>
            <source>The tablet is kept awake until no joint is open.</source>
            <translation>La tableta sigue despierta hasta que no haya uniones abiertas.</translation>
        </message>
        <message>
            <source>The tablet is kept awake. Its screen may go dark: see its own settings.</source>
            <translation>La tableta sigue despierta. Su pantalla puede apagarse: ver sus ajustes.</translation>
        </message>
        <message>
            <source>The test of a trial joint is counted with %1 min: chosen.</source>
            <translation>El ensayo de una unión de prueba cuenta %1 min: elegido.</translation>
        </message>
        <message>
            <source>The thickest sheet that the clamps hold.</source>
            <translation>La placa más gruesa que sujetan las mordazas.</translation>
        </message>
        <message>
            <source>The thinnest sheet that the clamps hold.</source>
            <translation>La placa más fina que sujetan las mordazas.</translation>
        </message>
        <message>
            <source>The trial joint: what does the supervisor say?</source>
            <translation>La unión de prueba: ¿qué dice el supervisor?</translation>
        </message>
        <message>
            <source>The two were not the same. Type it anew.</source>
            <translation>No coincidían. Teclear de nuevo.</translation>
        </message>
        <message>
            <source>The weld goes on meanwhile.</source>
            <translation>La soldadura sigue mientras tanto.</translation>
        </message>
        <message>
            <source>The weld is not closed, so no verdict is stored yet.</source>
            <translation>La soldadura no está cerrada, por eso aún no hay dictamen guardado.</translation>
        </message>
        <message>
            <source>The weld is worked out and kept first.</source>
            <translation>Primero se calcula y se guarda la soldadura.</translation>
        </message>
        <message>
            <source>The weld was stopped, so no verdict was stored.</source>
            <translation>La soldadura se paró, por eso no se guardó dictamen.</translation>
        </message>
        <message>
            <source>Their rates add.</source>
            <translation>Sus rigideces se suman.</translation>
        </message>
        <message>
            <source>Then: %1 mm, %2</source>
            <translation>Entonces: %1 mm, %2</translation>
        </message>
        <message>
            <source>Then: %1 °, %2</source>
            <translation>Entonces: %1 °, %2</translation>
        </message>
        <message>
            <source>Then: welded %1, parent %2</source>
            <translation>Entonces: soldadas %1, base %2</translation>
        </message>
        <message>
            <source>There is no bench yet, so no weld card.</source>
            <translation>Aún no hay banco, así que no hay ficha.</translation>
        </message>
        <message>
            <source>There is no folder "%1".</source>
            <translation>No existe la carpeta «%1».</translation>
        </message>
        <message>
            <source>There is no job yet. Read a table, or type a seam.</source>
            <translation>Aún no hay trabajo. Leer una tabla o escribir una junta.</translation>
        </message>
        <message>
            <source>There is no joint %1 in this log.</source>
            <translation>No hay unión %1 en este registro.</translation>
        </message>
        <message>
            <source>There is no photo on this tablet yet.</source>
            <translation>Aún no hay fotos en esta tableta.</translation>
        </message>
        <message>
            <source>There is no such joint in this log.</source>
            <translation>No hay ninguna unión así en este registro.</translation>
        </message>
        <message>
            <source>There is none at all.</source>
            <translation>No hay ninguna.</translation>
        </message>
        <message>
            <source>These days are not sealed.</source>
            <translation>Estos días no están sellados.</translation>
        </message>
        <message>
            <source>Thick sheet: patience</source>
            <translation>Placa gruesa: paciencia</translation>
        </message>
        <message>
            <source>Thickest sheet</source>
            <translation>Placa más gruesa</translation>
        </message>
        <message>
            <source>Thickness</source>
            <translation>Espesor</translation>
        </message>
        <message>
            <source>Thickness of the sheets</source>
            <translation>Espesor de las placas</translation>
        </message>
        <message>
            <source>Thinnest sheet</source>
            <translation>Placa más fina</translation>
        </message>
        <message>
            <source>This card guides. The machine's own instructions, the standard in force, local rules and a qualified welder decide.</source>
            <translation>Esta ficha orienta. Deciden las instrucciones de la máquina, la norma vigente, la normativa local y un soldador cualificado.</translation>
        </message>
        <message>
            <source>This is practice already: people and set-up belong to the shop.</source>
            <translation>Esto ya es práctica: personas y ajustes son del taller.</translation>
        </message>
        <message>
            <source>This lock slips. Without topping up the pressure is gone while the middle of the joint is still molten. Tell the foreman: the bench wants repair. On a sound lock this spring loses no more than a few per cent by itself, as it is soft and follows the sheets; the verdict still asks for the reading.</source>
            <translation>Este bloqueo resbala. Sin reponer, la presión se pierde con el centro de la unión aún fundido. Avisar al encargado: el banco pide reparación. Con un bloqueo sano este muelle solo pierde un pequeño porcentaje, pues es blando y sigue a las placas; el dictamen pide la lectura de todos modos.</translation>
        </message>
        <message>
            <source>This machine can't be kept awake from here: see its own settings.</source>
            <translation>Esta máquina no se puede mantener despierta desde aquí: ver sus ajustes.</translation>
        </message>
        <message>
            <source>This plate was 15 K colder than its display. The bead came slowly and the melt was thin: the first sign is the probe, the second an alignment that takes too long.</source>
            <translation>Este espejo estaba 15 K más frío que su indicador. El cordón llegó despacio y el fundido era fino: la primera señal es la sonda, la segunda una igualación demasiado larga.</translation>
        </message>
        <message>
            <source>This plate was 35 K too hot. Melt that hangs in strings on the plate has been harmed, however fine the bead looks. At your bench set it lower and let it settle; here say what is wrong and stop.</source>
            <translation>Este espejo estaba 35 K demasiado caliente. El fundido que cuelga en hilos del espejo está dañado, por bueno que parezca el cordón. En el banco, ajustarlo más bajo y dejar que se asiente; aquí, decir qué pasa y parar.</translation>
        </message>
        <message>
            <source>This scale can't show the tolerance. Fetch the foreman.</source>
            <translation>Esta escala no muestra la tolerancia. Llamar al encargado.</translation>
        </message>
        <message>
            <source>This scale hardly shows the tolerance.</source>
            <translation>Esta escala apenas muestra la tolerancia.</translation>
        </message>
        <message>
            <source>This scale stood 3 mm too high, so every force was too small by nearly 190 N. It is set right before the weld, never reckoned in the head.</source>
            <translation>Esta escala estaba 3 mm demasiado alta; cada fuerza era casi 190 N menor. Se corrige antes de soldar, nunca se calcula de cabeza.</translation>
        </message>
        <message>
            <source>This sheet leaned: its lower side stood 1.2 mm back. Where edges stand apart the bead comes late or not at all, and pressing harder only takes melt from where they touch. Half a millimetre is enough. Clamps, then Shim, sets it right; who leaves it must wait for the lower bead, too.</source>
            <translation>Esta placa estaba inclinada: su lado inferior quedaba 1,2 mm atrás. Donde los cantos se separan el cordón llega tarde o nunca, y apretar más solo quita fundido donde tocan. Basta medio milímetro. Mordazas y después Calzar lo arregla; quien lo deja debe esperar también al cordón inferior.</translation>
        </message>
        <message>
            <source>This soak would end while another bench changes over or builds up.</source>
            <translation>Este calentamiento acabaría durante el cambio o el aumento de presión de otro banco.</translation>
        </message>
        <message>
            <source>Three</source>
            <translation>Tres</translation>
        </message>
        <message>
            <source>Three in a row</source>
            <translation>Tres seguidas</translation>
        </message>
        <message>
            <source>Tick all</source>
            <translation>Marcar todo</translation>
        </message>
        <message>
            <source>Tick none</source>
            <translation>Quitar marcas</translation>
        </message>
        <message>
            <source>Tick one bench at least.</source>
            <translation>Marcar al menos un banco.</translation>
        </message>
        <message>
            <source>Tick one person at least.</source>
            <translation>Marcar al menos una persona.</translation>
        </message>
        <message>
            <source>Tick values</source>
            <translation>Marcar valores</translation>
        </message>
        <message>
            <source>Time</source>
            <translation>Horas</translation>
        </message>
        <message>
            <source>Time goes on.</source>
            <translation>El tiempo sigue.</translation>
        </message>
        <message>
            <source>Times</source>
            <translation>Tiempos</translation>
        </message>
        <message>
            <source>Times, bead: %1</source>
            <translation>Tiempos, cordón: %1</translation>
        </message>
        <message>
            <source>To the form</source>
            <translation>Al formulario</translation>
        </message>
        <message>
            <source>To the list</source>
            <translation>A la lista</translation>
        </message>
        <message>
            <source>To the overview</source>
            <translation>Al resumen</translation>
        </message>
        <message>
            <source>To the tables</source>
            <translation>A las tablas</translation>
        </message>
        <message>
            <source>Too hot is not better</source>
            <translation>Demasiado caliente no es mejor</translation>
        </message>
        <message>
            <source>Too hot, it gives off hydrogen chloride: extraction on.</source>
            <translation>Demasiado caliente desprende cloruro de hidrógeno: extracción en marcha.</translation>
        </message>
        <message>
            <source>Too hot, it gives off toxic acid gas: extraction on, do not smoke.</source>
            <translation>Demasiado caliente desprende gas ácido tóxico: extracción en marcha, no fumar.</translation>
        </message>
        <message>
            <source>Too many wrong PINs.</source>
            <translation>Demasiados PIN erróneos.</translation>
        </message>
        <message>
            <source>Took</source>
            <translation>Duró</translation>
        </message>
        <message>
            <source>Trainee: %1</source>
            <translation>Aprendiz: %1</translation>
        </message>
        <message>
            <source>Trainee: nobody was named</source>
            <translation>Aprendiz: sin nombre</translation>
        </message>
        <message>
            <source>Travel of the ram</source>
            <translation>Recorrido del punzón</translation>
        </message>
        <message>
            <source>Travel of the ram [mm]</source>
            <translation>Recorrido del punzón [mm]</translation>
        </message>
        <message>
            <source>Trial joint %1 is cut out.</source>
            <translation>Unión de prueba %1: se corta.</translation>
        </message>
        <message>
            <source>Trial joint %1 is not released yet.</source>
            <translation>Unión de prueba %1 aún sin liberar.</translation>
        </message>
        <message>
            <source>Trial joint %1 is released.</source>
            <translation>Unión de prueba %1 liberada.</translation>
        </message>
        <message>
            <source>Trial joint %1 is released. Why?</source>
            <translation>Se libera la unión de prueba %1. ¿Por qué?</translation>
        </message>
        <message>
            <source>Trial joint %1 is released: %2.</source>
            <translation>Unión de prueba %1 liberada: %2.</translation>
        </message>
        <message>
            <source>Trial joint %1 was not accepted.</source>
            <translation>Unión de prueba %1 no aceptada.</translation>
        </message>
        <message>
            <source>Trial joints, not in All</source>
            <translation>Uniones de prueba, fuera de «Todo»</translation>
        </message>
        <message>
            <source>Trouble</source>
            <translation>Problema</translation>
        </message>
        <message>
            <source>Trouble with the bench</source>
            <translation>Problema con el banco</translation>
        </message>
        <message>
            <source>True time</source>
            <translation>Tiempo real</translation>
        </message>
        <message>
            <source>Trust your own clock and go on by hand. Start the program again: it goes on where the log stands.</source>
            <translation>Fiarse del propio reloj y seguir a mano. Arrancar el programa otra vez: sigue donde está el registro.</translation>
        </message>
        <message>
            <source>Turn on evenly to the reading. A jerk squeezes the melt out, and letting back repairs nothing.</source>
            <translation>Seguir girando de modo uniforme hasta la lectura. Un tirón expulsa el fundido, y soltar no arregla nada.</translation>
        </message>
        <message>
            <source>Turn the wheel evenly. Keep to the mark.</source>
            <translation>Girar el volante por igual. Seguir la marca.</translation>
        </message>
        <message>
            <source>Turned too far</source>
            <translation>Giro excesivo</translation>
        </message>
        <message>
            <source>Turned too far, bench %1</source>
            <translation>Giro excesivo, banco %1</translation>
        </message>
        <message>
            <source>Two</source>
            <translation>Dos</translation>
        </message>
        <message>
            <source>Two falling tones; again after 30, 60 and 90 s, then every 2 min until it is seen.</source>
            <translation>Dos tonos que bajan; de nuevo a los 30, 60 y 90 s, y luego cada 2 min hasta que se vea.</translation>
        </message>
        <message>
            <source>Two minutes without a press: the desk is closed.</source>
            <translation>Dos minutos sin pulsar: el panel se ha cerrado.</translation>
        </message>
        <message>
            <source>Two pairs of low tones, every 2 s. They are the horn's own.</source>
            <translation>Dos pares de tonos graves, cada 2 s. Son de la propia bocina.</translation>
        </message>
        <message>
            <source>Two pairs of low tones, every 5 s, until it is seen or over.</source>
            <translation>Dos pares de tonos graves, cada 5 s, hasta que se vea o termine.</translation>
        </message>
        <message>
            <source>Two pulses, every 30 s, until alignment ends.</source>
            <translation>Dos pulsos, cada 30 s, hasta que acabe la igualación.</translation>
        </message>
        <message>
            <source>Two pulses, every 30 s, until it is typed in, the next reading is due, or two thirds of cooling are over.</source>
            <translation>Dos pulsos, cada 30 s, hasta que se escriba, toque la próxima lectura o pasen dos tercios del enfriamiento.</translation>
        </message>
        <message>
            <source>Two springs, a scale that begins at 2, and clamps that must not be opened under force: here the spring is let off first. Learn your own machine's order from its instructions.</source>
            <translation>Dos muelles, una escala que empieza en 2 y mordazas que no deben abrirse con fuerza: aquí primero se suelta el muelle. El orden de la propia máquina está en sus instrucciones.</translation>
        </message>
        <message>
            <source>Type a seam</source>
            <translation>Escribir una</translation>
        </message>
        <message>
            <source>Type a word or two first: the record keeps them.</source>
            <translation>Teclear antes una o dos palabras: quedan en el registro.</translation>
        </message>
        <message>
            <source>Type it again</source>
            <translation>Volver a teclear</translation>
        </message>
        <message>
            <source>Type it in</source>
            <translation>Teclear</translation>
        </message>
        <message>
            <source>Type readings and forces</source>
            <translation>Teclear lecturas y fuerzas</translation>
        </message>
        <message>
            <source>Type something to look for first.</source>
            <translation>Escribir primero qué buscar.</translation>
        </message>
        <message>
            <source>Type the number, then look.</source>
            <translation>Escribir el número y buscar.</translation>
        </message>
        <message>
            <source>Type the whole batch as it stands on the sheet, then look.</source>
            <translation>Escribir el lote entero, como está en la placa, y buscar.</translation>
        </message>
        <message>
            <source>Types</source>
            <translation>Tipos</translation>
        </message>
        <message>
            <source>Unit of the scale</source>
            <translation>Unidad de la escala</translation>
        </message>
        <message>
            <source>Unlock</source>
            <translation>Soltar</translation>
        </message>
        <message>
            <source>Unread</source>
            <translation>Ilegibles</translation>
        </message>
        <message>
            <source>Up</source>
            <translation>Subir</translation>
        </message>
        <message>
            <source>Valley between the beads above the sheet. 0: not above it.</source>
            <translation>Valle entre los cordones sobre la placa. 0: no por encima.</translation>
        </message>
        <message>
            <source>Values</source>
            <translation>Valores</translation>
        </message>
        <message>
            <source>Verdict</source>
            <translation>Dictamen</translation>
        </message>
        <message>
            <source>Verdict: %1</source>
            <translation>Dictamen: %1</translation>
        </message>
        <message>
            <source>Wait</source>
            <translation>Espera</translation>
        </message>
        <message>
            <source>Wait %1</source>
            <translation>Esperar %1</translation>
        </message>
        <message>
            <source>Wait %2 before soak on %1. Two hands, one plate.</source>
            <translation>Esperar %2 antes de calentar en %1. Dos manos, un espejo.</translation>
        </message>
        <message>
            <source>Wait %2 before you begin %1. Two hands, one plate.</source>
            <translation>Esperar %2 antes de empezar %1. Dos manos, un espejo.</translation>
        </message>
        <message>
            <source>Wait for a %1 mm bead, all along, top and bottom.</source>
            <translation>Esperar cordón de %1 mm en todo el largo, arriba y abajo.</translation>
        </message>
        <message>
            <source>Wait for the bead: it ends alignment, not the clock. Measure the plate before the next joint.</source>
            <translation>Esperar al cordón: él acaba la igualación, no el reloj. Medir el espejo antes de la próxima unión.</translation>
        </message>
        <message>
            <source>Wait so long, or go on if somebody else is at the other bench.</source>
            <translation>Esperar ese tiempo, o seguir si otra persona está en el otro banco.</translation>
        </message>
        <message>
            <source>Watch</source>
            <translation>Vigilar</translation>
        </message>
        <message>
            <source>Weld 10 mm PE-HD by the card, with nothing wrong at the bench. The plate burns and the spring is loaded: at a real machine its own instructions come first.</source>
            <translation>Soldar PE-HD de 10 mm según la ficha, sin nada mal en el banco. El espejo quema y el muelle está cargado: en una máquina real mandan sus propias instrucciones.</translation>
        </message>
        <message>
            <source>Weld again</source>
            <translation>Resoldar</translation>
        </message>
        <message>
            <source>Weld card</source>
            <translation>Ficha</translation>
        </message>
        <message>
            <source>Weld card, bench %1</source>
            <translation>Ficha, banco %1</translation>
        </message>
        <message>
            <source>Weld plane at release</source>
            <translation>Plano al soltar</translation>
        </message>
        <message>
            <source>Welded by</source>
            <translation>Soldado por</translation>
        </message>
        <message>
            <source>Welded coupon %1</source>
            <translation>Probeta soldada %1</translation>
        </message>
        <message>
            <source>Welded coupons</source>
            <translation>Probetas soldadas</translation>
        </message>
        <message>
            <source>Welded: %1</source>
            <translation>Soldadas: %1</translation>
        </message>
        <message>
            <source>Welder</source>
            <translation>Soldador</translation>
        </message>
        <message>
            <source>Welders</source>
            <translation>Soldadores</translation>
        </message>
        <message>
            <source>Welding factor %1</source>
            <translation>Factor de soldadura %1</translation>
        </message>
        <message>
            <source>Welds again</source>
            <translation>Resuelda</translation>
        </message>
        <message>
            <source>What</source>
            <translation>Qué</translation>
        </message>
        <message>
            <source>What I did</source>
            <translation>Lo que hice</translation>
        </message>
        <message>
            <source>What do people call the bench?</source>
            <translation>¿Cómo se llama el banco?</translation>
        </message>
        <message>
            <source>What does the scale read now?</source>
            <translation>¿Qué marca ahora la escala?</translation>
        </message>
        <message>
            <source>What fits</source>
            <translation>Qué cabe</translation>
        </message>
        <message>
            <source>What if</source>
            <translation>Simular</translation>
        </message>
        <message>
            <source>What is %1 here?</source>
            <translation>¿Qué es %1 aquí?</translation>
        </message>
        <message>
            <source>What is alike three times is a hand that has learned it. Compare the reaction times in the history, and the beads as you see each again.</source>
            <translation>Lo que sale igual tres veces lo ha aprendido la mano. Comparar los tiempos de reacción en el historial, y los cordones al verlas otra vez.</translation>
        </message>
        <message>
            <source>What is done first when cooling is over?</source>
            <translation>¿Qué se hace primero una vez enfriada?</translation>
        </message>
        <message>
            <source>What is done then? (step %1)</source>
            <translation>¿Qué se hace después? (paso %1)</translation>
        </message>
        <message>
            <source>What is due</source>
            <translation>Lo que vence</translation>
        </message>
        <message>
            <source>What is printed on the scale?</source>
            <translation>¿Qué está impreso en la escala?</translation>
        </message>
        <message>
            <source>What is the shop called?</source>
            <translation>¿Cómo se llama el taller?</translation>
        </message>
        <message>
            <source>What is to be put right?</source>
            <translation>¿Qué hay que corregir?</translation>
        </message>
        <message>
            <source>What is wrong here?</source>
            <translation>¿Qué va mal aquí?</translation>
        </message>
        <message>
            <source>What is wrong stands at its field.</source>
            <translation>Lo que está mal aparece en su campo.</translation>
        </message>
        <message>
            <source>What it comes to</source>
            <translation>El resultado</translation>
        </message>
        <message>
            <source>What it is</source>
            <translation>Qué es</translation>
        </message>
        <message>
            <source>What it is made for</source>
            <translation>Para qué se ha hecho</translation>
        </message>
        <message>
            <source>What only %1 may weld takes so long. </source>
            <translation>Lo que solo suelda %1 dura hasta ahí. </translation>
        </message>
        <message>
            <source>What sticks to the plate goes into the joint and parts it later.</source>
            <translation>Lo que se pega al espejo entra en la unión y la separa más tarde.</translation>
        </message>
        <message>
            <source>What sticks to the plate is pressed into both faces and stays there. The bead shows nothing of it; the bend test breaks flat.</source>
            <translation>Lo que se pega al espejo se prensa en las dos caras y se queda allí. El cordón no muestra nada; el ensayo de doblado rompe plano.</translation>
        </message>
        <message>
            <source>What stood there stays in the record, struck.</source>
            <translation>Lo que había queda en el registro, tachado.</translation>
        </message>
        <message>
            <source>What the scale reads without any force.</source>
            <translation>Lo que marca la escala sin fuerza.</translation>
        </message>
        <message>
            <source>What the seal does</source>
            <translation>Qué hace el sello</translation>
        </message>
        <message>
            <source>What the springs lose before the faces press. 0 if nothing.</source>
            <translation>Lo que pierden los muelles antes de apretar las caras. Si no, 0.</translation>
        </message>
        <message>
            <source>What the verdict found</source>
            <translation>Lo hallado por el dictamen</translation>
        </message>
        <message>
            <source>What was entered before stays in the record, with the reason.</source>
            <translation>Lo anotado antes queda en el registro, con el motivo.</translation>
        </message>
        <message>
            <source>What was left for later is done here.</source>
            <translation>Lo aplazado se hace aquí.</translation>
        </message>
        <message>
            <source>What was made</source>
            <translation>Lo hecho</translation>
        </message>
        <message>
            <source>What was said, what was decided</source>
            <translation>Qué se dijo, qué se decidió</translation>
        </message>
        <message>
            <source>What was tested?</source>
            <translation>¿Qué se ensayó?</translation>
        </message>
        <message>
            <source>What was typed is no temperature to weld with; the reading is kept.</source>
            <translation>Lo escrito no es temperatura para soldar; la lectura se conserva.</translation>
        </message>
        <message>
            <source>What was welded</source>
            <translation>Qué se soldó</translation>
        </message>
        <message>
            <source>What was wrong</source>
            <translation>Qué falló</translation>
        </message>
        <message>
            <source>What was wrong was found, and the weld stopped.</source>
            <translation>Se halló el defecto y se paró la soldadura.</translation>
        </message>
        <message>
            <source>What went well</source>
            <translation>Qué fue bien</translation>
        </message>
        <message>
            <source>What went wrong, and why</source>
            <translation>Qué fue mal, y por qué</translation>
        </message>
        <message>
            <source>What your hands did</source>
            <translation>Lo que hicieron las manos</translation>
        </message>
        <message>
            <source>Wheel +</source>
            <translation>Volante +</translation>
        </message>
        <message>
            <source>Wheel is locked</source>
            <translation>Volante bloqueado</translation>
        </message>
        <message>
            <source>Wheel −</source>
            <translation>Volante −</translation>
        </message>
        <message>
            <source>When</source>
            <translation>Cuándo</translation>
        </message>
        <message>
            <source>Where</source>
            <translation>Lugar</translation>
        </message>
        <message>
            <source>Where does the record go?</source>
            <translation>¿Adónde va el informe de la unión?</translation>
        </message>
        <message>
            <source>Where does the report go?</source>
            <translation>¿Adónde va el informe?</translation>
        </message>
        <message>
            <source>Where the bench stands.</source>
            <translation>Donde está el banco.</translation>
        </message>
        <message>
            <source>Where the edges stand apart the bead comes late or not at all, while the other end gives up its melt.</source>
            <translation>Donde los cantos se separan el cordón llega tarde o nunca, mientras el otro extremo pierde su fundido.</translation>
        </message>
        <message>
            <source>Where the numbers come from</source>
            <translation>De dónde salen los números</translation>
        </message>
        <message>
            <source>Where the plan's values come from</source>
            <translation>De dónde salen los valores del plan</translation>
        </message>
        <message>
            <source>Which attested values hold no more?</source>
            <translation>¿Qué valores cotejados ya no valen?</translation>
        </message>
        <message>
            <source>Which benches are planned with?</source>
            <translation>¿Con qué bancos se planifica?</translation>
        </message>
        <message>
            <source>Which certificate has %1?</source>
            <translation>¿Qué certificado tiene %1?</translation>
        </message>
        <message>
            <source>Which edition was it?</source>
            <translation>¿Qué edición era?</translation>
        </message>
        <message>
            <source>Which file of readings and forces?</source>
            <translation>¿Qué archivo de lecturas y fuerzas?</translation>
        </message>
        <message>
            <source>Which foreman?</source>
            <translation>¿Qué encargado?</translation>
        </message>
        <message>
            <source>Which job are the seams of?</source>
            <translation>¿De qué trabajo son las juntas?</translation>
        </message>
        <message>
            <source>Which joint %1?</source>
            <translation>¿Qué unión %1?</translation>
        </message>
        <message>
            <source>Which joints hold a batch of sheet?</source>
            <translation>¿Qué uniones tienen un lote de placa?</translation>
        </message>
        <message>
            <source>Which lesson?</source>
            <translation>¿Qué lección?</translation>
        </message>
        <message>
            <source>Which name?</source>
            <translation>¿Qué nombre?</translation>
        </message>
        <message>
            <source>Which number?</source>
            <translation>¿Qué número?</translation>
        </message>
        <message>
            <source>Which photo?</source>
            <translation>¿Qué foto?</translation>
        </message>
        <message>
            <source>Which photo? The newest comes first.</source>
            <translation>¿Qué foto? La más nueva va primero.</translation>
        </message>
        <message>
            <source>Which procedure file?</source>
            <translation>¿Qué archivo?</translation>
        </message>
        <message>
            <source>Which procedure?</source>
            <translation>¿Qué procedimiento?</translation>
        </message>
        <message>
            <source>Which sheets are in a joint?</source>
            <translation>¿Qué placas hay en una unión?</translation>
        </message>
        <message>
            <source>Which sheets, and how long is the seam?</source>
            <translation>¿Qué placas y qué largo de junta?</translation>
        </message>
        <message>
            <source>Which table of seams?</source>
            <translation>¿Qué tabla de juntas?</translation>
        </message>
        <message>
            <source>Which table of these joints?</source>
            <translation>¿Qué tabla de estas uniones?</translation>
        </message>
        <message>
            <source>Which value was written down wrong?</source>
            <translation>¿Qué valor se anotó mal?</translation>
        </message>
        <message>
            <source>Which values agree with the shop's copy?</source>
            <translation>¿Qué valores coinciden con el ejemplar del taller?</translation>
        </message>
        <message>
            <source>While a joint cools its clock and its scale decide. Look at this later.</source>
            <translation>Mientras una unión se enfría deciden su reloj y su escala. Mirar esto después.</translation>
        </message>
        <message>
            <source>While the plane is soft the force must stay: let back, the melt tears or shrinks into hollow places.</source>
            <translation>Mientras el plano está blando la fuerza debe seguir: si se afloja, el fundido se rasga o se contrae en huecos.</translation>
        </message>
        <message>
            <source>Who forgot it gets another at the foreman's desk.</source>
            <translation>Quien lo olvidó recibe otro en el panel del encargado.</translation>
        </message>
        <message>
            <source>Who is it?</source>
            <translation>¿Quién es?</translation>
        </message>
        <message>
            <source>Who is new?</source>
            <translation>¿Quién es nuevo?</translation>
        </message>
        <message>
            <source>Who is the first foreman?</source>
            <translation>¿Quién es el primer encargado?</translation>
        </message>
        <message>
            <source>Who welded the trial?</source>
            <translation>¿Quién soldó la prueba?</translation>
        </message>
        <message>
            <source>Who welds</source>
            <translation>Quién suelda</translation>
        </message>
        <message>
            <source>Who welds here?</source>
            <translation>¿Quién suelda aquí?</translation>
        </message>
        <message>
            <source>Who welds today?</source>
            <translation>¿Quién suelda hoy?</translation>
        </message>
        <message>
            <source>Whoever took the call came back too late or just in time by luck. A weld is not left between alignment and the lock; the phone can be answered in cooling.</source>
            <translation>Quien atendió volvió tarde, o a tiempo por suerte. Una soldadura no se deja entre la igualación y el bloqueo; el teléfono se atiende al enfriar.</translation>
        </message>
        <message>
            <source>Whose PIN changes?</source>
            <translation>¿Qué PIN se cambia?</translation>
        </message>
        <message>
            <source>Whose entry changes?</source>
            <translation>¿Qué datos se cambian?</translation>
        </message>
        <message>
            <source>Why do they hold no more?</source>
            <translation>¿Por qué ya no valen?</translation>
        </message>
        <message>
            <source>Why is it put right?</source>
            <translation>¿Por qué se corrige?</translation>
        </message>
        <message>
            <source>Width</source>
            <translation>Ancho</translation>
        </message>
        <message>
            <source>Wipe</source>
            <translation>Limpiar</translation>
        </message>
        <message>
            <source>Wipe both faces of the plate. It burns.</source>
            <translation>Limpiar las dos caras del espejo. Quema.</translation>
        </message>
        <message>
            <source>Wipe plate</source>
            <translation>Limpiar espejo</translation>
        </message>
        <message>
            <source>With a PIN</source>
            <translation>Con PIN</translation>
        </message>
        <message>
            <source>With its process time.</source>
            <translation>Con su tiempo de proceso.</translation>
        </message>
        <message>
            <source>With one, nobody else can work in this name.</source>
            <translation>Con él, nadie más puede trabajar con este nombre.</translation>
        </message>
        <message>
            <source>With the program closed, seamclock-cli people pin --forgotten gives one.</source>
            <translation>Con el programa cerrado, seamclock-cli people pin --forgotten da uno.</translation>
        </message>
        <message>
            <source>Withdraw</source>
            <translation>Retirar</translation>
        </message>
        <message>
            <source>Within</source>
            <translation>Dentro</translation>
        </message>
        <message>
            <source>Within limits</source>
            <translation>Dentro de límites</translation>
        </message>
        <message>
            <source>Within limits with remarks</source>
            <translation>Dentro de límites con observaciones</translation>
        </message>
        <message>
            <source>Without a PIN</source>
            <translation>Sin PIN</translation>
        </message>
        <message>
            <source>Without a name</source>
            <translation>Sin nombre</translation>
        </message>
        <message>
            <source>Words: %1 %</source>
            <translation>Texto: %1 %</translation>
        </message>
        <message>
            <source>Work it out</source>
            <translation>Calcular</translation>
        </message>
        <message>
            <source>Worked out: the bench once more, and the joint of a steady hand.</source>
            <translation>Calculado: el banco otra vez y la unión de una mano firme.</translation>
        </message>
        <message>
            <source>Write the number on the sheet, then release in the order that is shown.</source>
            <translation>Escribir el número en la placa y sacar en el orden mostrado.</translation>
        </message>
        <message>
            <source>Wrong row of the table</source>
            <translation>Fila errónea de la tabla</translation>
        </message>
        <message>
            <source>Wrong sheet or setting</source>
            <translation>Placa o ajuste erróneo</translation>
        </message>
        <message>
            <source>You are on the phone.</source>
            <translation>Llamada en curso.</translation>
        </message>
        <message>
            <source>You can't see the bench. Both hands are off it.</source>
            <translation>El banco no se ve. Las dos manos están fuera.</translation>
        </message>
        <message>
            <source>You touched the edge with your hand. Plane it again.</source>
            <translation>La mano ha tocado el canto. Cepillarlo otra vez.</translation>
        </message>
        <message>
            <source>Your joint</source>
            <translation>Unión propia</translation>
        </message>
        <message>
            <source>Your own grade. It changes nothing of the verdict.</source>
            <translation>Valoración personal. No cambia el dictamen.</translation>
        </message>
        <message>
            <source>Your weld is looked at.</source>
            <translation>Se examina la soldadura.</translation>
        </message>
        <message>
            <source>Zero and rate come from the calibration's points.</source>
            <translation>El cero y la rigidez salen de los puntos de calibración.</translation>
        </message>
        <message>
            <source>[n]: the event in the log of the test itself</source>
            <translation>[n]: el evento del registro del propio ensayo</translation>
        </message>
        <message>
            <source>[n]: the event in the log that a value comes from</source>
            <translation>[n]: el evento del registro del que sale un valor</translation>
        </message>
        <message>
            <source>[n]: the event of that joint in the log; sheet, bench, welder and seam stand in [1], verdicts and sums are worked out</source>
            <translation>[n]: el evento de esa unión en el registro; placa, banco, soldador y junta están en [1], los dictámenes y sumas se calculan</translation>
        </message>
        <message>
            <source>a %1 strength of %2 MPa; allowed: %3 to %4 MPa</source>
            <translation>una resistencia (%1) de %2 MPa; permitido: %3 a %4 MPa</translation>
        </message>
        <message>
            <source>a CSV file</source>
            <translation>un archivo CSV</translation>
        </message>
        <message>
            <source>a PIN has %1 to %2 digits; this one has %3</source>
            <translation>un PIN tiene %1 a %2 cifras; este tiene %3</translation>
        </message>
        <message>
            <source>a PIN has 1 to %1 digits and nothing else; this one has %2 characters</source>
            <translation>un PIN tiene 1 a %1 cifras y nada más; este tiene %2 signos</translation>
        </message>
        <message>
            <source>a PIN has 1 to %1 digits and nothing else; this one has %2 digits</source>
            <translation>un PIN tiene 1 a %1 cifras y nada más; este tiene %2 cifras</translation>
        </message>
        <message>
            <source>a bench that harms nobody</source>
            <translation>un banco que no daña a nadie</translation>
        </message>
        <message>
            <source>a bend angle is outside 0 to 180°</source>
            <translation>un ángulo de doblado está fuera de 0 a 180°</translation>
        </message>
        <message>
            <source>a bend coupon cracked or not: 1 or 0</source>
            <translation>una probeta de doblado se agrietó o no: 1 o 0</translation>
        </message>
        <message>
            <source>a bend test has no strengths; allowed: angles or displacements of the ram</source>
            <translation>un ensayo de doblado no tiene resistencias; permitido: ángulos o recorridos del punzón</translation>
        </message>
        <message>
            <source>a check was left out</source>
            <translation>se omitió un control</translation>
        </message>
        <message>
            <source>a copy, read only</source>
            <translation>copia, solo lectura</translation>
        </message>
        <message>
            <source>a damaged line of the spill file</source>
            <translation>una línea dañada del archivo de reserva</translation>
        </message>
        <message>
            <source>a displacement of the ram is outside 0 to 500 mm</source>
            <translation>un recorrido del punzón está fuera de 0 a 500 mm</translation>
        </message>
        <message>
            <source>a document does not have its SHA-256</source>
            <translation>un documento no tiene su SHA-256</translation>
        </message>
        <message>
            <source>a fact of a seam can't be read</source>
            <translation>no se puede leer un hecho de una junta</translation>
        </message>
        <message>
            <source>a fact of kind "%1" can't have the subject "%2"</source>
            <translation>un dato de tipo «%1» no puede ser de «%2»</translation>
        </message>
        <message>
            <source>a fault in the bead</source>
            <translation>un defecto en el cordón</translation>
        </message>
        <message>
            <source>a fifth bench, "%1"; allowed: 4</source>
            <translation>un quinto banco, «%1»; permitido: 4</translation>
        </message>
        <message>
            <source>a foot lever</source>
            <translation>palanca de pie</translation>
        </message>
        <message>
            <source>a foreman needs a PIN, which locks the key of the seal</source>
            <translation>un encargado necesita un PIN, que protege la clave del sello</translation>
        </message>
        <message>
            <source>a foreman's PIN has %1 to %2 digits; this one has %3</source>
            <translation>el PIN de un encargado tiene %1 a %2 cifras; este tiene %3</translation>
        </message>
        <message>
            <source>a foreman's override needs his PIN</source>
            <translation>si un encargado lo omite, hace falta su PIN</translation>
        </message>
        <message>
            <source>a gap of %1 mm at the %2 leaves no room for this sheet's edge</source>
            <translation>un hueco de %1 mm (%2) no deja sitio al canto de esta placa</translation>
        </message>
        <message>
            <source>a handwheel</source>
            <translation>volante</translation>
        </message>
        <message>
            <source>a joint of another log</source>
            <translation>una unión de otro registro</translation>
        </message>
        <message>
            <source>a joint that can't be read</source>
            <translation>una unión ilegible</translation>
        </message>
        <message>
            <source>a length is outside 0 to 100000</source>
            <translation>una longitud está fuera de 0 a 100000</translation>
        </message>
        <message>
            <source>a line a joint</source>
            <translation>una fila por unión</translation>
        </message>
        <message>
            <source>a line ends with CR alone</source>
            <translation>una línea acaba solo con CR</translation>
        </message>
        <message>
            <source>a new series has no reason; allowed: one only where an earlier series is put right</source>
            <translation>una serie nueva no lleva motivo; permitido: solo al corregir una serie anterior</translation>
        </message>
        <message>
            <source>a page of 0 lines; at least 1</source>
            <translation>una página de 0 líneas; al menos 1</translation>
        </message>
        <message>
            <source>a person's, whatever the verdict says</source>
            <translation>de una persona, diga lo que diga el dictamen</translation>
        </message>
        <message>
            <source>a point is not a finite number</source>
            <translation>un punto no es un número finito</translation>
        </message>
        <message>
            <source>a power cut of %1 s can't be confirmed: allowed are 0 to 43200 s</source>
            <translation>un corte de luz de %1 s no se puede confirmar: permitidos 0 a 43200 s</translation>
        </message>
        <message>
            <source>a procedure trial</source>
            <translation>una prueba de procedimiento</translation>
        </message>
        <message>
            <source>a quote is opened and never closed</source>
            <translation>unas comillas se abren y no se cierran</translation>
        </message>
        <message>
            <source>a quote stands inside a cell that does not begin with one</source>
            <translation>hay comillas dentro de una celda que no empieza con ellas</translation>
        </message>
        <message>
            <source>a rate and its uncertainty; due on %1</source>
            <translation>una rigidez y su incertidumbre; vence el %1</translation>
        </message>
        <message>
            <source>a reading in cooling was missed</source>
            <translation>falta una lectura al enfriar</translation>
        </message>
        <message>
            <source>a reading is due</source>
            <translation>toca leer la escala</translation>
        </message>
        <message>
            <source>a reason for "%1" can't be empty</source>
            <translation>un motivo para «%1» no puede estar vacío</translation>
        </message>
        <message>
            <source>a remark</source>
            <translation>observación</translation>
        </message>
        <message>
            <source>a seam in the same clamping</source>
            <translation>junta en la misma sujeción</translation>
        </message>
        <message>
            <source>a sheet is of %1, the procedure is for %2: only the same plastic is welded</source>
            <translation>una placa es de %1, el procedimiento es para %2: solo se suelda el mismo plástico</translation>
        </message>
        <message>
            <source>a sheet of another material: allowed by the foreman</source>
            <translation>una placa de otro material: permitido por el encargado</translation>
        </message>
        <message>
            <source>a sheet slipped</source>
            <translation>se movió una placa</translation>
        </message>
        <message>
            <source>a sheet's batch was not entered</source>
            <translation>lote de una placa sin anotar</translation>
        </message>
        <message>
            <source>a signing key's seed has %1 bytes, expected %2</source>
            <translation>el origen de una clave tiene %1 bytes, se esperan %2</translation>
        </message>
        <message>
            <source>a step is not on disk</source>
            <translation>un paso no está guardado</translation>
        </message>
        <message>
            <source>a step was set earlier</source>
            <translation>un paso se adelantó</translation>
        </message>
        <message>
            <source>a step was taken back</source>
            <translation>un paso se deshizo</translation>
        </message>
        <message>
            <source>a tensile test has no bends; allowed: strengths</source>
            <translation>un ensayo de tracción no tiene doblados; permitido: resistencias</translation>
        </message>
        <message>
            <source>a tenth of the thickness, as DVS 2207-1</source>
            <translation>un décimo del espesor, como DVS 2207-1</translation>
        </message>
        <message>
            <source>a test piece broke</source>
            <translation>una probeta rompió</translation>
        </message>
        <message>
            <source>a test piece held</source>
            <translation>una probeta aguantó</translation>
        </message>
        <message>
            <source>a text of %1 bytes; allowed: up to %2</source>
            <translation>un texto de %1 bytes; permitido: hasta %2</translation>
        </message>
        <message>
            <source>a thickness of %1 mm; allowed: 0.1 to 1000 mm</source>
            <translation>un espesor de %1 mm; permitido: 0,1 a 1000 mm</translation>
        </message>
        <message>
            <source>a touch on the name</source>
            <translation>tocar el nombre</translation>
        </message>
        <message>
            <source>a value is corrected only after the weld is over</source>
            <translation>un valor solo se corrige cuando la soldadura ha terminado</translation>
        </message>
        <message>
            <source>a weld of type %1 can't be opened in a log of %2</source>
            <translation>una soldadura de tipo «%1» no se puede abrir en un registro «%2»</translation>
        </message>
        <message>
            <source>a weld starts with n 1</source>
            <translation>una soldadura empieza con n 1</translation>
        </message>
        <message>
            <source>a weld starts with weld_opened</source>
            <translation>una soldadura empieza con weld_opened</translation>
        </message>
        <message>
            <source>a weld without events</source>
            <translation>una soldadura sin eventos</translation>
        </message>
        <message>
            <source>a wrong tap</source>
            <translation>toque erróneo</translation>
        </message>
        <message>
            <source>a zero byte; expected JSON text</source>
            <translation>un byte cero; se espera texto JSON</translation>
        </message>
        <message>
            <source>about %1</source>
            <translation>unos %1</translation>
        </message>
        <message>
            <source>above %1, to %2 %3</source>
            <translation>más de %1, hasta %2 %3</translation>
        </message>
        <message>
            <source>above 0</source>
            <translation>mayor de 0</translation>
        </message>
        <message>
            <source>above 0 mm</source>
            <translation>mayor de 0 mm</translation>
        </message>
        <message>
            <source>above mm</source>
            <translation>más de mm</translation>
        </message>
        <message>
            <source>accepted</source>
            <translation>aceptada</translation>
        </message>
        <message>
            <source>acid gas: extraction on</source>
            <translation>gas ácido: extracción</translation>
        </message>
        <message>
            <source>act %1 of the take is at %2 ms, behind its end at %3 ms</source>
            <translation>la acción %1 de la toma está a los %2 ms, tras su final a los %3 ms</translation>
        </message>
        <message>
            <source>act %1 of the take, at %2 ms, can't be done at this bench: %3</source>
            <translation>la acción %1 de la toma, a los %2 ms, no se puede hacer en este banco: %3</translation>
        </message>
        <message>
            <source>act now</source>
            <translation>actuar ya</translation>
        </message>
        <message>
            <source>after %1 wrong PINs in a row: wait %2</source>
            <translation>tras %1 PIN erróneos seguidos: esperar %2</translation>
        </message>
        <message>
            <source>after 10 min</source>
            <translation>tras 10 min</translation>
        </message>
        <message>
            <source>after a correction: %1</source>
            <translation>tras una corrección: %1</translation>
        </message>
        <message>
            <source>again: joint %1 is to be repaired</source>
            <translation>otra vez: la unión %1 se ha de reparar</translation>
        </message>
        <message>
            <source>again: joint %1 was cut out</source>
            <translation>otra vez: se cortó la unión %1</translation>
        </message>
        <message>
            <source>against the first</source>
            <translation>contra la primera</translation>
        </message>
        <message>
            <source>against the standard</source>
            <translation>con la norma</translation>
        </message>
        <message>
            <source>aim of soak's pressure</source>
            <translation>presión objetivo al calentar</translation>
        </message>
        <message>
            <source>aim °C, else the middle</source>
            <translation>objetivo °C, si no, el centro</translation>
        </message>
        <message>
            <source>air</source>
            <translation>aire</translation>
        </message>
        <message>
            <source>air from °C</source>
            <translation>aire desde °C</translation>
        </message>
        <message>
            <source>align</source>
            <translation>igualar</translation>
        </message>
        <message>
            <source>alignment</source>
            <translation>igualar</translation>
        </message>
        <message>
            <source>alignment N/mm²</source>
            <translation>igualar N/mm²</translation>
        </message>
        <message>
            <source>alignment at %1</source>
            <translation>igualación a %1</translation>
        </message>
        <message>
            <source>alignment bead</source>
            <translation>cordón al igualar</translation>
        </message>
        <message>
            <source>alignment begun</source>
            <translation>inicio de igualar</translation>
        </message>
        <message>
            <source>alignment can't start: %1 checks are open, the first is %2</source>
            <translation>la igualación no puede empezar: %1 controles abiertos, el primero es %2</translation>
        </message>
        <message>
            <source>alignment force</source>
            <translation>fuerza al igualar</translation>
        </message>
        <message>
            <source>alignment is slow</source>
            <translation>la igualación va lenta</translation>
        </message>
        <message>
            <source>alignment is slow from</source>
            <translation>igualar es lento desde</translation>
        </message>
        <message>
            <source>alignment pressure</source>
            <translation>presión al igualar</translation>
        </message>
        <message>
            <source>alignment reading</source>
            <translation>lectura al igualar</translation>
        </message>
        <message>
            <source>alignment started</source>
            <translation>igualación empezada</translation>
        </message>
        <message>
            <source>alignment time</source>
            <translation>tiempo de igualar</translation>
        </message>
        <message>
            <source>alignment: %1</source>
            <translation>igualar: %1</translation>
        </message>
        <message>
            <source>all</source>
            <translation>todos</translation>
        </message>
        <message>
            <source>all %1 values attested</source>
            <translation>los %1 valores cotejados</translation>
        </message>
        <message>
            <source>all %1 were right</source>
            <translation>todas bien (%1)</translation>
        </message>
        <message>
            <source>all along</source>
            <translation>en todo el largo</translation>
        </message>
        <message>
            <source>all anew: %1</source>
            <translation>todo de nuevo: %1</translation>
        </message>
        <message>
            <source>all four</source>
            <translation>los cuatro</translation>
        </message>
        <message>
            <source>all joints again</source>
            <translation>otra vez todas</translation>
        </message>
        <message>
            <source>all readings are the same; a line needs two or more</source>
            <translation>todas las lecturas son iguales; una recta necesita dos o más</translation>
        </message>
        <message>
            <source>all springs, N for each mm of closing</source>
            <translation>todos los muelles, N por mm de cierre</translation>
        </message>
        <message>
            <source>allowed</source>
            <translation>permitido</translation>
        </message>
        <message>
            <source>allowed %1 to %2 %3</source>
            <translation>permitido %1 a %2 %3</translation>
        </message>
        <message>
            <source>allowed %1 to %2 °C</source>
            <translation>permitido %1 a %2 °C</translation>
        </message>
        <message>
            <source>allowed only in workshop conditions, with hardly any load on the joint at removal and storage, and from %1 mm of wall</source>
            <translation>permitido solo en condiciones de taller, casi sin carga en la unión al sacarla y guardarla, y desde %1 mm de pared</translation>
        </message>
        <message>
            <source>allowed up to %1 %2</source>
            <translation>permitido hasta %1 %2</translation>
        </message>
        <message>
            <source>allowed: a snapshot, a backup, or what log backup made</source>
            <translation>permitido: una instantánea, un respaldo o lo que hizo log backup</translation>
        </message>
        <message>
            <source>allowed: materials and a range, as in "PE-HD, PP 3-20 mm"</source>
            <translation>permitido: materiales y un margen, como «PE-HD, PP 3-20 mm»</translation>
        </message>
        <message>
            <source>along the seam: %1</source>
            <translation>junta a lo largo: %1</translation>
        </message>
        <message>
            <source>along the straight line</source>
            <translation>por la línea recta</translation>
        </message>
        <message>
            <source>along the table's straight line</source>
            <translation>por la recta de la tabla</translation>
        </message>
        <message>
            <source>ambient %1 is not a finite number; allowed %2 to %3 °C</source>
            <translation>temperatura del taller %1 no es un número finito; permitido %2 a %3 °C</translation>
        </message>
        <message>
            <source>ambient %1 is outside %2 to %3 °C</source>
            <translation>temperatura del taller %1 está fuera de %2 a %3 °C</translation>
        </message>
        <message>
            <source>ambient %1 is outside 5 to 45 °C</source>
            <translation>temperatura del taller %1 está fuera de 5 a 45 °C</translation>
        </message>
        <message>
            <source>ambient %1 °C is outside the classes for which %2 has cooling times</source>
            <translation>temperatura del taller %1 °C está fuera de las clases con tiempo de enfriamiento en %2</translation>
        </message>
        <message>
            <source>ambient %1 °C is outside the classes for which %2 has cooling times, from %3 °C</source>
            <translation>temperatura del taller %1 °C está fuera de las clases con tiempo de enfriamiento en %2, desde %3 °C</translation>
        </message>
        <message>
            <source>ambient %1 °C is outside the classes for which %2 has cooling times, up to %3 °C</source>
            <translation>temperatura del taller %1 °C está fuera de las clases con tiempo de enfriamiento en %2, hasta %3 °C</translation>
        </message>
        <message>
            <source>ambient measured</source>
            <translation>ambiente medido</translation>
        </message>
        <message>
            <source>an attestation</source>
            <translation>un cotejo</translation>
        </message>
        <message>
            <source>an empty form</source>
            <translation>formulario vacío</translation>
        </message>
        <message>
            <source>an event body of %1, n %2 was handed over as %3, n %4</source>
            <translation>un evento de %1, n %2, se entregó como %3, n %4</translation>
        </message>
        <message>
            <source>an unconfirmed bridge counts at least 0 ms, not %1</source>
            <translation>un enlace sin confirmar cuenta al menos 0 ms, no %1</translation>
        </message>
        <message>
            <source>and %1 more, under Attest</source>
            <translation>y %1 más, en Cotejar</translation>
        </message>
        <message>
            <source>and back: it goes on</source>
            <translation>y vuelta atrás: sigue</translation>
        </message>
        <message>
            <source>and it is %1 °C</source>
            <translation>y hay %1 °C</translation>
        </message>
        <message>
            <source>and its report</source>
            <translation>y su informe</translation>
        </message>
        <message>
            <source>another log stands there now</source>
            <translation>ahora hay allí otro registro</translation>
        </message>
        <message>
            <source>another program holds it locked%1</source>
            <translation>otro programa lo tiene bloqueado%1</translation>
        </message>
        <message>
            <source>another program is making a backup there</source>
            <translation>otro programa está haciendo allí un respaldo</translation>
        </message>
        <message>
            <source>another program is writing this log; close that one first</source>
            <translation>otro programa escribe en este registro; cerrar primero ese</translation>
        </message>
        <message>
            <source>another reason</source>
            <translation>otro motivo</translation>
        </message>
        <message>
            <source>another weld is on that bench by now</source>
            <translation>en ese banco ya hay otra soldadura</translation>
        </message>
        <message>
            <source>answered in %1 s</source>
            <translation>respuesta en %1 s</translation>
        </message>
        <message>
            <source>any that can make it</source>
            <translation>cualquiera que pueda</translation>
        </message>
        <message>
            <source>as it was</source>
            <translation>como estaba</translation>
        </message>
        <message>
            <source>as it was handed out</source>
            <translation>tal como se entregó</translation>
        </message>
        <message>
            <source>as it was kept</source>
            <translation>tal como se guardó</translation>
        </message>
        <message>
            <source>as set here</source>
            <translation>como aquí</translation>
        </message>
        <message>
            <source>asked for by the order, not looked at</source>
            <translation>pedida por la orden, no comprobada</translation>
        </message>
        <message>
            <source>asks for "%1", and nothing of that is wrong in this lesson</source>
            <translation>pregunta por «%1», y nada de eso está mal en esta lección</translation>
        </message>
        <message>
            <source>at %1</source>
            <comment>along the seam</comment>
            <translation>a %1</translation>
        </message>
        <message>
            <source>at 1 min and, for more than 6 min of cooling, at a third of it: our judgement</source>
            <translation>al minuto y, si enfría más de 6 min, a un tercio: juicio nuestro</translation>
        </message>
        <message>
            <source>at least</source>
            <translation>mínimo</translation>
        </message>
        <message>
            <source>at least %1</source>
            <translation>mínimo %1</translation>
        </message>
        <message>
            <source>at most</source>
            <translation>máximo</translation>
        </message>
        <message>
            <source>at most %1</source>
            <translation>máximo %1</translation>
        </message>
        <message>
            <source>at most %1 %2</source>
            <translation>máximo %1 %2</translation>
        </message>
        <message>
            <source>at most %1 mm</source>
            <translation>máximo %1 mm</translation>
        </message>
        <message>
            <source>at place %1</source>
            <translation>en el punto %1</translation>
        </message>
        <message>
            <source>at places %1 and %2</source>
            <translation>en los puntos %1 y %2</translation>
        </message>
        <message>
            <source>at the band's end</source>
            <translation>al final del tramo</translation>
        </message>
        <message>
            <source>at the signal</source>
            <translation>a la señal</translation>
        </message>
        <message>
            <source>at zero</source>
            <translation>en cero</translation>
        </message>
        <message>
            <source>attested by %1</source>
            <translation>cotejado por %1</translation>
        </message>
        <message>
            <source>attested by %1, %2, against edition %3</source>
            <translation>cotejado por %1, %2, con la edición %3</translation>
        </message>
        <message>
            <source>attested by the shop</source>
            <translation>cotejado por el taller</translation>
        </message>
        <message>
            <source>away from the bench</source>
            <translation>lejos del banco</translation>
        </message>
        <message>
            <source>away on the phone in soak</source>
            <translation>al teléfono durante el calentamiento</translation>
        </message>
        <message>
            <source>back</source>
            <translation>atrás</translation>
        </message>
        <message>
            <source>back to</source>
            <translation>volver a</translation>
        </message>
        <message>
            <source>back to the bench</source>
            <translation>volver al banco</translation>
        </message>
        <message>
            <source>back to the desk</source>
            <translation>volver al panel</translation>
        </message>
        <message>
            <source>back to the job</source>
            <translation>volver al trabajo</translation>
        </message>
        <message>
            <source>back to the list</source>
            <translation>volver a la lista</translation>
        </message>
        <message>
            <source>back to the log</source>
            <translation>volver al registro</translation>
        </message>
        <message>
            <source>back to the tables</source>
            <translation>volver a las tablas</translation>
        </message>
        <message>
            <source>back to the weld</source>
            <translation>a la soldadura</translation>
        </message>
        <message>
            <source>backed off after overshoot</source>
            <translation>aflojado tras pasarse</translation>
        </message>
        <message>
            <source>bars opened under a loaded spring</source>
            <translation>barras abiertas con el muelle cargado</translation>
        </message>
        <message>
            <source>batch %1</source>
            <translation>lote %1</translation>
        </message>
        <message>
            <source>batch %1?</source>
            <translation>¿lote %1?</translation>
        </message>
        <message>
            <source>batch of sheet 1</source>
            <translation>lote de la placa 1</translation>
        </message>
        <message>
            <source>batch of sheet 2</source>
            <translation>lote de la placa 2</translation>
        </message>
        <message>
            <source>batch, first sheet</source>
            <translation>lote, primera placa</translation>
        </message>
        <message>
            <source>batch, second sheet</source>
            <translation>lote, segunda placa</translation>
        </message>
        <message>
            <source>battery</source>
            <translation>batería</translation>
        </message>
        <message>
            <source>bead</source>
            <translation>cordón</translation>
        </message>
        <message>
            <source>bead %1 mm</source>
            <translation>cordón %1 mm</translation>
        </message>
        <message>
            <source>bead K</source>
            <translation>valor K</translation>
        </message>
        <message>
            <source>bead at %1: %2</source>
            <translation>cordón a %1: %2</translation>
        </message>
        <message>
            <source>bead at least</source>
            <translation>cordón mínimo</translation>
        </message>
        <message>
            <source>bead height</source>
            <translation>altura cordón</translation>
        </message>
        <message>
            <source>bead is slow</source>
            <translation>cordón lento</translation>
        </message>
        <message>
            <source>bead measured</source>
            <translation>cordón medido</translation>
        </message>
        <message>
            <source>bead missing at one end</source>
            <translation>falta cordón en un extremo</translation>
        </message>
        <message>
            <source>bead mm</source>
            <translation>cordón mm</translation>
        </message>
        <message>
            <source>bead not measured</source>
            <translation>cordón sin medir</translation>
        </message>
        <message>
            <source>bead stands after</source>
            <translation>cordón formado tras</translation>
        </message>
        <message>
            <source>bead stands, at %1</source>
            <translation>cordón hecho, a %1</translation>
        </message>
        <message>
            <source>bead width</source>
            <translation>ancho cordón</translation>
        </message>
        <message>
            <source>bead's height.</source>
            <translation>altura del cordón.</translation>
        </message>
        <message>
            <source>bead, grade, decisions</source>
            <translation>cordón, valoración, decisiones</translation>
        </message>
        <message>
            <source>bead: %1</source>
            <translation>cordón: %1</translation>
        </message>
        <message>
            <source>bead: front %1, back %2 mm</source>
            <translation>cordón: delante %1, atrás %2 mm</translation>
        </message>
        <message>
            <source>before every weld</source>
            <translation>antes de cada soldadura</translation>
        </message>
        <message>
            <source>before it was put right (%1): %2 %3</source>
            <translation>antes de corregirlo (%1): %2 %3</translation>
        </message>
        <message>
            <source>before: %1</source>
            <translation>antes: %1</translation>
        </message>
        <message>
            <source>begun by %1</source>
            <translation>empezadas por %1</translation>
        </message>
        <message>
            <source>being looked at</source>
            <translation>en examen</translation>
        </message>
        <message>
            <source>being made</source>
            <translation>haciéndose</translation>
        </message>
        <message>
            <source>being made: joint %1, %2</source>
            <translation>haciéndose: unión %1, %2</translation>
        </message>
        <message>
            <source>being prepared</source>
            <translation>en preparación</translation>
        </message>
        <message>
            <source>being released</source>
            <translation>al sacar</translation>
        </message>
        <message>
            <source>bench</source>
            <translation>banco</translation>
        </message>
        <message>
            <source>bench %1</source>
            <translation>banco %1</translation>
        </message>
        <message>
            <source>bench %1 · %2 · %3 · %4 mm</source>
            <translation>banco %1 · %2 · %3 · %4 mm</translation>
        </message>
        <message>
            <source>bench %1 · seams to %2 mm · sheets %3 to %4 mm</source>
            <translation>banco %1 · juntas hasta %2 mm · placas %3 a %4 mm</translation>
        </message>
        <message>
            <source>bench document</source>
            <translation>documento del banco</translation>
        </message>
        <message>
            <source>bench of the log</source>
            <translation>banco del registro</translation>
        </message>
        <message>
            <source>bend angle %1 °</source>
            <translation>ángulo de doblado %1 °</translation>
        </message>
        <message>
            <source>bend test</source>
            <translation>ensayo de doblado</translation>
        </message>
        <message>
            <source>bends</source>
            <translation>dobla</translation>
        </message>
        <message>
            <source>beside the shop's own log</source>
            <translation>junto al registro del taller</translation>
        </message>
        <message>
            <source>between a band's ends</source>
            <translation>entre extremos del tramo</translation>
        </message>
        <message>
            <source>both sheets are clamped: now the wheel moves the tables</source>
            <translation>las dos placas están sujetas: ahora el volante mueve las mesas</translation>
        </message>
        <message>
            <source>both sheets, both sides</source>
            <translation>ambas placas, dos caras</translation>
        </message>
        <message>
            <source>both stay in the record</source>
            <translation>los dos quedan en el registro</translation>
        </message>
        <message>
            <source>both, and chips off</source>
            <translation>los dos, y sin virutas</translation>
        </message>
        <message>
            <source>breaks</source>
            <translation>rompe</translation>
        </message>
        <message>
            <source>broken off: practice was closed in mid-weld</source>
            <translation>interrumpida: la práctica se cerró a medias</translation>
        </message>
        <message>
            <source>broken off: the program ended in mid-weld</source>
            <translation>interrumpida: el programa acabó a media soldadura</translation>
        </message>
        <message>
            <source>build-up</source>
            <translation>aumento</translation>
        </message>
        <message>
            <source>build-up is late</source>
            <translation>el aumento de presión va tarde</translation>
        </message>
        <message>
            <source>build-up late</source>
            <translation>aumento tardío</translation>
        </message>
        <message>
            <source>build-up s</source>
            <translation>aumento s</translation>
        </message>
        <message>
            <source>build-up time</source>
            <translation>tiempo de aumento</translation>
        </message>
        <message>
            <source>by</source>
            <translation>por</translation>
        </message>
        <message>
            <source>by PIN</source>
            <translation>con PIN</translation>
        </message>
        <message>
            <source>by a foreman's PIN</source>
            <translation>con PIN de un encargado</translation>
        </message>
        <message>
            <source>by a model of heat in the sheet, no measurement and no part of the verdict; worked out from %1</source>
            <translation>por un modelo de calor en la placa, ni medición ni parte del dictamen; calculado a partir de %1</translation>
        </message>
        <message>
            <source>by a word</source>
            <translation>por una palabra</translation>
        </message>
        <message>
            <source>by bead</source>
            <translation>por cordón</translation>
        </message>
        <message>
            <source>by his PIN, then go on</source>
            <translation>con su PIN, y seguir</translation>
        </message>
        <message>
            <source>by the first event [1], unless told</source>
            <translation>según el primer evento [1], salvo indicación</translation>
        </message>
        <message>
            <source>by the plan</source>
            <translation>según el plan</translation>
        </message>
        <message>
            <source>by the rules now: %1</source>
            <translation>con las reglas de hoy: %1</translation>
        </message>
        <message>
            <source>by the wall clock</source>
            <translation>según el reloj de pared</translation>
        </message>
        <message>
            <source>by your own eye</source>
            <translation>a ojo</translation>
        </message>
        <message>
            <source>calibrated %1, due %2</source>
            <translation>calibrada el %1, vence el %2</translation>
        </message>
        <message>
            <source>calibration</source>
            <translation>calibración</translation>
        </message>
        <message>
            <source>calibration due on %1</source>
            <translation>la calibración vence el %1</translation>
        </message>
        <message>
            <source>calibration, certificates</source>
            <translation>calibración, certificados</translation>
        </message>
        <message>
            <source>can only be read, not written</source>
            <translation>solo se puede leer, no escribir</translation>
        </message>
        <message>
            <source>can only be read, not written%1</source>
            <translation>solo se puede leer, no escribir%1</translation>
        </message>
        <message>
            <source>can't be brought to disk</source>
            <translation>no se puede llevar al disco</translation>
        </message>
        <message>
            <source>can't be brought to disk (%1)</source>
            <translation>no se puede llevar al disco (%1)</translation>
        </message>
        <message>
            <source>can't be locked (%1)</source>
            <translation>no se puede bloquear (%1)</translation>
        </message>
        <message>
            <source>can't be made</source>
            <translation>no se puede crear</translation>
        </message>
        <message>
            <source>can't be made (%1)</source>
            <translation>no se puede crear (%1)</translation>
        </message>
        <message>
            <source>can't be made; %1</source>
            <translation>no se puede crear; %1</translation>
        </message>
        <message>
            <source>can't be moved to %1 (%2)</source>
            <translation>no se puede mover a %1 (%2)</translation>
        </message>
        <message>
            <source>can't be opened</source>
            <translation>no se puede abrir</translation>
        </message>
        <message>
            <source>can't be opened (%1)</source>
            <translation>no se puede abrir (%1)</translation>
        </message>
        <message>
            <source>can't be opened%1</source>
            <translation>no se puede abrir%1</translation>
        </message>
        <message>
            <source>can't be put in its place</source>
            <translation>no se puede poner en su sitio</translation>
        </message>
        <message>
            <source>can't be read</source>
            <translation>ilegible</translation>
        </message>
        <message>
            <source>can't be written</source>
            <translation>no se puede escribir</translation>
        </message>
        <message>
            <source>can't be written (%1)</source>
            <translation>no se puede escribir (%1)</translation>
        </message>
        <message>
            <source>card</source>
            <translation>ficha</translation>
        </message>
        <message>
            <source>certificate expired</source>
            <translation>certificado vencido</translation>
        </message>
        <message>
            <source>certificate for other sheets</source>
            <translation>certificado para otras placas</translation>
        </message>
        <message>
            <source>change it</source>
            <translation>cambiarlo</translation>
        </message>
        <message>
            <source>changed since %1 signed</source>
            <translation>cambiada tras firmar %1</translation>
        </message>
        <message>
            <source>changeover</source>
            <translation>cambio</translation>
        </message>
        <message>
            <source>changeover is over its limit</source>
            <translation>el cambio pasó su límite</translation>
        </message>
        <message>
            <source>changeover late</source>
            <translation>cambio tardío</translation>
        </message>
        <message>
            <source>changeover s</source>
            <translation>cambio s</translation>
        </message>
        <message>
            <source>changeover time</source>
            <translation>tiempo de cambio</translation>
        </message>
        <message>
            <source>changeover too late</source>
            <translation>cambio demasiado tarde</translation>
        </message>
        <message>
            <source>check made</source>
            <translation>control hecho</translation>
        </message>
        <message>
            <source>check overridden</source>
            <translation>control omitido</translation>
        </message>
        <message>
            <source>checking a PIN needs %1 MB of memory, and that is not free</source>
            <translation>comprobar un PIN necesita %1 MB de memoria, y no están libres</translation>
        </message>
        <message>
            <source>chosen</source>
            <translation>elegido</translation>
        </message>
        <message>
            <source>clamp both sheets first; then one can be shimmed against the other</source>
            <translation>sujetar primero las dos placas; después se puede calzar una contra otra</translation>
        </message>
        <message>
            <source>class %1: air from °C</source>
            <translation>clase %1: aire desde °C</translation>
        </message>
        <message>
            <source>clock jumped</source>
            <translation>salto del reloj</translation>
        </message>
        <message>
            <source>closed as %1</source>
            <translation>cerrada como %1</translation>
        </message>
        <message>
            <source>closed: %1</source>
            <translation>cerrada: %1</translation>
        </message>
        <message>
            <source>closing waits for a reason: %1 is out of limits</source>
            <translation>antes de cerrar falta un motivo: %1 está fuera de límites</translation>
        </message>
        <message>
            <source>cold</source>
            <translation>frío</translation>
        </message>
        <message>
            <source>cold plate</source>
            <translation>espejo frío</translation>
        </message>
        <message>
            <source>cold skin</source>
            <translation>piel fría</translation>
        </message>
        <message>
            <source>colder</source>
            <translation>más frío</translation>
        </message>
        <message>
            <source>comes from the calibration's points; leave it out</source>
            <translation>sale de los puntos de calibración; no indicarlo</translation>
        </message>
        <message>
            <source>common practice, no source</source>
            <translation>práctica común, sin fuente</translation>
        </message>
        <message>
            <source>cooling</source>
            <translation>enfriar</translation>
        </message>
        <message>
            <source>cooling along the table's straight line</source>
            <translation>enfriar por la recta de la tabla</translation>
        </message>
        <message>
            <source>cooling by the upper end of the table's band</source>
            <translation>enfriar por el extremo superior del tramo de la tabla</translation>
        </message>
        <message>
            <source>cooling for each kelvin</source>
            <translation>enfriar por kelvin</translation>
        </message>
        <message>
            <source>cooling is cut by half: full load only after the whole %1 min</source>
            <translation>el enfriamiento se reduce a la mitad: carga plena solo tras los %1 min enteros</translation>
        </message>
        <message>
            <source>cooling is over</source>
            <translation>ya enfriado</translation>
        </message>
        <message>
            <source>cooling min</source>
            <translation>enfriar min</translation>
        </message>
        <message>
            <source>cooling over</source>
            <translation>ya enfriado</translation>
        </message>
        <message>
            <source>cooling rule band-end is not offered by %1, whose cooling has no bands; allowed line</source>
            <translation>enfriar según el final de la banda (band-end) no existe en %1, que no tiene bandas; permitido: line</translation>
        </message>
        <message>
            <source>cooling time</source>
            <translation>tiempo de enfriamiento</translation>
        </message>
        <message>
            <source>cooling, by the shop's temperature</source>
            <translation>enfriar, según temperatura del taller</translation>
        </message>
        <message>
            <source>cooling: %1 left</source>
            <translation>enfriar: aún %1</translation>
        </message>
        <message>
            <source>cools</source>
            <translation>enfría</translation>
        </message>
        <message>
            <source>correcting a value needs a foreman's PIN</source>
            <translation>corregir un valor necesita el PIN de un encargado</translation>
        </message>
        <message>
            <source>could not be done: %1</source>
            <translation>no se pudo hacer: %1</translation>
        </message>
        <message>
            <source>count from here</source>
            <translation>contar desde aquí</translation>
        </message>
        <message>
            <source>count none of it</source>
            <translation>no contar nada</translation>
        </message>
        <message>
            <source>count-in</source>
            <translation>cuenta atrás</translation>
        </message>
        <message>
            <source>coupons, welding factor</source>
            <translation>probetas, factor</translation>
        </message>
        <message>
            <source>cut from another one; the numbers stay</source>
            <translation>de otra; los números quedan</translation>
        </message>
        <message>
            <source>cut out</source>
            <translation>cortar</translation>
        </message>
        <message>
            <source>d MMM</source>
            <extracomment>Qt's pattern of a date without its year; "'de'" stands for a word</extracomment>
            <translation>d MMM</translation>
        </message>
        <message>
            <source>d MMM yyyy</source>
            <extracomment>Qt's pattern of a date with its year, short: it stands in narrow columns</extracomment>
            <translation>dd/MM/yyyy</translation>
        </message>
        <message>
            <source>damaged: %1</source>
            <translation>dañada: %1</translation>
        </message>
        <message>
            <source>dark</source>
            <translation>oscura</translation>
        </message>
        <message>
            <source>dark, light, high contrast</source>
            <translation>oscura, clara, alto contraste</translation>
        </message>
        <message>
            <source>day</source>
            <translation>día</translation>
        </message>
        <message>
            <source>ddd d MMMM</source>
            <extracomment>Qt's pattern of a date without its year; "'de'" stands for a word</extracomment>
            <translation>ddd d 'de' MMMM</translation>
        </message>
        <message>
            <source>decided</source>
            <translation>decidido</translation>
        </message>
        <message>
            <source>deciding on a joint needs a foreman's PIN</source>
            <translation>decidir sobre una unión necesita el PIN de un encargado</translation>
        </message>
        <message>
            <source>decimal sign %1</source>
            <translation>signo decimal %1</translation>
        </message>
        <message>
            <source>decision</source>
            <translation>decisión</translation>
        </message>
        <message>
            <source>digits typed: %1</source>
            <translation>cifras tecleadas: %1</translation>
        </message>
        <message>
            <source>dirt in it</source>
            <translation>suciedad</translation>
        </message>
        <message>
            <source>does not begin where the class before it ends</source>
            <translation>no empieza donde acaba la clase anterior</translation>
        </message>
        <message>
            <source>does not cover the same thicknesses as the table</source>
            <translation>no cubre los mismos espesores que la tabla</translation>
        </message>
        <message>
            <source>does not end with "%1"</source>
            <translation>no termina con «%1»</translation>
        </message>
        <message>
            <source>does something drift?</source>
            <translation>¿algo se desvía?</translation>
        </message>
        <message>
            <source>done</source>
            <translation>hecho</translation>
        </message>
        <message>
            <source>done</source>
            <comment>beside what was set</comment>
            <translation>hecho</translation>
        </message>
        <message>
            <source>done on, like 2030-01-07</source>
            <translation>hecha el, p. ej. 2030-01-07</translation>
        </message>
        <message>
            <source>drag</source>
            <translation>arrastre</translation>
        </message>
        <message>
            <source>drag %1 N is outside 0 to %2 N</source>
            <translation>arrastre %1 N está fuera de 0 a %2 N</translation>
        </message>
        <message>
            <source>drag %1 is not a number; allowed 0 to %2 N</source>
            <translation>arrastre %1 no es un número; permitido 0 a %2 N</translation>
        </message>
        <message>
            <source>drag as read</source>
            <translation>arrastre leído</translation>
        </message>
        <message>
            <source>drag measured</source>
            <translation>arrastre medido</translation>
        </message>
        <message>
            <source>drag read with the sheet clamped</source>
            <translation>arrastre leído con la placa sujeta</translation>
        </message>
        <message>
            <source>drag reading %1 is below what the scale shows without any drag, %2</source>
            <translation>la lectura de arrastre %1 está por debajo de lo que muestra la escala sin arrastre alguno, %2</translation>
        </message>
        <message>
            <source>drag was not measured; it is taken as 0 N</source>
            <translation>arrastre sin medir; se toma 0 N</translation>
        </message>
        <message>
            <source>draught</source>
            <translation>aire</translation>
        </message>
        <message>
            <source>drawing</source>
            <translation>dibujo</translation>
        </message>
        <message>
            <source>drift of the reading</source>
            <translation>deriva de la lectura</translation>
        </message>
        <message>
            <source>due in %1</source>
            <translation>toca en %1</translation>
        </message>
        <message>
            <source>due on</source>
            <translation>vence el</translation>
        </message>
        <message>
            <source>e.g. another plate</source>
            <translation>p. ej. otro espejo</translation>
        </message>
        <message>
            <source>each coupon in N/mm²</source>
            <translation>cada probeta en N/mm²</translation>
        </message>
        <message>
            <source>each coupon in degrees</source>
            <translation>cada probeta en grados</translation>
        </message>
        <message>
            <source>each coupon in mm</source>
            <translation>cada probeta en mm</translation>
        </message>
        <message>
            <source>each sheet lost</source>
            <translation>pérdida por placa</translation>
        </message>
        <message>
            <source>earliest possible %1</source>
            <translation>lo más temprano %1</translation>
        </message>
        <message>
            <source>edges</source>
            <translation>cantos</translation>
        </message>
        <message>
            <source>edges meet in parallel</source>
            <translation>cantos a tope y paralelos</translation>
        </message>
        <message>
            <source>edges planed, clean, not touched</source>
            <translation>cantos cepillados, limpios, sin tocar</translation>
        </message>
        <message>
            <source>edition</source>
            <translation>edición</translation>
        </message>
        <message>
            <source>enter a name</source>
            <translation>dar un nombre</translation>
        </message>
        <message>
            <source>enters people, seals, decides; has a PIN</source>
            <translation>da altas, sella, decide; tiene PIN</translation>
        </message>
        <message>
            <source>even rise to</source>
            <translation>por igual a</translation>
        </message>
        <message>
            <source>evenly to %1</source>
            <translation>por igual a %1</translation>
        </message>
        <message>
            <source>event</source>
            <translation>evento</translation>
        </message>
        <message>
            <source>event %1</source>
            <translation>evento %1</translation>
        </message>
        <message>
            <source>event %1 is another in chain %2 than in chain %3</source>
            <translation>el evento %1 es distinto en la cadena %2 y en la %3</translation>
        </message>
        <message>
            <source>event %1 of %2 can't be read</source>
            <translation>el evento %1 de %2 no se puede leer</translation>
        </message>
        <message>
            <source>event %1 taken back</source>
            <translation>evento %1 deshecho</translation>
        </message>
        <message>
            <source>event %1 was %2 earlier</source>
            <translation>evento %1: ocurrió %2 antes</translation>
        </message>
        <message>
            <source>event %1, %2: was %3, is %4 (%5)</source>
            <translation>evento %1, %2: era %3, es %4 (%5)</translation>
        </message>
        <message>
            <source>expected a JSON object</source>
            <translation>se espera un objeto JSON</translation>
        </message>
        <message>
            <source>face %1</source>
            <translation>cara %1</translation>
        </message>
        <message>
            <source>faces</source>
            <translation>caras</translation>
        </message>
        <message>
            <source>faces in line</source>
            <translation>caras alineadas</translation>
        </message>
        <message>
            <source>faces met</source>
            <translation>caras juntas</translation>
        </message>
        <message>
            <source>faces out of line</source>
            <translation>caras desalineadas</translation>
        </message>
        <message>
            <source>faces out of line.</source>
            <translation>caras desalineadas.</translation>
        </message>
        <message>
            <source>faces together</source>
            <translation>caras juntas</translation>
        </message>
        <message>
            <source>factor, floor and cap</source>
            <translation>factor, mínimo y máximo</translation>
        </message>
        <message>
            <source>factors of 1, s, s² and so on</source>
            <translation>factores de 1, s, s² y demás</translation>
        </message>
        <message>
            <source>film</source>
            <translation>film</translation>
        </message>
        <message>
            <source>film off, edges planed</source>
            <translation>film fuera, cantos cepillados</translation>
        </message>
        <message>
            <source>finished</source>
            <translation>terminada</translation>
        </message>
        <message>
            <source>first and last name</source>
            <translation>nombre y apellido</translation>
        </message>
        <message>
            <source>first bench %1</source>
            <translation>antes el banco %1</translation>
        </message>
        <message>
            <source>first gap, times the thickness</source>
            <translation>primer hueco, por el espesor</translation>
        </message>
        <message>
            <source>first sheet clamped evenly</source>
            <translation>primera placa sujeta por igual</translation>
        </message>
        <message>
            <source>fixed side</source>
            <translation>lado fijo</translation>
        </message>
        <message>
            <source>fixed table</source>
            <translation>mesa fija</translation>
        </message>
        <message>
            <source>folder</source>
            <translation>carpeta</translation>
        </message>
        <message>
            <source>for a %1 mm bead</source>
            <translation>para cordón de %1 mm</translation>
        </message>
        <message>
            <source>for programs</source>
            <translation>para programas</translation>
        </message>
        <message>
            <source>force</source>
            <translation>fuerza</translation>
        </message>
        <message>
            <source>force N</source>
            <translation>fuerza N</translation>
        </message>
        <message>
            <source>force in cooling</source>
            <translation>fuerza al enfriar</translation>
        </message>
        <message>
            <source>foreman</source>
            <translation>encargado</translation>
        </message>
        <message>
            <source>foreman without a PIN here</source>
            <translation>encargado sin PIN aquí</translation>
        </message>
        <message>
            <source>foreman, by PIN</source>
            <translation>encargado, con PIN</translation>
        </message>
        <message>
            <source>formula</source>
            <translation>fórmula</translation>
        </message>
        <message>
            <source>found</source>
            <translation>hallado</translation>
        </message>
        <message>
            <source>free</source>
            <translation>libre</translation>
        </message>
        <message>
            <source>free, next:</source>
            <translation>libre, sigue:</translation>
        </message>
        <message>
            <source>from</source>
            <translation>origen</translation>
        </message>
        <message>
            <source>from %1</source>
            <translation>desde %1</translation>
        </message>
        <message>
            <source>from %1 mm</source>
            <translation>desde %1 mm</translation>
        </message>
        <message>
            <source>from %1 °C</source>
            <translation>desde %1 °C</translation>
        </message>
        <message>
            <source>from a file</source>
            <translation>de un archivo</translation>
        </message>
        <message>
            <source>from above</source>
            <translation>desde arriba</translation>
        </message>
        <message>
            <source>from joint to joint: limit %1</source>
            <translation>de unión a unión: límite %1</translation>
        </message>
        <message>
            <source>from memory: not attested</source>
            <translation>de memoria: sin cotejar</translation>
        </message>
        <message>
            <source>from mm</source>
            <translation>desde mm</translation>
        </message>
        <message>
            <source>from the end</source>
            <translation>desde el extremo</translation>
        </message>
        <message>
            <source>from the job</source>
            <translation>del trabajo</translation>
        </message>
        <message>
            <source>from the torn end of the write-ahead log; its hash is not that of its body</source>
            <translation>del final roto del diario; su huella no es la de su contenido</translation>
        </message>
        <message>
            <source>from when it shows its heat</source>
            <translation>desde que marca su temperatura</translation>
        </message>
        <message>
            <source>from zero to drag</source>
            <translation>de cero al arrastre</translation>
        </message>
        <message>
            <source>front</source>
            <translation>delante</translation>
        </message>
        <message>
            <source>front and back</source>
            <translation>delante y atrás</translation>
        </message>
        <message>
            <source>front, middle and back</source>
            <translation>delante, centro y atrás</translation>
        </message>
        <message>
            <source>front, middle and back of both faces</source>
            <translation>delante, centro y atrás de ambas caras</translation>
        </message>
        <message>
            <source>gap</source>
            <translation>hueco</translation>
        </message>
        <message>
            <source>gap at most</source>
            <translation>hueco máximo</translation>
        </message>
        <message>
            <source>gap between the edges</source>
            <translation>hueco entre cantos</translation>
        </message>
        <message>
            <source>gap between the tables</source>
            <translation>hueco entre mesas</translation>
        </message>
        <message>
            <source>gap for the second sheet</source>
            <translation>hueco para la segunda placa</translation>
        </message>
        <message>
            <source>gap opened for the second sheet</source>
            <translation>hueco abierto para la segunda placa</translation>
        </message>
        <message>
            <source>gap set, the same front and back</source>
            <translation>hueco puesto, igual delante y atrás</translation>
        </message>
        <message>
            <source>gap × 2</source>
            <translation>hueco × 2</translation>
        </message>
        <message>
            <source>get ready</source>
            <translation>atención</translation>
        </message>
        <message>
            <source>give %1 at %2 mm, outside %3 to %4%5</source>
            <translation>dan %1 con %2 mm, fuera de %3 a %4%5</translation>
        </message>
        <message>
            <source>go on typing</source>
            <translation>seguir escribiendo</translation>
        </message>
        <message>
            <source>going on without the check "%1" needs a reason</source>
            <translation>seguir sin el control «%1» necesita un motivo</translation>
        </message>
        <message>
            <source>grade</source>
            <translation>valoración</translation>
        </message>
        <message>
            <source>graded</source>
            <translation>calificado</translation>
        </message>
        <message>
            <source>graded by %1: %2</source>
            <translation>valorada según %1: %2</translation>
        </message>
        <message>
            <source>greatest force it holds N</source>
            <translation>fuerza máxima que aguanta N</translation>
        </message>
        <message>
            <source>had left</source>
            <translation>se fue</translation>
        </message>
        <message>
            <source>half a division, %1 %2, is more than twice the tolerance of %3 %4 (%5): bench %6 can't show this seam's %7; allowed divisions up to %8 %9</source>
            <translation>media división, %1 %2, es más del doble de la tolerancia de %3 %4 (%5): el banco %6 no puede mostrar los %7 de esta junta; divisiones permitidas: hasta %8 %9</translation>
        </message>
        <message>
            <source>half cooling</source>
            <translation>medio enfriado</translation>
        </message>
        <message>
            <source>half cooling from mm</source>
            <translation>medio enfriado desde mm</translation>
        </message>
        <message>
            <source>half cooling is not allowed by %1; allowed: the whole cooling time</source>
            <translation>medio enfriado no está permitido por %1; permitido: todo el tiempo de enfriamiento</translation>
        </message>
        <message>
            <source>half cooling of %1 mm; %2</source>
            <translation>medio enfriado con %1 mm; %2</translation>
        </message>
        <message>
            <source>half cooling of a joint that is loaded at once; %1</source>
            <translation>medio enfriado de una unión que se carga enseguida; %1</translation>
        </message>
        <message>
            <source>half cooling outside workshop conditions; %1</source>
            <translation>medio enfriado fuera de condiciones de taller; %1</translation>
        </message>
        <message>
            <source>hands on</source>
            <translation>manos</translation>
        </message>
        <message>
            <source>hands out the right row; leave thickness_mm out</source>
            <translation>da la fila correcta; no indicar thickness_mm</translation>
        </message>
        <message>
            <source>has %1 MB free, too little for the photos and what must stay free beside them</source>
            <translation>tiene %1 MB libres, muy poco para las fotos y lo que debe quedar libre</translation>
        </message>
        <message>
            <source>has %1 free, and a copy of this log takes up to %2</source>
            <translation>tiene %1 libres; una copia de este registro ocupa hasta %2</translation>
        </message>
        <message>
            <source>has %1 free, and a copy of this log takes up to %2 and must leave %3 free</source>
            <translation>tiene %1 libres; una copia de este registro ocupa hasta %2 y debe dejar %3 libres</translation>
        </message>
        <message>
            <source>has %1 letters; allowed: up to %2</source>
            <translation>tiene %1 letras; permitido: hasta %2</translation>
        </message>
        <message>
            <source>has %1 signs; allowed: 1 to %2</source>
            <translation>tiene %1 signos; permitido: de 1 a %2</translation>
        </message>
        <message>
            <source>has 0 bytes, so it is no log</source>
            <translation>tiene 0 bytes, así que no es un registro</translation>
        </message>
        <message>
            <source>has no value from %1 to %2 mm, and gaps does not declare %3 there</source>
            <translation>no tiene valor de %1 a %2 mm, y gaps no declara %3 allí</translation>
        </message>
        <message>
            <source>has none here</source>
            <translation>aquí no tiene</translation>
        </message>
        <message>
            <source>heat in the sheet, estimated</source>
            <translation>calor en la placa, estimado</translation>
        </message>
        <message>
            <source>heated plate that hangs there: its name or mark</source>
            <translation>espejo que lleva montado: su nombre o marca</translation>
        </message>
        <message>
            <source>height %1 mm</source>
            <translation>altura %1 mm</translation>
        </message>
        <message>
            <source>held against this paper it shows whether the log was changed</source>
            <translation>comparado con este papel muestra si se cambió el registro</translation>
        </message>
        <message>
            <source>held against this paper they show whether the log was changed</source>
            <translation>comparados con este papel muestran si se cambió el registro</translation>
        </message>
        <message>
            <source>held no longer</source>
            <translation>ya no valía</translation>
        </message>
        <message>
            <source>high</source>
            <translation>alta</translation>
        </message>
        <message>
            <source>high contrast</source>
            <translation>alto contraste</translation>
        </message>
        <message>
            <source>holds %1 rows of another log ("%2", expected "%3"); move it away, or put its own log back</source>
            <translation>contiene %1 filas de otro registro («%2», se espera «%3»); apartarlo o devolver su propio registro</translation>
        </message>
        <message>
            <source>holds keys, and others than its owner may read or write it; take that right away (chmod 600)</source>
            <translation>contiene claves, y otros que no son su dueño pueden leerlo o escribirlo; quitar ese permiso (chmod 600)</translation>
        </message>
        <message>
            <source>holds neither a table nor a formula</source>
            <translation>no contiene tabla ni fórmula</translation>
        </message>
        <message>
            <source>holds no class</source>
            <translation>no contiene ninguna clase</translation>
        </message>
        <message>
            <source>holds no lesson (*.json)</source>
            <translation>no contiene ninguna lección (*.json)</translation>
        </message>
        <message>
            <source>holds no procedure (*.json)</source>
            <translation>no contiene ningún procedimiento (*.json)</translation>
        </message>
        <message>
            <source>holds no rows</source>
            <translation>no contiene filas</translation>
        </message>
        <message>
            <source>hollow</source>
            <translation>hueca</translation>
        </message>
        <message>
            <source>hot</source>
            <translation>calor</translation>
        </message>
        <message>
            <source>hot faces pulled apart</source>
            <translation>caras calientes separadas</translation>
        </message>
        <message>
            <source>how far it is moved</source>
            <translation>cuánto se mueve</translation>
        </message>
        <message>
            <source>how far it is pushed</source>
            <translation>cuánto se empuja</translation>
        </message>
        <message>
            <source>how far, cracked or not</source>
            <translation>cuánto, agrietada o no</translation>
        </message>
        <message>
            <source>if one is not</source>
            <translation>si alguno no</translation>
        </message>
        <message>
            <source>if you like</source>
            <translation>si se quiere</translation>
        </message>
        <message>
            <source>in</source>
            <translation>meter</translation>
        </message>
        <message>
            <source>in alignment</source>
            <translation>al igualar</translation>
        </message>
        <message>
            <source>in build-up</source>
            <translation>en el aumento</translation>
        </message>
        <message>
            <source>in changeover</source>
            <translation>en el cambio</translation>
        </message>
        <message>
            <source>in cooling</source>
            <translation>al enfriar</translation>
        </message>
        <message>
            <source>in its own log</source>
            <translation>en su propio registro</translation>
        </message>
        <message>
            <source>in line</source>
            <translation>alineado</translation>
        </message>
        <message>
            <source>in soak</source>
            <translation>al calentar</translation>
        </message>
        <message>
            <source>in the day log</source>
            <translation>en el diario</translation>
        </message>
        <message>
            <source>in the middle</source>
            <translation>en el centro</translation>
        </message>
        <message>
            <source>in the plan: %1 N</source>
            <translation>en el plan: %1 N</translation>
        </message>
        <message>
            <source>in the shop, by the plan</source>
            <translation>en el taller, según plan</translation>
        </message>
        <message>
            <source>in this bench's order</source>
            <translation>en el orden de este banco</translation>
        </message>
        <message>
            <source>inch</source>
            <translation>pulgada</translation>
        </message>
        <message>
            <source>inch, lbf, °F</source>
            <translation>pulg, lbf, °F</translation>
        </message>
        <message>
            <source>incomplete</source>
            <translation>incompleta</translation>
        </message>
        <message>
            <source>incomplete: %1</source>
            <translation>incompleta: %1</translation>
        </message>
        <message>
            <source>into a file</source>
            <translation>en un archivo</translation>
        </message>
        <message>
            <source>into the documents</source>
            <translation>en los documentos</translation>
        </message>
        <message>
            <source>invented; in a folder of its own</source>
            <translation>inventado; en carpeta propia</translation>
        </message>
        <message>
            <source>is a %1 log, expected a %2 log</source>
            <translation>es un registro «%1», se espera un registro «%2»</translation>
        </message>
        <message>
            <source>is a %1 log; practice stands in a practice log only</source>
            <translation>es un registro «%1»; la práctica solo está en un registro de práctica</translation>
        </message>
        <message>
            <source>is a database, but not a joint log (application id %1, expected %2 or %3)</source>
            <translation>es una base de datos, pero no un registro (identificador %1, se espera %2 o %3)</translation>
        </message>
        <message>
            <source>is a folder, expected a file</source>
            <translation>es una carpeta, se espera un archivo</translation>
        </message>
        <message>
            <source>is a folder, expected a log file</source>
            <translation>es una carpeta, se espera un archivo de registro</translation>
        </message>
        <message>
            <source>is a folder; allowed: the name of a file</source>
            <translation>es una carpeta; permitido: el nombre de un archivo</translation>
        </message>
        <message>
            <source>is a live log and no copy of one</source>
            <translation>es un registro en uso y no una copia</translation>
        </message>
        <message>
            <source>is above the solid's density</source>
            <translation>está por encima de la densidad del sólido</translation>
        </message>
        <message>
            <source>is band-end, but a class has no table</source>
            <translation>es band-end, pero una clase no tiene tabla</translation>
        </message>
        <message>
            <source>is empty</source>
            <translation>está vacío</translation>
        </message>
        <message>
            <source>is empty; allowed: %1</source>
            <translation>está vacío; permitido: %1</translation>
        </message>
        <message>
            <source>is empty; allowed: %1, several with + between</source>
            <translation>está vacío; permitido: %1, varias con + entre ellas</translation>
        </message>
        <message>
            <source>is gone, and its write-ahead log stands there without it</source>
            <translation>ya no está, y su diario ha quedado solo</translation>
        </message>
        <message>
            <source>is it %1, %2 mm?</source>
            <translation>¿es %1, %2 mm?</translation>
        </message>
        <message>
            <source>is missing</source>
            <translation>falta</translation>
        </message>
        <message>
            <source>is missing: only the first class may have no lower limit</source>
            <translation>falta: solo la primera clase puede no tener límite inferior</translation>
        </message>
        <message>
            <source>is not %1</source>
            <translation>no es %1</translation>
        </message>
        <message>
            <source>is not %1 hexadecimal digits</source>
            <translation>no son %1 cifras hexadecimales</translation>
        </message>
        <message>
            <source>is not 32 or 96 hexadecimal digits</source>
            <translation>no son 32 o 96 cifras hexadecimales</translation>
        </message>
        <message>
            <source>is not a database, so it is no log</source>
            <translation>no es una base de datos, así que no es un registro</translation>
        </message>
        <message>
            <source>is not a field that is known here</source>
            <translation>no es un campo conocido aquí</translation>
        </message>
        <message>
            <source>is not a list</source>
            <translation>no es una lista</translation>
        </message>
        <message>
            <source>is not a list of numbers</source>
            <translation>no es una lista de números</translation>
        </message>
        <message>
            <source>is not a list of texts</source>
            <translation>no es una lista de textos</translation>
        </message>
        <message>
            <source>is not a list of whole numbers</source>
            <translation>no es una lista de números enteros</translation>
        </message>
        <message>
            <source>is not a regular file</source>
            <translation>no es un archivo normal</translation>
        </message>
        <message>
            <source>is not a regular file, expected a log file</source>
            <translation>no es un archivo normal, se espera un archivo de registro</translation>
        </message>
        <message>
            <source>is not seamclock-job/1</source>
            <translation>no es seamclock-job/1</translation>
        </message>
        <message>
            <source>is not there</source>
            <translation>no está</translation>
        </message>
        <message>
            <source>is not what the station signed</source>
            <translation>no es lo que firmó la tableta</translation>
        </message>
        <message>
            <source>is the log itself</source>
            <translation>es el registro mismo</translation>
        </message>
        <message>
            <source>is the rate itself where the unit is mm; leave it out</source>
            <translation>es la rigidez misma si la unidad es mm; no indicarlo</translation>
        </message>
        <message>
            <source>is there already and is no copy of this log but of another; it is left as it is</source>
            <translation>ya existe y es copia de otro registro; se deja como está</translation>
        </message>
        <message>
            <source>is there already and is no copy of this log; it is left as it is</source>
            <translation>ya existe y no es copia de este registro; se deja como está</translation>
        </message>
        <message>
            <source>is there already; it is never overwritten</source>
            <translation>ya existe; nunca se sobrescribe</translation>
        </message>
        <message>
            <source>it answers n %1, the last step that can be is n %2</source>
            <translation>responde a n %1, el último paso posible es n %2</translation>
        </message>
        <message>
            <source>it belongs to %1, not to %2</source>
            <translation>pertenece a %1, no a %2</translation>
        </message>
        <message>
            <source>it bridges from boot %1, the weld's is %2</source>
            <translation>enlaza desde el arranque %1, el de la soldadura es %2</translation>
        </message>
        <message>
            <source>it burns: keep it guarded</source>
            <translation>quema: tenerlo protegido</translation>
        </message>
        <message>
            <source>it can't be set aside: %1</source>
            <translation>no se puede apartar: %1</translation>
        </message>
        <message>
            <source>it comes %1 ms after the step; allowed are 10000 ms on the same boot</source>
            <translation>llega %1 ms tras el paso; permitidos 10000 ms en el mismo arranque</translation>
        </message>
        <message>
            <source>it is in the record</source>
            <translation>consta en registro</translation>
        </message>
        <message>
            <source>it is wished on the bench "%1", which is not planned for</source>
            <translation>se pide en el banco «%1», que no se planifica</translation>
        </message>
        <message>
            <source>it leaks</source>
            <translation>hay fuga</translation>
        </message>
        <message>
            <source>it means</source>
            <translation>significa</translation>
        </message>
        <message>
            <source>it stays</source>
            <translation>sin cambio</translation>
        </message>
        <message>
            <source>it tells of no coupon</source>
            <translation>no habla de ninguna probeta</translation>
        </message>
        <message>
            <source>it was</source>
            <translation>ocurrió</translation>
        </message>
        <message>
            <source>it was stopped</source>
            <translation>se detuvo</translation>
        </message>
        <message>
            <source>it will be cut out</source>
            <translation>se va a cortar</translation>
        </message>
        <message>
            <source>it will be in the record</source>
            <translation>constará en el registro</translation>
        </message>
        <message>
            <source>its document is not in the log, so there are no actual forces</source>
            <translation>su documento no está en el registro, por eso no hay fuerzas reales</translation>
        </message>
        <message>
            <source>its end, %1</source>
            <translation>su final, %1</translation>
        </message>
        <message>
            <source>its events can't be read</source>
            <translation>no se pueden leer sus eventos</translation>
        </message>
        <message>
            <source>its file can't be read</source>
            <translation>no se puede leer su archivo</translation>
        </message>
        <message>
            <source>its file is missing</source>
            <translation>falta su archivo</translation>
        </message>
        <message>
            <source>its file was altered</source>
            <translation>archivo alterado</translation>
        </message>
        <message>
            <source>its folder can't be brought to disk</source>
            <translation>no se puede llevar al disco su carpeta</translation>
        </message>
        <message>
            <source>its folder can't be written to (%1)</source>
            <translation>no se puede escribir en su carpeta (%1)</translation>
        </message>
        <message>
            <source>its folder can't hold a write-ahead log (journal mode "%1", expected "wal")</source>
            <translation>su carpeta no admite un diario adelantado (modo «%1», se espera «wal»)</translation>
        </message>
        <message>
            <source>its folder, nothing else</source>
            <translation>solo su carpeta</translation>
        </message>
        <message>
            <source>its head row says %1 rows, and the last row is %2</source>
            <translation>su fila de cabeza dice %1 filas y la última fila es la %2</translation>
        </message>
        <message>
            <source>its head row says %1 rows, and the last row is %2; "log verify" tells more</source>
            <translation>su fila de cabeza dice %1 filas y la última es la %2; «log verify» dice más</translation>
        </message>
        <message>
            <source>its head, row %1, %2; "log verify" tells more</source>
            <translation>su cabeza, fila %1, %2; «log verify» dice más</translation>
        </message>
        <message>
            <source>its instant lies before the last event's</source>
            <translation>su instante es anterior al del último evento</translation>
        </message>
        <message>
            <source>its interval runs backwards: %1 to %2 ms</source>
            <translation>su intervalo va hacia atrás: %1 a %2 ms</translation>
        </message>
        <message>
            <source>its joints</source>
            <translation>sus uniones</translation>
        </message>
        <message>
            <source>its list of files</source>
            <translation>su lista de archivos</translation>
        </message>
        <message>
            <source>its sheets</source>
            <translation>sus placas</translation>
        </message>
        <message>
            <source>its structure is damaged (%1)</source>
            <translation>su estructura está dañada (%1)</translation>
        </message>
        <message>
            <source>its structure is damaged%1</source>
            <translation>su estructura está dañada%1</translation>
        </message>
        <message>
            <source>job</source>
            <translation>trabajo</translation>
        </message>
        <message>
            <source>joined, bead %1 / %2 mm</source>
            <translation>unidas, cordón %1 / %2 mm</translation>
        </message>
        <message>
            <source>joining</source>
            <translation>unir</translation>
        </message>
        <message>
            <source>joining N/mm²</source>
            <translation>unir N/mm²</translation>
        </message>
        <message>
            <source>joining force</source>
            <translation>fuerza al unir</translation>
        </message>
        <message>
            <source>joining pressure</source>
            <translation>presión al unir</translation>
        </message>
        <message>
            <source>joining reading</source>
            <translation>lectura al unir</translation>
        </message>
        <message>
            <source>joining reading marked on the scale</source>
            <translation>lectura de unión marcada en la escala</translation>
        </message>
        <message>
            <source>joins with %1 N</source>
            <translation>une con %1 N</translation>
        </message>
        <message>
            <source>joint %1</source>
            <translation>unión %1</translation>
        </message>
        <message>
            <source>joint %1 begun</source>
            <translation>unión %1 empezada</translation>
        </message>
        <message>
            <source>joint %1 is not finished yet; allowed: a joint that is</source>
            <translation>la unión %1 aún no está terminada; permitido: una que lo esté</translation>
        </message>
        <message>
            <source>joint %1 is still open on this bench</source>
            <translation>la unión %1 sigue abierta en este banco</translation>
        </message>
        <message>
            <source>joint %1, event %2, photo "%3": %4</source>
            <translation>unión %1, evento %2, foto "%3": %4</translation>
        </message>
        <message>
            <source>joint numbered</source>
            <translation>número en la placa</translation>
        </message>
        <message>
            <source>joint, out of limits</source>
            <translation>unión, fuera de límites</translation>
        </message>
        <message>
            <source>keep hands out: tables crush</source>
            <translation>manos fuera: mesas aplastan</translation>
        </message>
        <message>
            <source>kept</source>
            <translation>bien</translation>
        </message>
        <message>
            <source>kinked</source>
            <translation>acodada</translation>
        </message>
        <message>
            <source>larger than %1 bytes, the most allowed</source>
            <translation>más grande que los %1 bytes permitidos</translation>
        </message>
        <message>
            <source>learns to weld</source>
            <translation>aprende a soldar</translation>
        </message>
        <message>
            <source>least force it holds N</source>
            <translation>fuerza mínima que aguanta N</translation>
        </message>
        <message>
            <source>left of %1 cooling</source>
            <translation>por enfriar, de %1</translation>
        </message>
        <message>
            <source>left of %1 soak</source>
            <translation>por calentar, de %1</translation>
        </message>
        <message>
            <source>left out by the foreman: %1 (%2)</source>
            <translation>omitido por el encargado: %1 (%2)</translation>
        </message>
        <message>
            <source>left out by the welder: %1 (%2)</source>
            <translation>omitido por el soldador: %1 (%2)</translation>
        </message>
        <message>
            <source>length</source>
            <translation>longitud</translation>
        </message>
        <message>
            <source>length %1 mm is outside %2 to %3 mm of bench %4</source>
            <translation>longitud %1 mm está fuera de %2 a %3 mm del banco %4</translation>
        </message>
        <message>
            <source>length of the seam</source>
            <translation>longitud de la junta</translation>
        </message>
        <message>
            <source>lengths in this clamping</source>
            <translation>longitudes de esta sujeción</translation>
        </message>
        <message>
            <source>less drag %1</source>
            <translation>menos arrastre %1</translation>
        </message>
        <message>
            <source>let go while soft</source>
            <translation>soltada aún blanda</translation>
        </message>
        <message>
            <source>let it cool</source>
            <translation>dejar enfriar</translation>
        </message>
        <message>
            <source>lies above melting_C</source>
            <translation>está por encima de melting_C</translation>
        </message>
        <message>
            <source>lies on a network file system, where a live log can't be used safely; use a log on this machine, or a published copy of it</source>
            <translation>está en una unidad de red, donde un registro en uso no es seguro; usar un registro de este equipo o una copia publicada</translation>
        </message>
        <message>
            <source>light</source>
            <translation>clara</translation>
        </message>
        <message>
            <source>limit</source>
            <translation>límite</translation>
        </message>
        <message>
            <source>line</source>
            <translation>recta</translation>
        </message>
        <message>
            <source>line %1</source>
            <translation>línea %1</translation>
        </message>
        <message>
            <source>line %1, %2: %3</source>
            <translation>línea %1, %2: %3</translation>
        </message>
        <message>
            <source>list and records</source>
            <translation>lista y registros</translation>
        </message>
        <message>
            <source>load cell</source>
            <translation>célula de carga</translation>
        </message>
        <message>
            <source>local times</source>
            <translation>horas locales</translation>
        </message>
        <message>
            <source>local times, %1</source>
            <translation>horas locales, %1</translation>
        </message>
        <message>
            <source>lock</source>
            <translation>bloqueo</translation>
        </message>
        <message>
            <source>locked</source>
            <translation>bloqueado</translation>
        </message>
        <message>
            <source>long</source>
            <translation>larga</translation>
        </message>
        <message>
            <source>longer when</source>
            <translation>más largo si</translation>
        </message>
        <message>
            <source>longest seam mm</source>
            <translation>junta más larga mm</translation>
        </message>
        <message>
            <source>look at the bead</source>
            <translation>mirar el cordón</translation>
        </message>
        <message>
            <source>look so far ahead</source>
            <translation>mirar hasta ahí</translation>
        </message>
        <message>
            <source>looked at: the bead is good</source>
            <translation>examinada: el cordón es bueno</translation>
        </message>
        <message>
            <source>lost before the faces press N</source>
            <translation>perdida antes de apretar las caras N</translation>
        </message>
        <message>
            <source>louder than the fan?</source>
            <translation>¿más que el ventilador?</translation>
        </message>
        <message>
            <source>low</source>
            <translation>baja</translation>
        </message>
        <message>
            <source>lower %1</source>
            <translation>inferior %1</translation>
        </message>
        <message>
            <source>lower limit %1</source>
            <translation>límite inferior %1</translation>
        </message>
        <message>
            <source>lowest</source>
            <translation>mínima</translation>
        </message>
        <message>
            <source>made</source>
            <translation>hecha</translation>
        </message>
        <message>
            <source>made %1</source>
            <translation>hecha %1</translation>
        </message>
        <message>
            <source>made, open, to decide</source>
            <translation>hechas, abiertas, por decidir</translation>
        </message>
        <message>
            <source>made: joint %1, %2</source>
            <translation>hecha: unión %1, %2</translation>
        </message>
        <message>
            <source>maker %1</source>
            <translation>fabricante %1</translation>
        </message>
        <message>
            <source>maker of sheet 1</source>
            <translation>fabricante, placa 1</translation>
        </message>
        <message>
            <source>maker of sheet 2</source>
            <translation>fabricante, placa 2</translation>
        </message>
        <message>
            <source>maker of the sheets</source>
            <translation>fabricante de las placas</translation>
        </message>
        <message>
            <source>material</source>
            <translation>material</translation>
        </message>
        <message>
            <source>material %1</source>
            <translation>material %1</translation>
        </message>
        <message>
            <source>materials, thickness, last day</source>
            <translation>materiales, espesor, último día</translation>
        </message>
        <message>
            <source>may fall with thickness</source>
            <translation>puede bajar con el espesor</translation>
        </message>
        <message>
            <source>mean %1</source>
            <translation>media %1</translation>
        </message>
        <message>
            <source>median %1</source>
            <translation>mediana %1</translation>
        </message>
        <message>
            <source>median %1, %2 to %3</source>
            <translation>mediana %1, %2 a %3</translation>
        </message>
        <message>
            <source>median of alignment %1 ms is outside 1 to %2 ms</source>
            <translation>la mediana de igualación de %1 ms está fuera de 1 a %2 ms</translation>
        </message>
        <message>
            <source>meet to %1, faces in line to %2</source>
            <translation>a tope hasta %1, caras alineadas hasta %2</translation>
        </message>
        <message>
            <source>melt %1 mm deep</source>
            <translation>%1 mm fundidos</translation>
        </message>
        <message>
            <source>melt after soak</source>
            <translation>fundido tras calentar</translation>
        </message>
        <message>
            <source>melt depth, end of soak</source>
            <translation>fundido, tras calentar</translation>
        </message>
        <message>
            <source>melt flow %1</source>
            <translation>fluidez %1</translation>
        </message>
        <message>
            <source>melt flow rate %1 is outside 0.2 to 1.7 g/10 min (190/5), the ranges of DVS 2207-1</source>
            <translation>índice de fluidez %1 está fuera de 0,2 a 1,7 g/10 min (190/5), los márgenes de DVS 2207-1</translation>
        </message>
        <message>
            <source>melt flow rates %1 and %2 are far apart: %3</source>
            <translation>los índices de fluidez %1 y %2 están muy separados: %3</translation>
        </message>
        <message>
            <source>melt flow rates %1 and %2 were measured differently and can't be compared</source>
            <translation>los índices de fluidez %1 y %2 se midieron de modo distinto y no se pueden comparar</translation>
        </message>
        <message>
            <source>melts</source>
            <translation>funde</translation>
        </message>
        <message>
            <source>middle</source>
            <translation>centro</translation>
        </message>
        <message>
            <source>min</source>
            <translation>min</translation>
        </message>
        <message>
            <source>minutes</source>
            <translation>minutos</translation>
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
            <translation>fundido al acabar de calentar</translation>
        </message>
        <message>
            <source>more points than the %1 that are allowed</source>
            <translation>más puntos que los %1 permitidos</translation>
        </message>
        <message>
            <source>more than %1 lengths in one clamping; allowed: up to %2</source>
            <translation>más de %1 longitudes en una sujeción; permitido: hasta %2</translation>
        </message>
        <message>
            <source>most of soak's pressure</source>
            <translation>presión máxima al calentar</translation>
        </message>
        <message>
            <source>moving side</source>
            <translation>lado móvil</translation>
        </message>
        <message>
            <source>moving table</source>
            <translation>mesa móvil</translation>
        </message>
        <message>
            <source>n %1 is not an event that still stands</source>
            <translation>n %1 no es un evento que siga en pie</translation>
        </message>
        <message>
            <source>name and PIN</source>
            <translation>nombre y PIN</translation>
        </message>
        <message>
            <source>name of the bench</source>
            <translation>nombre del banco</translation>
        </message>
        <message>
            <source>name of the shop</source>
            <translation>nombre del taller</translation>
        </message>
        <message>
            <source>name, role, PIN</source>
            <translation>nombre, función, PIN</translation>
        </message>
        <message>
            <source>name, role, PIN, has left</source>
            <translation>nombre, función, PIN, se ha ido</translation>
        </message>
        <message>
            <source>names "%1" twice</source>
            <translation>nombra «%1» dos veces</translation>
        </message>
        <message>
            <source>near the back</source>
            <translation>casi atrás</translation>
        </message>
        <message>
            <source>near the front</source>
            <translation>casi delante</translation>
        </message>
        <message>
            <source>needs one class with from_C or to_C, beyond which it corrects</source>
            <translation>necesita una clase con from_C o to_C, más allá de la cual corrige</translation>
        </message>
        <message>
            <source>nested deeper than %1 levels, the most allowed</source>
            <translation>anidado más de los %1 niveles permitidos</translation>
        </message>
        <message>
            <source>never less than mm</source>
            <translation>nunca menos de mm</translation>
        </message>
        <message>
            <source>never more than mm, empty: no cap</source>
            <translation>nunca más de mm, vacío: sin máximo</translation>
        </message>
        <message>
            <source>no</source>
            <translation>no</translation>
        </message>
        <message>
            <source>no %1 coupon is given; allowed: 1 to %2</source>
            <translation>no se indica ninguna probeta (%1); permitido: 1 a %2</translation>
        </message>
        <message>
            <source>no batch is named; allowed: its name as it is on the sheet</source>
            <translation>no se indica lote; permitido: su nombre, como está en la placa</translation>
        </message>
        <message>
            <source>no batch noted</source>
            <translation>sin lote anotado</translation>
        </message>
        <message>
            <source>no bench that is here can make it</source>
            <translation>ningún banco presente puede hacerla</translation>
        </message>
        <message>
            <source>no calibration is on record</source>
            <translation>no consta calibración</translation>
        </message>
        <message>
            <source>no cell is named; allowed: one or more cells of %1</source>
            <translation>no se indica casilla; permitido: una o varias casillas de %1</translation>
        </message>
        <message>
            <source>no certificate noted</source>
            <translation>sin certificado anotado</translation>
        </message>
        <message>
            <source>no column has a value for any thickness</source>
            <translation>ninguna columna tiene valor para ningún espesor</translation>
        </message>
        <message>
            <source>no crack seen</source>
            <translation>ninguna grieta a la vista</translation>
        </message>
        <message>
            <source>no edition is named; allowed: the edition of the shop's copy of the standard, as it is printed on it</source>
            <translation>no se indica edición; permitido: la edición de la norma del taller, como está impresa en ella</translation>
        </message>
        <message>
            <source>no folder for %1: neither %2 nor HOME is an absolute path; %3</source>
            <translation>no hay carpeta para %1: ni %2 ni HOME es una ruta absoluta; %3</translation>
        </message>
        <message>
            <source>no foreman has a PIN</source>
            <translation>ningún encargado con PIN</translation>
        </message>
        <message>
            <source>no gauge at hand</source>
            <translation>no hay medidor a mano</translation>
        </message>
        <message>
            <source>no heat estimate: alignment has not begun</source>
            <translation>sin estimación de calor: la igualación no ha empezado</translation>
        </message>
        <message>
            <source>no heat estimate: procedure %1 lacks %2 for %3 mm</source>
            <translation>sin estimación de calor: al procedimiento %1 le falta, para %3 mm: %2</translation>
        </message>
        <message>
            <source>no heat values for the material "%1"; allowed: %2</source>
            <translation>no hay valores de calor para el material «%1»; permitido: %2</translation>
        </message>
        <message>
            <source>no load</source>
            <translation>sin carga</translation>
        </message>
        <message>
            <source>no lower limit</source>
            <translation>sin límite inferior</translation>
        </message>
        <message>
            <source>no material is named; allowed: as PE-HD</source>
            <translation>no se indica material; permitido: como PE-HD</translation>
        </message>
        <message>
            <source>no more chimes</source>
            <translation>sin más avisos</translation>
        </message>
        <message>
            <source>no offcut that this bench can take would help; take a spring of at most %1 N for one %2</source>
            <translation>ningún recorte que admita este banco ayudaría; usar un muelle de %1 N como máximo por %2</translation>
        </message>
        <message>
            <source>no one range of DVS 2207-1 (0.3 to 1.7, 0.2 to 0.7) holds both</source>
            <translation>ningún margen de DVS 2207-1 (0,3 a 1,7; 0,2 a 0,7) contiene los dos</translation>
        </message>
        <message>
            <source>no photo is kept</source>
            <translation>no se guarda foto</translation>
        </message>
        <message>
            <source>no practice with this plan: it lacks %1</source>
            <translation>no se puede practicar con este plan: falta %1</translation>
        </message>
        <message>
            <source>no procedure named</source>
            <translation>ningún procedimiento nombrado</translation>
        </message>
        <message>
            <source>no reason is given; allowed: a few words why</source>
            <translation>no se da motivo; permitido: unas palabras del porqué</translation>
        </message>
        <message>
            <source>no reason is owed for "%1"</source>
            <translation>no se pide motivo para «%1»</translation>
        </message>
        <message>
            <source>no seam length is given; allowed %1 to %2 mm of bench %3</source>
            <translation>no se indica longitud de junta; permitido %1 a %2 mm del banco %3</translation>
        </message>
        <message>
            <source>no sheet is in</source>
            <translation>no hay placa</translation>
        </message>
        <message>
            <source>no sound</source>
            <translation>sin sonido</translation>
        </message>
        <message>
            <source>no such file</source>
            <translation>no existe el archivo</translation>
        </message>
        <message>
            <source>no such file, or not readable</source>
            <translation>no existe el archivo o no se puede leer</translation>
        </message>
        <message>
            <source>no such folder, or not readable</source>
            <translation>no existe la carpeta o no se puede leer</translation>
        </message>
        <message>
            <source>no such row</source>
            <translation>no existe esa fila</translation>
        </message>
        <message>
            <source>no tool at hand</source>
            <translation>sin herramienta</translation>
        </message>
        <message>
            <source>no trial joint was made before</source>
            <translation>no se hizo antes unión de prueba</translation>
        </message>
        <message>
            <source>no valid certificate: allowed by the foreman</source>
            <translation>sin certificado válido: permitido por el encargado</translation>
        </message>
        <message>
            <source>no weather guard noted</source>
            <translation>no consta protección exterior</translation>
        </message>
        <message>
            <source>no weld "%1" is in this log</source>
            <translation>ninguna soldadura «%1» está en este registro</translation>
        </message>
        <message>
            <source>no weld "%1" is open here</source>
            <translation>ninguna soldadura «%1» está abierta aquí</translation>
        </message>
        <message>
            <source>no welder named</source>
            <translation>ningún soldador nombrado</translation>
        </message>
        <message>
            <source>nobody attested "%1" of %2; allowed: a cell that is attested</source>
            <translation>nadie cotejó «%1» de %2; permitido: una casilla cotejada</translation>
        </message>
        <message>
            <source>nobody here is "%1"</source>
            <translation>aquí nadie es «%1»</translation>
        </message>
        <message>
            <source>nobody here is "%1"; allowed: one of this log's people, as person:ID</source>
            <translation>nadie aquí es «%1»; permitido: una persona de este registro, como person:ID</translation>
        </message>
        <message>
            <source>nobody who is here has a certificate for its sheets that holds today</source>
            <translation>nadie de los presentes tiene un certificado vigente hoy para sus placas</translation>
        </message>
        <message>
            <source>nobody who is here may weld it</source>
            <translation>nadie de los presentes puede soldarla</translation>
        </message>
        <message>
            <source>none</source>
            <translation>no hay</translation>
        </message>
        <message>
            <source>none noted</source>
            <translation>ninguno</translation>
        </message>
        <message>
            <source>none noted in this log</source>
            <translation>ninguno anotado en este registro</translation>
        </message>
        <message>
            <source>none was due</source>
            <translation>no tocaba</translation>
        </message>
        <message>
            <source>none was kept</source>
            <translation>ninguna guardada</translation>
        </message>
        <message>
            <source>none was typed</source>
            <translation>ninguna tecleada</translation>
        </message>
        <message>
            <source>none: the source lacks nothing</source>
            <translation>ninguno: a la fuente no le falta nada</translation>
        </message>
        <message>
            <source>not all of it can be read</source>
            <translation>no todo se puede leer</translation>
        </message>
        <message>
            <source>not by hand</source>
            <translation>no con la mano</translation>
        </message>
        <message>
            <source>not chosen yet</source>
            <translation>aún sin elegir</translation>
        </message>
        <message>
            <source>not finished</source>
            <translation>sin terminar</translation>
        </message>
        <message>
            <source>not finished: %1</source>
            <translation>sin terminar: %1</translation>
        </message>
        <message>
            <source>not given</source>
            <translation>sin indicar</translation>
        </message>
        <message>
            <source>not joined</source>
            <translation>sin unir</translation>
        </message>
        <message>
            <source>not needed for this weld</source>
            <translation>no hace falta en esta soldadura</translation>
        </message>
        <message>
            <source>not over</source>
            <translation>sin acabar</translation>
        </message>
        <message>
            <source>not passed: %1</source>
            <translation>no superado: %1</translation>
        </message>
        <message>
            <source>not read for this seam yet</source>
            <translation>aún no leído para esta junta</translation>
        </message>
        <message>
            <source>not readable</source>
            <translation>no se puede leer</translation>
        </message>
        <message>
            <source>not said</source>
            <translation>sin indicar</translation>
        </message>
        <message>
            <source>not saved</source>
            <translation>sin guardar</translation>
        </message>
        <message>
            <source>not sound by its record</source>
            <translation>no apta según su registro</translation>
        </message>
        <message>
            <source>not straight enough: point %1 (reading %2, %3 N) is %4 N off the line; allowed %5 N, 2 % of the largest force (our judgement)</source>
            <translation>no es bastante recta: el punto %1 (lectura %2, %3 N) está a %4 N de la recta; permitido %5 N, el 2 % de la fuerza mayor (juicio nuestro)</translation>
        </message>
        <message>
            <source>not there</source>
            <translation>no está</translation>
        </message>
        <message>
            <source>not ticked</source>
            <translation>sin marcar</translation>
        </message>
        <message>
            <source>not told yet</source>
            <translation>aún sin decir</translation>
        </message>
        <message>
            <source>not valid JSON</source>
            <translation>no es JSON válido</translation>
        </message>
        <message>
            <source>not yet</source>
            <translation>todavía no</translation>
        </message>
        <message>
            <source>notch</source>
            <translation>entalla</translation>
        </message>
        <message>
            <source>note %1</source>
            <translation>nota %1</translation>
        </message>
        <message>
            <source>nothing came since the last seal, which covers row %1</source>
            <translation>nada ha llegado desde el último sello, que cubre la fila %1</translation>
        </message>
        <message>
            <source>nothing is changed</source>
            <translation>no cambia nada</translation>
        </message>
        <message>
            <source>nothing is corrected</source>
            <translation>no se corrige nada</translation>
        </message>
        <message>
            <source>nothing is decided</source>
            <translation>no se decide nada</translation>
        </message>
        <message>
            <source>nothing is kept</source>
            <translation>no se guarda nada</translation>
        </message>
        <message>
            <source>nothing is opened</source>
            <translation>no se abre nada</translation>
        </message>
        <message>
            <source>nothing is read</source>
            <translation>no se lee nada</translation>
        </message>
        <message>
            <source>nothing is written</source>
            <translation>no se escribe nada</translation>
        </message>
        <message>
            <source>nothing yet</source>
            <translation>nada aún</translation>
        </message>
        <message>
            <source>noticed %1 of %2</source>
            <translation>notados %1 de %2</translation>
        </message>
        <message>
            <source>noticed at %1</source>
            <translation>notado a %1</translation>
        </message>
        <message>
            <source>now</source>
            <translation>ahora</translation>
        </message>
        <message>
            <source>now the parent sheet</source>
            <translation>ahora la placa base</translation>
        </message>
        <message>
            <source>now true time</source>
            <translation>ya, tiempo real</translation>
        </message>
        <message>
            <source>now: %1</source>
            <translation>ahora: %1</translation>
        </message>
        <message>
            <source>number %1, %2 %3</source>
            <translation>número %1, %2 %3</translation>
        </message>
        <message>
            <source>number not written on it yet</source>
            <translation>número aún sin escribir en ella</translation>
        </message>
        <message>
            <source>number on the sheet</source>
            <translation>número en la placa</translation>
        </message>
        <message>
            <source>number, seam, batch, remark, name</source>
            <translation>número, junta, lote, observación, nombre</translation>
        </message>
        <message>
            <source>of %1</source>
            <translation>de %1</translation>
        </message>
        <message>
            <source>of %1 s</source>
            <translation>de %1 s</translation>
        </message>
        <message>
            <source>of cards</source>
            <translation>de las fichas</translation>
        </message>
        <message>
            <source>of the bead, in mm</source>
            <translation>del cordón, en mm</translation>
        </message>
        <message>
            <source>of the changeover's front</source>
            <translation>del frente del cambio</translation>
        </message>
        <message>
            <source>of the guide</source>
            <translation>de la guía</translation>
        </message>
        <message>
            <source>of the job %1</source>
            <translation>del trabajo %1</translation>
        </message>
        <message>
            <source>of the scale</source>
            <translation>de la escala</translation>
        </message>
        <message>
            <source>of the seam %1</source>
            <translation>de la junta %1</translation>
        </message>
        <message>
            <source>of the weld on this bench</source>
            <translation>de la soldadura de este banco</translation>
        </message>
        <message>
            <source>of this table</source>
            <translation>de esta tabla</translation>
        </message>
        <message>
            <source>of what is wrong</source>
            <translation>de lo que está mal</translation>
        </message>
        <message>
            <source>off</source>
            <translation>fuera</translation>
        </message>
        <message>
            <source>off the line N</source>
            <translation>desvío N</translation>
        </message>
        <message>
            <source>on its face</source>
            <translation>en su cara</translation>
        </message>
        <message>
            <source>on its face: it burns</source>
            <translation>en su cara: quema</translation>
        </message>
        <message>
            <source>on scale %1</source>
            <translation>en la escala %1</translation>
        </message>
        <message>
            <source>on the scale, no load</source>
            <translation>en la escala, sin carga</translation>
        </message>
        <message>
            <source>on the scale, plate between</source>
            <translation>en la escala, con espejo</translation>
        </message>
        <message>
            <source>one by one</source>
            <translation>una a una</translation>
        </message>
        <message>
            <source>one end to the other</source>
            <translation>de punta a punta</translation>
        </message>
        <message>
            <source>one is more than %1 times the other (our judgement)</source>
            <translation>uno es más de %1 veces el otro (juicio nuestro)</translation>
        </message>
        <message>
            <source>one page, PDF</source>
            <translation>una página, PDF</translation>
        </message>
        <message>
            <source>one standard deviation of the rate %</source>
            <translation>una desviación típica de la rigidez %</translation>
        </message>
        <message>
            <source>only a foreman can allow this weld</source>
            <translation>solo un encargado puede permitir esta soldadura</translation>
        </message>
        <message>
            <source>only a foreman may go on with a sheet of another material</source>
            <translation>solo un encargado puede seguir con una placa de otro material</translation>
        </message>
        <message>
            <source>only what can't be read</source>
            <translation>solo lo que no se puede leer</translation>
        </message>
        <message>
            <source>open</source>
            <translation>abierta</translation>
        </message>
        <message>
            <source>open below</source>
            <translation>abierta abajo</translation>
        </message>
        <message>
            <source>open welds stay</source>
            <translation>lo abierto queda</translation>
        </message>
        <message>
            <source>operator</source>
            <translation>operario</translation>
        </message>
        <message>
            <source>or another °C</source>
            <translation>u otros °C</translation>
        </message>
        <message>
            <source>or broke</source>
            <translation>o se rompió</translation>
        </message>
        <message>
            <source>or: turned too far</source>
            <translation>o: giro excesivo</translation>
        </message>
        <message>
            <source>out</source>
            <translation>sacar</translation>
        </message>
        <message>
            <source>out at %1</source>
            <translation>sale a las %1</translation>
        </message>
        <message>
            <source>out of limits</source>
            <translation>fuera de límites</translation>
        </message>
        <message>
            <source>out of limits: %1</source>
            <translation>fuera de límites: %1</translation>
        </message>
        <message>
            <source>out of line</source>
            <translation>desalineado</translation>
        </message>
        <message>
            <source>out of order: %1</source>
            <translation>fuera de orden: %1</translation>
        </message>
        <message>
            <source>over %1 s</source>
            <translation>sobre %1 s</translation>
        </message>
        <message>
            <source>over the soak of %1</source>
            <translation>sobre los %1 de calentar</translation>
        </message>
        <message>
            <source>overheated</source>
            <translation>recalentada</translation>
        </message>
        <message>
            <source>page %1 of %2</source>
            <translation>página %1 de %2</translation>
        </message>
        <message>
            <source>parent</source>
            <translation>material base</translation>
        </message>
        <message>
            <source>parent sheet %1 N/mm²</source>
            <translation>placa base %1 N/mm²</translation>
        </message>
        <message>
            <source>parent sheet %1 psi</source>
            <translation>placa base %1 psi</translation>
        </message>
        <message>
            <source>path of a file or folder</source>
            <translation>ruta de archivo o carpeta</translation>
        </message>
        <message>
            <source>pedal</source>
            <translation>pedal</translation>
        </message>
        <message>
            <source>people, PINs, the day's seal</source>
            <translation>personas, PIN, sello del día</translation>
        </message>
        <message>
            <source>people, day's seal</source>
            <translation>personas, sello del día</translation>
        </message>
        <message>
            <source>photo</source>
            <translation>foto</translation>
        </message>
        <message>
            <source>photo %1, %2 bytes, SHA-256 %3</source>
            <translation>foto %1, %2 bytes, SHA-256 %3</translation>
        </message>
        <message>
            <source>photo added</source>
            <translation>foto añadida</translation>
        </message>
        <message>
            <source>plan</source>
            <translation>plan</translation>
        </message>
        <message>
            <source>plan replaced</source>
            <translation>plan sustituido</translation>
        </message>
        <message>
            <source>plan replaced %1</source>
            <translation>plan sustituido %1</translation>
        </message>
        <message>
            <source>plan replaced: %1</source>
            <translation>plan sustituido: %1</translation>
        </message>
        <message>
            <source>plan, tests, charts, due</source>
            <translation>plan, ensayos, plazos</translation>
        </message>
        <message>
            <source>plate</source>
            <translation>espejo</translation>
        </message>
        <message>
            <source>plate burns, tables crush</source>
            <translation>espejo quema, mesas aplastan</translation>
        </message>
        <message>
            <source>plate burns: gloves on</source>
            <translation>quema: guantes puestos</translation>
        </message>
        <message>
            <source>plate cold or dirty</source>
            <translation>espejo frío o sucio</translation>
        </message>
        <message>
            <source>plate drawn out while pressed</source>
            <translation>espejo sacado con presión puesta</translation>
        </message>
        <message>
            <source>plate faces differ</source>
            <translation>espejo desigual</translation>
        </message>
        <message>
            <source>plate on its face</source>
            <translation>espejo en su cara</translation>
        </message>
        <message>
            <source>plate out</source>
            <translation>espejo fuera</translation>
        </message>
        <message>
            <source>plate read on its face</source>
            <translation>espejo leído en su cara</translation>
        </message>
        <message>
            <source>plate settled for ten minutes</source>
            <translation>espejo asentado diez minutos</translation>
        </message>
        <message>
            <source>plate target %1 °C can't be judged: %2 has no plate window</source>
            <translation>espejo a %1 °C no se puede juzgar: %2 no tiene margen para el espejo</translation>
        </message>
        <message>
            <source>plate target %1 °C is outside %2 to %3 °C of %4</source>
            <translation>espejo a %1 °C está fuera de %2 a %3 °C de %4</translation>
        </message>
        <message>
            <source>plate temperature</source>
            <translation>temperatura del espejo</translation>
        </message>
        <message>
            <source>plate to aim at</source>
            <translation>espejo, objetivo</translation>
        </message>
        <message>
            <source>plate warms up</source>
            <translation>espejo calentando</translation>
        </message>
        <message>
            <source>plate wiped</source>
            <translation>espejo limpio</translation>
        </message>
        <message>
            <source>plate wiped: it burns</source>
            <translation>espejo limpio: quema</translation>
        </message>
        <message>
            <source>plate, highest °C</source>
            <translation>espejo, máximo °C</translation>
        </message>
        <message>
            <source>plate, lowest °C</source>
            <translation>espejo, mínimo °C</translation>
        </message>
        <message>
            <source>power was off</source>
            <translation>corte de luz</translation>
        </message>
        <message>
            <source>power was off; %1 since the step before, by a clock that nobody confirmed</source>
            <translation>corte de luz; %1 desde el paso anterior, según un reloj que nadie confirmó</translation>
        </message>
        <message>
            <source>power was off; %1 since the step before, confirmed by a person</source>
            <translation>corte de luz; %1 desde el paso anterior, confirmado por una persona</translation>
        </message>
        <message>
            <source>power was off; %1 since the step before; the clock went back</source>
            <translation>corte de luz; %1 desde el paso anterior; el reloj fue hacia atrás</translation>
        </message>
        <message>
            <source>practice</source>
            <translation>práctica</translation>
        </message>
        <message>
            <source>practice record</source>
            <translation>informe de práctica</translation>
        </message>
        <message>
            <source>practice was left</source>
            <translation>se dejó la práctica</translation>
        </message>
        <message>
            <source>practice weld %1 was broken off when %2: no take was kept</source>
            <translation>la soldadura de práctica %1 se interrumpió cuando %2: no hay toma</translation>
        </message>
        <message>
            <source>preparation time</source>
            <translation>tiempo de preparación</translation>
        </message>
        <message>
            <source>prepare</source>
            <translation>preparar</translation>
        </message>
        <message>
            <source>prepare %1</source>
            <translation>preparar %1</translation>
        </message>
        <message>
            <source>press it to choose step by step</source>
            <translation>pulsar para elegir paso a paso</translation>
        </message>
        <message>
            <source>pressure in cooling</source>
            <translation>presión al enfriar</translation>
        </message>
        <message>
            <source>pressure locked</source>
            <translation>volante bloqueado</translation>
        </message>
        <message>
            <source>pressure times thickness times length: common practice, no source</source>
            <translation>presión por espesor por longitud: práctica común, sin fuente</translation>
        </message>
        <message>
            <source>pressure ± %1</source>
            <translation>presión ± %1</translation>
        </message>
        <message>
            <source>pressure's tolerance</source>
            <translation>tolerancia de presión</translation>
        </message>
        <message>
            <source>pressure, alignment</source>
            <translation>presión, igualar</translation>
        </message>
        <message>
            <source>pressure, joining</source>
            <translation>presión, unir</translation>
        </message>
        <message>
            <source>pressure, soak</source>
            <translation>presión, calentar</translation>
        </message>
        <message>
            <source>pressure, soak, aim</source>
            <translation>presión, calentar, objetivo</translation>
        </message>
        <message>
            <source>pressure, soak, at most</source>
            <translation>presión, calentar, máximo</translation>
        </message>
        <message>
            <source>pressure, tolerance</source>
            <translation>presión, tolerancia</translation>
        </message>
        <message>
            <source>print there</source>
            <translation>imprimir allí</translation>
        </message>
        <message>
            <source>printed %1</source>
            <translation>impreso %1</translation>
        </message>
        <message>
            <source>printed on spring or machine</source>
            <translation>en el muelle o la máquina</translation>
        </message>
        <message>
            <source>procedure</source>
            <translation>procedimiento</translation>
        </message>
        <message>
            <source>procedure %1 can't be welded with yet: it lacks %2, which the shop fills and attests first</source>
            <translation>con el procedimiento %1 aún no se puede soldar: falta lo que el taller rellena y coteja antes: %2</translation>
        </message>
        <message>
            <source>procedure %1 can't be welded with yet: the shop filled in %2, which a foreman attests first</source>
            <translation>con el procedimiento %1 aún no se puede soldar: el taller rellenó lo que un encargado coteja antes: %2</translation>
        </message>
        <message>
            <source>procedure of the log</source>
            <translation>procedimiento del registro</translation>
        </message>
        <message>
            <source>procedures, benches</source>
            <translation>procedimientos, bancos</translation>
        </message>
        <message>
            <source>process time %1 of %2</source>
            <translation>tiempo de proceso %1 de %2</translation>
        </message>
        <message>
            <source>process time %1, %2</source>
            <translation>tiempo de proceso %1, %2</translation>
        </message>
        <message>
            <source>production</source>
            <translation>producción</translation>
        </message>
        <message>
            <source>program lost</source>
            <translation>programa caído</translation>
        </message>
        <message>
            <source>protective film off</source>
            <translation>film protector quitado</translation>
        </message>
        <message>
            <source>put right</source>
            <translation>corregido</translation>
        </message>
        <message>
            <source>put right: %1</source>
            <translation>corregido: %1</translation>
        </message>
        <message>
            <source>rate from its plate</source>
            <translation>rigidez de la chapa</translation>
        </message>
        <message>
            <source>rate of spring %1, N for each %2</source>
            <translation>rigidez del muelle %1, N por cada %2</translation>
        </message>
        <message>
            <source>read at %1</source>
            <translation>leer a los %1</translation>
        </message>
        <message>
            <source>read it</source>
            <translation>leerla</translation>
        </message>
        <message>
            <source>read on its face</source>
            <translation>leer en su cara</translation>
        </message>
        <message>
            <source>read on the face</source>
            <translation>leer en la cara</translation>
        </message>
        <message>
            <source>read wrong</source>
            <translation>mal leído</translation>
        </message>
        <message>
            <source>reading</source>
            <translation>lectura</translation>
        </message>
        <message>
            <source>reading %1</source>
            <translation>lectura %1</translation>
        </message>
        <message>
            <source>reading due</source>
            <translation>toca leer</translation>
        </message>
        <message>
            <source>reading in cooling</source>
            <translation>lectura al enfriar</translation>
        </message>
        <message>
            <source>reading marked to join</source>
            <translation>marca para unir</translation>
        </message>
        <message>
            <source>reading taken</source>
            <translation>lectura tomada</translation>
        </message>
        <message>
            <source>reading without force, %1</source>
            <translation>lectura sin fuerza, %1</translation>
        </message>
        <message>
            <source>readings</source>
            <translation>lecturas</translation>
        </message>
        <message>
            <source>readings against a load cell</source>
            <translation>lecturas y célula de carga</translation>
        </message>
        <message>
            <source>readings in cooling</source>
            <translation>lecturas al enfriar</translation>
        </message>
        <message>
            <source>readings off: %1</source>
            <translation>mal leídas: %1</translation>
        </message>
        <message>
            <source>readings stay the scale's</source>
            <translation>la escala no cambia</translation>
        </message>
        <message>
            <source>ready</source>
            <translation>listo</translation>
        </message>
        <message>
            <source>reason</source>
            <translation>motivo</translation>
        </message>
        <message>
            <source>reason for %1: %2</source>
            <translation>motivo de %1: %2</translation>
        </message>
        <message>
            <source>reason given</source>
            <translation>motivo dado</translation>
        </message>
        <message>
            <source>recheck</source>
            <translation>lectura al enfriar</translation>
        </message>
        <message>
            <source>record</source>
            <translation>informe</translation>
        </message>
        <message>
            <source>recursive triggers can't be turned on</source>
            <translation>no se pueden activar los disparadores recursivos</translation>
        </message>
        <message>
            <source>reference air</source>
            <translation>aire de referencia</translation>
        </message>
        <message>
            <source>reference air °C</source>
            <translation>aire de referencia °C</translation>
        </message>
        <message>
            <source>release</source>
            <translation>sacar</translation>
        </message>
        <message>
            <source>release step</source>
            <translation>paso al sacar</translation>
        </message>
        <message>
            <source>release step "%1" does not fit while %2: this bench's next is "%3"</source>
            <translation>el paso «%1» no encaja en esta fase: %2. Lo siguiente en este banco es «%3»</translation>
        </message>
        <message>
            <source>release time</source>
            <translation>tiempo de sacar</translation>
        </message>
        <message>
            <source>released</source>
            <translation>liberada</translation>
        </message>
        <message>
            <source>remark</source>
            <translation>observación</translation>
        </message>
        <message>
            <source>remark made</source>
            <translation>observación hecha</translation>
        </message>
        <message>
            <source>remark: %1</source>
            <translation>observación: %1</translation>
        </message>
        <message>
            <source>remarks, reasons, photos, grading</source>
            <translation>observaciones, motivos, fotos, valoración</translation>
        </message>
        <message>
            <source>remarks: %1</source>
            <translation>observaciones: %1</translation>
        </message>
        <message>
            <source>report</source>
            <translation>informe</translation>
        </message>
        <message>
            <source>row %1, an event of %2, is not what was written</source>
            <translation>la fila %1, un evento de %2, no es lo que se escribió</translation>
        </message>
        <message>
            <source>rows 1 to %1</source>
            <translation>filas 1 a %1</translation>
        </message>
        <message>
            <source>rows 1 to %1; %2 came since</source>
            <translation>filas 1 a %1; después, %2</translation>
        </message>
        <message>
            <source>rows 1 to %1; 1 came since</source>
            <translation>filas 1 a %1; después, 1</translation>
        </message>
        <message>
            <source>rules %1 %2; it stands as it was stored</source>
            <translation>reglas %1 %2; queda como se guardó</translation>
        </message>
        <message>
            <source>rules %1, by the plan's limits alone</source>
            <translation>reglas %1, solo por los límites del plan</translation>
        </message>
        <message>
            <source>s</source>
            <translation>s</translation>
        </message>
        <message>
            <source>s, limit %1 s</source>
            <translation>s, límite %1 s</translation>
        </message>
        <message>
            <source>same as the sheet: %1 mm</source>
            <translation>como la placa: %1 mm</translation>
        </message>
        <message>
            <source>say what you see</source>
            <translation>decir qué se ve</translation>
        </message>
        <message>
            <source>say why</source>
            <translation>motivo</translation>
        </message>
        <message>
            <source>scale</source>
            <translation>escala</translation>
        </message>
        <message>
            <source>scale again</source>
            <translation>releer escala</translation>
        </message>
        <message>
            <source>scale calibration overdue</source>
            <translation>calibración de escala vencida</translation>
        </message>
        <message>
            <source>scale fine enough for the tolerance</source>
            <translation>escala bastante fina para la tolerancia</translation>
        </message>
        <message>
            <source>scale in %1 from %2, %3</source>
            <translation>escala en %1 desde %2, %3</translation>
        </message>
        <message>
            <source>scale is read in %1</source>
            <translation>leer la escala en %1</translation>
        </message>
        <message>
            <source>scale not calibrated</source>
            <translation>escala sin calibrar</translation>
        </message>
        <message>
            <source>scale read without load</source>
            <translation>escala leída sin carga</translation>
        </message>
        <message>
            <source>scale without load</source>
            <translation>escala sin carga</translation>
        </message>
        <message>
            <source>scale zero</source>
            <translation>cero de la escala</translation>
        </message>
        <message>
            <source>scale, %1: %2</source>
            <translation>escala, %1: %2</translation>
        </message>
        <message>
            <source>scale: a mark every %1</source>
            <translation>escala: una marca cada %1</translation>
        </message>
        <message>
            <source>scales: 1 or 2</source>
            <translation>escalas: 1 o 2</translation>
        </message>
        <message>
            <source>seal it, by PIN</source>
            <translation>sellarlo, con PIN</translation>
        </message>
        <message>
            <source>seal of %1 by %2, made %3 (event %7 of that day), rows 1 to %4; fingerprint %5; key %6</source>
            <translation>sello del %1 por %2, hecho %3 (evento %7 de ese día), filas 1 a %4; huella %5; clave %6</translation>
        </message>
        <message>
            <source>sealed as far as it is; the rest comes behind</source>
            <translation>sellada hasta donde está; el resto viene después</translation>
        </message>
        <message>
            <source>seam "%1" lacks something; allowed: one with a job, a label, a procedure, a length and two sheets</source>
            <translation>a la junta «%1» le falta algo; permitido: una con trabajo, etiqueta, procedimiento, longitud y dos placas</translation>
        </message>
        <message>
            <source>seam %1</source>
            <translation>junta %1</translation>
        </message>
        <message>
            <source>seam %1 asks for the procedure "%2", which is not there; allowed: %3</source>
            <translation>la junta %1 pide el procedimiento «%2», que no está; permitido: %3</translation>
        </message>
        <message>
            <source>seam of the log</source>
            <translation>junta del registro</translation>
        </message>
        <message>
            <source>seam shielded from draught, wet and sun</source>
            <translation>junta protegida del aire, la humedad y el sol</translation>
        </message>
        <message>
            <source>seam, sheet and force</source>
            <translation>junta, placa y fuerza</translation>
        </message>
        <message>
            <source>second gap, times the first</source>
            <translation>segundo hueco, por el primero</translation>
        </message>
        <message>
            <source>second sheet clamped</source>
            <translation>segunda placa sujeta</translation>
        </message>
        <message>
            <source>seen in a text</source>
            <translation>visto en un texto</translation>
        </message>
        <message>
            <source>set</source>
            <translation>plan</translation>
        </message>
        <message>
            <source>set against done</source>
            <translation>plan frente a hecho</translation>
        </message>
        <message>
            <source>set and done, a line a value</source>
            <translation>plan y hecho, una fila por valor</translation>
        </message>
        <message>
            <source>set by the foreman inside the window</source>
            <translation>fijado por el encargado dentro del margen</translation>
        </message>
        <message>
            <source>set: %1 °C</source>
            <translation>ajuste: %1 °C</translation>
        </message>
        <message>
            <source>sheet %1</source>
            <translation>placa %1</translation>
        </message>
        <message>
            <source>sheet %1, batch</source>
            <translation>placa %1, lote</translation>
        </message>
        <message>
            <source>sheet %1, maker</source>
            <translation>placa %1, fabricante</translation>
        </message>
        <message>
            <source>sheet %1: %2</source>
            <translation>placa %1: %2</translation>
        </message>
        <message>
            <source>sheet 1</source>
            <translation>placa 1</translation>
        </message>
        <message>
            <source>sheet 2</source>
            <translation>placa 2</translation>
        </message>
        <message>
            <source>sheets and drag as now</source>
            <translation>placas y arrastre como ahora</translation>
        </message>
        <message>
            <source>shielded from draught and damp</source>
            <translation>protegida del aire y la humedad</translation>
        </message>
        <message>
            <source>shop</source>
            <translation>taller</translation>
        </message>
        <message>
            <source>shop temperature</source>
            <translation>temperatura del taller</translation>
        </message>
        <message>
            <source>shop's name, demo shop</source>
            <translation>nombre, taller demo</translation>
        </message>
        <message>
            <source>short</source>
            <translation>corta</translation>
        </message>
        <message>
            <source>short name: stays the same</source>
            <translation>nombre corto: no cambia</translation>
        </message>
        <message>
            <source>short name: stays the same for ever</source>
            <translation>nombre corto: no cambia nunca</translation>
        </message>
        <message>
            <source>sign-off</source>
            <translation>firma</translation>
        </message>
        <message>
            <source>signal heard at the bench</source>
            <translation>señal oída en el banco</translation>
        </message>
        <message>
            <source>signal seen</source>
            <translation>señal vista</translation>
        </message>
        <message>
            <source>signal seen: %1</source>
            <translation>señal vista: %1</translation>
        </message>
        <message>
            <source>signals: %1</source>
            <translation>señales: %1</translation>
        </message>
        <message>
            <source>signed by %1</source>
            <translation>firmada por %1</translation>
        </message>
        <message>
            <source>signed off</source>
            <translation>firmado</translation>
        </message>
        <message>
            <source>signed off as %1</source>
            <translation>firmada como %1</translation>
        </message>
        <message>
            <source>signed off by %1, %2</source>
            <translation>firmada por %1, %2</translation>
        </message>
        <message>
            <source>signing off needs a foreman's PIN</source>
            <translation>firmar necesita el PIN de un encargado</translation>
        </message>
        <message>
            <source>since the last step</source>
            <translation>desde el último paso</translation>
        </message>
        <message>
            <source>skin after soak</source>
            <translation>piel tras calentar</translation>
        </message>
        <message>
            <source>skin at the end of soak</source>
            <translation>piel al acabar de calentar</translation>
        </message>
        <message>
            <source>skin stays molten in air for</source>
            <translation>piel fundida al aire durante</translation>
        </message>
        <message>
            <source>skin when the faces meet</source>
            <translation>piel al juntar las caras</translation>
        </message>
        <message>
            <source>skin when the faces met</source>
            <translation>piel al juntarse las caras</translation>
        </message>
        <message>
            <source>skin °C</source>
            <translation>piel °C</translation>
        </message>
        <message>
            <source>skin, end of soak</source>
            <translation>piel, tras calentar</translation>
        </message>
        <message>
            <source>skin, faces meet</source>
            <translation>piel, al juntar caras</translation>
        </message>
        <message>
            <source>slow from %1</source>
            <translation>lento desde %1</translation>
        </message>
        <message>
            <source>smallest bead in alignment</source>
            <translation>cordón mínimo al igualar</translation>
        </message>
        <message>
            <source>smallest division, %1</source>
            <translation>división menor, %1</translation>
        </message>
        <message>
            <source>soak</source>
            <translation>calentar</translation>
        </message>
        <message>
            <source>soak aims at %1</source>
            <translation>objetivo al calentar %1</translation>
        </message>
        <message>
            <source>soak counted before the bead stood</source>
            <translation>calentar contado antes de formarse el cordón</translation>
        </message>
        <message>
            <source>soak force</source>
            <translation>fuerza al calentar</translation>
        </message>
        <message>
            <source>soak from zero to drag: where it stands</source>
            <translation>calentar de cero a arrastre: dónde consta</translation>
        </message>
        <message>
            <source>soak is over</source>
            <translation>ya calentado</translation>
        </message>
        <message>
            <source>soak pressure</source>
            <translation>presión al calentar</translation>
        </message>
        <message>
            <source>soak pressure at most</source>
            <translation>presión máxima al calentar</translation>
        </message>
        <message>
            <source>soak pressure to aim at</source>
            <translation>presión objetivo al calentar</translation>
        </message>
        <message>
            <source>soak reading</source>
            <translation>lect. al calentar</translation>
        </message>
        <message>
            <source>soak reading reached</source>
            <translation>lectura al calentar alcanzada</translation>
        </message>
        <message>
            <source>soak s</source>
            <translation>calentar s</translation>
        </message>
        <message>
            <source>soak started</source>
            <translation>calentamiento empezado</translation>
        </message>
        <message>
            <source>soak time</source>
            <translation>tiempo de calentamiento</translation>
        </message>
        <message>
            <source>soak's tolerance</source>
            <translation>tolerancia, calentar</translation>
        </message>
        <message>
            <source>soak, aim N/mm²</source>
            <translation>calentar, objetivo N/mm²</translation>
        </message>
        <message>
            <source>soak, at most N/mm²</source>
            <translation>calentar, máximo N/mm²</translation>
        </message>
        <message>
            <source>soak, longer by at most %</source>
            <translation>calentar, % de más, máximo</translation>
        </message>
        <message>
            <source>soak, shorter by at most % (0 or less)</source>
            <translation>calentar, % de menos, máximo (0 o menos)</translation>
        </message>
        <message>
            <source>soak: just in contact; %1</source>
            <translation>calentamiento: solo en contacto; %1</translation>
        </message>
        <message>
            <source>soak: just in contact; the drag, %1 %2, is under the scale's first division</source>
            <translation>calentamiento: solo en contacto; el arrastre, %1 %2, está bajo la primera división de la escala</translation>
        </message>
        <message>
            <source>soak: the drag of %1 holds the table on by more than the %2 that soak allows: the reading would have to be %3</source>
            <translation>calentamiento: el arrastre de %1 retiene la mesa con más que los %2 que admite el calentamiento: la lectura debería ser %3</translation>
        </message>
        <message>
            <source>soak: the reading %1 %2 is below %3 %4, the lowest that the calibration covers: its force is worked out, not measured</source>
            <translation>calentamiento: la lectura %1 %2 está bajo %3 %4, la menor calibrada: su fuerza es calculada, no medida</translation>
        </message>
        <message>
            <source>soft %1 mm deep</source>
            <translation>%1 mm blandos</translation>
        </message>
        <message>
            <source>softens</source>
            <translation>ablanda</translation>
        </message>
        <message>
            <source>somebody disturbed it</source>
            <translation>alguien interrumpió</translation>
        </message>
        <message>
            <source>something else stands in its place</source>
            <translation>hay otra cosa en su sitio</translation>
        </message>
        <message>
            <source>something stands behind a cell's closing quote</source>
            <translation>hay algo tras las comillas de cierre de una celda</translation>
        </message>
        <message>
            <source>sound</source>
            <translation>sonido</translation>
        </message>
        <message>
            <source>sound ok</source>
            <translation>con sonido</translation>
        </message>
        <message>
            <source>speed × %1</source>
            <translation>velocidad × %1</translation>
        </message>
        <message>
            <source>spring scale</source>
            <translation>escala de muelle</translation>
        </message>
        <message>
            <source>stand where you work</source>
            <translation>en el puesto de trabajo</translation>
        </message>
        <message>
            <source>standard, or the shop's own</source>
            <translation>norma, o la propia del taller</translation>
        </message>
        <message>
            <source>stands back: front %1, back %2 mm</source>
            <translation>separada: delante %1, atrás %2 mm</translation>
        </message>
        <message>
            <source>stands beside soak_aim or soak_max; only one can hold</source>
            <translation>está junto a soak_aim o soak_max; solo uno puede valer</translation>
        </message>
        <message>
            <source>station</source>
            <translation>puesto</translation>
        </message>
        <message>
            <source>stay with the weld</source>
            <translation>seguir con la soldadura</translation>
        </message>
        <message>
            <source>stays on the scale</source>
            <translation>queda en la escala</translation>
        </message>
        <message>
            <source>step at most %1 mm</source>
            <translation>escalón máximo %1 mm</translation>
        </message>
        <message>
            <source>step backdated</source>
            <translation>paso adelantado</translation>
        </message>
        <message>
            <source>step taken back</source>
            <translation>paso deshecho</translation>
        </message>
        <message>
            <source>still open</source>
            <translation>aún abierta</translation>
        </message>
        <message>
            <source>still soft</source>
            <translation>aún blanda</translation>
        </message>
        <message>
            <source>stopped</source>
            <translation>parada</translation>
        </message>
        <message>
            <source>stopped by a person's word after a power cut</source>
            <translation>parada por decisión de una persona tras un corte de luz</translation>
        </message>
        <message>
            <source>stopped: %1</source>
            <translation>parada: %1</translation>
        </message>
        <message>
            <source>stored: %1</source>
            <translation>guardado: %1</translation>
        </message>
        <message>
            <source>supervisor</source>
            <translation>supervisor</translation>
        </message>
        <message>
            <source>synchronous writing can't be turned on</source>
            <translation>no se puede activar la escritura segura</translation>
        </message>
        <message>
            <source>table</source>
            <translation>tabla</translation>
        </message>
        <message>
            <source>tables close up by</source>
            <translation>cierre de las mesas</translation>
        </message>
        <message>
            <source>tables: front %1 mm, back %2 mm</source>
            <translation>mesas: delante %1 mm, atrás %2 mm</translation>
        </message>
        <message>
            <source>taken back</source>
            <translation>deshecho</translation>
        </message>
        <message>
            <source>temperature</source>
            <translation>temperatura</translation>
        </message>
        <message>
            <source>tensile test</source>
            <translation>ensayo de tracción</translation>
        </message>
        <message>
            <source>test, event %1</source>
            <translation>ensayo, evento %1</translation>
        </message>
        <message>
            <source>tests in all: %1</source>
            <translation>ensayos en total: %1</translation>
        </message>
        <message>
            <source>that no job was told of</source>
            <translation>sin encargo indicado</translation>
        </message>
        <message>
            <source>that seam is made by now</source>
            <translation>esa junta ya está hecha</translation>
        </message>
        <message>
            <source>the %1 can't be begun</source>
            <translation>no se puede empezar: %1</translation>
        </message>
        <message>
            <source>the %1 can't be ended</source>
            <translation>no se puede terminar: %1</translation>
        </message>
        <message>
            <source>the %1 can't be painted</source>
            <translation>no se puede dibujar %1</translation>
        </message>
        <message>
            <source>the %1 can't be written to "%2"</source>
            <translation>%1: no se puede escribir en «%2»</translation>
        </message>
        <message>
            <source>the %1 can't be written to "%2": %3</source>
            <translation>%1: no se puede escribir en «%2»: %3</translation>
        </message>
        <message>
            <source>the PDF can't be given bookmarks: %1</source>
            <translation>No se pueden poner marcadores al PDF: %1</translation>
        </message>
        <message>
            <source>the PIN is wrong</source>
            <translation>el PIN es erróneo</translation>
        </message>
        <message>
            <source>the PIN is wrong; the next try in %1</source>
            <translation>el PIN es erróneo; otro intento en %1</translation>
        </message>
        <message>
            <source>the angle</source>
            <translation>el ángulo</translation>
        </message>
        <message>
            <source>the bars are closed: the sheet can't be lifted out</source>
            <translation>las barras están cerradas: la placa no se puede sacar</translation>
        </message>
        <message>
            <source>the bars aren't closed on a sheet</source>
            <translation>las barras no están cerradas sobre ninguna placa</translation>
        </message>
        <message>
            <source>the batch</source>
            <translation>el lote</translation>
        </message>
        <message>
            <source>the battery is low</source>
            <translation>batería baja</translation>
        </message>
        <message>
            <source>the bead ends it, not the clock</source>
            <translation>lo acaba el cordón, no el reloj</translation>
        </message>
        <message>
            <source>the beginning of the chain was changed</source>
            <translation>el principio de la cadena fue cambiado</translation>
        </message>
        <message>
            <source>the bench "%1" is there already</source>
            <translation>el banco «%1» ya está</translation>
        </message>
        <message>
            <source>the bench %1</source>
            <translation>el banco %1</translation>
        </message>
        <message>
            <source>the bench can't be set so</source>
            <translation>el banco no se ajusta así</translation>
        </message>
        <message>
            <source>the bench of %1</source>
            <translation>el banco de %1</translation>
        </message>
        <message>
            <source>the bench was needed</source>
            <translation>se necesitaba el banco</translation>
        </message>
        <message>
            <source>the bench's own data</source>
            <translation>datos propios del banco</translation>
        </message>
        <message>
            <source>the benches</source>
            <translation>los bancos</translation>
        </message>
        <message>
            <source>the boot is still the same; there is nothing to bridge</source>
            <translation>el equipo sigue con el mismo arranque; no hay nada que enlazar</translation>
        </message>
        <message>
            <source>the calibration's 95 % band is ± %1 at the set reading, more than half of the force's tolerance of ± %2 (our judgement)</source>
            <translation>la banda del 95 % de la calibración es ± %1 en la lectura fijada, más de la mitad de la tolerancia de fuerza de ± %2 (juicio nuestro)</translation>
        </message>
        <message>
            <source>the card of %1 has %2 sources and %3 warnings, more than one page holds at 5.5 points; allowed: one page</source>
            <translation>la ficha de %1 tiene %2 fuentes y %3 avisos, más de lo que cabe en una página con 5,5 puntos; permitido: una página</translation>
        </message>
        <message>
            <source>the card that this lesson hands out lacks what a weld needs</source>
            <translation>a la ficha que da esta lección le falta lo que necesita una soldadura</translation>
        </message>
        <message>
            <source>the card's bench</source>
            <translation>el banco de la ficha</translation>
        </message>
        <message>
            <source>the card's page can't be begun in memory</source>
            <translation>no se puede empezar la página de la ficha</translation>
        </message>
        <message>
            <source>the card's page can't be ended in memory</source>
            <translation>no se puede terminar la página de la ficha</translation>
        </message>
        <message>
            <source>the chain is of the world "%1", and the file of "%2"</source>
            <translation>la cadena es del mundo «%1» y el archivo de «%2»</translation>
        </message>
        <message>
            <source>the chain is of the world "%1", expected "%2"</source>
            <translation>la cadena es del mundo «%1», se espera «%2»</translation>
        </message>
        <message>
            <source>the check "%1" can only be overridden by a foreman</source>
            <translation>el control «%1» solo puede omitirlo un encargado</translation>
        </message>
        <message>
            <source>the check "%1" can only be overridden by a foreman: the scale doesn't show what it asks</source>
            <translation>el control «%1» solo puede omitirlo un encargado: la escala no muestra lo que pide</translation>
        </message>
        <message>
            <source>the check "%1" is not one of this weld's checks</source>
            <translation>el control «%1» no es de esta soldadura</translation>
        </message>
        <message>
            <source>the check of the guard was passed over</source>
            <translation>se pasó por alto la comprobación de la protección</translation>
        </message>
        <message>
            <source>the clamps aren't closed on both sheets</source>
            <translation>las mordazas no están cerradas en las dos placas</translation>
        </message>
        <message>
            <source>the clock is right</source>
            <translation>el reloj va bien</translation>
        </message>
        <message>
            <source>the clock was set</source>
            <translation>se ajustó el reloj</translation>
        </message>
        <message>
            <source>the clock was set by %1</source>
            <translation>se ajustó el reloj en %1</translation>
        </message>
        <message>
            <source>the cold spot's depth [K]</source>
            <translation>la profundidad del punto frío [K]</translation>
        </message>
        <message>
            <source>the cold spot's place</source>
            <translation>el lugar del punto frío</translation>
        </message>
        <message>
            <source>the cold spot's width</source>
            <translation>el ancho del punto frío</translation>
        </message>
        <message>
            <source>the column is missing; allowed: %1</source>
            <translation>falta la columna; permitido: %1</translation>
        </message>
        <message>
            <source>the column stands there twice; allowed: once</source>
            <translation>la columna está dos veces; permitido: una</translation>
        </message>
        <message>
            <source>the columns are parted by ";"; allowed: commas</source>
            <translation>las columnas están separadas con «;»; permitido: comas</translation>
        </message>
        <message>
            <source>the columns label, material, procedure, thickness_mm, length_mm</source>
            <translation>las columnas label, material, procedure, thickness_mm, length_mm</translation>
        </message>
        <message>
            <source>the copy can't be brought to disk</source>
            <translation>no se puede llevar la copia al disco</translation>
        </message>
        <message>
            <source>the copy was stopped before it was complete</source>
            <translation>la copia se detuvo antes de completarse</translation>
        </message>
        <message>
            <source>the copy's folder can't be brought to disk</source>
            <translation>no se puede llevar al disco la carpeta de la copia</translation>
        </message>
        <message>
            <source>the date "%1" is none; allowed 0000-01-01 to 9999-12-31</source>
            <translation>la fecha «%1» no existe; permitido 0000-01-01 a 9999-12-31</translation>
        </message>
        <message>
            <source>the day %1</source>
            <translation>el día %1</translation>
        </message>
        <message>
            <source>the day %1 has not come yet; allowed: up to %2</source>
            <translation>el día %1 aún no ha llegado; permitido: hasta %2</translation>
        </message>
        <message>
            <source>the day can't be sealed yet: %1</source>
            <translation>aún no se puede sellar el día: %1</translation>
        </message>
        <message>
            <source>the decision on a trial joint takes %1 ms; allowed: 0 to %2</source>
            <translation>la decisión sobre una unión de prueba dura %1 ms; permitido: 0 a %2</translation>
        </message>
        <message>
            <source>the demo shop in %1 can't be taken away: %2</source>
            <translation>el taller de demostración en %1 no se puede quitar: %2</translation>
        </message>
        <message>
            <source>the demo shop's place %1 is taken; allowed: a name at which nothing stands</source>
            <translation>el lugar %1 del taller de demostración está ocupado; permitido: un nombre en el que no haya nada</translation>
        </message>
        <message>
            <source>the demo's folder %1 can't be read: %2</source>
            <translation>no se puede leer la carpeta %1 de la demostración: %2</translation>
        </message>
        <message>
            <source>the disk is full%1</source>
            <translation>el disco está lleno%1</translation>
        </message>
        <message>
            <source>the disk reports an error%1</source>
            <translation>el disco comunica un error%1</translation>
        </message>
        <message>
            <source>the document %1 is gone</source>
            <translation>el documento %1 ya no está</translation>
        </message>
        <message>
            <source>the document %1 of a take is gone</source>
            <translation>falta el documento %1 de una toma</translation>
        </message>
        <message>
            <source>the document of %1: %2</source>
            <translation>el documento de %1: %2</translation>
        </message>
        <message>
            <source>the drag [N]</source>
            <translation>el arrastre [N]</translation>
        </message>
        <message>
            <source>the draught's factor</source>
            <translation>el factor de la corriente de aire</translation>
        </message>
        <message>
            <source>the edge's lean [mm]</source>
            <translation>la inclinación del canto [mm]</translation>
        </message>
        <message>
            <source>the edges are hot: a sheet is shimmed before the plate comes in</source>
            <translation>los cantos están calientes: se calza antes de entrar el espejo</translation>
        </message>
        <message>
            <source>the edges are joined: nobody can touch them</source>
            <translation>los cantos están unidos: nadie puede tocarlos</translation>
        </message>
        <message>
            <source>the faces of joint %1 never met; allowed: a joint that was made</source>
            <translation>las caras de la unión %1 nunca se juntaron; permitido: una unión que se hizo</translation>
        </message>
        <message>
            <source>the field "%1" stands twice</source>
            <translation>el campo «%1» está dos veces</translation>
        </message>
        <message>
            <source>the file is empty; expected a JSON object</source>
            <translation>el archivo está vacío; se espera un objeto JSON</translation>
        </message>
        <message>
            <source>the file is empty; expected the header reading,force_N</source>
            <translation>el archivo está vacío; se espera la cabecera reading,force_N</translation>
        </message>
        <message>
            <source>the folder "%1" for photos can't be made</source>
            <translation>no se puede crear la carpeta «%1» para fotos</translation>
        </message>
        <message>
            <source>the folder "%1" for tables can't be made</source>
            <translation>no se puede crear la carpeta «%1» para tablas</translation>
        </message>
        <message>
            <source>the folder "%1" for the practice log can't be made; allowed: a folder that can be written</source>
            <translation>no se puede crear la carpeta «%1» para el registro de práctica; permitido: una carpeta en la que se pueda escribir</translation>
        </message>
        <message>
            <source>the folder %1 is not there</source>
            <translation>la carpeta %1 no existe</translation>
        </message>
        <message>
            <source>the folder can't be made</source>
            <translation>no se puede crear la carpeta</translation>
        </message>
        <message>
            <source>the folder for photos can't be made</source>
            <translation>no se puede crear la carpeta de fotos</translation>
        </message>
        <message>
            <source>the folder for published copies is not there; allowed: a folder</source>
            <translation>la carpeta para copias no existe; permitido: una carpeta</translation>
        </message>
        <message>
            <source>the foreman</source>
            <translation>el encargado</translation>
        </message>
        <message>
            <source>the foreman decided</source>
            <translation>lo decidió el encargado</translation>
        </message>
        <message>
            <source>the foreman's PIN is asked</source>
            <translation>se pide el PIN del encargado</translation>
        </message>
        <message>
            <source>the gap</source>
            <translation>el hueco</translation>
        </message>
        <message>
            <source>the gap is the sheet's thickness, twice that before the second sheet, by the bench's rule: common practice, no source</source>
            <translation>hueco igual al espesor de la placa, el doble antes de la segunda, según la regla del banco: práctica común, sin fuente</translation>
        </message>
        <message>
            <source>the guide, what alarms mean</source>
            <translation>la guía, qué significan las alarmas</translation>
        </message>
        <message>
            <source>the hand was slow</source>
            <translation>la mano fue lenta</translation>
        </message>
        <message>
            <source>the heat estimate was stopped</source>
            <translation>la estimación de calor se detuvo</translation>
        </message>
        <message>
            <source>the id "%1" is another file's too</source>
            <translation>el identificador «%1» es también de otro archivo</translation>
        </message>
        <message>
            <source>the job "%1" has a seam "%2" already; allowed: each label once in a job</source>
            <translation>el trabajo «%1» ya tiene una junta «%2»; permitido: cada etiqueta una vez por trabajo</translation>
        </message>
        <message>
            <source>the job folder "%1" has no job; allowed: a folder with job-*.json</source>
            <translation>la carpeta de trabajo «%1» no tiene trabajo; permitido: una carpeta con job-*.json</translation>
        </message>
        <message>
            <source>the job's seams: %1</source>
            <translation>juntas del trabajo: %1</translation>
        </message>
        <message>
            <source>the joining pressure</source>
            <translation>la presión al unir</translation>
        </message>
        <message>
            <source>the joint's number</source>
            <translation>número de la unión</translation>
        </message>
        <message>
            <source>the joints that were chosen</source>
            <translation>las uniones elegidas</translation>
        </message>
        <message>
            <source>the key that it types</source>
            <translation>la tecla que envía</translation>
        </message>
        <message>
            <source>the last day %1 is no date; allowed: as in "2031-06-30"</source>
            <translation>el último día %1 no es una fecha; permitido: como «2031-06-30»</translation>
        </message>
        <message>
            <source>the last number</source>
            <translation>el último número</translation>
        </message>
        <message>
            <source>the last seconds of soak</source>
            <translation>los últimos segundos del calentamiento</translation>
        </message>
        <message>
            <source>the lesson %1</source>
            <translation>la lección %1</translation>
        </message>
        <message>
            <source>the lesson needs the %1 "%2", and this shop has none of that name</source>
            <translation>la lección necesita: %1 «%2», y este taller no tiene ninguno con ese nombre</translation>
        </message>
        <message>
            <source>the line has no force at a reading of %1, which is outside -%2 to %3</source>
            <translation>la recta no da fuerza con una lectura de %1, que está fuera de -%2 a %3</translation>
        </message>
        <message>
            <source>the list of joints has no place for more than %1 opened at one instant</source>
            <translation>la lista no admite más de %1 uniones abiertas en el mismo instante</translation>
        </message>
        <message>
            <source>the list of joints is being made anew, %1 rows are still to be read</source>
            <translation>la lista de uniones se está rehaciendo, faltan %1 filas por leer</translation>
        </message>
        <message>
            <source>the lock's creep [mm/min]</source>
            <translation>la fluencia del bloqueo [mm/min]</translation>
        </message>
        <message>
            <source>the log has no chain</source>
            <translation>el registro no tiene cadena</translation>
        </message>
        <message>
            <source>the log has no rows, so there is nothing to seal</source>
            <translation>el registro no tiene filas, así que no hay nada que sellar</translation>
        </message>
        <message>
            <source>the log holds an open weld on the bench "%1" but not the bench itself</source>
            <translation>el registro tiene una soldadura abierta en el banco «%1», pero no el banco</translation>
        </message>
        <message>
            <source>the log names a document of the bench "%1" that is not in it</source>
            <translation>el registro nombra un documento del banco «%1» que no contiene</translation>
        </message>
        <message>
            <source>the log names the procedure %1 and lacks it</source>
            <translation>el registro nombra el procedimiento %1 y no lo tiene</translation>
        </message>
        <message>
            <source>the log of real joints is not touched</source>
            <translation>el registro de uniones reales no se toca</translation>
        </message>
        <message>
            <source>the log was moved or deleted while it was in use</source>
            <translation>el registro se movió o se borró mientras se usaba</translation>
        </message>
        <message>
            <source>the machine was started again before the lock: cut back and plane again</source>
            <translation>el equipo se reinició antes de bloquear: recortar y cepillar otra vez</translation>
        </message>
        <message>
            <source>the machine was started again meanwhile; the clock must be bridged</source>
            <translation>el equipo se reinició entretanto; hay que enlazar el reloj</translation>
        </message>
        <message>
            <source>the machine's boot id can't be read from %1: without it no time can be trusted after a restart</source>
            <translation>no se puede leer el identificador de arranque en %1: sin él ninguna hora es fiable tras un reinicio</translation>
        </message>
        <message>
            <source>the machine's boot id in %1 is "%2", not 32 hexadecimal digits in groups</source>
            <translation>el identificador de arranque en %1 es «%2», no 32 cifras hexadecimales en grupos</translation>
        </message>
        <message>
            <source>the middle of the procedure's window</source>
            <translation>el centro del margen del procedimiento</translation>
        </message>
        <message>
            <source>the most allowed, %1, is under the scale's first division</source>
            <translation>lo máximo permitido, %1, está bajo la primera división de la escala</translation>
        </message>
        <message>
            <source>the name has %1 characters; allowed: 1 to %2</source>
            <translation>el nombre tiene %1 signos; permitido: 1 a %2</translation>
        </message>
        <message>
            <source>the name holds a control character, or begins or ends with a blank</source>
            <translation>el nombre contiene un signo de control o empieza o acaba con un espacio</translation>
        </message>
        <message>
            <source>the name stays in the log</source>
            <translation>el nombre sigue en el registro</translation>
        </message>
        <message>
            <source>the nearest division, %1 %2, lies outside %3 to %4 %5; the band is extended to it</source>
            <translation>la división más cercana, %1 %2, está fuera de %3 a %4 %5; la banda se amplía hasta ella</translation>
        </message>
        <message>
            <source>the next n is %1</source>
            <translation>el siguiente n es %1</translation>
        </message>
        <message>
            <source>the number of stations</source>
            <translation>el número de puntos</translation>
        </message>
        <message>
            <source>the old one is forgotten</source>
            <translation>se olvidó el anterior</translation>
        </message>
        <message>
            <source>the one was right</source>
            <translation>la única era correcta</translation>
        </message>
        <message>
            <source>the operator</source>
            <translation>el operario</translation>
        </message>
        <message>
            <source>the order stays</source>
            <translation>el orden no cambia</translation>
        </message>
        <message>
            <source>the others stay</source>
            <translation>los demás quedan</translation>
        </message>
        <message>
            <source>the person's id "%1" is not "person:" and 1 to 40 of a-z, 0-9 and "-"</source>
            <translation>el identificador «%1» no es «person:» y 1 a 40 signos de a-z, 0-9 y «-»</translation>
        </message>
        <message>
            <source>the photo "%1"</source>
            <translation>la foto «%1»</translation>
        </message>
        <message>
            <source>the photos can't be listed (%1)</source>
            <translation>no se pueden listar las fotos (%1)</translation>
        </message>
        <message>
            <source>the place</source>
            <translation>el punto</translation>
        </message>
        <message>
            <source>the place can't be reached</source>
            <translation>no se llega al sitio</translation>
        </message>
        <message>
            <source>the plan has no release order: it needs at least one step</source>
            <translation>el plan no tiene orden para sacar: necesita al menos un paso</translation>
        </message>
        <message>
            <source>the plan has no scale: a weld needs a bench</source>
            <translation>el plan no tiene escala: una soldadura necesita un banco</translation>
        </message>
        <message>
            <source>the plan is not ready to weld: %1 is missing</source>
            <translation>el plan aún no sirve para soldar: falta %1</translation>
        </message>
        <message>
            <source>the plan is not ready to weld: %1 was filled in by the shop and is not attested</source>
            <translation>el plan aún no sirve para soldar: rellenado por el taller y sin cotejar: %1</translation>
        </message>
        <message>
            <source>the plan of seam %1 has no times</source>
            <translation>el plan de la junta %1 no tiene tiempos</translation>
        </message>
        <message>
            <source>the plate can't be wiped between the edges; bring it out first</source>
            <translation>el espejo no se puede limpiar entre los cantos; sacarlo primero</translation>
        </message>
        <message>
            <source>the plate is between the edges; bring it out first</source>
            <translation>el espejo está entre los cantos; sacarlo primero</translation>
        </message>
        <message>
            <source>the plate is between the tables; bring it out first</source>
            <translation>el espejo está entre las mesas; sacarlo primero</translation>
        </message>
        <message>
            <source>the plate is in already, or on its way</source>
            <translation>el espejo ya está dentro o en camino</translation>
        </message>
        <message>
            <source>the plate is out already, or on its way</source>
            <translation>el espejo ya está fuera o en camino</translation>
        </message>
        <message>
            <source>the plate stuck</source>
            <translation>el espejo se pegó</translation>
        </message>
        <message>
            <source>the plate's offset [K]</source>
            <translation>la desviación del espejo [K]</translation>
        </message>
        <message>
            <source>the plate's target</source>
            <translation>objetivo del espejo</translation>
        </message>
        <message>
            <source>the plate's temperature</source>
            <translation>la temperatura del espejo</translation>
        </message>
        <message>
            <source>the points are too large for a line to be fitted</source>
            <translation>los puntos son demasiado grandes para ajustar una recta</translation>
        </message>
        <message>
            <source>the practice record can't be begun in memory</source>
            <translation>no se puede empezar el informe de práctica</translation>
        </message>
        <message>
            <source>the practice record can't be ended in memory</source>
            <translation>no se puede terminar el informe de práctica</translation>
        </message>
        <message>
            <source>the printer "%1" can't be used</source>
            <translation>no se puede usar la impresora «%1»</translation>
        </message>
        <message>
            <source>the printer "%1" does not take the %2</source>
            <translation>la impresora «%1» no acepta: %2</translation>
        </message>
        <message>
            <source>the procedure "%1" is not there</source>
            <translation>el procedimiento «%1» no está</translation>
        </message>
        <message>
            <source>the procedure "%1" of that joint is not here any more</source>
            <translation>el procedimiento «%1» de esa unión ya no está</translation>
        </message>
        <message>
            <source>the procedure %1</source>
            <translation>el procedimiento %1</translation>
        </message>
        <message>
            <source>the procedure %1 is not attested in %2; allowed: one that is</source>
            <translation>el procedimiento %1 no está cotejado en %2; permitido: uno cotejado</translation>
        </message>
        <message>
            <source>the procedure %1 says nothing of %2; allowed: one that a foreman filled</source>
            <translation>el procedimiento %1 no dice nada de %2; permitido: uno rellenado por un encargado</translation>
        </message>
        <message>
            <source>the procedure of this weld, %1, is neither on this tablet nor in its log</source>
            <translation>el procedimiento de esta soldadura, %1, no está en esta tableta ni en su registro</translation>
        </message>
        <message>
            <source>the procedures that come with the program are not there: neither %1 nor its source tree; name their folder in SEAMCLOCK_RESOURCES</source>
            <translation>los procedimientos del programa no están: ni %1 ni su árbol de fuentes; indicar su carpeta en SEAMCLOCK_RESOURCES</translation>
        </message>
        <message>
            <source>the program ended</source>
            <translation>acabó el programa</translation>
        </message>
        <message>
            <source>the program ended in mid-weld, and the virtual bench with it</source>
            <translation>el programa terminó en plena soldadura, y el banco virtual con él</translation>
        </message>
        <message>
            <source>the program stood still</source>
            <translation>el programa se detuvo</translation>
        </message>
        <message>
            <source>the rate %1 N per unit is not positive: a spring's force must rise with its reading</source>
            <translation>la rigidez de %1 N por unidad no es positiva: la fuerza de un muelle debe subir con su lectura</translation>
        </message>
        <message>
            <source>the reading</source>
            <translation>la lectura</translation>
        </message>
        <message>
            <source>the reason, for the record</source>
            <translation>el motivo, para el registro</translation>
        </message>
        <message>
            <source>the replay was stopped</source>
            <translation>la repetición se detuvo</translation>
        </message>
        <message>
            <source>the report can't be written to "%1": %2</source>
            <translation>no se puede escribir el informe en «%1»: %2</translation>
        </message>
        <message>
            <source>the report would have more than %1 joints; allowed: a shorter time or a narrower filter, or the joints as CSV</source>
            <translation>el informe tendría más de %1 uniones; permitido: menos tiempo o un filtro más estrecho, o las uniones como CSV</translation>
        </message>
        <message>
            <source>the ribbon is lifted</source>
            <translation>la cinta se levanta</translation>
        </message>
        <message>
            <source>the same</source>
            <translation>igual</translation>
        </message>
        <message>
            <source>the same seam</source>
            <translation>la misma junta</translation>
        </message>
        <message>
            <source>the scale's divisions of %1 %2 can hardly show the tolerance of %3 %4: %5</source>
            <translation>las divisiones de la escala, %1 %2, apenas muestran la tolerancia de %3 %4: %5</translation>
        </message>
        <message>
            <source>the scale's readings</source>
            <translation>las lecturas de la escala</translation>
        </message>
        <message>
            <source>the scale's zero error</source>
            <translation>el error de cero de la escala</translation>
        </message>
        <message>
            <source>the scope %1 can't be read; %2</source>
            <translation>el alcance %1 no se puede leer; %2</translation>
        </message>
        <message>
            <source>the scope %1 goes from %2 to %3 mm; allowed: 0.1 to 1000 mm, from thin to thick</source>
            <translation>el alcance %1 va de %2 a %3 mm; permitido: 0,1 a 1000 mm, de fino a grueso</translation>
        </message>
        <message>
            <source>the scope has %1 signs; allowed: up to %2</source>
            <translation>el alcance tiene %1 signos; permitido: hasta %2</translation>
        </message>
        <message>
            <source>the score is not wanted any more</source>
            <translation>la puntuación ya no hace falta</translation>
        </message>
        <message>
            <source>the seal waits for them</source>
            <translation>el sello las espera</translation>
        </message>
        <message>
            <source>the sheet</source>
            <translation>la placa</translation>
        </message>
        <message>
            <source>the sheet is clamped; its edge can't be got at</source>
            <translation>la placa está sujeta; no se llega a su canto</translation>
        </message>
        <message>
            <source>the sheet is out already</source>
            <translation>la placa ya está fuera</translation>
        </message>
        <message>
            <source>the sheet would no longer stand out of its clamps</source>
            <translation>la placa ya no sobresaldría de sus mordazas</translation>
        </message>
        <message>
            <source>the sheets are %1 and %2 mm thick, %3 mm apart; allowed a tenth of the thinner, %4 mm</source>
            <translation>las placas tienen %1 y %2 mm de espesor, %3 mm de diferencia; permitido un décimo de la más fina, %4 mm</translation>
        </message>
        <message>
            <source>the sheets aren't joined: there is nothing to lift out</source>
            <translation>las placas no están unidas: no hay nada que sacar</translation>
        </message>
        <message>
            <source>the sheets' grades differ, %1 and %2: colour does not matter, but conductive, flame-retardant or other types (PP-H, PP-B, PP-R) are not mixed unasked</source>
            <translation>las placas son de tipos distintos, %1 y %2: el color no importa, pero conductoras, ignífugas u otros tipos (PP-H, PP-B, PP-R) no se mezclan sin preguntar</translation>
        </message>
        <message>
            <source>the soak time, while there is no median of this bench: common practice, no source</source>
            <translation>el tiempo de calentamiento, mientras no haya mediana de este banco: práctica común, sin fuente</translation>
        </message>
        <message>
            <source>the spring is loaded</source>
            <translation>el muelle está cargado</translation>
        </message>
        <message>
            <source>the spring's rate in N/mm</source>
            <translation>la rigidez del muelle en N/mm</translation>
        </message>
        <message>
            <source>the standard</source>
            <translation>la norma</translation>
        </message>
        <message>
            <source>the step would come before the one it follows</source>
            <translation>el paso llegaría antes del que sigue</translation>
        </message>
        <message>
            <source>the table "%1" is gone</source>
            <translation>la tabla «%1» ya no está</translation>
        </message>
        <message>
            <source>the table can't be written to "%1" (%2)</source>
            <translation>no se puede escribir la tabla en «%1» (%2)</translation>
        </message>
        <message>
            <source>the take %1</source>
            <translation>la toma %1</translation>
        </message>
        <message>
            <source>the take's weld is "%1"; allowed: weld: and its UUID</source>
            <translation>la soldadura de la toma es «%1»; permitido: weld: y su UUID</translation>
        </message>
        <message>
            <source>the travel</source>
            <translation>el recorrido</translation>
        </message>
        <message>
            <source>the trial joint held</source>
            <translation>la unión de prueba aguantó</translation>
        </message>
        <message>
            <source>the trial joint was not accepted</source>
            <translation>la unión de prueba no se aceptó</translation>
        </message>
        <message>
            <source>the trial joint was not good</source>
            <translation>la unión de prueba no valía</translation>
        </message>
        <message>
            <source>the trial joint was not released yet</source>
            <translation>la unión de prueba aún no se liberó</translation>
        </message>
        <message>
            <source>the upper end of the table's band</source>
            <translation>el extremo superior del tramo de la tabla</translation>
        </message>
        <message>
            <source>the user guide</source>
            <translation>la guía</translation>
        </message>
        <message>
            <source>the user guide is not there: neither %1 nor its source tree; it comes with the program's package</source>
            <translation>la guía no está: ni %1 ni el árbol de fuentes; viene con el paquete del programa</translation>
        </message>
        <message>
            <source>the value falls before %1 mm; a source that says so needs "falls_by_declaration": true</source>
            <translation>el valor baja antes de %1 mm; una fuente que lo diga necesita "falls_by_declaration": true</translation>
        </message>
        <message>
            <source>the value jumps down from %1 to %2 at %3 mm; a source that says so needs "falls_by_declaration": true</source>
            <translation>el valor salta de %1 a %2 hacia abajo en %3 mm; una fuente que lo diga necesita "falls_by_declaration": true</translation>
        </message>
        <message>
            <source>the wall clock went back</source>
            <translation>el reloj de pared retrocedió</translation>
        </message>
        <message>
            <source>the weld "%1" is open elsewhere</source>
            <translation>la soldadura «%1» está abierta en otro sitio</translation>
        </message>
        <message>
            <source>the weld is over</source>
            <translation>la soldadura ha terminado</translation>
        </message>
        <message>
            <source>the wheel is locked; unlock it first</source>
            <translation>el volante está bloqueado; soltarlo primero</translation>
        </message>
        <message>
            <source>the wheel isn't locked</source>
            <translation>el volante no está bloqueado</translation>
        </message>
        <message>
            <source>the wheel's speed</source>
            <translation>la velocidad del volante</translation>
        </message>
        <message>
            <source>the whole</source>
            <translation>el conjunto</translation>
        </message>
        <message>
            <source>then clear of bench %1</source>
            <translation>luego libre del banco %1</translation>
        </message>
        <message>
            <source>then lock</source>
            <translation>y bloquear</translation>
        </message>
        <message>
            <source>then: plate out within %1 s</source>
            <translation>luego: espejo fuera en %1 s</translation>
        </message>
        <message>
            <source>there are %1 files like "%2" already</source>
            <translation>ya hay %1 archivos como «%2»</translation>
        </message>
        <message>
            <source>there are %1 mm between the edges; the plate needs %2 mm</source>
            <translation>hay %1 mm entre los cantos; el espejo necesita %2 mm</translation>
        </message>
        <message>
            <source>there are %1 of that day already</source>
            <translation>ya hay %1 de ese día</translation>
        </message>
        <message>
            <source>there are %1 of that name already</source>
            <translation>ya hay %1 con ese nombre</translation>
        </message>
        <message>
            <source>there is a file of that name</source>
            <translation>allí hay un archivo con ese nombre</translation>
        </message>
        <message>
            <source>there is a foreman already, who adds everybody else</source>
            <translation>ya hay un encargado, que añade a los demás</translation>
        </message>
        <message>
            <source>there is no "%1" in this log; allowed: one that it has</source>
            <translation>«%1» no está en este registro; permitido: una que esté en él</translation>
        </message>
        <message>
            <source>there is no chapter of the guide in "%1"; allowed: files as "01-cautions.md"</source>
            <translation>en «%1» no hay ningún capítulo de la guía; permitido: archivos como «01-cautions.md»</translation>
        </message>
        <message>
            <source>there is no column %1; allowed: %2</source>
            <translation>no hay columna %1; permitido: %2</translation>
        </message>
        <message>
            <source>there is no guide</source>
            <translation>no hay guía</translation>
        </message>
        <message>
            <source>there is no header line; allowed: %1</source>
            <translation>no hay línea de cabecera; permitido: %1</translation>
        </message>
        <message>
            <source>there is no joint on this bench to go on from</source>
            <translation>en este banco no hay unión desde la que seguir</translation>
        </message>
        <message>
            <source>there is no lesson "%1"; allowed: %2</source>
            <translation>no hay lección «%1»; permitido: %2</translation>
        </message>
        <message>
            <source>there is no printer</source>
            <translation>no hay impresora</translation>
        </message>
        <message>
            <source>there is no printer "%1"; allowed: %2</source>
            <translation>no hay impresora «%1»; permitido: %2</translation>
        </message>
        <message>
            <source>there is no printer on this machine; the %1 can be kept as a PDF</source>
            <translation>este equipo no tiene impresora; se puede guardar como PDF: %1</translation>
        </message>
        <message>
            <source>there is no seam</source>
            <translation>no hay ninguna junta</translation>
        </message>
        <message>
            <source>there is no seam "%1" in this log; allowed: one that it keeps</source>
            <translation>no hay ninguna junta «%1» en este registro; permitido: una que guarde</translation>
        </message>
        <message>
            <source>there is no seam under the header</source>
            <translation>no hay ninguna junta bajo la cabecera</translation>
        </message>
        <message>
            <source>there is no seam; allowed: one or more</source>
            <translation>no hay ninguna junta; permitido: una o más</translation>
        </message>
        <message>
            <source>there is no series "%1"; allowed: one that coupons list shows</source>
            <translation>no hay ninguna serie «%1»; permitido: una que muestre coupons list</translation>
        </message>
        <message>
            <source>thick</source>
            <translation>gruesa</translation>
        </message>
        <message>
            <source>thickest sheet mm</source>
            <translation>placa más gruesa mm</translation>
        </message>
        <message>
            <source>thickness</source>
            <translation>espesor</translation>
        </message>
        <message>
            <source>thickness %1 mm is outside %2 to %3 mm of %4</source>
            <translation>espesor %1 mm está fuera de %2 a %3 mm de %4</translation>
        </message>
        <message>
            <source>thickness %1 mm is outside %2 to %3 mm of bench %4</source>
            <translation>espesor %1 mm está fuera de %2 a %3 mm del banco %4</translation>
        </message>
        <message>
            <source>thickness mm</source>
            <translation>espesor mm</translation>
        </message>
        <message>
            <source>thin</source>
            <translation>fina</translation>
        </message>
        <message>
            <source>thin melt</source>
            <translation>poco fundido</translation>
        </message>
        <message>
            <source>things</source>
            <translation>cosas</translation>
        </message>
        <message>
            <source>thinnest sheet mm</source>
            <translation>placa más fina mm</translation>
        </message>
        <message>
            <source>this is a copy: nothing can be written to it</source>
            <translation>esto es una copia: no se puede escribir en ella</translation>
        </message>
        <message>
            <source>this job</source>
            <translation>este trabajo</translation>
        </message>
        <message>
            <source>this log has no take of %1</source>
            <translation>este registro no tiene ninguna toma de %1</translation>
        </message>
        <message>
            <source>this plan %1</source>
            <translation>este plan %1</translation>
        </message>
        <message>
            <source>this sheet is clamped already</source>
            <translation>esta placa ya está sujeta</translation>
        </message>
        <message>
            <source>this weld</source>
            <translation>esta junta</translation>
        </message>
        <message>
            <source>this weld is stopped</source>
            <translation>esta soldadura se para</translation>
        </message>
        <message>
            <source>ticked</source>
            <translation>marcado</translation>
        </message>
        <message>
            <source>till bead stands</source>
            <translation>hasta el cordón</translation>
        </message>
        <message>
            <source>till the bead stands</source>
            <translation>hasta el cordón</translation>
        </message>
        <message>
            <source>time</source>
            <translation>hora</translation>
        </message>
        <message>
            <source>time of the weld</source>
            <translation>tiempo de soldar</translation>
        </message>
        <message>
            <source>title</source>
            <translation>título</translation>
        </message>
        <message>
            <source>title and date, as printed on the shop's copy</source>
            <translation>título y fecha, como en el ejemplar del taller</translation>
        </message>
        <message>
            <source>to %1</source>
            <translation>hasta %1</translation>
        </message>
        <message>
            <source>to %1 °C</source>
            <translation>hasta %1 °C</translation>
        </message>
        <message>
            <source>to [%1]</source>
            <translation>hasta [%1]</translation>
        </message>
        <message>
            <source>to be cut out</source>
            <translation>a cortar</translation>
        </message>
        <message>
            <source>to be repaired</source>
            <translation>a reparar</translation>
        </message>
        <message>
            <source>to cut out</source>
            <translation>a cortar</translation>
        </message>
        <message>
            <source>to decide</source>
            <translation>por decidir</translation>
        </message>
        <message>
            <source>to decide: %1</source>
            <translation>por decidir: %1</translation>
        </message>
        <message>
            <source>to decide: joint %1 can't be read</source>
            <translation>por decidir: la unión %1 no se puede leer</translation>
        </message>
        <message>
            <source>to decide: joint %1 is %2</source>
            <translation>por decidir: unión %1, %2</translation>
        </message>
        <message>
            <source>to mm</source>
            <translation>hasta mm</translation>
        </message>
        <message>
            <source>to repair</source>
            <translation>a reparar</translation>
        </message>
        <message>
            <source>to the list</source>
            <translation>a la lista</translation>
        </message>
        <message>
            <source>to the result</source>
            <translation>al resultado</translation>
        </message>
        <message>
            <source>to the shop</source>
            <translation>al taller</translation>
        </message>
        <message>
            <source>to the shop's own log</source>
            <translation>al registro propio</translation>
        </message>
        <message>
            <source>to the signal</source>
            <translation>hasta la señal</translation>
        </message>
        <message>
            <source>to weld again</source>
            <translation>por resoldar</translation>
        </message>
        <message>
            <source>to weld again: %1</source>
            <translation>por resoldar: %1</translation>
        </message>
        <message>
            <source>to weld again: joint %1 is to be repaired</source>
            <translation>por resoldar: la unión %1 se ha de reparar</translation>
        </message>
        <message>
            <source>to weld again: joint %1 was cut out</source>
            <translation>por resoldar: la unión %1 se cortó</translation>
        </message>
        <message>
            <source>to weld again: joint %1 was stopped</source>
            <translation>por resoldar: la unión %1 se paró</translation>
        </message>
        <message>
            <source>to °C</source>
            <translation>hasta °C</translation>
        </message>
        <message>
            <source>told too late: %1</source>
            <translation>dicho tarde: %1</translation>
        </message>
        <message>
            <source>told, not done: %1</source>
            <translation>dicho, no hecho: %1</translation>
        </message>
        <message>
            <source>tolerance of build-up</source>
            <translation>tolerancia del aumento</translation>
        </message>
        <message>
            <source>tolerance of soak</source>
            <translation>tolerancia al calentar</translation>
        </message>
        <message>
            <source>tolerance of the pressure</source>
            <translation>tolerancia de la presión</translation>
        </message>
        <message>
            <source>tolerance ± N/mm²</source>
            <translation>tolerancia ± N/mm²</translation>
        </message>
        <message>
            <source>too coarse for this seam</source>
            <translation>muy basta para esta junta</translation>
        </message>
        <message>
            <source>too small a deviation to matter here</source>
            <translation>desviación demasiado pequeña para importar aquí</translation>
        </message>
        <message>
            <source>total length %1 mm is outside %2 to %3 mm of bench %4</source>
            <translation>longitud total %1 mm está fuera de %2 a %3 mm del banco %4</translation>
        </message>
        <message>
            <source>touch to say the standard</source>
            <translation>tocar para decir la norma</translation>
        </message>
        <message>
            <source>touch to say who welded</source>
            <translation>tocar para decir quién soldó</translation>
        </message>
        <message>
            <source>trainee</source>
            <translation>aprendiz</translation>
        </message>
        <message>
            <source>travel of the ram %1 in</source>
            <translation>recorrido del punzón %1 in</translation>
        </message>
        <message>
            <source>travel of the ram %1 mm</source>
            <translation>recorrido del punzón %1 mm</translation>
        </message>
        <message>
            <source>trial</source>
            <translation>prueba</translation>
        </message>
        <message>
            <source>trial %1</source>
            <translation>prueba %1</translation>
        </message>
        <message>
            <source>trial is tested</source>
            <translation>ensayo de la prueba</translation>
        </message>
        <message>
            <source>trial joint</source>
            <translation>unión de prueba</translation>
        </message>
        <message>
            <source>trial: %1</source>
            <translation>prueba: %1</translation>
        </message>
        <message>
            <source>trial: not released yet</source>
            <translation>prueba: aún sin liberar</translation>
        </message>
        <message>
            <source>trouble with the bench</source>
            <translation>problema con el banco</translation>
        </message>
        <message>
            <source>true time</source>
            <translation>tiempo real</translation>
        </message>
        <message>
            <source>turned against the scale's end</source>
            <translation>girado contra el tope de la escala</translation>
        </message>
        <message>
            <source>twice the median of this bench's last such welds: our judgement</source>
            <translation>el doble de la mediana de las últimas soldaduras así en este banco: juicio nuestro</translation>
        </message>
        <message>
            <source>type it in</source>
            <translation>teclear</translation>
        </message>
        <message>
            <source>type it twice</source>
            <translation>teclear dos veces</translation>
        </message>
        <message>
            <source>typed by the keyboard</source>
            <translation>con el teclado</translation>
        </message>
        <message>
            <source>typed wrong</source>
            <translation>mal tecleado</translation>
        </message>
        <message>
            <source>unit of the scale</source>
            <translation>unidad de la escala</translation>
        </message>
        <message>
            <source>unit printed on it</source>
            <translation>unidad impresa en ella</translation>
        </message>
        <message>
            <source>unit, division, zero, rate of each spring</source>
            <translation>unidad, división, cero, rigidez de cada muelle</translation>
        </message>
        <message>
            <source>until</source>
            <translation>hasta</translation>
        </message>
        <message>
            <source>upper %1</source>
            <translation>superior %1</translation>
        </message>
        <message>
            <source>upper limit %1</source>
            <translation>límite superior %1</translation>
        </message>
        <message>
            <source>valley above the sheet.</source>
            <translation>valle sobre la placa.</translation>
        </message>
        <message>
            <source>value</source>
            <translation>valor</translation>
        </message>
        <message>
            <source>value corrected</source>
            <translation>valor corregido</translation>
        </message>
        <message>
            <source>verdict</source>
            <translation>dictamen</translation>
        </message>
        <message>
            <source>verdict %1</source>
            <translation>dictamen %1</translation>
        </message>
        <message>
            <source>wait</source>
            <translation>espera</translation>
        </message>
        <message>
            <source>wait %1: %2 needs you</source>
            <translation>esperar %1: atender %2</translation>
        </message>
        <message>
            <source>waits for release</source>
            <translation>espera a sacarla</translation>
        </message>
        <message>
            <source>waits in the spill file</source>
            <translation>espera en el archivo de reserva</translation>
        </message>
        <message>
            <source>warm</source>
            <translation>calor</translation>
        </message>
        <message>
            <source>warmer</source>
            <translation>más calor</translation>
        </message>
        <message>
            <source>was %1 %2</source>
            <translation>era %1 %2</translation>
        </message>
        <message>
            <source>was deleted</source>
            <translation>se borró</translation>
        </message>
        <message>
            <source>was not noticed</source>
            <translation>no se notó</translation>
        </message>
        <message>
            <source>was not written as it was read</source>
            <translation>no se escribió como se leyó</translation>
        </message>
        <message>
            <source>was written by a newer program (version %1, this program reads 1 to %2)</source>
            <translation>lo escribió un programa más nuevo (versión %1, este lee de 1 a %2)</translation>
        </message>
        <message>
            <source>weld %1 such seams in one clamping, or take a spring of at most %2 N for one %3</source>
            <translation>soldar %1 juntas así en una sujeción, o usar un muelle de %2 N como máximo por %3</translation>
        </message>
        <message>
            <source>weld an offcut of %1 mm beside it, or %2 such seams in one clamping, or take a spring of at most %3 N for one %4</source>
            <translation>soldar al lado un recorte de %1 mm, o %2 juntas así en una sujeción, o usar un muelle de %3 N como máximo por %4</translation>
        </message>
        <message>
            <source>weld an offcut of %1 mm beside it, or take a spring of at most %2 N for one %3</source>
            <translation>soldar al lado un recorte de %1 mm, o usar un muelle de %2 N como máximo por %3</translation>
        </message>
        <message>
            <source>weld closed</source>
            <translation>soldadura cerrada</translation>
        </message>
        <message>
            <source>weld opened</source>
            <translation>soldadura empezada</translation>
        </message>
        <message>
            <source>weld plane at %1 °C after</source>
            <translation>plano soldado a %1 °C tras</translation>
        </message>
        <message>
            <source>weld plane at release</source>
            <translation>plano soldado al sacar</translation>
        </message>
        <message>
            <source>weld plane at release about %1 °C, an estimate</source>
            <translation>plano soldado al sacar a unos %1 °C, estimación</translation>
        </message>
        <message>
            <source>weld plane, release</source>
            <translation>plano soldado, al sacar</translation>
        </message>
        <message>
            <source>weld plane, °C est.</source>
            <translation>plano soldado, °C est.</translation>
        </message>
        <message>
            <source>weld stopped</source>
            <translation>soldadura parada</translation>
        </message>
        <message>
            <source>welded</source>
            <translation>soldada</translation>
        </message>
        <message>
            <source>welded %1 N/mm²</source>
            <translation>soldadas %1 N/mm²</translation>
        </message>
        <message>
            <source>welded %1 psi</source>
            <translation>soldadas %1 psi</translation>
        </message>
        <message>
            <source>welded again more often than the job allows</source>
            <translation>resoldada más veces de las que permite el trabajo</translation>
        </message>
        <message>
            <source>welded and parent strength</source>
            <translation>resistencia soldada y base</translation>
        </message>
        <message>
            <source>welded by %1</source>
            <translation>soldado por %1</translation>
        </message>
        <message>
            <source>welder</source>
            <translation>soldador</translation>
        </message>
        <message>
            <source>welding factor %1</source>
            <translation>factor de soldadura %1</translation>
        </message>
        <message>
            <source>welds</source>
            <translation>suelda</translation>
        </message>
        <message>
            <source>what</source>
            <translation>qué</translation>
        </message>
        <message>
            <source>what is left of it</source>
            <translation>lo que queda de él</translation>
        </message>
        <message>
            <source>what people call it</source>
            <translation>cómo lo llama la gente</translation>
        </message>
        <message>
            <source>what presses</source>
            <translation>qué aprieta</translation>
        </message>
        <message>
            <source>what that is worth</source>
            <translation>qué valor tiene eso</translation>
        </message>
        <message>
            <source>what the source says instead</source>
            <translation>qué dice la fuente en su lugar</translation>
        </message>
        <message>
            <source>what to do</source>
            <translation>qué hacer</translation>
        </message>
        <message>
            <source>what was made</source>
            <translation>lo hecho</translation>
        </message>
        <message>
            <source>what was made at the practice bench can't be kept in a log of %1</source>
            <translation>lo hecho en el banco de práctica no puede guardarse en un registro de: %1</translation>
        </message>
        <message>
            <source>wheel locked</source>
            <translation>volante bloqueado</translation>
        </message>
        <message>
            <source>where it stands</source>
            <translation>dónde consta</translation>
        </message>
        <message>
            <source>where its faces are read</source>
            <translation>dónde se leen sus caras</translation>
        </message>
        <message>
            <source>where nothing is urgent</source>
            <translation>donde nada urge</translation>
        </message>
        <message>
            <source>where something is wrong</source>
            <translation>donde haya un defecto</translation>
        </message>
        <message>
            <source>where the buttons stand</source>
            <translation>lado de los botones</translation>
        </message>
        <message>
            <source>which joints hold one</source>
            <translation>en qué uniones están</translation>
        </message>
        <message>
            <source>which value</source>
            <translation>qué valor</translation>
        </message>
        <message>
            <source>who</source>
            <translation>quién</translation>
        </message>
        <message>
            <source>who, where, until when</source>
            <translation>quién, dónde, hasta cuándo</translation>
        </message>
        <message>
            <source>why</source>
            <translation>motivo</translation>
        </message>
        <message>
            <source>widest gap between the edges when they meet mm</source>
            <translation>hueco máximo entre cantos al juntarse mm</translation>
        </message>
        <message>
            <source>width</source>
            <translation>ancho</translation>
        </message>
        <message>
            <source>width %1 mm</source>
            <translation>anchura %1 mm</translation>
        </message>
        <message>
            <source>width %1, height %2, K %3, faces out of line %4</source>
            <translation>ancho %1, altura %2, K %3, caras desalineadas %4</translation>
        </message>
        <message>
            <source>width, over both beads.</source>
            <translation>ancho, sobre los dos cordones.</translation>
        </message>
        <message>
            <source>wiped</source>
            <translation>limpio</translation>
        </message>
        <message>
            <source>with a reason</source>
            <translation>con motivo</translation>
        </message>
        <message>
            <source>with drag %1</source>
            <translation>con arrastre %1</translation>
        </message>
        <message>
            <source>with the words “%1”</source>
            <translation>con las palabras «%1»</translation>
        </message>
        <message>
            <source>with width and thickness</source>
            <translation>con ancho y espesor</translation>
        </message>
        <message>
            <source>without a joint here</source>
            <translation>sin unión aquí</translation>
        </message>
        <message>
            <source>worked out from the others</source>
            <translation>calculado a partir de los otros</translation>
        </message>
        <message>
            <source>wrong sheet or setting</source>
            <translation>placa o ajuste erróneo</translation>
        </message>
        <message>
            <source>yes</source>
            <translation>sí</translation>
        </message>
        <message>
            <source>yes: the source itself says so</source>
            <translation>sí: lo dice la propia fuente</translation>
        </message>
        <message>
            <source>you hear</source>
            <translation>se oye</translation>
        </message>
        <message>
            <source>you see</source>
            <translation>se ve</translation>
        </message>
        <message>
            <source>zero</source>
            <translation>cero</translation>
        </message>
        <message>
            <source>zero and (force, drag and preload) by the spring's rate, from the bench's own data: common practice, no source</source>
            <translation>cero y (fuerza, arrastre y precarga) entre la rigidez del muelle, con los datos del banco: práctica común, sin fuente</translation>
        </message>
        <message>
            <source>zero and rate come from the calibration</source>
            <translation>cero y rigidez salen de la calibración</translation>
        </message>
        <message>
            <source>zero is the division nearest to the aim</source>
            <translation>cero es la división más cercana al objetivo</translation>
        </message>
        <message>
            <source>°C of the plate, reference air, soak's tolerance</source>
            <translation>°C del espejo, aire de referencia, tolerancia al calentar</translation>
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

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
            <source> · at work: %1</source>
            <translation> · trabaja: %1</translation>
        </message>
        <message>
            <source>"%1" is no value for %2; allowed: %3.</source>
            <translation>«%1» no es un valor para %2; permitido: %3.</translation>
        </message>
        <message>
            <source>% for each kelvin</source>
            <translation>% por cada kelvin</translation>
        </message>
        <message>
            <source>%1 %2</source>
            <translation>%1 %2</translation>
        </message>
        <message>
            <source>%1 %2 mm, %3 mm long</source>
            <translation>%1 %2 mm, %3 mm de largo</translation>
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
            <source>%1 (%2) %3</source>
            <translation>%1 (%2) %3</translation>
        </message>
        <message>
            <source>%1 (%2, to %3)</source>
            <translation>%1 (%2, hasta %3)</translation>
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
            <source>%1 N/mm²</source>
            <translation>%1 N/mm²</translation>
        </message>
        <message>
            <source>%1 Next try in %2.</source>
            <translation>%1 Próximo intento en %2.</translation>
        </message>
        <message>
            <source>%1 as before</source>
            <translation>%1 como antes</translation>
        </message>
        <message>
            <source>%1 attested values are withdrawn.</source>
            <translation>Cotejos retirados: %1.</translation>
        </message>
        <message>
            <source>%1 by %2, %3: %4</source>
            <translation>%1 (%2, %3): %4</translation>
        </message>
        <message>
            <source>%1 can't be meant: %2 to %3 %4.</source>
            <translation>%1 no puede ser: %2 a %3 %4.</translation>
        </message>
        <message>
            <source>%1 can't be welded here: %2.</source>
            <translation>%1 no se puede soldar aquí: %2.</translation>
        </message>
        <message>
            <source>%1 classes of air temperature</source>
            <translation>%1 clases de temperatura del aire</translation>
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
            <source>%1 has a new PIN.</source>
            <translation>%1 tiene un PIN nuevo.</translation>
        </message>
        <message>
            <source>%1 in all</source>
            <translation>%1 en total</translation>
        </message>
        <message>
            <source>%1 is %2. What is right?</source>
            <translation>%1: %2. ¿Qué es lo correcto?</translation>
        </message>
        <message>
            <source>%1 is above %2 %3.</source>
            <translation>%1 supera %2 %3.</translation>
        </message>
        <message>
            <source>%1 is below %2. Keep it, turn up.</source>
            <translation>%1 no llega a %2. Anotar y subir.</translation>
        </message>
        <message>
            <source>%1 is not too far: %2.</source>
            <translation>%1 no es excesivo: %2.</translation>
        </message>
        <message>
            <source>%1 is open</source>
            <translation>%1: abierta</translation>
        </message>
        <message>
            <source>%1 is outside %2.</source>
            <translation>%1 está fuera: %2.</translation>
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
            <source>%1 joints were broken off when the program ended.</source>
            <translation>Uniones interrumpidas al acabar el programa: %1.</translation>
        </message>
        <message>
            <source>%1 kept</source>
            <translation>hay %1</translation>
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
            <source>%1 mm to the plate</source>
            <translation>a %1 mm del espejo</translation>
        </message>
        <message>
            <source>%1 mm, formula</source>
            <translation>%1 mm, fórmula</translation>
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
            <source>%1 of %2 s</source>
            <translation>%1 de %2 s</translation>
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
            <source>%1 of them</source>
            <translation>%1 en total</translation>
        </message>
        <message>
            <source>%1 points, due on %2</source>
            <translation>%1 puntos, vence el %2</translation>
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
            <source>%1 s</source>
            <translation>%1 s</translation>
        </message>
        <message>
            <source>%1 s left</source>
            <translation>aún %1 s</translation>
        </message>
        <message>
            <source>%1 set</source>
            <translation>plan %1</translation>
        </message>
        <message>
            <source>%1 steps</source>
            <translation>%1 pasos</translation>
        </message>
        <message>
            <source>%1 things are to be put right before it can be kept.</source>
            <translation>Hay que corregir %1 cosas antes de poder guardar.</translation>
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
            <source>%1 to %2 °C</source>
            <translation>%1 a %2 °C</translation>
        </message>
        <message>
            <source>%1 took %2: out of limits. Let it cool, or cut it out.</source>
            <translation>%1: %2, fuera de límites. Dejar enfriar o cortar.</translation>
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
            <source>%1 welds at a virtual bench; %2 within limits and with a joint that bends.</source>
            <translation>Soldaduras en un banco virtual: %1; dentro de límites y con una unión que dobla: %2.</translation>
        </message>
        <message>
            <source>%1 welds. Touch one to see it again.</source>
            <translation>Soldaduras: %1. Tocar una para verla otra vez.</translation>
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
            <source>%1, %2 mm thick, %3 mm long</source>
            <translation>%1, espesor %2 mm, largo %3 mm</translation>
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
            <source>%1, and %2 more.</source>
            <translation>%1, y %2 más.</translation>
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
            <source>%1, edition %2</source>
            <translation>%1, edición %2</translation>
        </message>
        <message>
            <source>%1, edition %2. %3</source>
            <translation>%1, edición %2. %3</translation>
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
            <source>%1, face %2</source>
            <translation>%1, cara %2</translation>
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
            <source>%1, maker</source>
            <translation>%1, fabricante</translation>
        </message>
        <message>
            <source>%1, material</source>
            <translation>%1, material</translation>
        </message>
        <message>
            <source>%1, no PIN</source>
            <translation>%1, sin PIN</translation>
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
            <source>%1, to %2</source>
            <translation>%1, hasta %2</translation>
        </message>
        <message>
            <source>%1, until %2</source>
            <translation>%1, hasta %2</translation>
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
            <source>%1. Let it cool, or cut it out.</source>
            <translation>%1. Dejar enfriar o cortar.</translation>
        </message>
        <message>
            <source>%1: %2</source>
            <translation>%1: %2</translation>
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
            <source>%1: after %2 s</source>
            <translation>%1: tras %2 s</translation>
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
            <source>, cut to half: full load only after the whole time</source>
            <translation>, a la mitad: carga plena solo tras el tiempo completo</translation>
        </message>
        <message>
            <source>, last entry %1</source>
            <translation>, última entrada %1</translation>
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
            <source>. %1.</source>
            <translation>. %1.</translation>
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
            <source>10 s are over</source>
            <translation>pasaron 10 s</translation>
        </message>
        <message>
            <source>100, 125, 150, 200 %</source>
            <translation>100, 125, 150, 200 %</translation>
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
            <source>95 %</source>
            <translation>95 %</translation>
        </message>
        <message>
            <source>: </source>
            <translation>: </translation>
        </message>
        <message>
            <source>: made %1</source>
            <translation>: hecha %1</translation>
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
            <source>; also %1 %2</source>
            <translation>; también %1 %2</translation>
        </message>
        <message>
            <source>; by the rules now: %1</source>
            <translation>; con las reglas de hoy: %1</translation>
        </message>
        <message>
            <source>; calibrated %1, due %2</source>
            <translation>; calibrada el %1, vence el %2</translation>
        </message>
        <message>
            <source>; cooling </source>
            <translation>; enfriar </translation>
        </message>
        <message>
            <source>; cut to half: full load only after the whole time</source>
            <translation>; a la mitad: carga plena solo tras el tiempo completo</translation>
        </message>
        <message>
            <source>; its document is not in the log, so there are no actual forces</source>
            <translation>; su documento no está en el registro, por eso no hay fuerzas reales</translation>
        </message>
        <message>
            <source>; plan replaced </source>
            <translation>; plan sustituido </translation>
        </message>
        <message>
            <source>; scale in %1 from %2, %3</source>
            <translation>; escala en %1 desde %2, %3</translation>
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
            <source>A fifth bench is one too many: 4 are allowed.</source>
            <translation>Un quinto banco sobra: se permiten 4.</translation>
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
            <source>A screen can't teach the feel of a wheel. That comes at the bench.</source>
            <translation>Una pantalla no enseña el tacto del volante. Eso llega en el banco.</translation>
        </message>
        <message>
            <source>A sheet slipped</source>
            <translation>Se movió una placa</translation>
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
            <source>A word, or its beginning</source>
            <translation>Una palabra o su comienzo</translation>
        </message>
        <message>
            <source>A wrong tap</source>
            <translation>Toque erróneo</translation>
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
            <source>All</source>
            <translation>Todo</translation>
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
            <source>An estimate. It explains a weld and judges none; the procedure's limits decide.</source>
            <translation>Una estimación. Explica una soldadura y no juzga ninguna; deciden los límites del procedimiento.</translation>
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
            <source>Another class</source>
            <translation>Otra clase</translation>
        </message>
        <message>
            <source>Another gap</source>
            <translation>Otro vacío</translation>
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
            <source>Another spring</source>
            <translation>Otro muelle</translation>
        </message>
        <message>
            <source>Answer to a signal</source>
            <translation>Respuesta a señales</translation>
        </message>
        <message>
            <source>As before</source>
            <translation>Como antes</translation>
        </message>
        <message>
            <source>As in: PE-HD, PP 3-20 mm until 2031-06-30</source>
            <translation>Así: PE-HD, PP 3-20 mm until 2031-06-30</translation>
        </message>
        <message>
            <source>As measured, both the same.</source>
            <translation>El medido, igual en las dos.</translation>
        </message>
        <message>
            <source>As planned</source>
            <translation>Según plan</translation>
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
            <source>Back</source>
            <translation>Atrás</translation>
        </message>
        <message>
            <source>Back +</source>
            <translation>Atrás +</translation>
        </message>
        <message>
            <source>Back to the bench</source>
            <translation>Volver al banco</translation>
        </message>
        <message>
            <source>Back to the log</source>
            <translation>Volver al registro</translation>
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
            <source>Bead width</source>
            <translation>Ancho cordón</translation>
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
            <source>Below −</source>
            <translation>Abajo −</translation>
        </message>
        <message>
            <source>Bench</source>
            <translation>Banco</translation>
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
            <source>Benches</source>
            <translation>Bancos</translation>
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
            <source>Beside the weld</source>
            <translation>Además de soldar</translation>
        </message>
        <message>
            <source>Besides, %1 broken off when the program ended.</source>
            <translation>Además, %1 interrumpidas al acabar el programa.</translation>
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
            <source>By the rules now: %1</source>
            <translation>Con las reglas de hoy: %1</translation>
        </message>
        <message>
            <source>CSV or JSON of these</source>
            <translation>CSV o JSON de estas</translation>
        </message>
        <message>
            <source>Calibration</source>
            <translation>Calibración</translation>
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
            <source>Change an entry</source>
            <translation>Cambiar datos</translation>
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
            <source>Copy of practice, read only</source>
            <translation>Copia de práctica, solo lectura</translation>
        </message>
        <message>
            <source>Copy, read only</source>
            <translation>Copia, solo lectura</translation>
        </message>
        <message>
            <source>Correct a value</source>
            <translation>Corregir un valor</translation>
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
            <source>Edges not parallel</source>
            <translation>Cantos no paralelos</translation>
        </message>
        <message>
            <source>Edit in a form</source>
            <translation>Editar datos</translation>
        </message>
        <message>
            <source>End the program</source>
            <translation>Cerrar el programa</translation>
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
            <source>Force is off</source>
            <translation>Fuerza quitada</translation>
        </message>
        <message>
            <source>Force set</source>
            <translation>Fuerza plan</translation>
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
            <source>From</source>
            <translation>Desde</translation>
        </message>
        <message>
            <source>From %1 °C this plastic gives off harmful gas. Never weld so.</source>
            <translation>Desde %1 °C este plástico desprende gas nocivo. No soldar nunca así.</translation>
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
            <source>Go on without a trial</source>
            <translation>Seguir sin prueba</translation>
        </message>
        <message>
            <source>Go on without this check? Say why.</source>
            <translation>¿Seguir sin este control? ¿Por qué?</translation>
        </message>
        <message>
            <source>Go on: %1</source>
            <translation>Seguir: %1</translation>
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
            <source>How does the bead look to you?</source>
            <translation>¿Qué aspecto tiene el cordón?</translation>
        </message>
        <message>
            <source>How far did the scale go before you turned back?</source>
            <translation>¿Hasta dónde llegó la escala antes de volver atrás?</translation>
        </message>
        <message>
            <source>How it went</source>
            <translation>Cómo fue</translation>
        </message>
        <message>
            <source>How much is cut away, of both sheets together?</source>
            <translation>¿Cuánto se corta, de las dos placas juntas?</translation>
        </message>
        <message>
            <source>How the scale reading comes about</source>
            <translation>Cómo se obtiene la lectura de la escala</translation>
        </message>
        <message>
            <source>I hear it</source>
            <translation>Se oye</translation>
        </message>
        <message>
            <source>In limits</source>
            <translation>En límites</translation>
        </message>
        <message>
            <source>In soak the scale can't show it: just in contact.</source>
            <translation>Al calentar la escala no lo muestra: contacto justo.</translation>
        </message>
        <message>
            <source>Incomplete</source>
            <translation>Incompleta</translation>
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
            <source>It guides. The machine's instructions, the standard in force, local rules and a qualified welder decide.</source>
            <translation>Orienta. Deciden las instrucciones de la máquina, la norma vigente, la normativa local y un soldador cualificado.</translation>
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
            <source>It is kept with its time, and told when the weld is over.</source>
            <translation>Queda anotado con su hora y se cuenta al acabar la soldadura.</translation>
        </message>
        <message>
            <source>It signs all rows up to now with your key. Its fingerprint then goes on paper or by mail: on this tablet alone it proves nothing to others.</source>
            <translation>Firma con la clave propia todas las filas hasta ahora. Después su huella va a papel o por correo: solo en esta tableta no prueba nada a otros.</translation>
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
            <source>Its events make no weld</source>
            <translation>Sus eventos no forman soldadura</translation>
        </message>
        <message>
            <source>Job</source>
            <translation>Trabajo</translation>
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
            <source>Joint %1 goes on without this check.</source>
            <translation>La unión %1 sigue sin este control.</translation>
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
            <source>Joint %1 was broken off when the program ended.</source>
            <translation>La unión %1 se interrumpió al acabar el programa.</translation>
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
            <source>Joint number</source>
            <translation>Unión número</translation>
        </message>
        <message>
            <source>Joints</source>
            <translation>Uniones</translation>
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
            <source>Joints with which verdict?</source>
            <translation>¿Uniones con qué dictamen?</translation>
        </message>
        <message>
            <source>Judged by the top bead</source>
            <translation>Juzgado solo por arriba</translation>
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
            <source>Keep this PIN</source>
            <translation>Guardar este PIN</translation>
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
            <source>Leave it locked. Nothing else to do.</source>
            <translation>Dejarlo bloqueado. Nada más que hacer.</translation>
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
            <source>Leave the desk</source>
            <translation>Salir del panel</translation>
        </message>
        <message>
            <source>Leave the lesson</source>
            <translation>Dejar la lección</translation>
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
            <source>Length of the seam</source>
            <translation>Longitud de la junta</translation>
        </message>
        <message>
            <source>Less motion</source>
            <translation>Avance a pasos</translation>
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
            <source>Look</source>
            <translation>Mirar</translation>
        </message>
        <message>
            <source>Look at the edges: gap to %1 mm, step to %2 mm.</source>
            <translation>Mirar cantos: hueco hasta %1 mm, escalón hasta %2 mm.</translation>
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
            <source>Material</source>
            <translation>Material</translation>
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
            <source>Measure the valley's height above the sheet.</source>
            <translation>Medir la altura del valle sobre la placa.</translation>
        </message>
        <message>
            <source>Middle</source>
            <translation>Centro</translation>
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
            <source>More: %1 of %2</source>
            <translation>Más: %1 de %2</translation>
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
            <source>New PIN of %1</source>
            <translation>PIN nuevo de %1</translation>
        </message>
        <message>
            <source>Newer</source>
            <translation>Nuevas</translation>
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
            <source>No decision and no sign-off yet.</source>
            <translation>Aún sin decisión ni firma.</translation>
        </message>
        <message>
            <source>No foreman has a PIN on this tablet.</source>
            <translation>Ningún encargado tiene PIN en esta tableta.</translation>
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
            <source>No joint is in this log yet.</source>
            <translation>Aún no hay uniones en este registro.</translation>
        </message>
        <message>
            <source>No joint is like that.</source>
            <translation>Ninguna unión es así.</translation>
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
            <source>No other bench can take it</source>
            <translation>Ningún otro banco puede hacerla</translation>
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
            <source>Nothing is typed: a few words say why.</source>
            <translation>No hay nada escrito: unas palabras dan el motivo.</translation>
        </message>
        <message>
            <source>Nothing is typed: the edition is printed on the cover.</source>
            <translation>No hay nada escrito: la edición figura en la portada.</translation>
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
            <source>Older</source>
            <translation>Viejas</translation>
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
            <source>One by one</source>
            <translation>Uno a uno</translation>
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
            <source>Only a foreman may go on here.</source>
            <translation>Aquí solo puede seguir un encargado.</translation>
        </message>
        <message>
            <source>Only a foreman releases a trial joint.</source>
            <translation>Solo un encargado libera una unión de prueba.</translation>
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
            <source>Overheated plastic and coatings give off harmful fume: run the extraction, do not smoke, never burn residue off the plate.</source>
            <translation>El plástico y los recubrimientos sobrecalentados desprenden humos nocivos: poner la extracción, no fumar, no quemar nunca restos del espejo.</translation>
        </message>
        <message>
            <source>PDF of these joints</source>
            <translation>PDF de estas uniones</translation>
        </message>
        <message>
            <source>PIN of %1</source>
            <translation>PIN de %1</translation>
        </message>
        <message>
            <source>PRACTICE</source>
            <translation>PRÁCTICA</translation>
        </message>
        <message>
            <source>Paint joint number %1 on the sheet.</source>
            <translation>Pintar el número de unión %1 en la placa.</translation>
        </message>
        <message>
            <source>Part</source>
            <translation>Pieza</translation>
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
            <translation>Espejo frío</translation>
        </message>
        <message>
            <source>Plate too hot</source>
            <translation>Espejo caliente</translation>
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
            <source>Power was off</source>
            <translation>Corte de luz</translation>
        </message>
        <message>
            <source>Power was off for %1.</source>
            <translation>Corte de luz de %1.</translation>
        </message>
        <message>
            <source>Power was off.</source>
            <translation>Corte de luz.</translation>
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
            <source>Pressure</source>
            <translation>Presión</translation>
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
            <source>Rate %1 N for each %2 (± %3 %), zero at %4 %2.</source>
            <translation>Rigidez %1 N por cada %2 (± %3 %), cero en %4 %2.</translation>
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
            <source>Read on the face. Place %1 of %2: %3.</source>
            <translation>Leer en la cara. Punto %1 de %2: %3.</translation>
        </message>
        <message>
            <source>Read scale %1 now and type it in.</source>
            <translation>Leer ahora la escala %1 y teclearla.</translation>
        </message>
        <message>
            <source>Read the plate on its face. Place %1 of %2: %3.</source>
            <translation>Leer el espejo en su cara. Punto %1 de %2: %3.</translation>
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
            <source>Seam %1 of %2: </source>
            <translation>Junta %1 de %2: </translation>
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
            <source>Seamclock</source>
            <translation>Seamclock</translation>
        </message>
        <message>
            <source>Seamclock can't start.</source>
            <translation>Seamclock no puede arrancar.</translation>
        </message>
        <message>
            <source>Seamclock, practice: physics in a model, no plastic. It can't teach the feel of a wheel, and it proves no skill at a real bench.</source>
            <translation>Seamclock, práctica: física de un modelo, sin plástico. No puede enseñar el tacto del volante ni demuestra destreza en un banco real.</translation>
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
            <source>Set the gap to %1 mm, the same front and back.</source>
            <translation>Poner el hueco a %1 mm, igual delante y atrás.</translation>
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
            <source>Several short ones in one clamping add up.</source>
            <translation>Varias cortas en una sujeción se suman.</translation>
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
            <source>Shield</source>
            <translation>Proteger</translation>
        </message>
        <message>
            <source>Shield the seam. Wipe it dry.</source>
            <translation>Proteger la junta. Secarla.</translation>
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
            <source>Somebody disturbed it</source>
            <translation>Alguien interrumpió</translation>
        </message>
        <message>
            <source>Somebody new</source>
            <translation>Persona nueva</translation>
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
            <source>Stand at the bench. Can you hear the signal?</source>
            <translation>Ponerse junto al banco. ¿Se oye la señal?</translation>
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
            <translation>Parar: espejo caliente</translation>
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
            <source>Stored at closing: %1</source>
            <translation>Guardado al cerrar: %1</translation>
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
            <source>Take back</source>
            <translation>Deshacer</translation>
        </message>
        <message>
            <source>Take care</source>
            <translation>Precaución</translation>
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
            <source>That PIN is wrong.</source>
            <translation>PIN incorrecto.</translation>
        </message>
        <message>
            <source>The battery is low: %1 %. Plug the charger in.</source>
            <translation>Batería baja: %1 %. Conectar el cargador.</translation>
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
            <source>The day's joints</source>
            <translation>Uniones del día</translation>
        </message>
        <message>
            <source>The edges are planed, the chips are off.</source>
            <translation>Los cantos están cepillados, sin virutas.</translation>
        </message>
        <message>
            <source>The file can't be read: %1</source>
            <translation>El archivo no se puede leer: %1</translation>
        </message>
        <message>
            <source>The file is not the one that was kept; it is not shown: %1</source>
            <translation>El archivo no es el que se guardó; no se muestra: %1</translation>
        </message>
        <message>
            <source>The file is not there: %1</source>
            <translation>El archivo no está: %1</translation>
        </message>
        <message>
            <source>The film is off the edges.</source>
            <translation>El film ya no está en los cantos.</translation>
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
            <source>The force is less than this bench holds steadily.</source>
            <translation>La fuerza es menor que la que este banco mantiene estable.</translation>
        </message>
        <message>
            <source>The foreman decided</source>
            <translation>Lo decidió el encargado</translation>
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
            <source>The foreman's PIN is asked next; the record keeps the name.</source>
            <translation>Después se pide el PIN del encargado; el registro guarda su nombre.</translation>
        </message>
        <message>
            <source>The foreman's PIN is asked next; the verdict stays as it is.</source>
            <translation>Después se pide el PIN del encargado; el dictamen no cambia.</translation>
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
            <source>The job lets this seam be welded again %1 times. It is in the record.</source>
            <translation>Resoldaduras permitidas en esta junta: %1. Consta en el registro.</translation>
        </message>
        <message>
            <source>The joint</source>
            <translation>La unión</translation>
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
            <source>The key that it types becomes the next step.</source>
            <translation>La tecla que envía pasa a ser el paso siguiente.</translation>
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
            <source>The melt flow rates are far apart.</source>
            <translation>Los índices de fluidez están muy separados.</translation>
        </message>
        <message>
            <source>The melt flow rates can't be compared.</source>
            <translation>Los índices de fluidez no se pueden comparar.</translation>
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
            <source>The plate has cooled. Cut back and plane.</source>
            <translation>El espejo se ha enfriado. Recortar y cepillar.</translation>
        </message>
        <message>
            <source>The plate is between the edges: its face can't be read.</source>
            <translation>El espejo está entre los cantos: no se puede leer su cara.</translation>
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
            <source>The plate stuck</source>
            <translation>El espejo se pegó</translation>
        </message>
        <message>
            <source>The plate's face reads %1 °C at the %2.</source>
            <translation>La cara del espejo marca %1 °C, %2.</translation>
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
            <source>The record is on the printer: %1</source>
            <translation>Informe en la impresora: %1</translation>
        </message>
        <message>
            <source>The record is saved: %1</source>
            <translation>Informe guardado: %1</translation>
        </message>
        <message>
            <source>The report is saved: %1</source>
            <translation>Informe guardado: %1</translation>
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
            <source>The sheets are molten %1 deep after soak, and their skin is at %2 when the faces meet after the longest changeover; it melts at %3.</source>
            <translation>Tras calentar, las placas están fundidas %1 de hondo y su piel está a %2 al juntarse las caras tras el cambio más largo; funde a %3.</translation>
        </message>
        <message>
            <source>The sheets are soft %1 deep after soak, and their skin is at %2 when the faces meet after the longest changeover; it is soft above %3.</source>
            <translation>Tras calentar, las placas están blandas %1 de hondo y su piel está a %2 al juntarse las caras tras el cambio más largo; es blanda por encima de %3.</translation>
        </message>
        <message>
            <source>The sheets' grades differ: ask first.</source>
            <translation>Los tipos de placa difieren: preguntar antes.</translation>
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
            <source>The weld was stopped, so no verdict was stored.</source>
            <translation>La soldadura se paró, por eso no se guardó dictamen.</translation>
        </message>
        <message>
            <source>There is no folder "%1".</source>
            <translation>No existe la carpeta «%1».</translation>
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
            <source>These days are not sealed.</source>
            <translation>Estos días no están sellados.</translation>
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
            <source>This card guides. The machine's own instructions, the standard in force, local rules and a qualified welder decide.</source>
            <translation>Esta ficha orienta. Deciden las instrucciones de la máquina, la norma vigente, la normativa local y un soldador cualificado.</translation>
        </message>
        <message>
            <source>This is practice already: people and set-up belong to the shop.</source>
            <translation>Esto ya es práctica: personas y ajustes son del taller.</translation>
        </message>
        <message>
            <source>This machine can't be kept awake from here: see its own settings.</source>
            <translation>Esta máquina no se puede mantener despierta desde aquí: ver sus ajustes.</translation>
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
            <source>Tick all</source>
            <translation>Marcar todo</translation>
        </message>
        <message>
            <source>Tick none</source>
            <translation>Quitar marcas</translation>
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
            <source>Two minutes without a press: the desk is closed.</source>
            <translation>Dos minutos sin pulsar: el panel se ha cerrado.</translation>
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
            <source>Types</source>
            <translation>Tipos</translation>
        </message>
        <message>
            <source>Unlock</source>
            <translation>Soltar</translation>
        </message>
        <message>
            <source>Up</source>
            <translation>Subir</translation>
        </message>
        <message>
            <source>Valley between the beads, above the sheet's surface.</source>
            <translation>Valle entre los cordones, sobre la cara de la placa.</translation>
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
            <source>Watch</source>
            <translation>Vigilar</translation>
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
            <source>Welder</source>
            <translation>Soldador</translation>
        </message>
        <message>
            <source>Welders</source>
            <translation>Soldadores</translation>
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
            <source>What is done first when cooling is over?</source>
            <translation>¿Qué se hace primero una vez enfriada?</translation>
        </message>
        <message>
            <source>What is done then? (step %1)</source>
            <translation>¿Qué se hace después? (paso %1)</translation>
        </message>
        <message>
            <source>What is wrong here?</source>
            <translation>¿Qué va mal aquí?</translation>
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
            <source>What stood there stays in the record, struck.</source>
            <translation>Lo que había queda en el registro, tachado.</translation>
        </message>
        <message>
            <source>What the seal does</source>
            <translation>Qué hace el sello</translation>
        </message>
        <message>
            <source>What the verdict found</source>
            <translation>Lo hallado por el dictamen</translation>
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
            <source>What was welded</source>
            <translation>Qué se soldó</translation>
        </message>
        <message>
            <source>What was wrong</source>
            <translation>Qué falló</translation>
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
            <source>Where the bench stands.</source>
            <translation>Donde está el banco.</translation>
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
            <source>Which lesson?</source>
            <translation>¿Qué lección?</translation>
        </message>
        <message>
            <source>Which name?</source>
            <translation>¿Qué nombre?</translation>
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
            <source>Which sheets, and how long is the seam?</source>
            <translation>¿Qué placas y qué largo de junta?</translation>
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
            <source>Worked out: the bench once more, and the joint of a steady hand.</source>
            <translation>Calculado: el banco otra vez y la unión de una mano firme.</translation>
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
            <source>[n]: the event in the log that a value comes from</source>
            <translation>[n]: el evento del registro del que sale un valor</translation>
        </message>
        <message>
            <source>[n]: the event of that joint in the log; what has no bracket stands in [1]</source>
            <translation>[n]: el evento de esa unión en el registro; lo que no lleva corchetes está en [1]</translation>
        </message>
        <message>
            <source>a bench that harms nobody</source>
            <translation>un banco que no daña a nadie</translation>
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
            <source>a fault in the bead</source>
            <translation>un defecto en el cordón</translation>
        </message>
        <message>
            <source>a foot lever</source>
            <translation>palanca de pie</translation>
        </message>
        <message>
            <source>a handwheel</source>
            <translation>volante</translation>
        </message>
        <message>
            <source>a line a joint</source>
            <translation>una fila por unión</translation>
        </message>
        <message>
            <source>a person's, whatever the verdict says</source>
            <translation>de una persona, diga lo que diga el dictamen</translation>
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
            <source>a remark</source>
            <translation>observación</translation>
        </message>
        <message>
            <source>a sheet slipped</source>
            <translation>se movió una placa</translation>
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
            <source>a test piece broke</source>
            <translation>una probeta rompió</translation>
        </message>
        <message>
            <source>a test piece held</source>
            <translation>una probeta aguantó</translation>
        </message>
        <message>
            <source>a touch on the name</source>
            <translation>tocar el nombre</translation>
        </message>
        <message>
            <source>a wrong tap</source>
            <translation>toque erróneo</translation>
        </message>
        <message>
            <source>about %1</source>
            <translation>unos %1</translation>
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
            <source>act now</source>
            <translation>actuar ya</translation>
        </message>
        <message>
            <source>after 10 min</source>
            <translation>tras 10 min</translation>
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
            <source>alignment bead</source>
            <translation>cordón al igualar</translation>
        </message>
        <message>
            <source>alignment begun</source>
            <translation>inicio de igualar</translation>
        </message>
        <message>
            <source>alignment force</source>
            <translation>fuerza al igualar</translation>
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
            <source>all four</source>
            <translation>los cuatro</translation>
        </message>
        <message>
            <source>all joints again</source>
            <translation>otra vez todas</translation>
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
            <source>allowed up to %1 %2</source>
            <translation>permitido hasta %1 %2</translation>
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
            <source>an attestation</source>
            <translation>un cotejo</translation>
        </message>
        <message>
            <source>an empty form</source>
            <translation>formulario vacío</translation>
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
            <source>and its report</source>
            <translation>y su informe</translation>
        </message>
        <message>
            <source>another reason</source>
            <translation>otro motivo</translation>
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
            <source>at the band's end</source>
            <translation>al final del tramo</translation>
        </message>
        <message>
            <source>at the signal</source>
            <translation>a la señal</translation>
        </message>
        <message>
            <source>attested by %1</source>
            <translation>cotejado por %1</translation>
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
            <source>bench %1 · seams to %2 mm · sheets %3 to %4 mm</source>
            <translation>banco %1 · juntas hasta %2 mm · placas %3 a %4 mm</translation>
        </message>
        <message>
            <source>bends</source>
            <translation>dobla</translation>
        </message>
        <message>
            <source>between a band's ends</source>
            <translation>entre extremos del tramo</translation>
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
            <source>broken off: the program ended in mid-weld</source>
            <translation>interrumpida: el programa acabó a media soldadura</translation>
        </message>
        <message>
            <source>build-up</source>
            <translation>aumento</translation>
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
            <source>by</source>
            <translation>por</translation>
        </message>
        <message>
            <source>by PIN</source>
            <translation>con PIN</translation>
        </message>
        <message>
            <source>by a model of heat in the sheet, no measurement and no part of the verdict</source>
            <translation>por un modelo de calor en la placa, ni medición ni parte del dictamen</translation>
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
            <source>by the upper end of the table's band</source>
            <translation>por el extremo superior del tramo de la tabla</translation>
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
            <source>calibration due on %1</source>
            <translation>la calibración vence el %1</translation>
        </message>
        <message>
            <source>can't be read</source>
            <translation>ilegible</translation>
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
            <source>changeover</source>
            <translation>cambio</translation>
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
            <source>changeover too late</source>
            <translation>cambio demasiado tarde</translation>
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
            <source>common practice, no source</source>
            <translation>práctica común, sin fuente</translation>
        </message>
        <message>
            <source>cooling</source>
            <translation>enfriar</translation>
        </message>
        <message>
            <source>cooling for each kelvin</source>
            <translation>enfriar por kelvin</translation>
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
            <source>cooling, by the shop's temperature</source>
            <translation>enfriar, según temperatura del taller</translation>
        </message>
        <message>
            <source>cooling: %1 left</source>
            <translation>enfriar: aún %1</translation>
        </message>
        <message>
            <source>could not be done: %1</source>
            <translation>no se pudo hacer: %1</translation>
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
            <source>cut out</source>
            <translation>cortar</translation>
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
            <source>drag as read</source>
            <translation>arrastre leído</translation>
        </message>
        <message>
            <source>drag read with the sheet clamped</source>
            <translation>arrastre leído con la placa sujeta</translation>
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
            <source>each sheet lost</source>
            <translation>pérdida por placa</translation>
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
            <source>from %1 °C</source>
            <translation>desde %1 °C</translation>
        </message>
        <message>
            <source>from a file</source>
            <translation>de un archivo</translation>
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
            <source>from the job</source>
            <translation>del trabajo</translation>
        </message>
        <message>
            <source>from when it shows its heat</source>
            <translation>desde que marca su temperatura</translation>
        </message>
        <message>
            <source>front</source>
            <translation>delante</translation>
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
            <source>grade</source>
            <translation>valoración</translation>
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
            <source>half cooling</source>
            <translation>medio enfriado</translation>
        </message>
        <message>
            <source>half cooling from mm</source>
            <translation>medio enfriado desde mm</translation>
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
            <source>held against this paper it shows whether the log was changed</source>
            <translation>comparado con este papel muestra si se cambió el registro</translation>
        </message>
        <message>
            <source>held against this paper they show whether the log was changed</source>
            <translation>comparados con este papel muestran si se cambió el registro</translation>
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
            <source>in line</source>
            <translation>alineado</translation>
        </message>
        <message>
            <source>in soak</source>
            <translation>al calentar</translation>
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
            <source>incomplete</source>
            <translation>incompleta</translation>
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
            <source>it burns: keep it guarded</source>
            <translation>quema: tenerlo protegido</translation>
        </message>
        <message>
            <source>it is in the record</source>
            <translation>consta en registro</translation>
        </message>
        <message>
            <source>it leaks</source>
            <translation>hay fuga</translation>
        </message>
        <message>
            <source>it stays</source>
            <translation>sin cambio</translation>
        </message>
        <message>
            <source>it was</source>
            <translation>ocurrió</translation>
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
            <source>joint %1</source>
            <translation>unión %1</translation>
        </message>
        <message>
            <source>joint %1 begun</source>
            <translation>unión %1 empezada</translation>
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
            <source>length of the seam</source>
            <translation>longitud de la junta</translation>
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
            <source>lowest</source>
            <translation>mínima</translation>
        </message>
        <message>
            <source>made %1</source>
            <translation>hecha %1</translation>
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
            <source>median %1</source>
            <translation>mediana %1</translation>
        </message>
        <message>
            <source>median %1, %2 to %3</source>
            <translation>mediana %1, %2 a %3</translation>
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
            <source>molten at the end of soak</source>
            <translation>fundido al acabar de calentar</translation>
        </message>
        <message>
            <source>most of soak's pressure</source>
            <translation>presión máxima al calentar</translation>
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
            <source>near the back</source>
            <translation>casi atrás</translation>
        </message>
        <message>
            <source>near the front</source>
            <translation>casi delante</translation>
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
            <source>no calibration is on record</source>
            <translation>no consta calibración</translation>
        </message>
        <message>
            <source>no certificate noted</source>
            <translation>sin certificado anotado</translation>
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
            <source>no load</source>
            <translation>sin carga</translation>
        </message>
        <message>
            <source>no photo is kept</source>
            <translation>no se guarda foto</translation>
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
            <source>no tool at hand</source>
            <translation>sin herramienta</translation>
        </message>
        <message>
            <source>no trial joint was made before</source>
            <translation>no se hizo antes unión de prueba</translation>
        </message>
        <message>
            <source>no weather guard noted</source>
            <translation>no consta protección exterior</translation>
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
            <source>none: the source lacks nothing</source>
            <translation>ninguno: a la fuente no le falta nada</translation>
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
            <source>not there</source>
            <translation>no está</translation>
        </message>
        <message>
            <source>not ticked</source>
            <translation>sin marcar</translation>
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
            <source>noticed at %1</source>
            <translation>notado a %1</translation>
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
            <source>of the weld on this bench</source>
            <translation>de la soldadura de este banco</translation>
        </message>
        <message>
            <source>of this table</source>
            <translation>de esta tabla</translation>
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
            <source>one end to the other</source>
            <translation>de punta a punta</translation>
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
            <source>out of line</source>
            <translation>desalineado</translation>
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
            <source>plan</source>
            <translation>plan</translation>
        </message>
        <message>
            <source>plan replaced: %1</source>
            <translation>plan sustituido: %1</translation>
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
            <source>plate temperature</source>
            <translation>temperatura del espejo</translation>
        </message>
        <message>
            <source>plate to aim at</source>
            <translation>espejo, objetivo</translation>
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
            <source>power was off for %1, by a clock that nobody confirmed</source>
            <translation>corte de luz de %1, según un reloj que nadie confirmó</translation>
        </message>
        <message>
            <source>power was off for %1, confirmed by a person</source>
            <translation>corte de luz de %1, confirmado por una persona</translation>
        </message>
        <message>
            <source>power was off for %1; the clock went back</source>
            <translation>corte de luz de %1; el reloj retrocedió</translation>
        </message>
        <message>
            <source>practice</source>
            <translation>práctica</translation>
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
            <source>printed %1</source>
            <translation>impreso %1</translation>
        </message>
        <message>
            <source>procedure</source>
            <translation>procedimiento</translation>
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
            <source>reading without force, %1</source>
            <translation>lectura sin fuerza, %1</translation>
        </message>
        <message>
            <source>readings</source>
            <translation>lecturas</translation>
        </message>
        <message>
            <source>readings in cooling</source>
            <translation>lecturas al enfriar</translation>
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
            <source>released</source>
            <translation>liberada</translation>
        </message>
        <message>
            <source>remark</source>
            <translation>observación</translation>
        </message>
        <message>
            <source>remarks, reasons, photos, grading</source>
            <translation>observaciones, motivos, fotos, valoración</translation>
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
            <source>seal of %1 by %2, made %3, rows 1 to %4; fingerprint %5; key %6</source>
            <translation>sello del %1 por %2, hecho %3, filas 1 a %4; huella %5; clave %6</translation>
        </message>
        <message>
            <source>sealed as far as it is; the rest comes behind</source>
            <translation>sellada hasta donde está; el resto viene después</translation>
        </message>
        <message>
            <source>seam %1</source>
            <translation>junta %1</translation>
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
            <source>signal seen: %1</source>
            <translation>señal vista: %1</translation>
        </message>
        <message>
            <source>signed by %1</source>
            <translation>firmada por %1</translation>
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
            <source>sound</source>
            <translation>sonido</translation>
        </message>
        <message>
            <source>sound ok</source>
            <translation>suena bien</translation>
        </message>
        <message>
            <source>speed × %1</source>
            <translation>velocidad × %1</translation>
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
            <source>stopped: %1</source>
            <translation>parada: %1</translation>
        </message>
        <message>
            <source>supervisor</source>
            <translation>supervisor</translation>
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
            <source>the bead ends it, not the clock</source>
            <translation>lo acaba el cordón, no el reloj</translation>
        </message>
        <message>
            <source>the bench can't be set so</source>
            <translation>el banco no se ajusta así</translation>
        </message>
        <message>
            <source>the bench was needed</source>
            <translation>se necesitaba el banco</translation>
        </message>
        <message>
            <source>the benches</source>
            <translation>los bancos</translation>
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
            <source>the day %1</source>
            <translation>el día %1</translation>
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
            <source>the guide, what alarms mean</source>
            <translation>la guía, qué significan las alarmas</translation>
        </message>
        <message>
            <source>the hand was slow</source>
            <translation>la mano fue lenta</translation>
        </message>
        <message>
            <source>the job's seams: %1</source>
            <translation>juntas del trabajo: %1</translation>
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
            <source>the log of real joints is not touched</source>
            <translation>el registro de uniones reales no se toca</translation>
        </message>
        <message>
            <source>the name stays in the log</source>
            <translation>el nombre sigue en el registro</translation>
        </message>
        <message>
            <source>the old one is forgotten</source>
            <translation>se olvidó el anterior</translation>
        </message>
        <message>
            <source>the order stays</source>
            <translation>el orden no cambia</translation>
        </message>
        <message>
            <source>the place can't be reached</source>
            <translation>no se llega al sitio</translation>
        </message>
        <message>
            <source>the plate stuck</source>
            <translation>el espejo se pegó</translation>
        </message>
        <message>
            <source>the reason, for the record</source>
            <translation>el motivo, para el registro</translation>
        </message>
        <message>
            <source>the ribbon is lifted</source>
            <translation>la cinta se levanta</translation>
        </message>
        <message>
            <source>the same seam</source>
            <translation>la misma junta</translation>
        </message>
        <message>
            <source>the seal waits for them</source>
            <translation>el sello las espera</translation>
        </message>
        <message>
            <source>the spring is loaded</source>
            <translation>el muelle está cargado</translation>
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
            <source>the wall clock went back</source>
            <translation>el reloj de pared retrocedió</translation>
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
            <source>there is no printer</source>
            <translation>no hay impresora</translation>
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
            <source>this job</source>
            <translation>este trabajo</translation>
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
            <source>to the signal</source>
            <translation>hasta la señal</translation>
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
            <source>trainee</source>
            <translation>aprendiz</translation>
        </message>
        <message>
            <source>trial %1</source>
            <translation>prueba %1</translation>
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
            <source>upper %1</source>
            <translation>superior %1</translation>
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
            <source>was not noticed</source>
            <translation>no se notó</translation>
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
            <source>welded again more often than the job allows</source>
            <translation>resoldada más veces de las que permite el trabajo</translation>
        </message>
        <message>
            <source>welder</source>
            <translation>soldador</translation>
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
            <source>what was made</source>
            <translation>lo hecho</translation>
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
            <source>which value</source>
            <translation>qué valor</translation>
        </message>
        <message>
            <source>who</source>
            <translation>quién</translation>
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
            <source>zero</source>
            <translation>cero</translation>
        </message>
        <message>
            <source>zero and rate come from the calibration</source>
            <translation>cero y rigidez salen de la calibración</translation>
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

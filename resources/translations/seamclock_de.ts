<?xml version="1.0" encoding="utf-8"?>
<!DOCTYPE TS>
<TS version="2.1" language="de" sourcelanguage="en">
    <context>
        <name>seamclock</name>
        <message>
            <source> (%1 to %2)</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source> And %1 more: see the printed card.</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source> and </source>
            <translation type="unfinished" />
        </message>
        <message>
            <source> · %1 ticked</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source> · at work: %1</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>% for each kelvin</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>%1 %2</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>%1 %2 mm, %3 mm long</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>%1 %2, limit %3</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>%1 (%2 to %3)</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>%1 / %2 mm</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>%1 N/mm²</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>%1 Next try in %2.</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>%1 as before</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>%1 attested values are withdrawn.</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>%1 can't be meant: %2 to %3 %4.</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>%1 can't be welded here: %2.</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>%1 classes of air temperature</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>%1 for people</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>%1 from memory: not attested</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>%1 has a new PIN.</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>%1 in all</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>%1 is above %2 %3.</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>%1 is below %2. Keep it, turn up.</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>%1 is open</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>%1 is outside %2.</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>%1 is too cold: %2.</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>%1 is too hot: %2.</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>%1 joints</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>%1 kept</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>%1 mm</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>%1 mm apart</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>%1 mm to the plate</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>%1 mm, formula</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>%1 of %2</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>%1 of %2 attested</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>%1 of %2 s</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>%1 of %2 values</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>%1 of %2 values attested</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>%1 of at least %2 digits.</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>%1 points, due on %2</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>%1 rows</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>%1 rows are not on disk yet</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>%1 s</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>%1 s left</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>%1 set</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>%1 steps</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>%1 things are to be put right before it can be kept.</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>%1 things to put right</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>%1 to %2</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>%1 to %2 digits.</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>%1 to %2 digits: it locks the key of the seal.</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>%1 to %2 mm</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>%1 to %2 s</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>%1 to %2 °C</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>%1 took %2: out of limits. Let it cool, or cut it out.</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>%1 values are attested.</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>%1 values lose their standing.</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>%1 values of %2.</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>%1 welds at a virtual bench; %2 within limits and with a joint that bends.</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>%1 welds. Touch one to see it again.</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>%1 °C</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>%1 · %2 · %3</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>%1%2. Shop %3.</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>%1, %2</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>%1, %2 mm thick, %3 mm long</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>%1, %2 mm: %3.</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>%1, %2 of %3 in limits, %4</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>%1, %2 thick, %3 long</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>%1, %2 welds</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>%1, by PIN</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>%1, edition %2</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>%1, edition %2. %3</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>%1, has left</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>%1, joint %2</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>%1, limit %2</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>%1, no PIN</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>%1, then %2 for the second sheet</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>%1, until %2</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>%1. %2</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>%1. Let it cool, or cut it out.</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>%1: %2</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>%1: %2 s before</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>%1: after %2 s</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>%1: kept.</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>%1: not joined</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>%1: skin %2 °C and melt %3 mm as the faces met, bead %4 / %5 mm, K %6 mm</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>%1: the certificate is kept.</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>%1: told %2, it was %3</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>%1: what the source lacks, and what it says instead</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>%1: ÷ %2 = %3 %4, set to %5 %4</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>%1; and %2 more</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>(%1, limit %2)</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>+ 1 s</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>+ 10 s</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>, </source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>, preload %1</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>, zero at %1</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>1 class of air temperature</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>1 joint</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>1 row</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>1 row is not on disk yet</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>1 step</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>1 thing is to be put right before it can be kept.</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>1 thing to put right</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>1 to %1 characters, by the keyboard.</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>10 s are over</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>100, 125, 150, 200 %</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>3 places</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>4 s ago</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>95 %</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>: read it at %1</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>; </source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>; cut to half: full load only after the whole time</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>; ± %1 at %2 %3 (95 %)</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>A PIN</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>A PIN for %1?</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>A fifth bench is one too many: 4 are allowed.</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>A first row</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>A foreman comes first, enters the others and seals the day.</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>A melt flow rate is outside the printed ranges.</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>A new PIN</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>A photo</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>A screen can't teach the feel of a wheel. That comes at the bench.</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>A sheet slipped</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>A trial joint is welded first, tested, and released by the supervisor.</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>A wrong tap</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>Add a correction for each kelvin of air</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>Add a formula</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>Add a most of soak</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>Add a table</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>Add a tolerance</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>Add an aim of soak</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>Add cooling</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>Add the plate's window</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>Add the relief of half cooling</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>Add this column</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>Align</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>Align and join</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>Alignment bead</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>All done</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>All is as it may be. It is kept by a foreman's PIN.</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>Allow it</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>An estimate. It explains a weld and judges none; the procedure's limits decide.</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>Another</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>Another bench</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>Another class</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>Another gap</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>Another name</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>Another note</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>Another point</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>Another procedure</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>Another reason</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>Another role</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>Another seam</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>Another spring</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>Answer to a signal</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>As before</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>As in: PE-HD, PP 3-20 mm until 2031-06-30</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>As measured, both the same.</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>As planned</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>Ask</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>At %1</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>At the worst place, above the sheet.</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>Attest</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>Attest instead</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>Back</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>Back +</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>Back to the bench</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>Back to the weld</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>Back −</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>Backed off in soak</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>Bars are open</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>Bead all along? Turn down to %1 and lock.</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>Bead height</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>Bead is slow. Is the plate cold or dirty?</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>Bead missing at one end</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>Bead width</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>Begin</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>Bench %1 has an open weld. Practise when it is saved.</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>Bench %1 is free. No seam of the job is open.</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>Bench %1 is free. Which seam?</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>Bend test, front to back: the joint bends everywhere.</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>Bend test, front to back: the joint breaks.</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>Beside the weld</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>Both sheets: %1</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>Bring the force to zero, never past it.</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>Build-up</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>By a model of heat and melt in the sheet, no measurement; in brackets what uncertain inputs make of it.</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>By a steady hand</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>Calibration</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>Cannot set it</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>Card in inch, lbf, °F</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>Card in mm, N, °C</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>Card is for another sheet</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>Card's unit is wrong</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>Certificate</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>Change an entry</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>Changeover</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>Changeover too late</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>Changes are kept by a foreman's PIN and hold for new welds.</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>Check anew</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>Checking</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>Checks</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>Choose</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>Choose a seam first: its plan is what is looked at.</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>Choose a table, then its rows. They lose their standing.</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>Choose a table, then the rows that were compared.</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>Clamp</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>Clamp it</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>Clamp the first sheet evenly, end to end.</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>Clamp the second sheet against the first.</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>Clamps</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>Clamps are eased</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>Clock from first contact</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>Close</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>Cold place on the plate</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>Cooling</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>Cooling %1 °C</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>Cooling has gone on.</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>Cooling is %1 short. Why?</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>Cooling is over. Number on the sheet? Then release.</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>Cooling time</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>Cooling, air %1</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>Date</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>Day, people, screen and hands</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>Do</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>Done</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>Drag</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>Drag is above the soak force: just in contact.</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>Drag is not measured: taken as nothing.</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>Drag, bench %1</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>Draught at the seam</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>Each sheet loses about %1 of its length in this seam: cut it longer by that, and by twice that with a seam at both ends: %2.</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>Ease clamps</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>Ease the clamps on both sides.</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>Edge touched</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>Edges</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>Edges are clean</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>Edges meet</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>Edges not parallel</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>Edit in a form</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>End the program</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>Erase all</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>Estimate: each sheet loses about %1.</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>Estimate: it is being worked out.</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>Estimate: it will fall by about %1 %2 and stay in its band. Each sheet loses %3.</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>Estimate: it will fall by about %1 %2, below its band: top it up. Each sheet loses %3.</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>Estimate: melt %1 mm deep</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>Estimate: soft %1 mm deep</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>Estimates, not limits</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>Even motion</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>Faces cooled in the air</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>Faces out of line</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>Faces together</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>Faces together now</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>Faces together now. The limit is passed.</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>Film</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>Film is off</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>Film left on the edge</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>Film off</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>Film off, edges planed and clean, plate wiped.</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>Fingerprint of the seal</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>First foreman</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>First sheet</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>First sheet is clamped</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>First the one that holds now.</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>Follow</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>Foot switch: %1</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>Foot switch: none</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>For people, PINs and the day's seal.</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>Force is off</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>Foreman</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>Foreman is here</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>Foreman's desk</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>Foreman's desk: %1</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>From %1 °C this plastic gives off harmful gas. Never weld so.</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>Front</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>Front +</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>Front −</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>Gap</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>Gap between the tables</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>Gap is %1 mm</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>Gaps</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>Gaps: %1</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>Gaps: %1 values</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>Get ready</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>Give the reason</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>Go on</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>Go on evenly to %1. Do not jerk.</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>Go on without a trial</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>Go on without this check? Say why.</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>Go on: %1</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>Grade, photo</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>Group %1</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>Half cooling: full load only after the whole time.</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>Hands on the plate and the wheel. Wait for zero.</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>Has left</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>Heat in the sheet: %1, %2 mm</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>Height</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>History</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>How does the bead look to you?</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>How it went</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>How much is cut away, of both sheets together?</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>How the scale reading comes about</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>I hear it</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>In limits</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>In soak the scale can't show it: just in contact.</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>Incomplete</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>Is back</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>It can't be counted as cooling.</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>It closes by itself after two minutes.</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>It held: go on with the series</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>It is a trial</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>It is kept with its time, and told when the weld is over.</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>It signs all rows up to now with your key. Its fingerprint then goes on paper or by mail: on this tablet alone it proves nothing to others.</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>It will be cut out</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>It will be in the record.</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>It will be out of limits.</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>Join</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>Joint %1 goes on without this check.</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>Joint %1 is cut out</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>Joint %1 is not on disk yet. Trying again.</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>Joint %1 is saved. %2.</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>Joint %1 is stopped. Cut back and plane again.</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>Joint %1 is stopped. Cut it out and plane again.</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>Joint %1 on bench %2</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>Joint %1. %2 %3 mm, %4 mm. Batches %5.</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>Joint %1: %2.</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>Joint %1: all steps are there.</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>Joint %1: not taken over.</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>Joint %1: steps are lost, look at the bench before you go on.</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>Joint number</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>Judged by the top bead</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>K value</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>Keep %1</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>Keep it</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>Keep this PIN</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>Kilograms taken for newtons</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>Know before you start</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>Last step is in memory only: leave the machine on. %1</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>Last step is not on disk yet. Trying again. %1</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>Late</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>Leave it locked. Nothing else to do.</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>Leave it locked. Read the scale in %1.</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>Leave practice</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>Leave the desk</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>Leave the lesson</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>Left-handed</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>Length of the seam</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>Less motion</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>Lesson %1</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>Lesson %1, weld %2 of %3</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>Lesson %1: %2</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>Let back after the lock</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>Let it cool</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>Let it ring</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>Let the spring off.</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>Let the spring off. Scale must read %1.</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>Level %1</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>Lift sheet</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>Lift the sheet out, seam supported.</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>Limits</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>Listen</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>Lock</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>Lock gives way</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>Lock the wheel at %1.</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>Look</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>Look at the edges: gap to %1 mm, step to %2 mm.</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>Looked for in %1.</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>Made %1 times, best: %2, %3.</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>Made by %1</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>Made once: %1, %2.</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>Make a trial</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>Make another trial</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>May fall</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>May not fall</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>Measure</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>Measure how far the faces are out of line.</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>Measure its width, over both beads.</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>Measure the bead's height at its worst place.</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>Measure the plate</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>Measure the valley's height above the sheet.</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>Middle</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>More</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>More: %1 of %2</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>My own PIN</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>N/mm²: alignment, soak, joining</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>Name and drive</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>New PIN of %1</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>Newer</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>Next seam</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>Next weld</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>Next: %1</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>No *.%1 lies in %2.</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>No backup of the log. %1</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>No cooling time is printed for this shop temperature.</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>No copy of the log for others. %1</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>No foreman has a PIN on this tablet.</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>No gauge at hand</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>No heat estimate: %1.</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>No joint is in this log yet.</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>No joint on this day</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>No mark of the scale lies in the band.</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>No mistake was found.</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>No other bench can take it</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>No page in practice: nothing on it would tell it from a real one.</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>No plastic, no heat, no harm: make your mistakes here.</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>No sound. Watch this screen. The weld goes on.</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>No tool at hand</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>No trial joint yet today of this sheet on bench %1.</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>Nobody has attested: %1.</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>Nobody in particular</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>Not good: cut it out</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>Not made yet.</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>Not measured</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>Not needed for this weld</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>Not ready to weld</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>Not ready to weld.</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>Not sealed yet</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>Not sure</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>Not yet</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>Noted: %1.</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>Notes</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>Nothing is changed yet.</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>Nothing is typed: a few words say why.</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>Nothing is typed: the edition is printed on the cover.</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>Nothing touching: move the table. Read the scale.</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>Nothing touching: what the scale reads while the table moves.</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>Nothing wrong there</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>Nothing yet.</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>Now</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>Number</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>Numbered</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>Older</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>Once the wheel is locked the reading will fall by about %1 %2 (%3 to %4), as the sheets close up and shrink</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>One by one</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>One moment</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>One moment: it is being checked.</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>Only a foreman may go on here.</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>Only a foreman releases a trial joint.</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>Open bars</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>Open the clamp bars.</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>Open the desk</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>Open the gap to %1 mm, the same front and back.</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>Order of release</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>Order of steps</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>Other lessons</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>Other seam</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>Out of limits</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>Out of limits: %1.</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>Out of limits: %1. Say why.</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>Over both beads, at the same place.</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>Overheated plastic and coatings give off harmful fume: run the extraction, do not smoke, never burn residue off the plate.</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>PIN of %1</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>PRACTICE</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>Paint joint number %1 on the sheet.</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>Place %1 of %2, at %3 mm: </source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>Plane</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>Plane both edges. Do not touch them by hand.</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>Plane edges</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>Plate</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>Plate and air</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>Plate cold or dirty</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>Plate in</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>Plate in, sheets against it. Turn up to %1.</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>Plate is dirty</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>Plate is hot. Let it settle for 10 minutes.</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>Plate is wiped</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>Plate out</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>Plate out, faces together</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>Plate temperature, bench %1</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>Plate too cold</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>Plate too hot</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>Plate was dirty</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>Play</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>Power was off</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>Power was off for %1.</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>Power was off.</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>Practice</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>Practice of %1</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>Practice record</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>Practice record. Not a certificate.</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>Practice, up to %1 times as fast. No joint here counts.</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>Prepare</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>Press the foot switch now.</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>Pressure</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>Pressure is off</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>Pressure is on</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>Pressure, plate</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>Pressures</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>Pressures, plate</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>Print</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>Print or mail it today: whoever has this tablet could seal anew, and only a fingerprint elsewhere shows it.</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>Procedure</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>Rate %1 N for each %2 (± %3 %), zero at %4 %2.</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>Read</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>Read a CSV file</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>Read it</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>Read on the face. Place %1 of %2: %3.</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>Read scale %1 now and type it in.</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>Read the plate on its face. Place %1 of %2: %3.</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>Reading is below %1. Turn up to %2.</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>Reading not followed</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>Readings</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>Readings of the scale against the forces that a load cell shows: at least 3, over the whole range that is welded with.</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>Release</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>Release it</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>Released too early</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>Right-handed</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>Row below</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>Rows after</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>Rows before</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>Same again</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>Save</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>Save as PDF</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>Save report</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>Save the joint</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>Saved: %1</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>Say why</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>Scale</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>Scale %1</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>Scale %1 in cooling</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>Scale and springs</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>Scale at %1, wheel locked. Wait for the signal.</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>Scale is not on zero</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>Scale of bench %1</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>Scale reading</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>Scale reads %1</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>Scale reads %1 %2</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>Scale too coarse: only a foreman may allow it.</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>Scatter %1 N; the line is known to ± %2 N, a reading to ± %3 N (95 %, at the middle).</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>Screen: %1</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>Seal again</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>Seal the day</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>Sealed at %1 by %2</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>Seam %1</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>Seam %1 of %2: </source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>Seam %1, %2</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>Seam is shielded</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>Seamclock</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>Seamclock can't start.</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>Seamclock, practice: physics in a model, no plastic. It can't teach the feel of a wheel, and it proves no skill at a real bench.</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>Seamclock: practice</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>Second sheet</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>Second sheet is clamped</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>See it again</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>See the result</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>Seen</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>Seen again: %1</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>Set</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>Set gap</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>Set the gap to %1 mm, the same front and back.</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>Set-up</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>Set-up: procedures and benches</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>Several short ones in one clamping add up.</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>Sheet %1: %2</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>Sheet 1</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>Sheet 2</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>Sheet is out</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>Sheets apart, plate out, faces together.</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>Shield</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>Shield the seam. Wipe it dry.</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>Shop</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>Shop temperature</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>Sign in</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>Signal</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>Slammed together</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>Slow</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>Soak</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>Soak from zero to drag</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>Soak is over by %1 s. Plate out now.</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>Soak's reading lies below the calibration.</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>Soak, at most</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>Soaked under pressure</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>Somebody disturbed it</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>Somebody new</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>Something is wrong</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>Something sticks to it.</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>Speed × %1</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>Spring is off</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>Spring off</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>Stand at the bench. Can you hear the signal?</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>Step</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>Step from one sheet to the other.</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>Stop</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>Stop this weld</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>Stop this weld? Say why.</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>Stop: cut out</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>Stop: plate too cold</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>Stop: plate too hot</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>Stopped</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>Supervisor</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>Take back</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>Take care</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>Take off</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>Take out</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>Take out early</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>Take the call</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>Take the film off both edges.</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>That PIN is wrong.</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>The battery is low: %1 %. Plug the charger in.</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>The bead is not measured. Say why.</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>The bench "%1" is changed.</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>The bench can't be set so</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>The bench is kept.</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>The bench is needed</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>The bench that harms nobody</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>The calibration is too uncertain for this seam.</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>The card is saved: %1</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>The day's joints</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>The edges are planed, the chips are off.</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>The film is off the edges.</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>The first one is entered under "Who is it?".</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>The folder above</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>The force is less than this bench holds steadily.</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>The foreman decided</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>The foreman may go on. Why?</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>The foreman releases it</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>The foreman's PIN is asked next; the record keeps the name.</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>The hand was slow</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>The job lets this seam be welded again %1 times. It is in the record.</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>The joint</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>The joint is cut out and kept in the list as stopped.</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>The joint of that photo is gone from its bench.</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>The key that it types becomes the next step.</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>The limit is passed. It counts, and is in the record.</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>The log is damaged. Finish the weld, end the program, start it again. %1</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>The log keeps what was, and who changed it.</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>The log knows no people yet.</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>The log was damaged and is kept aside; %1 tells what was taken over.</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>The log was damaged and is kept aside; a new one goes on.</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>The log's file was damaged. Nothing is lost: the log goes on in a new file, the old one is kept.</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>The machine's own instructions decide in which order a joint is released: the program has no order of its own.</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>The machine's own instructions decide. The last step is the sheet.</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>The melt flow rates are far apart.</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>The melt flow rates can't be compared.</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>The phone rings.</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>The photo is kept: %1</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>The place can't be reached</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>The plate burns at once. Gloves for heat, but never on planed faces; park the plate guarded.</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>The plate can't be set so</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>The plate has cooled. Cut back and plane.</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>The plate is between the edges: its face can't be read.</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>The plate is outside its window. Wait, then read it again.</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>The plate is wiped.</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>The plate stuck</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>The plate's face reads %1 °C at the %2.</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>The procedure "%1" is changed.</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>The procedure is kept.</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>The procedure lacks a value for this sheet.</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>The procedure lacks: %1.</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>The same PIN once more</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>The screen has just come to this bench. Press again.</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>The screen is kept on. The tablet may sleep: see its own settings.</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>The sheets are molten %1 deep after soak, and their skin is at %2 when the faces meet after the longest changeover; it melts at %3.</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>The sheets are soft %1 deep after soak, and their skin is at %2 when the faces meet after the longest changeover; it is soft above %3.</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>The sheets' grades differ: ask first.</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>The shop is too cold or too warm for this procedure.</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>The skin may no longer be molten when the faces meet.</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>The steps are then written in this name.</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>The steps are written in this name.</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>The tables crush, and the spring stores its force: keep hands out, and ease it before you open a clamp.</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>The tablet is kept awake until no joint is open.</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>The tablet is kept awake. Its screen may go dark: see its own settings.</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>The trial joint: what does the supervisor say?</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>The two were not the same. Type it anew.</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>The weld goes on meanwhile.</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>There is no folder "%1".</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>There is no photo on this tablet yet.</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>Thickness of the sheets</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>This card guides. The machine's own instructions, the standard in force, local rules and a qualified welder decide.</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>This is practice already: people and set-up belong to the shop.</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>This machine can't be kept awake from here: see its own settings.</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>This scale can't show the tolerance. Fetch the foreman.</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>This scale hardly shows the tolerance.</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>Tick all</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>Tick none</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>Tick values</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>Time goes on.</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>Times, bead: %1</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>To the list</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>To the overview</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>To the tables</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>Too many wrong PINs.</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>Trainee: %1</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>Trainee: nobody was named</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>Trial joint %1 is cut out.</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>Trial joint %1 is not released yet.</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>Trial joint %1 is released.</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>Trial joint %1 was not accepted.</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>Trouble</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>Trouble with the bench</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>True time</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>Turn the wheel evenly. Keep to the mark.</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>Two minutes without a press: the desk is closed.</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>Type it again</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>Type it in</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>Type readings and forces</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>Unlock</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>Valley between the beads, above the sheet's surface.</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>Wait</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>Wait %1</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>Wait %2 before soak on %1. Two hands, one plate.</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>Wait %2 before you begin %1. Two hands, one plate.</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>Wait for a %1 mm bead, all along, top and bottom.</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>Watch</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>Weld again</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>Weld card</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>Weld card, bench %1</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>Welder</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>What</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>What I did</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>What does the scale read now?</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>What fits</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>What if</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>What is %1 here?</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>What is done first when cooling is over?</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>What is done then? (step %1)</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>What is wrong here?</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>What it is</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>What it is made for</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>What the seal does</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>What was made</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>What was wrong</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>What went well</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>What went wrong, and why</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>What your hands did</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>Wheel +</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>Wheel is locked</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>Wheel −</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>When</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>Where the bench stands.</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>Where the numbers come from</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>Which attested values hold no more?</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>Which certificate has %1?</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>Which edition was it?</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>Which file of readings and forces?</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>Which foreman?</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>Which lesson?</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>Which name?</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>Which photo? The newest comes first.</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>Which procedure file?</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>Which procedure?</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>Which sheets, and how long is the seam?</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>Which values agree with the shop's copy?</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>While a joint cools its clock and its scale decide. Look at this later.</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>Who forgot it gets another at the foreman's desk.</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>Who is it?</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>Who is new?</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>Who is the first foreman?</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>Whose PIN changes?</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>Whose entry changes?</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>Why do they hold no more?</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>Width</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>Wipe</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>Wipe both faces of the plate. It burns.</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>Wipe plate</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>With a PIN</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>With one, nobody else can work in this name.</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>With the program closed, seamclock-cli people pin --forgotten gives one.</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>Withdraw</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>Within limits</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>Within limits with remarks</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>Without a PIN</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>Without a name</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>Words: %1 %</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>Worked out: the bench once more, and the joint of a steady hand.</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>Wrong row of the table</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>Wrong sheet or setting</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>You are on the phone.</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>You can't see the bench. Both hands are off it.</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>You touched the edge with your hand. Plane it again.</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>Your joint</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>Your own grade. It changes nothing of the verdict.</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>Your weld is looked at.</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>Zero and rate come from the calibration's points.</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>a bench that harms nobody</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>a check was left out</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>a foot lever</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>a handwheel</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>a rate and its uncertainty; due on %1</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>a reading in cooling was missed</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>a remark</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>a step was set earlier</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>a step was taken back</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>a touch on the name</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>about %1</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>above 0 mm</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>above mm</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>act now</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>after 10 min</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>against the first</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>against the standard</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>aim of soak's pressure</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>aim °C, else the middle</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>air</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>air from °C</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>align</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>align reading</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>alignment N/mm²</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>alignment bead</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>alignment is slow from</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>alignment pressure</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>alignment time</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>alignment: %1</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>all %1 values attested</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>all %1 were right</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>all four</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>all springs, N for each mm of closing</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>allowed %1 to %2 %3</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>allowed %1 to %2 °C</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>along the seam: %1</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>along the straight line</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>along the table's straight line</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>an attestation</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>an empty form</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>and %1 more, under Attest</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>and its report</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>as it was handed out</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>as set here</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>at least</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>at most</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>at most %1 %2</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>at most %1 mm</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>at the band's end</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>at the signal</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>attested by the shop</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>away from the bench</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>back</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>back to the bench</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>back to the desk</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>back to the job</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>back to the list</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>back to the tables</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>back to the weld</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>bars opened under a loaded spring</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>batch %1</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>batch, first sheet</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>batch, second sheet</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>battery</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>bead</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>bead %1 mm</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>bead at least</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>bead height</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>bead is slow</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>bead mm</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>bead not measured</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>bead stands after</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>bead stands, at %1</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>bead width</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>bead's height.</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>bead: front %1, back %2 mm</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>before every weld</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>bench %1 · seams to %2 mm · sheets %3 to %4 mm</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>bends</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>between a band's ends</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>both sheets, both sides</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>both, and chips off</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>breaks</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>build-up</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>build-up late</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>build-up s</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>by PIN</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>by his PIN, then go on</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>by the plan</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>by the wall clock</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>by your own eye</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>calibrated %1, due %2</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>calibration due on %1</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>certificate expired</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>certificate for other sheets</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>change it</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>changeover</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>changeover late</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>changeover s</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>class %1: air from °C</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>clock jumped</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>cold</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>cold plate</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>cold skin</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>colder</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>common practice, no source</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>cooling</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>cooling for each kelvin</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>cooling is over</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>cooling min</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>cooling over</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>cooling, by the shop's temperature</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>cooling: %1 left</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>could not be done: %1</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>count none of it</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>count-in</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>cut out</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>dark</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>dark, light, high contrast</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>decimal sign %1</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>digits typed: %1</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>dirt in it</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>done</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>done on, like 2030-01-07</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>drag</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>draught</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>drawing</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>due in %1</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>due on</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>edges</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>edition</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>enter a name</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>enters people, seals, decides; has a PIN</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>even rise to</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>evenly to %1</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>faces</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>faces in line</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>faces out of line</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>faces out of line.</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>faces together</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>factor, floor and cap</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>factors of 1, s, s² and so on</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>film</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>film off, edges planed</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>first and last name</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>first bench %1</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>first gap, times the thickness</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>folder</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>for a %1 mm bead</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>force</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>force N</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>foreman</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>foreman without a PIN here</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>formula</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>free</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>free, next:</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>from %1</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>from %1 °C</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>from a file</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>from memory: not attested</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>from mm</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>from the job</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>from when it shows its heat</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>front</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>gap</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>gap at most</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>gap between the edges</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>gap between the tables</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>gap for sheet 2</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>gap for the second sheet</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>gap × 2</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>get ready</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>greatest force it holds N</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>had left</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>half cooling</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>half cooling from mm</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>has none here</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>heat in the sheet, estimated</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>high</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>high contrast</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>hollow</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>hot</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>hot faces pulled apart</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>if one is not</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>if you like</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>in</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>in line</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>in the plan: %1 N</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>in the shop, by the plan</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>in this bench's order</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>into a file</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>it is in the record</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>it stays</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>it was</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>it will be in the record</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>its end, %1</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>joined, bead %1 / %2 mm</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>joining N/mm²</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>joining pressure</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>joining reading</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>joint %1</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>joint, out of limits</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>keep hands out: tables crush</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>kept</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>kinked</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>learns to weld</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>least force it holds N</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>left of %1 cooling</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>left of %1 soak</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>length of the seam</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>less drag %1</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>let go while soft</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>light</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>limit</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>line</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>list and records</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>load cell</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>lock</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>locked</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>long</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>longer when</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>longest seam mm</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>look at the bead</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>lost before the faces press N</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>louder than the fan?</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>low</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>lower %1</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>made %1</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>maker of the sheets</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>material</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>materials, thickness, last day</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>may fall with thickness</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>median %1</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>median %1, %2 to %3</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>meet to %1, faces in line to %2</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>melt %1 mm deep</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>melt after soak</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>melt flow %1</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>melts</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>middle</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>min</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>minutes</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>most of soak's pressure</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>name, role, PIN</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>name, role, PIN, has left</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>near the back</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>near the front</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>never less than mm</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>never more than mm, empty: no cap</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>no</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>no calibration is on record</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>no certificate noted</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>no load</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>no photo is kept</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>no sheet is in</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>no sound</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>no trial joint was made before</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>none</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>none noted</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>none was due</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>none: the source lacks nothing</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>not by hand</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>not chosen yet</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>not finished</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>not finished: %1</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>not joined</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>not saved</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>not there</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>not ticked</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>notch</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>note %1</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>nothing is changed</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>nothing is kept</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>nothing is opened</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>nothing is read</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>nothing yet</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>noticed at %1</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>now true time</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>now: %1</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>of %1</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>of %1 s</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>of the bead, in mm</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>of the changeover's front</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>of the weld on this bench</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>of this table</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>off</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>off the line N</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>on its face: it burns</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>on scale %1</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>on the scale, no load</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>on the scale, plate between</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>one end to the other</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>one page, PDF</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>one standard deviation of the rate %</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>open below</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>open welds stay</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>operator</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>out</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>out at %1</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>out of limits</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>out of line</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>over %1 s</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>over the soak of %1</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>overheated</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>page %1 of %2</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>path of a file or folder</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>pedal</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>people, PINs, the day's seal</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>people, day's seal</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>plate</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>plate burns: gloves on</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>plate drawn out while pressed</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>plate faces differ</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>plate out</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>plate temperature</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>plate to aim at</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>plate wiped: it burns</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>plate, highest °C</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>plate, lowest °C</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>power was off</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>prepare</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>prepare %1</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>press it to choose step by step</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>pressure ± %1</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>pressure's tolerance</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>pressure, alignment</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>pressure, joining</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>pressure, soak</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>pressure, soak, aim</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>pressure, soak, at most</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>pressure, tolerance</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>printed %1</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>procedure</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>procedures, benches</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>process time %1 of %2</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>process time %1, %2</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>program lost</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>rate of spring %1, N for each %2</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>read at %1</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>read in cooling</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>read it</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>read on its face</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>reading %1</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>reading due</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>reading without force, %1</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>readings</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>readings in cooling</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>readings stay the scale's</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>ready</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>reference air</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>reference air °C</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>release</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>rows 1 to %1</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>rows 1 to %1; %2 came since</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>rows 1 to %1; 1 came since</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>s</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>s, limit %1 s</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>same as the sheet: %1 mm</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>say what you see</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>say why</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>scale</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>scale again</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>scale calibration overdue</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>scale not calibrated</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>scale: a mark every %1</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>scales: 1 or 2</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>sealed as far as it is; the rest comes behind</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>seam %1</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>seam, sheet and force</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>second gap, times the first</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>seen in a text</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>set</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>sheet 1</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>sheet 2</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>sheets and drag as now</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>shop</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>shop temperature</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>short</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>short name: stays the same</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>short name: stays the same for ever</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>skin after soak</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>skin stays molten in air for</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>skin when the faces meet</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>skin °C</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>slow from %1</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>smallest division, %1</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>soak</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>soak aims at %1</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>soak counted before the bead stood</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>soak from zero to drag: where it stands</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>soak is over</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>soak pressure at most</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>soak pressure to aim at</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>soak reading</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>soak s</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>soak's tolerance</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>soak, aim N/mm²</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>soak, at most N/mm²</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>soak, longer by at most %</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>soak, shorter by at most % (0 or less)</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>soft %1 mm deep</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>softens</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>sound</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>sound ok</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>speed × %1</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>stand where you work</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>standard, or the shop's own</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>stands back: front %1, back %2 mm</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>stay with the weld</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>stays on the scale</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>step at most %1 mm</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>still open</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>still soft</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>stopped</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>stopped: %1</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>table</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>tables close up by</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>tables: front %1 mm, back %2 mm</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>the bead ends it, not the clock</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>the clock is right</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>the clock was set</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>the foreman</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>the key that it types</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>the log of real joints is not touched</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>the name stays in the log</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>the old one is forgotten</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>the order stays</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>the reason, for the record</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>the same seam</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>the seal waits for them</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>the spring is loaded</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>the trial joint was not accepted</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>the trial joint was not released yet</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>the upper end of the table's band</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>the wall clock went back</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>then clear of bench %1</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>then lock</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>then: plate out within %1 s</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>thick</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>thickest sheet mm</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>thickness</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>thickness mm</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>thin</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>thin melt</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>things</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>thinnest sheet mm</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>this weld is stopped</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>ticked</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>till bead stands</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>time of the weld</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>title</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>title and date, as printed on the shop's copy</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>to %1</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>to %1 °C</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>to mm</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>to the list</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>to the signal</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>to °C</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>told too late: %1</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>told, not done: %1</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>tolerance of build-up</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>tolerance of soak</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>tolerance of the pressure</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>tolerance ± N/mm²</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>too coarse for this seam</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>trainee</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>trial: not released yet</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>true time</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>turned against the scale's end</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>type it in</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>type it twice</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>unit of the scale</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>unit printed on it</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>unit, division, zero, rate of each spring</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>upper %1</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>valley above the sheet.</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>wait</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>wait %1: %2 needs you</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>warm</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>warmer</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>was not noticed</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>weld plane at %1 °C after</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>weld plane at release</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>welded again more often than the job allows</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>welds</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>what people call it</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>what presses</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>what that is worth</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>what the source says instead</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>what was made</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>where it stands</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>where nothing is urgent</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>where something is wrong</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>where the buttons stand</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>which value</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>widest gap between the edges when they meet mm</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>width</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>width, over both beads.</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>wiped</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>with a reason</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>with drag %1</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>worked out from the others</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>yes: the source itself says so</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>zero</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>zero and rate come from the calibration</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>°C of the plate, reference air, soak's tolerance</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>–</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>− 1 s</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>− 10 s</source>
            <translation type="unfinished" />
        </message>
    </context>
</TS>

<?xml version="1.0" encoding="utf-8"?>
<!-- SPDX-License-Identifier: GPL-3.0-or-later -->
<!DOCTYPE TS>
<TS version="2.1" language="de" sourcelanguage="en">
<context>
    <name>Bell</name>
    <message>
        <source>stop</source>
        <translation>Halt</translation>
    </message>
    <message>
        <source>ready to start</source>
        <translation>fahrbereit</translation>
    </message>
    <message>
        <source>set back</source>
        <translation>zurücksetzen</translation>
    </message>
    <message>
        <source>slow down</source>
        <translation>langsamer</translation>
    </message>
    <message>
        <source>draw forward</source>
        <translation>vorziehen</translation>
    </message>
    <message>
        <source>speak to me</source>
        <translation>sprechen Sie mit mir</translation>
    </message>
</context>
<context>
    <name>Command</name>
    <message>
        <source>Key switch on or off</source>
        <translation>Schlüsselschalter ein oder aus</translation>
    </message>
    <message>
        <source>Hand on the reversing lever</source>
        <translation>Hand an den Richtungshebel</translation>
    </message>
    <message>
        <source>Hand on the throttle</source>
        <translation>Hand an den Fahrschalter</translation>
    </message>
    <message>
        <source>Hold the safety device, or let it go</source>
        <translation>Totmann halten oder loslassen</translation>
    </message>
    <message>
        <source>Hand on the gear selector</source>
        <translation>Hand an den Gangwähler</translation>
    </message>
    <message>
        <source>Hand on the brake</source>
        <translation>Hand an die Bremse</translation>
    </message>
    <message>
        <source>Hand on the handbrake wheel</source>
        <translation>Hand an das Handbremsrad</translation>
    </message>
    <message>
        <source>Pawl in or out</source>
        <translation>Sperrklinke ein oder aus</translation>
    </message>
    <message>
        <source>Start engine 1 (hold)</source>
        <translation>Motor 1 anlassen (halten)</translation>
    </message>
    <message>
        <source>Start engine 2 (hold)</source>
        <translation>Motor 2 anlassen (halten)</translation>
    </message>
    <message>
        <source>Stop engine 1 (hold)</source>
        <translation>Motor 1 abstellen (halten)</translation>
    </message>
    <message>
        <source>Stop engine 2 (hold)</source>
        <translation>Motor 2 abstellen (halten)</translation>
    </message>
    <message>
        <source>Horn, low (hold)</source>
        <translation>Horn, tief (halten)</translation>
    </message>
    <message>
        <source>Horn, high (hold)</source>
        <translation>Horn, hoch (halten)</translation>
    </message>
    <message>
        <source>Bell to the guard (one stroke)</source>
        <translation>Klingel zum Schaffner (ein Schlag)</translation>
    </message>
    <message>
        <source>Lamp test (hold)</source>
        <translation>Lampenprobe (halten)</translation>
    </message>
    <message>
        <source>Fire bell test (hold)</source>
        <translation>Brandglocke prüfen (halten)</translation>
    </message>
    <message>
        <source>Wiper</source>
        <translation>Wischer</translation>
    </message>
    <message>
        <source>At an engine: start (hold)</source>
        <translation>An einem Motor: anlassen (halten)</translation>
    </message>
    <message>
        <source>At an engine: stop (hold)</source>
        <translation>An einem Motor: abstellen (halten)</translation>
    </message>
    <message>
        <source>At an engine: hand throttle</source>
        <translation>An einem Motor: Handgas</translation>
    </message>
    <message>
        <source>At an engine: isolating switch</source>
        <translation>An einem Motor: Trennschalter</translation>
    </message>
    <message>
        <source>In a cab: turn round</source>
        <translation>Im Führerstand: umdrehen</translation>
    </message>
    <message>
        <source>Left hand lets go</source>
        <translation>Linke Hand lässt los</translation>
    </message>
    <message>
        <source>Right hand lets go</source>
        <translation>Rechte Hand lässt los</translation>
    </message>
    <message>
        <source>Hand lamp on or off</source>
        <translation>Handlampe ein oder aus</translation>
    </message>
    <message>
        <source>Say or do something</source>
        <translation>Etwas sagen oder tun</translation>
    </message>
    <message>
        <source>Enter a reading</source>
        <translation>Ablesung eintragen</translation>
    </message>
    <message>
        <source>Write in the repair book</source>
        <translation>Ins Übergabebuch schreiben</translation>
    </message>
    <message>
        <source>Say what you decide</source>
        <translation>Sagen, was entschieden ist</translation>
    </message>
    <message>
        <source>Take, put in or lay down a thing</source>
        <translation>Ein Ding nehmen, einstecken oder ablegen</translation>
    </message>
    <message>
        <source>What comes next</source>
        <translation>Was als Nächstes kommt</translation>
    </message>
    <message>
        <source>Let time pass until something changes</source>
        <translation>Zeit vergehen lassen, bis sich etwas ändert</translation>
    </message>
    <message>
        <source>Walk to end 1</source>
        <translation>Zu Ende 1 gehen</translation>
    </message>
    <message>
        <source>Walk to cab 1</source>
        <translation>Zu Führerstand 1 gehen</translation>
    </message>
    <message>
        <source>Walk to the motor car, side 1</source>
        <translation>Zum Triebwagen, Seite 1, gehen</translation>
    </message>
    <message>
        <source>Walk to engine 1</source>
        <translation>Zu Motor 1 gehen</translation>
    </message>
    <message>
        <source>Walk to the motor car, side 2</source>
        <translation>Zum Triebwagen, Seite 2, gehen</translation>
    </message>
    <message>
        <source>Walk to engine 2</source>
        <translation>Zu Motor 2 gehen</translation>
    </message>
    <message>
        <source>Walk between the cars</source>
        <translation>Zwischen die Wagen gehen</translation>
    </message>
    <message>
        <source>Walk to the trailer, side 1</source>
        <translation>Zum Steuerwagen, Seite 1, gehen</translation>
    </message>
    <message>
        <source>Walk to the trailer, side 2</source>
        <translation>Zum Steuerwagen, Seite 2, gehen</translation>
    </message>
    <message>
        <source>Walk to cab 2</source>
        <translation>Zu Führerstand 2 gehen</translation>
    </message>
    <message>
        <source>Walk to end 2</source>
        <translation>Zu Ende 2 gehen</translation>
    </message>
    <message>
        <source>Walk to the electric cupboard</source>
        <translation>Zum Schaltschrank gehen</translation>
    </message>
    <message>
        <source>Walk to the saloon</source>
        <translation>In das Abteil gehen</translation>
    </message>
    <message>
        <source>Walk to the walkway by the line</source>
        <translation>Zum Randweg am Gleis gehen</translation>
    </message>
    <message>
        <source>Walk to the booking-on point</source>
        <translation>Zur Meldestelle gehen</translation>
    </message>
    <message>
        <source>Why it is dark, or does not move</source>
        <translation>Warum es dunkel ist oder sich nicht bewegt</translation>
    </message>
</context>
<context>
    <name>Control</name>
    <message>
        <source>Key switch</source>
        <translation>Schlüssel</translation>
    </message>
    <message>
        <source>Reversing lever</source>
        <translation>Richtungshebel</translation>
    </message>
    <message>
        <source>Safety device</source>
        <translation>Totmann</translation>
    </message>
    <message>
        <source>Gear selector</source>
        <translation>Gangwähler</translation>
    </message>
    <message>
        <source>Start engine 1</source>
        <translation>Motor 1 anlassen</translation>
    </message>
    <message>
        <source>Start engine 2</source>
        <translation>Motor 2 anlassen</translation>
    </message>
    <message>
        <source>Stop engine 1</source>
        <translation>Motor 1 abstellen</translation>
    </message>
    <message>
        <source>Stop engine 2</source>
        <translation>Motor 2 abstellen</translation>
    </message>
    <message>
        <source>Pawl</source>
        <translation>Klinke</translation>
    </message>
    <message>
        <source>Guard&apos;s valve</source>
        <translation>Schaffnerventil</translation>
    </message>
    <message>
        <source>Device cock</source>
        <translation>Totmannhahn</translation>
    </message>
    <message>
        <source>Door lock</source>
        <translation>Türschloss</translation>
    </message>
    <message>
        <source>Isolating switch</source>
        <translation>Trennschalter</translation>
    </message>
    <message>
        <source>Dog sleeve</source>
        <translation>Klauenmuffe</translation>
    </message>
    <message>
        <source>Locking pin</source>
        <translation>Sperrbolzen</translation>
    </message>
    <message>
        <source>Air cock</source>
        <translation>Lufthahn</translation>
    </message>
    <message>
        <source>Passenger alarm</source>
        <translation>Notbremsgriff</translation>
    </message>
    <message>
        <source>Release cord</source>
        <translation>Löseschnur</translation>
    </message>
    <message>
        <source>Drain, main reservoir</source>
        <translation>Hahn, Hauptbehälter</translation>
    </message>
    <message>
        <source>Drain, control reservoir</source>
        <translation>Hahn, Steuerbehälter</translation>
    </message>
    <message>
        <source>Hoses on their dummies</source>
        <translation>Schläuche auf Blindkupplung</translation>
    </message>
    <message>
        <source>Scotch</source>
        <translation>Hemmschuh</translation>
    </message>
    <message>
        <source>Doors</source>
        <translation>Türen</translation>
    </message>
    <message>
        <source>Hand lamp</source>
        <translation>Handlampe</translation>
    </message>
    <message>
        <source>Breaker: control</source>
        <translation>Automat: Steuerung</translation>
    </message>
    <message>
        <source>Breaker: start</source>
        <translation>Automat: Anlassen</translation>
    </message>
    <message>
        <source>Breaker: lamps</source>
        <translation>Automat: Meldelampen</translation>
    </message>
    <message>
        <source>Breaker: lights</source>
        <translation>Automat: Beleuchtung</translation>
    </message>
    <message>
        <source>Alarm</source>
        <translation>Notbremse</translation>
    </message>
    <message>
        <source>Battery switch</source>
        <translation>Batterieschalter</translation>
    </message>
    <message>
        <source>Bell</source>
        <translation>Klingel</translation>
    </message>
    <message>
        <source>Brake</source>
        <translation>Bremse</translation>
    </message>
    <message>
        <source>Breaker control</source>
        <translation>Automat Steuerung</translation>
    </message>
    <message>
        <source>Breaker lamps</source>
        <translation>Automat Meldelampen</translation>
    </message>
    <message>
        <source>Breaker lights</source>
        <translation>Automat Beleuchtung</translation>
    </message>
    <message>
        <source>Breaker start</source>
        <translation>Automat Anlassen</translation>
    </message>
    <message>
        <source>Cab light</source>
        <translation>Kabinenlicht</translation>
    </message>
    <message>
        <source>Cord 1</source>
        <translation>Löseschnur 1</translation>
    </message>
    <message>
        <source>Cord 2</source>
        <translation>Löseschnur 2</translation>
    </message>
    <message>
        <source>Cord 3</source>
        <translation>Löseschnur 3</translation>
    </message>
    <message>
        <source>Cord 4</source>
        <translation>Löseschnur 4</translation>
    </message>
    <message>
        <source>Cord1</source>
        <translation>Löseschnur 1</translation>
    </message>
    <message>
        <source>Cord2</source>
        <translation>Löseschnur 2</translation>
    </message>
    <message>
        <source>Cord3</source>
        <translation>Löseschnur 3</translation>
    </message>
    <message>
        <source>Cord4</source>
        <translation>Löseschnur 4</translation>
    </message>
    <message>
        <source>Device</source>
        <translation>Totmann</translation>
    </message>
    <message>
        <source>Display</source>
        <translation>Zielanzeige</translation>
    </message>
    <message>
        <source>Door 1</source>
        <translation>Tür 1</translation>
    </message>
    <message>
        <source>Door 2</source>
        <translation>Tür 2</translation>
    </message>
    <message>
        <source>Door1</source>
        <translation>Tür 1</translation>
    </message>
    <message>
        <source>Door2</source>
        <translation>Tür 2</translation>
    </message>
    <message>
        <source>Drain control</source>
        <translation>Hahn Steuerbehälter</translation>
    </message>
    <message>
        <source>Drain main</source>
        <translation>Hahn Hauptbehälter</translation>
    </message>
    <message>
        <source>Fire bottle</source>
        <translation>Löschflasche</translation>
    </message>
    <message>
        <source>Fire test</source>
        <translation>Brandglockenprobe</translation>
    </message>
    <message>
        <source>Fuel cock</source>
        <translation>Kraftstoffhahn</translation>
    </message>
    <message>
        <source>Gear</source>
        <translation>Gang</translation>
    </message>
    <message>
        <source>Guards valve</source>
        <translation>Schaffnerventil</translation>
    </message>
    <message>
        <source>Hand throttle</source>
        <translation>Handgas</translation>
    </message>
    <message>
        <source>Handbrake</source>
        <translation>Handbremse</translation>
    </message>
    <message>
        <source>Heater</source>
        <translation>Heizung</translation>
    </message>
    <message>
        <source>Horn</source>
        <translation>Horn</translation>
    </message>
    <message>
        <source>Hose</source>
        <translation>Schlauch</translation>
    </message>
    <message>
        <source>Jumper</source>
        <translation>Steuerkabel</translation>
    </message>
    <message>
        <source>Key</source>
        <translation>Schlüssel</translation>
    </message>
    <message>
        <source>Lamp</source>
        <translation>Lampe</translation>
    </message>
    <message>
        <source>Lamp test</source>
        <translation>Lampenprobe</translation>
    </message>
    <message>
        <source>Lock</source>
        <translation>Schloss</translation>
    </message>
    <message>
        <source>Pin</source>
        <translation>Bolzen</translation>
    </message>
    <message>
        <source>Red lamps</source>
        <translation>Rote Lampen</translation>
    </message>
    <message>
        <source>Reverser</source>
        <translation>Richtungshebel</translation>
    </message>
    <message>
        <source>Saloon lights</source>
        <translation>Abteillicht</translation>
    </message>
    <message>
        <source>Scotch 1</source>
        <translation>Hemmschuh 1</translation>
    </message>
    <message>
        <source>Scotch 2</source>
        <translation>Hemmschuh 2</translation>
    </message>
    <message>
        <source>Scotch1</source>
        <translation>Hemmschuh 1</translation>
    </message>
    <message>
        <source>Scotch2</source>
        <translation>Hemmschuh 2</translation>
    </message>
    <message>
        <source>Sleeve</source>
        <translation>Muffe</translation>
    </message>
    <message>
        <source>Start</source>
        <translation>Anlassen</translation>
    </message>
    <message>
        <source>Start 1</source>
        <translation>Anlassen 1</translation>
    </message>
    <message>
        <source>Start 2</source>
        <translation>Anlassen 2</translation>
    </message>
    <message>
        <source>Start1</source>
        <translation>Anlassen 1</translation>
    </message>
    <message>
        <source>Start2</source>
        <translation>Anlassen 2</translation>
    </message>
    <message>
        <source>Stop</source>
        <translation>Abstellen</translation>
    </message>
    <message>
        <source>Stop 1</source>
        <translation>Abstellen 1</translation>
    </message>
    <message>
        <source>Stop 2</source>
        <translation>Abstellen 2</translation>
    </message>
    <message>
        <source>Stop1</source>
        <translation>Abstellen 1</translation>
    </message>
    <message>
        <source>Stop2</source>
        <translation>Abstellen 2</translation>
    </message>
    <message>
        <source>Switch</source>
        <translation>Schalter</translation>
    </message>
    <message>
        <source>Throttle</source>
        <translation>Fahrschalter</translation>
    </message>
    <message>
        <source>White lamps</source>
        <translation>Weiße Lampen</translation>
    </message>
    <message>
        <source>Wiper</source>
        <translation>Wischer</translation>
    </message>
    <message>
        <source>air cock of final drive 1: shut, its shift cylinder is vented</source>
        <translation>Lufthahn von Achsgetriebe 1: zu, und sein Schaltzylinder ist entlüftet</translation>
    </message>
    <message>
        <source>air cock of final drive 2: shut, its shift cylinder is vented</source>
        <translation>Lufthahn von Achsgetriebe 2: zu, und sein Schaltzylinder ist entlüftet</translation>
    </message>
    <message>
        <source>battery switch</source>
        <translation>Batterieschalter</translation>
    </message>
    <message>
        <source>bell button to the guard</source>
        <translation>Klingelknopf zum Schaffner</translation>
    </message>
    <message>
        <source>brake hoses at end 1 on their dummies</source>
        <translation>Bremsschläuche an Ende 1 auf ihren Blindkupplungen</translation>
    </message>
    <message>
        <source>brake hoses at end 2 on their dummies</source>
        <translation>Bremsschläuche an Ende 2 auf ihren Blindkupplungen</translation>
    </message>
    <message>
        <source>breaker: desks and control circuits</source>
        <translation>Automat: Pulte und Steuerkreise</translation>
    </message>
    <message>
        <source>breaker: indication lamps and bell</source>
        <translation>Automat: Meldelampen und Klingel</translation>
    </message>
    <message>
        <source>breaker: lights, displays, wipers</source>
        <translation>Automat: Licht, Anzeigen, Wischer</translation>
    </message>
    <message>
        <source>breaker: start circuits</source>
        <translation>Automat: Anlasskreise</translation>
    </message>
    <message>
        <source>control jumper between the cars</source>
        <translation>Steuerkabel zwischen den Wagen</translation>
    </message>
    <message>
        <source>drain cock of the control reservoir</source>
        <translation>Ablasshahn des Steuerbehälters</translation>
    </message>
    <message>
        <source>drain cock of the main reservoir</source>
        <translation>Ablasshahn des Hauptbehälters</translation>
    </message>
    <message>
        <source>driver&apos;s brake valve: release, lap, and from there a growing opening to full (needs the brake handle)</source>
        <translation>Führerbremsventil: Lösen, Abschluss und von da immer weiter offen bis voll (braucht den Bremsgriff)</translation>
    </message>
    <message>
        <source>driver&apos;s safety device: the throttle&apos;s own handle, to be held down</source>
        <translation>Totmann: der Griff des Fahrschalters selbst, niederzuhalten</translation>
    </message>
    <message>
        <source>fire bell test</source>
        <translation>Brandglockenprobe</translation>
    </message>
    <message>
        <source>fire bottle of engine 1: once</source>
        <translation>Löschflasche von Motor 1: einmal</translation>
    </message>
    <message>
        <source>fire bottle of engine 2: once</source>
        <translation>Löschflasche von Motor 2: einmal</translation>
    </message>
    <message>
        <source>fuel cock of engine 1</source>
        <translation>Kraftstoffhahn von Motor 1</translation>
    </message>
    <message>
        <source>fuel cock of engine 2</source>
        <translation>Kraftstoffhahn von Motor 2</translation>
    </message>
    <message>
        <source>gear selector</source>
        <translation>Gangwähler</translation>
    </message>
    <message>
        <source>guard&apos;s valve: lets air into the train pipe</source>
        <translation>Schaffnerventil: lässt Luft in die Zugleitung</translation>
    </message>
    <message>
        <source>hand throttle at engine 1: stays where it is put</source>
        <translation>Handgas an Motor 1: bleibt, wo es hingestellt wird</translation>
    </message>
    <message>
        <source>hand throttle at engine 2: stays where it is put</source>
        <translation>Handgas an Motor 2: bleibt, wo es hingestellt wird</translation>
    </message>
    <message>
        <source>handbrake wheel of this cab&apos;s own car; turning takes time</source>
        <translation>Handbremsrad des eigenen Wagens; das Drehen braucht Zeit</translation>
    </message>
    <message>
        <source>horn, two tones</source>
        <translation>Horn, zwei Töne</translation>
    </message>
    <message>
        <source>isolating cock of the safety device (sealed open)</source>
        <translation>Absperrhahn des Totmanns (offen verplombt)</translation>
    </message>
    <message>
        <source>isolating switch of engine 1</source>
        <translation>Trennschalter von Motor 1</translation>
    </message>
    <message>
        <source>isolating switch of engine 2</source>
        <translation>Trennschalter von Motor 2</translation>
    </message>
    <message>
        <source>key switch: makes this desk the living one (needs the control key)</source>
        <translation>Schlüsselschalter: macht dieses Pult zum besetzten (braucht den Steuerschlüssel)</translation>
    </message>
    <message>
        <source>lamp test</source>
        <translation>Lampenprobe</translation>
    </message>
    <message>
        <source>light in this cab</source>
        <translation>Licht in diesem Führerstand</translation>
    </message>
    <message>
        <source>lock of the cab door (needs the door key)</source>
        <translation>Schloss der Führerstandstür (braucht den Türschlüssel)</translation>
    </message>
    <message>
        <source>locking pin of final drive 1</source>
        <translation>Sperrbolzen von Achsgetriebe 1</translation>
    </message>
    <message>
        <source>locking pin of final drive 2</source>
        <translation>Sperrbolzen von Achsgetriebe 2</translation>
    </message>
    <message>
        <source>number on the destination display at this end</source>
        <translation>Nummer der Zielanzeige an diesem Ende</translation>
    </message>
    <message>
        <source>passenger alarm: pulled inside, put back from outside at its tell-tale</source>
        <translation>Notbremse: innen gezogen, außen am Anzeiger zurückgestellt</translation>
    </message>
    <message>
        <source>passenger doors on side 1</source>
        <translation>Fahrgasttüren auf Seite 1</translation>
    </message>
    <message>
        <source>passenger doors on side 2</source>
        <translation>Fahrgasttüren auf Seite 2</translation>
    </message>
    <message>
        <source>pawl of the handbrake&apos;s ratchet</source>
        <translation>Klinke am Sperrrad der Handbremse</translation>
    </message>
    <message>
        <source>red lamps at this end</source>
        <translation>Rote Lampen an diesem Ende</translation>
    </message>
    <message>
        <source>release cord of brake cylinder 1</source>
        <translation>Löseschnur von Bremszylinder 1</translation>
    </message>
    <message>
        <source>release cord of brake cylinder 2</source>
        <translation>Löseschnur von Bremszylinder 2</translation>
    </message>
    <message>
        <source>release cord of brake cylinder 3</source>
        <translation>Löseschnur von Bremszylinder 3</translation>
    </message>
    <message>
        <source>release cord of brake cylinder 4</source>
        <translation>Löseschnur von Bremszylinder 4</translation>
    </message>
    <message>
        <source>reversing lever: direction as seen from this cab (needs the lever)</source>
        <translation>Richtungshebel: Richtung von diesem Führerstand aus (braucht den Hebel)</translation>
    </message>
    <message>
        <source>saloon heater&apos;s fan</source>
        <translation>Lüfter der Innenheizung</translation>
    </message>
    <message>
        <source>saloon lights</source>
        <translation>Abteillicht</translation>
    </message>
    <message>
        <source>scotch under a wheel of car 1</source>
        <translation>Hemmschuh unter einem Rad von Wagen 1</translation>
    </message>
    <message>
        <source>scotch under a wheel of car 2</source>
        <translation>Hemmschuh unter einem Rad von Wagen 2</translation>
    </message>
    <message>
        <source>start button at engine 1</source>
        <translation>Anlassknopf an Motor 1</translation>
    </message>
    <message>
        <source>start button at engine 2</source>
        <translation>Anlassknopf an Motor 2</translation>
    </message>
    <message>
        <source>start button, engine 1</source>
        <translation>Anlassknopf, Motor 1</translation>
    </message>
    <message>
        <source>start button, engine 2</source>
        <translation>Anlassknopf, Motor 2</translation>
    </message>
    <message>
        <source>stop button, engine 1</source>
        <translation>Abstellknopf, Motor 1</translation>
    </message>
    <message>
        <source>stop button, engine 2</source>
        <translation>Abstellknopf, Motor 2</translation>
    </message>
    <message>
        <source>stop lever at engine 1: works without current</source>
        <translation>Abstellhebel an Motor 1: wirkt ohne Strom</translation>
    </message>
    <message>
        <source>stop lever at engine 2: works without current</source>
        <translation>Abstellhebel an Motor 2: wirkt ohne Strom</translation>
    </message>
    <message>
        <source>the dog sleeve of final drive 1, drawn to the middle by hand</source>
        <translation>Klauenmuffe von Achsgetriebe 1, von Hand in die Mitte gezogen</translation>
    </message>
    <message>
        <source>the dog sleeve of final drive 2, drawn to the middle by hand</source>
        <translation>Klauenmuffe von Achsgetriebe 2, von Hand in die Mitte gezogen</translation>
    </message>
    <message>
        <source>the hand lamp, wherever it is carried</source>
        <translation>Die Handlampe, wo immer sie ist</translation>
    </message>
    <message>
        <source>throttle, four notches; springs to idle when the safety device is let go</source>
        <translation>Fahrschalter, vier Stufen; springt auf Leerlauf, wenn der Totmann losgelassen wird</translation>
    </message>
    <message>
        <source>white lamps at this end</source>
        <translation>Weiße Lampen an diesem Ende</translation>
    </message>
    <message>
        <source>window wiper</source>
        <translation>Scheibenwischer</translation>
    </message>
</context>
<context>
    <name>DefectClass</name>
    <message>
        <source>critical</source>
        <translation>kritisch</translation>
    </message>
    <message>
        <source>serious</source>
        <translation>ernst</translation>
    </message>
    <message>
        <source>technical</source>
        <translation>technisch</translation>
    </message>
</context>
<context>
    <name>Evidence</name>
    <message>
        <source>psi</source>
        <translation>psi</translation>
    </message>
    <message>
        <source>inHg</source>
        <translation>inHg</translation>
    </message>
    <message>
        <source>rev/min</source>
        <translation>U/min</translation>
    </message>
    <message>
        <source>mph</source>
        <translation>mph</translation>
    </message>
    <message>
        <source>Control air</source>
        <translation>Steuerluft</translation>
    </message>
    <message>
        <source>Vacuum</source>
        <translation>Vakuum</translation>
    </message>
    <message>
        <source>Guard&apos;s gauge</source>
        <translation>Schaffneruhr</translation>
    </message>
    <message>
        <source>Engine 1</source>
        <translation>Motor 1</translation>
    </message>
    <message>
        <source>Engine 2</source>
        <translation>Motor 2</translation>
    </message>
    <message>
        <source>Speed</source>
        <translation>Fahrt</translation>
    </message>
    <message>
        <source>AIR</source>
        <translation>LUFT</translation>
    </message>
    <message>
        <source>SAFETY</source>
        <translation>TOTMANN</translation>
    </message>
    <message>
        <source>ENGINE 1</source>
        <translation>MOTOR 1</translation>
    </message>
    <message>
        <source>ENGINE 2</source>
        <translation>MOTOR 2</translation>
    </message>
    <message>
        <source>CHARGE</source>
        <translation>LADUNG</translation>
    </message>
    <message>
        <source>FIRE</source>
        <translation>BRAND</translation>
    </message>
    <message>
        <source>Truly: %1</source>
        <translation>In Wahrheit: %1</translation>
    </message>
    <message>
        <source>lit</source>
        <translation>leuchtet</translation>
    </message>
    <message>
        <source>dark</source>
        <translation>dunkel</translation>
    </message>
</context>
<context>
    <name>Fault</name>
    <message>
        <source>1/s</source>
        <translation>1/s</translation>
    </message>
    <message>
        <source>15 s and rest, three tries; start the other one first</source>
        <translation>15 s und Pause, drei Versuche; den anderen zuerst anlassen</translation>
    </message>
    <message>
        <source>21 takes twice as long, second release slow; no hum at that engine</source>
        <translation>21 dauert doppelt so lange, zweites Lösen langsam; kein Summen an diesem Motor</translation>
    </message>
    <message>
        <source>A</source>
        <translation>A</translation>
    </message>
    <message>
        <source>C</source>
        <translation>°C</translation>
    </message>
    <message>
        <source>N</source>
        <translation>N</translation>
    </message>
    <message>
        <source>N m</source>
        <translation>N m</translation>
    </message>
    <message>
        <source>V</source>
        <translation>V</translation>
    </message>
    <message>
        <source>W</source>
        <translation>W</translation>
    </message>
    <message>
        <source>a bang under power, that tachometer runs up, air lamp goes dark</source>
        <translation>ein Knall unter Kraft, dieser Drehzahlmesser läuft hoch, Luftlampe wird dunkel</translation>
    </message>
    <message>
        <source>a brake hose is not on its dummy</source>
        <translation>ein Bremsschlauch ist nicht auf seiner Blindkupplung</translation>
    </message>
    <message>
        <source>a click at the button and nothing more, volts do not dip</source>
        <translation>ein Klick am Knopf und sonst nichts, die Volt fallen nicht</translation>
    </message>
    <message>
        <source>a fitter has his arms in the engine</source>
        <translation>ein Schlosser hat die Arme im Motor</translation>
    </message>
    <message>
        <source>a hose between the cars is chafed through</source>
        <translation>ein Schlauch zwischen den Wagen ist durchgescheuert</translation>
    </message>
    <message>
        <source>a hose between the cars parts</source>
        <translation>ein Schlauch zwischen den Wagen geht auseinander</translation>
    </message>
    <message>
        <source>a howl that goes on when the engine runs</source>
        <translation>ein Heulen, das bei laufendem Motor weitergeht</translation>
    </message>
    <message>
        <source>a minute</source>
        <translation>in der Minute</translation>
    </message>
    <message>
        <source>a passenger door is open</source>
        <translation>eine Fahrgasttür ist offen</translation>
    </message>
    <message>
        <source>a red flag hangs on the unit: people work on it</source>
        <translation>eine rote Flagge hängt am Zug: Leute arbeiten an ihm</translation>
    </message>
    <message>
        <source>a red flag hangs on this side: people work on it</source>
        <translation>eine rote Flagge hängt auf dieser Seite: Leute arbeiten an ihm</translation>
    </message>
    <message>
        <source>after each change of the throttle the note swings up and down for long</source>
        <translation>nach jeder Änderung des Fahrschalters schwingt der Ton lange auf und ab</translation>
    </message>
    <message>
        <source>air</source>
        <translation>Luft</translation>
    </message>
    <message>
        <source>air builds at half its pace with both belts on</source>
        <translation>Luft baut sich halb so schnell auf bei beiden Riemen</translation>
    </message>
    <message>
        <source>air builds at half its pace; belt in the tray</source>
        <translation>Luft baut sich halb so schnell auf; Riemen in der Wanne</translation>
    </message>
    <message>
        <source>air builds slowly, squeal at that engine</source>
        <translation>Luft baut sich langsam auf, Quietschen an diesem Motor</translation>
    </message>
    <message>
        <source>air does not build or stops low, compressors never unload; hiss low down, side 1</source>
        <translation>Luft baut sich nicht auf oder bleibt tief stehen, Kompressoren entlasten nie; Zischen unten, Seite 1</translation>
    </message>
    <message>
        <source>air falls quickly with the engines stopped; hiss below side 2</source>
        <translation>Luft fällt rasch bei stehenden Motoren; Zischen unter Seite 2</translation>
    </message>
    <message>
        <source>air goes past 95 until the safety valve blows</source>
        <translation>Luft geht über 95, bis das Sicherheitsventil bläst</translation>
    </message>
    <message>
        <source>air is drawn into the fuel system</source>
        <translation>das Kraftstoffsystem zieht Luft</translation>
    </message>
    <message>
        <source>air is good, so it is mesh: other direction and back, or let the shaft turn; never power with the lamp dark</source>
        <translation>Luft ist gut, also ist es der Eingriff: andere Richtung und zurück, oder die Welle drehen lassen; nie Kraft bei dunkler Lampe</translation>
    </message>
    <message>
        <source>air lamp dark with the gauge good and both thumps heard</source>
        <translation>Luftlampe dunkel bei guter Uhr und beiden gehörten Schlägen</translation>
    </message>
    <message>
        <source>air lamp dark with the gauge good and both thumps heard, both cabs</source>
        <translation>Luftlampe dunkel bei guter Uhr und beiden gehörten Schlägen, beide Führerstände</translation>
    </message>
    <message>
        <source>air lamp lit with that drive out of mesh: no thump heard, no pull</source>
        <translation>Luftlampe an bei diesem Antrieb außer Eingriff: kein Schlag gehört, kein Zug</translation>
    </message>
    <message>
        <source>air lamp lit with the gauge below 70</source>
        <translation>Luftlampe an bei Uhr unter 70</translation>
    </message>
    <message>
        <source>air lamp&apos;s pressure switch</source>
        <translation>Druckschalter der Luftlampe</translation>
    </message>
    <message>
        <source>air low at the gauge, gears slow; hiss low down, side 2</source>
        <translation>Luft niedrig an der Uhr, Gänge träge; Zischen unten, Seite 2</translation>
    </message>
    <message>
        <source>air never reaches 95: stops and cycles so much lower</source>
        <translation>Luft erreicht nie 95: bleibt stehen und spielt um so viel tiefer</translation>
    </message>
    <message>
        <source>air stops short of 95 or falls standing; hiss below side 1</source>
        <translation>Luft bleibt unter 95 stehen oder fällt im Stand; Zischen unter Seite 1</translation>
    </message>
    <message>
        <source>all lamps of both desks dark together, also under the lamp test; bell silent</source>
        <translation>alle Lampen beider Pulte zugleich dunkel, auch unter der Lampenprobe; Klingel still</translation>
    </message>
    <message>
        <source>answers the throttle late, and stuck fast not at all: it stays at the speed it had</source>
        <translation>folgt dem Fahrschalter spät, und ganz fest gar nicht: er bleibt bei seiner Drehzahl</translation>
    </message>
    <message>
        <source>applied and lapped, the needle rises by itself: the brake creeps off</source>
        <translation>angelegt und auf Abschluss steigt der Zeiger von selbst: die Bremse kriecht los</translation>
    </message>
    <message>
        <source>applied brake goes off by itself on one wheelset, blocks come off early</source>
        <translation>angelegte Bremse geht an einem Radsatz von selbst los, Klötze kommen früh ab</translation>
    </message>
    <message>
        <source>arrives long after the other cab&apos;s, and after what is heard</source>
        <translation>kommt lange nach dem des anderen Führerstands und nach dem, was zu hören ist</translation>
    </message>
    <message>
        <source>ask why it was put in before it is taken out</source>
        <translation>fragen, warum er hineinkam, bevor er herausgenommen wird</translation>
    </message>
    <message>
        <source>ask why, then open it</source>
        <translation>fragen, warum, dann öffnen</translation>
    </message>
    <message>
        <source>ask why, then open it; try both directions</source>
        <translation>fragen, warum, dann öffnen; beide Richtungen versuchen</translation>
    </message>
    <message>
        <source>ask; the unit fails</source>
        <translation>fragen; der Zug fährt nicht</translation>
    </message>
    <message>
        <source>at rest whatever is so</source>
        <translation>in Ruhe, was auch ist</translation>
    </message>
    <message>
        <source>battery</source>
        <translation>Batterie</translation>
    </message>
    <message>
        <source>battery box</source>
        <translation>Batteriekasten</translation>
    </message>
    <message>
        <source>battery switch open at once</source>
        <translation>Batterieschalter sofort auf</translation>
    </message>
    <message>
        <source>battery switch open; report</source>
        <translation>Batterieschalter auf; melden</translation>
    </message>
    <message>
        <source>bell test: heard here, not answered</source>
        <translation>Klingelprobe: hier gehört, nicht beantwortet</translation>
    </message>
    <message>
        <source>bell test: nothing heard here, the other side hears</source>
        <translation>Klingelprobe: hier nichts zu hören, die andere Seite hört</translation>
    </message>
    <message>
        <source>bell, red lamp, smoke at that side</source>
        <translation>Glocke, rote Lampe, Rauch auf dieser Seite</translation>
    </message>
    <message>
        <source>between the cars</source>
        <translation>zwischen den Wagen</translation>
    </message>
    <message>
        <source>blocks</source>
        <translation>Klötze</translation>
    </message>
    <message>
        <source>blocks and tyres</source>
        <translation>Klötze und Reifen</translation>
    </message>
    <message>
        <source>blocks are missing</source>
        <translation>Klötze fehlen</translation>
    </message>
    <message>
        <source>blocks glazed, oily or iced: little friction</source>
        <translation>Klötze verglast, ölig oder vereist: wenig Reibung</translation>
    </message>
    <message>
        <source>blocks looked at, each side; report</source>
        <translation>Klötze ansehen, jede Seite; melden</translation>
    </message>
    <message>
        <source>both engines without that gear from this cab; good from the other</source>
        <translation>beide Motoren ohne diesen Gang von diesem Führerstand; vom anderen gut</translation>
    </message>
    <message>
        <source>brake cylinder %1 and its rigging</source>
        <translation>Bremszylinder %1 und sein Gestänge</translation>
    </message>
    <message>
        <source>brake cylinder %1, ball valve</source>
        <translation>Bremszylinder %1, Kugelventil</translation>
    </message>
    <message>
        <source>brake cylinder %1, blocks</source>
        <translation>Bremszylinder %1, Klötze</translation>
    </message>
    <message>
        <source>brake cylinder %1, rolling bag</source>
        <translation>Bremszylinder %1, Rollbalg</translation>
    </message>
    <message>
        <source>brake early, reduce speed; if it stays, stop and report</source>
        <translation>früh bremsen, langsamer fahren; bleibt es, halten und melden</translation>
    </message>
    <message>
        <source>brake goes on well before 5 s when the hand is changed</source>
        <translation>Bremse kommt deutlich vor 5 s, wenn die Hand gewechselt wird</translation>
    </message>
    <message>
        <source>brake on sooner than 5 s; slow to reset</source>
        <translation>Bremse früher als 5 s; setzt langsam zurück</translation>
    </message>
    <message>
        <source>builds as usual at first, hardly at all above 80</source>
        <translation>baut anfangs auf wie sonst, über 80 kaum noch</translation>
    </message>
    <message>
        <source>by the local rule; report</source>
        <translation>nach örtlicher Regel; melden</translation>
    </message>
    <message>
        <source>cab</source>
        <translation>Führerstand</translation>
    </message>
    <message>
        <source>cab %1</source>
        <translation>Führerstand %1</translation>
    </message>
    <message>
        <source>cab %1, choke of the safety device</source>
        <translation>Führerstand %1, Drossel des Totmanns</translation>
    </message>
    <message>
        <source>cab %1, contact under the handle</source>
        <translation>Führerstand %1, Kontakt unter dem Griff</translation>
    </message>
    <message>
        <source>cab %1, driver&apos;s brake valve</source>
        <translation>Führerstand %1, Führerbremsventil</translation>
    </message>
    <message>
        <source>cab %1, feed valve</source>
        <translation>Führerstand %1, Regelventil</translation>
    </message>
    <message>
        <source>cab %1, gear selector</source>
        <translation>Führerstand %1, Gangwähler</translation>
    </message>
    <message>
        <source>cab %1, guard&apos;s valve</source>
        <translation>Führerstand %1, Schaffnerventil</translation>
    </message>
    <message>
        <source>cab %1, isolating cock of the safety device</source>
        <translation>Führerstand %1, Absperrhahn des Totmanns</translation>
    </message>
    <message>
        <source>cab %1, key switch</source>
        <translation>Führerstand %1, Schlüsselschalter</translation>
    </message>
    <message>
        <source>cab %1, reducing valve</source>
        <translation>Führerstand %1, Druckminderer</translation>
    </message>
    <message>
        <source>cab %1, reverser contacts</source>
        <translation>Führerstand %1, Richtungskontakte</translation>
    </message>
    <message>
        <source>cab %1, start button of engine %2</source>
        <translation>Führerstand %1, Anlassknopf von Motor %2</translation>
    </message>
    <message>
        <source>cab %1, valve of the safety device</source>
        <translation>Führerstand %1, Ventil des Totmanns</translation>
    </message>
    <message>
        <source>cab %1, valve under the handle</source>
        <translation>Führerstand %1, Ventil unter dem Griff</translation>
    </message>
    <message>
        <source>cab 2: lamps there, starts and gears dead; cab 1 works</source>
        <translation>Führerstand 2: Lampen da, Anlassen und Gänge tot; Führerstand 1 geht</translation>
    </message>
    <message>
        <source>cells</source>
        <translation>Zellen</translation>
    </message>
    <message>
        <source>cells are dead</source>
        <translation>Zellen sind tot</translation>
    </message>
    <message>
        <source>charge lamp lit above fast idle with that engine alone, though its belt is good</source>
        <translation>Ladelampe an über schnellem Leerlauf mit diesem Motor allein, obwohl sein Riemen gut ist</translation>
    </message>
    <message>
        <source>check valve between the reservoirs</source>
        <translation>Rückschlagventil zwischen den Behältern</translation>
    </message>
    <message>
        <source>clearance</source>
        <translation>Spiel</translation>
    </message>
    <message>
        <source>close it, read the volts</source>
        <translation>schließen, die Volt ablesen</translation>
    </message>
    <message>
        <source>closed</source>
        <translation>geschlossen</translation>
    </message>
    <message>
        <source>coasting, that engine does not drop to tick-over; the train drags</source>
        <translation>beim Rollen fällt dieser Motor nicht auf Leerlauf; der Zug wird gehalten</translation>
    </message>
    <message>
        <source>compression is lost past rings and valves</source>
        <translation>Kompression geht an Ringen und Ventilen verloren</translation>
    </message>
    <message>
        <source>compressor of engine %1</source>
        <translation>Kompressor von Motor %1</translation>
    </message>
    <message>
        <source>control relay</source>
        <translation>Steuerrelais</translation>
    </message>
    <message>
        <source>control reservoir and pipes</source>
        <translation>Steuerbehälter und Rohre</translation>
    </message>
    <message>
        <source>control reservoir, drain cock, side %1</source>
        <translation>Steuerbehälter, Ablasshahn, Seite %1</translation>
    </message>
    <message>
        <source>coolant above 90 on a long pull, normal otherwise</source>
        <translation>Kühlwasser über 90 bei langem Zug, sonst gewöhnlich</translation>
    </message>
    <message>
        <source>coolant gauge</source>
        <translation>Kühlwasseruhr</translation>
    </message>
    <message>
        <source>coolant gauge climbs past 90 under load; stops itself at its limit</source>
        <translation>die Kühlwasseruhr steigt unter Last über 90; stellt sich an seiner Grenze ab</translation>
    </message>
    <message>
        <source>coolant is lost</source>
        <translation>Kühlwasser geht verloren</translation>
    </message>
    <message>
        <source>creeps in neutral; another gear fights it: the engine labours, heat</source>
        <translation>kriecht im Leerlauf; ein anderer Gang kämpft dagegen: Motor quält sich, Hitze</translation>
    </message>
    <message>
        <source>critical: report, the unit does not go</source>
        <translation>kritisch: melden, der Zug fährt nicht</translation>
    </message>
    <message>
        <source>cupboard</source>
        <translation>Schaltschrank</translation>
    </message>
    <message>
        <source>current leaks to the frame</source>
        <translation>Strom fließt zum Rahmen ab</translation>
    </message>
    <message>
        <source>dark also under the lamp test, other signs good</source>
        <translation>dunkel auch unter der Lampenprobe, andere Zeichen gut</translation>
    </message>
    <message>
        <source>dead button in this cab, good in the other and on the ground</source>
        <translation>toter Knopf in diesem Führerstand, gut im anderen und am Boden</translation>
    </message>
    <message>
        <source>desk alive, every start button dead</source>
        <translation>Pult lebt, jeder Anlassknopf tot</translation>
    </message>
    <message>
        <source>device test: lamp out, brake long after 5 s, or never</source>
        <translation>Totmannprobe: Lampe aus, Bremse lange nach 5 s, oder nie</translation>
    </message>
    <message>
        <source>device test: lamp out, no brake at all</source>
        <translation>Totmannprobe: Lampe aus, gar keine Bremse</translation>
    </message>
    <message>
        <source>dirt or frost chokes the pipe to the cylinder</source>
        <translation>Schmutz oder Frost drosselt die Leitung zum Zylinder</translation>
    </message>
    <message>
        <source>do not leave the unit on it; scotches, report</source>
        <translation>den Zug nicht darauf verlassen; Hemmschuhe, melden</translation>
    </message>
    <message>
        <source>do not move: two drives may stand against each other; fail the unit</source>
        <translation>nicht fahren: zwei Antriebe können gegeneinander stehen; den Zug stilllegen</translation>
    </message>
    <message>
        <source>do not move; fail this cab&apos;s valve</source>
        <translation>nicht fahren; das Ventil dieses Führerstands ist zu verwerfen</translation>
    </message>
    <message>
        <source>do not start; a lamp that goes out under way: stop that engine at once</source>
        <translation>nicht anlassen; eine Lampe, die unterwegs ausgeht: diesen Motor sofort abstellen</translation>
    </message>
    <message>
        <source>do not trust it: the test of the thing itself decides; report</source>
        <translation>ihr nicht trauen: die Probe der Sache selbst entscheidet; melden</translation>
    </message>
    <message>
        <source>does not rest on its zero; differs from the other cab&apos;s</source>
        <translation>ruht nicht auf seiner Null; weicht von dem des anderen Führerstands ab</translation>
    </message>
    <message>
        <source>does not stir when the thing must be changing, nor when tapped</source>
        <translation>rührt sich nicht, wenn sich die Sache ändern muss, auch nicht beim Klopfen</translation>
    </message>
    <message>
        <source>drive from the other end only with a rule for it; report</source>
        <translation>vom anderen Ende nur fahren mit einer Regel dafür; melden</translation>
    </message>
    <message>
        <source>empty bracket</source>
        <translation>leere Halterung</translation>
    </message>
    <message>
        <source>end %1</source>
        <translation>Ende %1</translation>
    </message>
    <message>
        <source>engine</source>
        <translation>Motor</translation>
    </message>
    <message>
        <source>engine %1</source>
        <translation>Motor %1</translation>
    </message>
    <message>
        <source>engine %1, air filter</source>
        <translation>Motor %1, Luftfilter</translation>
    </message>
    <message>
        <source>engine %1, combustion</source>
        <translation>Motor %1, Verbrennung</translation>
    </message>
    <message>
        <source>engine %1, cooling system</source>
        <translation>Motor %1, Kühlung</translation>
    </message>
    <message>
        <source>engine %1, cylinders</source>
        <translation>Motor %1, Zylinder</translation>
    </message>
    <message>
        <source>engine %1, fan belt</source>
        <translation>Motor %1, Lüfterriemen</translation>
    </message>
    <message>
        <source>engine %1, fire bottle</source>
        <translation>Motor %1, Löschflasche</translation>
    </message>
    <message>
        <source>engine %1, fuel bowl</source>
        <translation>Motor %1, Kraftstoffglas</translation>
    </message>
    <message>
        <source>engine %1, fuel cock</source>
        <translation>Motor %1, Kraftstoffhahn</translation>
    </message>
    <message>
        <source>engine %1, fuel lines</source>
        <translation>Motor %1, Kraftstoffleitungen</translation>
    </message>
    <message>
        <source>engine %1, fuel rack</source>
        <translation>Motor %1, Regelstange</translation>
    </message>
    <message>
        <source>engine %1, governor</source>
        <translation>Motor %1, Regler</translation>
    </message>
    <message>
        <source>engine %1, hand throttle</source>
        <translation>Motor %1, Handgas</translation>
    </message>
    <message>
        <source>engine %1, heat line</source>
        <translation>Motor %1, Wärmeleitung</translation>
    </message>
    <message>
        <source>engine %1, injectors</source>
        <translation>Motor %1, Einspritzdüsen</translation>
    </message>
    <message>
        <source>engine %1, isolating switch</source>
        <translation>Motor %1, Trennschalter</translation>
    </message>
    <message>
        <source>engine %1, oil pressure switch</source>
        <translation>Motor %1, Öldruckschalter</translation>
    </message>
    <message>
        <source>engine %1, protection</source>
        <translation>Motor %1, Schutz</translation>
    </message>
    <message>
        <source>engine %1, radiator</source>
        <translation>Motor %1, Kühler</translation>
    </message>
    <message>
        <source>engine %1, stop solenoid</source>
        <translation>Motor %1, Stoppmagnet</translation>
    </message>
    <message>
        <source>engine %1, sump</source>
        <translation>Motor %1, Ölwanne</translation>
    </message>
    <message>
        <source>engine %1, thermostat</source>
        <translation>Motor %1, Thermostat</translation>
    </message>
    <message>
        <source>engine lamp dark with the engine running and its oil gauge good</source>
        <translation>Motorlampe dunkel bei laufendem Motor und guter Öluhr</translation>
    </message>
    <message>
        <source>engine lamp lit with the oil gauge at nothing: it follows the speed alone</source>
        <translation>Motorlampe an bei Öluhr auf null: sie folgt allein der Drehzahl</translation>
    </message>
    <message>
        <source>engine oil is missing</source>
        <translation>Motoröl fehlt</translation>
    </message>
    <message>
        <source>engines can be stopped from the ground only; report</source>
        <translation>Motoren nur vom Boden abzustellen; melden</translation>
    </message>
    <message>
        <source>everything dark, no volts shown beyond it</source>
        <translation>alles dunkel, dahinter keine Volt gezeigt</translation>
    </message>
    <message>
        <source>exhauster of engine %1</source>
        <translation>Luftsauger von Motor %1</translation>
    </message>
    <message>
        <source>exhauster of engine %1, non-return valve</source>
        <translation>Luftsauger von Motor %1, Rückschlagventil</translation>
    </message>
    <message>
        <source>falls in lap, hiss in both cabs</source>
        <translation>fällt auf Abschluss, Zischen in beiden Führerständen</translation>
    </message>
    <message>
        <source>fan stands, coolant climbs under load</source>
        <translation>Lüfter steht, Kühlwasser steigt unter Last</translation>
    </message>
    <message>
        <source>final drive %1, air cock</source>
        <translation>Achsgetriebe %1, Lufthahn</translation>
    </message>
    <message>
        <source>final drive %1, direction valve</source>
        <translation>Achsgetriebe %1, Richtungsventil</translation>
    </message>
    <message>
        <source>final drive %1, dog sleeve</source>
        <translation>Achsgetriebe %1, Klauenmuffe</translation>
    </message>
    <message>
        <source>final drive %1, dogs</source>
        <translation>Achsgetriebe %1, Klauen</translation>
    </message>
    <message>
        <source>final drive %1, locking pin</source>
        <translation>Achsgetriebe %1, Sperrbolzen</translation>
    </message>
    <message>
        <source>final drive %1, mesh switch</source>
        <translation>Achsgetriebe %1, Eingriffsschalter</translation>
    </message>
    <message>
        <source>final drive %1, pipe to the shift cylinder</source>
        <translation>Achsgetriebe %1, Leitung zum Schaltzylinder</translation>
    </message>
    <message>
        <source>final drive %1, shift cylinder</source>
        <translation>Achsgetriebe %1, Schaltzylinder</translation>
    </message>
    <message>
        <source>find it by ear, isolate the drive if it empties the reservoir; report</source>
        <translation>nach dem Gehör finden, den Antrieb abtrennen, wenn er den Behälter leert; melden</translation>
    </message>
    <message>
        <source>find out who and why first: it may be a fitter&apos;s hand</source>
        <translation>erst herausfinden, wer und warum: es kann die Hand eines Schlossers sein</translation>
    </message>
    <message>
        <source>fire bell and lamp, nothing seen or smelled at the engine</source>
        <translation>Brandglocke und Lampe, nichts zu sehen oder zu riechen am Motor</translation>
    </message>
    <message>
        <source>fluid coupling %1</source>
        <translation>Strömungskupplung %1</translation>
    </message>
    <message>
        <source>freewheel %1</source>
        <translation>Freilauf %1</translation>
    </message>
    <message>
        <source>friction</source>
        <translation>Reibung</translation>
    </message>
    <message>
        <source>front and rear do not agree</source>
        <translation>vorn und hinten stimmen nicht überein</translation>
    </message>
    <message>
        <source>fuel gauge</source>
        <translation>Kraftstoffuhr</translation>
    </message>
    <message>
        <source>gauge and ears first; no power with the lamp dark: report</source>
        <translation>erst Uhr und Ohren; keine Kraft bei dunkler Lampe: melden</translation>
    </message>
    <message>
        <source>gauge both, walk and listen; no departure below 75</source>
        <translation>beide Uhren, gehen und horchen; keine Abfahrt unter 75</translation>
    </message>
    <message>
        <source>gauge climbs slowly though the compressors unload early</source>
        <translation>die Uhr steigt langsam, obwohl die Kompressoren früh entlasten</translation>
    </message>
    <message>
        <source>gauge first, then one gear or all; avoid that gear, report</source>
        <translation>erst die Uhr, dann ein Gang oder alle; diesen Gang meiden, melden</translation>
    </message>
    <message>
        <source>gauge first, then one gear or all; stay in third, report</source>
        <translation>erst die Uhr, dann ein Gang oder alle; im dritten bleiben, melden</translation>
    </message>
    <message>
        <source>gear</source>
        <translation>Gang</translation>
    </message>
    <message>
        <source>gearbox %1</source>
        <translation>Getriebe %1</translation>
    </message>
    <message>
        <source>gearbox %1, band of gear %2</source>
        <translation>Getriebe %1, Band von Gang %2</translation>
    </message>
    <message>
        <source>gearbox %1, clutch cylinder</source>
        <translation>Getriebe %1, Kupplungszylinder</translation>
    </message>
    <message>
        <source>gearbox %1, cylinder of gear %2</source>
        <translation>Getriebe %1, Zylinder von Gang %2</translation>
    </message>
    <message>
        <source>gearbox %1, direct clutch</source>
        <translation>Getriebe %1, direkte Kupplung</translation>
    </message>
    <message>
        <source>gearbox %1, drum of gear %2</source>
        <translation>Getriebe %1, Trommel von Gang %2</translation>
    </message>
    <message>
        <source>gearbox %1, pipe to the cylinder of gear %2</source>
        <translation>Getriebe %1, Leitung zum Zylinder von Gang %2</translation>
    </message>
    <message>
        <source>gearbox %1, valve of gear %2</source>
        <translation>Getriebe %1, Ventil von Gang %2</translation>
    </message>
    <message>
        <source>gearbox %1, valves of gears %2 and %3</source>
        <translation>Getriebe %1, Ventile der Gänge %2 und %3</translation>
    </message>
    <message>
        <source>generator of engine %1</source>
        <translation>Lichtmaschine von Motor %1</translation>
    </message>
    <message>
        <source>go on lightly if it runs evenly enough; report</source>
        <translation>sachte weiter, wenn er gleichmäßig genug läuft; melden</translation>
    </message>
    <message>
        <source>go on restricted only if the local rule allows; brake early, report</source>
        <translation>beschränkt weiter nur, wenn die örtliche Regel es erlaubt; früh bremsen, melden</translation>
    </message>
    <message>
        <source>go on with the other engine in that gear; report</source>
        <translation>in diesem Gang mit dem anderen Motor weiter; melden</translation>
    </message>
    <message>
        <source>go on with the other one if it keeps up; report</source>
        <translation>mit dem anderen weiter, wenn er nachkommt; melden</translation>
    </message>
    <message>
        <source>goes into forward with the reverser off; against reverse it stands still</source>
        <translation>geht vorwärts hinein bei Richtungshebel aus; gegen rückwärts steht sie still</translation>
    </message>
    <message>
        <source>goes into reverse with the reverser off; against forward it stands still</source>
        <translation>geht rückwärts hinein bei Richtungshebel aus; gegen vorwärts steht sie still</translation>
    </message>
    <message>
        <source>good volts at rest, dips deep at the button, slow grunt</source>
        <translation>gute Volt in Ruhe, tiefer Einbruch am Knopf, langsames Ächzen</translation>
    </message>
    <message>
        <source>green pool below; later hot, then the engine stops itself and will not start</source>
        <translation>grüne Lache darunter; später heiß, dann stellt sich der Motor ab und läuft nicht mehr an</translation>
    </message>
    <message>
        <source>ground start with the hand throttle, warmth; report</source>
        <translation>vom Boden anlassen mit Handgas, Wärme; melden</translation>
    </message>
    <message>
        <source>guard&apos;s valves of both cabs</source>
        <translation>Schaffnerventile beider Führerstände</translation>
    </message>
    <message>
        <source>guards gauge</source>
        <translation>Schaffneruhr</translation>
    </message>
    <message>
        <source>handbrake of car %1</source>
        <translation>Handbremse von Wagen %1</translation>
    </message>
    <message>
        <source>hard to start cold, little power; the filter is seen packed</source>
        <translation>kalt schwer anzulassen, wenig Kraft; der Filter ist als dicht zu sehen</translation>
    </message>
    <message>
        <source>hiss at the drive with a direction selected; air falls, slow into mesh</source>
        <translation>Zischen am Antrieb bei eingelegter Richtung; Luft fällt, langsam in Eingriff</translation>
    </message>
    <message>
        <source>home before a gear is selected</source>
        <translation>zurück, bevor ein Gang gewählt wird</translation>
    </message>
    <message>
        <source>horn valve</source>
        <translation>Hornventil</translation>
    </message>
    <message>
        <source>hoses between the cars</source>
        <translation>Schläuche zwischen den Wagen</translation>
    </message>
    <message>
        <source>idles too fast; seen at the engine</source>
        <translation>läuft zu schnell leer; am Motor zu sehen</translation>
    </message>
    <message>
        <source>in frost: that engine does not answer the notch, air good at the gauge</source>
        <translation>bei Frost: dieser Motor folgt der Stufe nicht, Luft an der Uhr gut</translation>
    </message>
    <message>
        <source>in frost: thump long after the reverser, or none; air good at the gauge</source>
        <translation>bei Frost: Schlag lange nach dem Richtungshebel, oder keiner; Luft an der Uhr gut</translation>
    </message>
    <message>
        <source>in lap the needle falls more than 3 inHg a minute; stalls below 21 when large; suck along side 1, a pipe chafed through</source>
        <translation>auf Abschluss fällt der Zeiger mehr als 3 inHg in der Minute; hängt unter 21, wenn groß; Saugen an Seite 1, ein durchgescheuertes Rohr</translation>
    </message>
    <message>
        <source>in lap the needle sinks: the brake creeps on</source>
        <translation>auf Abschluss sinkt der Zeiger: die Bremse kriecht an</translation>
    </message>
    <message>
        <source>in once; if it drops again leave it and report</source>
        <translation>einmal ein; fällt er wieder, lassen und melden</translation>
    </message>
    <message>
        <source>in once; not to leave without a tail lamp</source>
        <translation>einmal ein; keine Abfahrt ohne Schlusslicht</translation>
    </message>
    <message>
        <source>in rain: slow or not at all, by the local rule; report</source>
        <translation>bei Regen: langsam oder gar nicht, nach örtlicher Regel; melden</translation>
    </message>
    <message>
        <source>in that gear only the tachometer of that engine runs up, pull uneven; hot smell on its side</source>
        <translation>nur in diesem Gang läuft der Drehzahlmesser dieses Motors hoch, Zug ungleich; Brandgeruch auf seiner Seite</translation>
    </message>
    <message>
        <source>in that gear the air falls and the gear is slow to take hold</source>
        <translation>in diesem Gang fällt die Luft, und der Gang fasst langsam</translation>
    </message>
    <message>
        <source>in top only the tachometer runs up without speed</source>
        <translation>nur im höchsten Gang läuft der Drehzahlmesser hoch ohne Geschwindigkeit</translation>
    </message>
    <message>
        <source>in top the air falls and the gear is slow to take hold</source>
        <translation>im höchsten Gang fällt die Luft, und der Gang fasst langsam</translation>
    </message>
    <message>
        <source>inHg</source>
        <translation>inHg</translation>
    </message>
    <message>
        <source>injectors</source>
        <translation>Düsen</translation>
    </message>
    <message>
        <source>injectors do not work</source>
        <translation>Einspritzdüsen arbeiten nicht</translation>
    </message>
    <message>
        <source>isolate if it will not hold; report</source>
        <translation>abtrennen, wenn es nicht hält; melden</translation>
    </message>
    <message>
        <source>isolate that engine and its drive before working back</source>
        <translation>diesen Motor und seinen Antrieb abtrennen, bevor zurückgefahren wird</translation>
    </message>
    <message>
        <source>isolate that engine and its drive, go on restricted</source>
        <translation>diesen Motor und seinen Antrieb abtrennen, beschränkt weiter</translation>
    </message>
    <message>
        <source>isolate that engine and its drive, go on restricted or fail the unit</source>
        <translation>diesen Motor und seinen Antrieb abtrennen, beschränkt weiter oder den Zug stilllegen</translation>
    </message>
    <message>
        <source>isolate that engine, go on restricted</source>
        <translation>diesen Motor abtrennen, beschränkt weiter</translation>
    </message>
    <message>
        <source>it keeps the air down: report both</source>
        <translation>es hält die Luft unten: beides melden</translation>
    </message>
    <message>
        <source>its air valves are stuck open in a notch</source>
        <translation>seine Luftventile hängen in einer Stufe offen</translation>
    </message>
    <message>
        <source>its air valves do not open</source>
        <translation>seine Luftventile öffnen nicht</translation>
    </message>
    <message>
        <source>its non-return valve does not hold</source>
        <translation>sein Rückschlagventil hält nicht</translation>
    </message>
    <message>
        <source>its tell-tale is out, seen at the engine</source>
        <translation>ihr Melder steht heraus, am Motor zu sehen</translation>
    </message>
    <message>
        <source>keep it running; report</source>
        <translation>ihn laufen lassen; melden</translation>
    </message>
    <message>
        <source>key on, desk dark, saloon lights good</source>
        <translation>Schlüssel an, Pult dunkel, Abteillicht gut</translation>
    </message>
    <message>
        <source>key on, desk dark, volts good at the cupboard, breakers in</source>
        <translation>Schlüssel an, Pult dunkel, Volt am Schaltschrank gut, Automaten ein</translation>
    </message>
    <message>
        <source>key on, this desk dark; the other desk works</source>
        <translation>Schlüssel an, dieses Pult dunkel; das andere geht</translation>
    </message>
    <message>
        <source>lamp air</source>
        <translation>Luftlampe</translation>
    </message>
    <message>
        <source>lamp charge</source>
        <translation>Ladelampe</translation>
    </message>
    <message>
        <source>lamp device</source>
        <translation>Totmannlampe</translation>
    </message>
    <message>
        <source>lamp engine1</source>
        <translation>Lampe Motor 1</translation>
    </message>
    <message>
        <source>lamp engine2</source>
        <translation>Lampe Motor 2</translation>
    </message>
    <message>
        <source>lamp fire</source>
        <translation>Brandlampe</translation>
    </message>
    <message>
        <source>let go: lamp out, throttle dead, no brake</source>
        <translation>loslassen: Lampe aus, Fahrschalter tot, keine Bremse</translation>
    </message>
    <message>
        <source>let go: lamp stays lit, throttle stays in; brake comes after 5 s</source>
        <translation>loslassen: Lampe bleibt an, Fahrschalter bleibt drin; Bremse kommt nach 5 s</translation>
    </message>
    <message>
        <source>light throttle, idle at stops; isolate before it trips</source>
        <translation>leichte Stufe, Leerlauf an Halten; abtrennen, bevor er auslöst</translation>
    </message>
    <message>
        <source>light throttle, watch the gauge; isolate</source>
        <translation>leichte Stufe, die Uhr beobachten; abtrennen</translation>
    </message>
    <message>
        <source>light throttle; report</source>
        <translation>leichte Stufe; melden</translation>
    </message>
    <message>
        <source>lit when it has to be dark</source>
        <translation>an, wenn sie dunkel sein muss</translation>
    </message>
    <message>
        <source>long cranking, white smoke, catches unevenly, dies if let go early</source>
        <translation>langes Drehen, weißer Rauch, kommt ungleich, stirbt bei frühem Loslassen</translation>
    </message>
    <message>
        <source>longer pause in that gear; report</source>
        <translation>längere Pause in diesem Gang; melden</translation>
    </message>
    <message>
        <source>look before believing; no bypass: isolate, go on restricted</source>
        <translation>nachsehen, bevor man glaubt; keine Überbrückung: abtrennen, beschränkt weiter</translation>
    </message>
    <message>
        <source>look in both cabs before blaming a hose</source>
        <translation>in beiden Führerständen nachsehen, bevor ein Schlauch beschuldigt wird</translation>
    </message>
    <message>
        <source>lost</source>
        <translation>verloren</translation>
    </message>
    <message>
        <source>main reservoir and pipes</source>
        <translation>Hauptbehälter und Rohre</translation>
    </message>
    <message>
        <source>main reservoir, drain cock, side %1</source>
        <translation>Hauptbehälter, Ablasshahn, Seite %1</translation>
    </message>
    <message>
        <source>main reservoir, safety valve</source>
        <translation>Hauptbehälter, Sicherheitsventil</translation>
    </message>
    <message>
        <source>missing</source>
        <translation>fehlen</translation>
    </message>
    <message>
        <source>mm</source>
        <translation>mm</translation>
    </message>
    <message>
        <source>mohm</source>
        <translation>mOhm</translation>
    </message>
    <message>
        <source>moisture has frozen in its pipe</source>
        <translation>Feuchtigkeit ist in seiner Leitung gefroren</translation>
    </message>
    <message>
        <source>moisture has frozen in the pipe</source>
        <translation>Feuchtigkeit ist in der Leitung gefroren</translation>
    </message>
    <message>
        <source>mph</source>
        <translation>mph</translation>
    </message>
    <message>
        <source>needle from 21 to 10-15 and will not come back; tell-tale on the car&apos;s end</source>
        <translation>Zeiger von 21 auf 10-15 und kommt nicht zurück; Melder am Wagenende</translation>
    </message>
    <message>
        <source>needle to nothing at once, brake full on</source>
        <translation>Zeiger sofort auf null, Bremse voll an</translation>
    </message>
    <message>
        <source>never 21 from this cab, 21 from the other</source>
        <translation>nie 21 von diesem Führerstand, 21 vom anderen</translation>
    </message>
    <message>
        <source>no canister</source>
        <translation>keine Büchse</translation>
    </message>
    <message>
        <source>no click from anywhere for that engine, the other one starts</source>
        <translation>kein Klick von irgendwo für diesen Motor, der andere läuft an</translation>
    </message>
    <message>
        <source>no departure from this cab; report</source>
        <translation>keine Abfahrt von diesem Führerstand; melden</translation>
    </message>
    <message>
        <source>no departure without a tail lamp</source>
        <translation>keine Abfahrt ohne Schlusslicht</translation>
    </message>
    <message>
        <source>no departure without a way to answer; report</source>
        <translation>keine Abfahrt ohne einen Weg zu antworten; melden</translation>
    </message>
    <message>
        <source>no departure without it; report</source>
        <translation>keine Abfahrt ohne ihn; melden</translation>
    </message>
    <message>
        <source>no departure without them</source>
        <translation>keine Abfahrt ohne sie</translation>
    </message>
    <message>
        <source>no departure; both needles, walk and listen</source>
        <translation>keine Abfahrt; beide Zeiger, gehen und horchen</translation>
    </message>
    <message>
        <source>no departure; repair or fail</source>
        <translation>keine Abfahrt; instand setzen oder stilllegen</translation>
    </message>
    <message>
        <source>no gear while coasting fast; isolate that engine at the next stop</source>
        <translation>kein Gang beim schnellen Rollen; diesen Motor am nächsten Halt abtrennen</translation>
    </message>
    <message>
        <source>no hiss and no thump on that side in forward; reverse works</source>
        <translation>kein Zischen und kein Schlag auf dieser Seite vorwärts; rückwärts geht</translation>
    </message>
    <message>
        <source>no hiss and no thump on that side in reverse; forward works</source>
        <translation>kein Zischen und kein Schlag auf dieser Seite rückwärts; vorwärts geht</translation>
    </message>
    <message>
        <source>no power with the lamp dark: isolate or fail, by the local rule</source>
        <translation>keine Kraft bei dunkler Lampe: abtrennen oder stilllegen, nach örtlicher Regel</translation>
    </message>
    <message>
        <source>no refill hot; isolate, pin the final drive, go on restricted</source>
        <translation>heiß nicht nachfüllen; abtrennen, das Achsgetriebe sperren, beschränkt weiter</translation>
    </message>
    <message>
        <source>no second gear against it; stop, isolate that engine</source>
        <translation>kein zweiter Gang dagegen; halten, diesen Motor abtrennen</translation>
    </message>
    <message>
        <source>no standing on it: scotches, report</source>
        <translation>nicht darauf stehen lassen: Hemmschuhe, melden</translation>
    </message>
    <message>
        <source>no start from anywhere, lamp dark; seen at the engine</source>
        <translation>kein Anlassen von irgendwo, Lampe dunkel; am Motor zu sehen</translation>
    </message>
    <message>
        <source>no start; ask</source>
        <translation>nicht anlassen; fragen</translation>
    </message>
    <message>
        <source>no take-up in that gear on one engine only, the others good</source>
        <translation>kein Fassen in diesem Gang nur bei einem Motor, die anderen gut</translation>
    </message>
    <message>
        <source>no thump either way, cab stops dead too; the other cab works</source>
        <translation>kein Schlag in keiner Richtung, auch der Stoppknopf tot; der andere Führerstand geht</translation>
    </message>
    <message>
        <source>no thump on that side, air lamp dark with the gauge good</source>
        <translation>kein Schlag auf dieser Seite, Luftlampe dunkel bei guter Uhr</translation>
    </message>
    <message>
        <source>no unit stands on vacuum: handbrake; report</source>
        <translation>kein Zug steht auf Vakuum: Handbremse; melden</translation>
    </message>
    <message>
        <source>no vacuum at all, loud suck at that end</source>
        <translation>gar kein Vakuum, lautes Saugen an diesem Ende</translation>
    </message>
    <message>
        <source>not to leave without a working fire bell, by the local rule; report</source>
        <translation>keine Abfahrt ohne wirkende Brandglocke, nach örtlicher Regel; melden</translation>
    </message>
    <message>
        <source>notch</source>
        <translation>Stufe</translation>
    </message>
    <message>
        <source>nothing on the dipstick; oil pressure late or absent, lamp dark or flickering</source>
        <translation>nichts am Messstab; Öldruck spät oder gar nicht, Lampe dunkel oder flackernd</translation>
    </message>
    <message>
        <source>of cycles</source>
        <translation>der Arbeitsspiele</translation>
    </message>
    <message>
        <source>oil gauge</source>
        <translation>Öluhr</translation>
    </message>
    <message>
        <source>oil is missing in the fluid coupling</source>
        <translation>in der Strömungskupplung fehlt Öl</translation>
    </message>
    <message>
        <source>one start in it: choose the better engine, let it charge before the other</source>
        <translation>ein Start ist darin: den besseren Motor wählen, ihn laden lassen vor dem anderen</translation>
    </message>
    <message>
        <source>one tachometer runs up in every gear under power, note uneven</source>
        <translation>ein Drehzahlmesser läuft unter Kraft in jedem Gang hoch, Ton ungleichmäßig</translation>
    </message>
    <message>
        <source>one tone left: report; none: by the local rule</source>
        <translation>ein Ton bleibt: melden; keiner: nach örtlicher Regel</translation>
    </message>
    <message>
        <source>only seen together with a leaking main reservoir: control air falls with it</source>
        <translation>nur zusammen mit undichtem Hauptbehälter zu sehen: die Steuerluft fällt mit</translation>
    </message>
    <message>
        <source>other direction and back, ease the brake so that the wheels move a little; report</source>
        <translation>andere Richtung und zurück, die Bremse nachlassen, dass sich die Räder ein wenig bewegen; melden</translation>
    </message>
    <message>
        <source>other instruments and the other cab first; with the thing itself sound: report</source>
        <translation>erst andere Anzeigen und der andere Führerstand; ist die Sache selbst heil: melden</translation>
    </message>
    <message>
        <source>over 22 from this cab; after a change of ends 21 shown and the brake drags</source>
        <translation>über 22 von diesem Führerstand; nach einem Wechsel 21 gezeigt und die Bremse schleift</translation>
    </message>
    <message>
        <source>over 22 is a defect; overcharge: handbrakes, destroy, cords, raise, test</source>
        <translation>über 22 ist ein Mangel; Überladung: Handbremsen, vernichten, Schnüre, anheben, proben</translation>
    </message>
    <message>
        <source>over 3 inHg a minute no departure; the other cab&apos;s valve does not</source>
        <translation>über 3 inHg in der Minute keine Abfahrt; das Ventil des anderen Führerstands tut es nicht</translation>
    </message>
    <message>
        <source>passenger alarm</source>
        <translation>Notbremse</translation>
    </message>
    <message>
        <source>passenger doors, side %1</source>
        <translation>Fahrgasttüren, Seite %1</translation>
    </message>
    <message>
        <source>poor injection: fires late and unwillingly</source>
        <translation>schlechte Einspritzung: zündet spät und unwillig</translation>
    </message>
    <message>
        <source>press them home, test again; report</source>
        <translation>fest zudrücken, noch einmal proben; melden</translation>
    </message>
    <message>
        <source>psi</source>
        <translation>psi</translation>
    </message>
    <message>
        <source>pulls without a gear selected, fights every other gear; engine labours</source>
        <translation>zieht ohne gewählten Gang, kämpft gegen jeden anderen; Motor quält sich</translation>
    </message>
    <message>
        <source>read the volts before the first button; choose the engine</source>
        <translation>die Volt vor dem ersten Knopf ablesen; den Motor wählen</translation>
    </message>
    <message>
        <source>release needle low at idle, falls with engines stopped, releases slow; suck below car 2</source>
        <translation>Lösezeiger im Leerlauf niedrig, fällt bei stehenden Motoren, löst langsam; Saugen unter Wagen 2</translation>
    </message>
    <message>
        <source>release pipe</source>
        <translation>Löseleitung</translation>
    </message>
    <message>
        <source>release pipe and its reservoir, car %1</source>
        <translation>Löseleitung und ihr Behälter, Wagen %1</translation>
    </message>
    <message>
        <source>release pipe falls as soon as that engine stops</source>
        <translation>die Löseleitung fällt, sobald dieser Motor steht</translation>
    </message>
    <message>
        <source>release pipe low at idle, better with revs</source>
        <translation>Löseleitung im Leerlauf niedrig, besser mit Drehzahl</translation>
    </message>
    <message>
        <source>release pipe never above a low figure with that engine alone</source>
        <translation>Löseleitung mit diesem Motor allein nie über einer niedrigen Zahl</translation>
    </message>
    <message>
        <source>repeat once, time it, check cock and seal; the unit fails. Late is not works</source>
        <translation>einmal wiederholen, Zeit nehmen, Hahn und Plombe ansehen; der Zug fährt nicht. Spät ist nicht in Ordnung</translation>
    </message>
    <message>
        <source>report</source>
        <translation>melden</translation>
    </message>
    <message>
        <source>report before leaving</source>
        <translation>vor der Abfahrt melden</translation>
    </message>
    <message>
        <source>report; adjust before leaving</source>
        <translation>melden; vor der Abfahrt nachstellen</translation>
    </message>
    <message>
        <source>report; do not stop both engines</source>
        <translation>melden; nicht beide Motoren abstellen</translation>
    </message>
    <message>
        <source>report; isolate if the air does not hold</source>
        <translation>melden; abtrennen, wenn die Luft nicht hält</translation>
    </message>
    <message>
        <source>report; isolate that engine rather than run it dry</source>
        <translation>melden; diesen Motor eher abtrennen, als es trocken laufen zu lassen</translation>
    </message>
    <message>
        <source>report; light throttle</source>
        <translation>melden; leichte Stufe</translation>
    </message>
    <message>
        <source>report; no departure below 75</source>
        <translation>melden; keine Abfahrt unter 75</translation>
    </message>
    <message>
        <source>report; not to leave with fewer than the rule allows</source>
        <translation>melden; keine Abfahrt mit weniger, als die Regel erlaubt</translation>
    </message>
    <message>
        <source>report; outside supply</source>
        <translation>melden; Fremdversorgung</translation>
    </message>
    <message>
        <source>reseat if allowed, else drive from the other end only with a rule for it</source>
        <translation>einstecken, wenn erlaubt, sonst vom anderen Ende nur fahren mit einer Regel dafür</translation>
    </message>
    <message>
        <source>reverser over, no second thump, air lamp dark with the gauge good</source>
        <translation>Richtungshebel um, kein zweiter dumpfer Schlag, Luftlampe dunkel bei guter Uhr</translation>
    </message>
    <message>
        <source>reverser over, no thump at all on that side, air lamp stays dark</source>
        <translation>Richtungshebel um, gar kein Schlag auf dieser Seite, Luftlampe bleibt dunkel</translation>
    </message>
    <message>
        <source>rod far out when applied, bites late and weakly</source>
        <translation>Stange beim Anlegen weit heraus, beißt spät und schwach</translation>
    </message>
    <message>
        <source>rough, uneven note, less pull from that side</source>
        <translation>rauer, ungleicher Ton, weniger Zug von dieser Seite</translation>
    </message>
    <message>
        <source>rpm</source>
        <translation>U/min</translation>
    </message>
    <message>
        <source>rpm1</source>
        <translation>Drehzahl 1</translation>
    </message>
    <message>
        <source>rpm2</source>
        <translation>Drehzahl 2</translation>
    </message>
    <message>
        <source>running brake test: little bite for the inches</source>
        <translation>Bremsprobe unterwegs: wenig Biss für die Zoll</translation>
    </message>
    <message>
        <source>s</source>
        <translation>s</translation>
    </message>
    <message>
        <source>seen along that side</source>
        <translation>an dieser Seite entlang zu sehen</translation>
    </message>
    <message>
        <source>seen at that end only</source>
        <translation>nur an diesem Ende zu sehen</translation>
    </message>
    <message>
        <source>seen at that side only</source>
        <translation>nur auf dieser Seite zu sehen</translation>
    </message>
    <message>
        <source>seen at the end</source>
        <translation>am Ende zu sehen</translation>
    </message>
    <message>
        <source>seen at the rear end: no red</source>
        <translation>am hinteren Ende zu sehen: kein Rot</translation>
    </message>
    <message>
        <source>seen from this side only</source>
        <translation>nur von dieser Seite zu sehen</translation>
    </message>
    <message>
        <source>seen on the ground; that engine runs up without pulling</source>
        <translation>vom Boden zu sehen; dieser Motor läuft hoch, ohne zu ziehen</translation>
    </message>
    <message>
        <source>seen on the walk; less brake</source>
        <translation>beim Rundgang zu sehen; weniger Bremse</translation>
    </message>
    <message>
        <source>seen only by looking closely; device test: lamp out, no brake</source>
        <translation>nur bei genauem Hinsehen zu sehen; Totmannprobe: Lampe aus, keine Bremse</translation>
    </message>
    <message>
        <source>seen when looked at</source>
        <translation>beim Hinsehen zu sehen</translation>
    </message>
    <message>
        <source>set it</source>
        <translation>stellen</translation>
    </message>
    <message>
        <source>share</source>
        <translation>Anteil</translation>
    </message>
    <message>
        <source>shut it, wait for the cut-out, test, book</source>
        <translation>schließen, auf das Abschalten warten, erproben, eintragen</translation>
    </message>
    <message>
        <source>shut it; nothing moves with a door open</source>
        <translation>schließen; nichts fährt mit offener Tür</translation>
    </message>
    <message>
        <source>shut off at once, isolate that engine and its drive; report</source>
        <translation>sofort abschalten, diesen Motor und seinen Antrieb abtrennen; melden</translation>
    </message>
    <message>
        <source>shut off, do not sit in a low gear uphill; isolate if it boils</source>
        <translation>abschalten, nicht bergauf in einem niedrigen Gang verharren; abtrennen, wenn sie kocht</translation>
    </message>
    <message>
        <source>shut off, stop, release, feel near the wheels; report the heat</source>
        <translation>abschalten, halten, lösen, in der Nähe der Räder fühlen; die Hitze melden</translation>
    </message>
    <message>
        <source>shut off; light throttle in that gear to the next stop only, isolate</source>
        <translation>abschalten; in diesem Gang nur eine leichte Stufe bis zum nächsten Halt, abtrennen</translation>
    </message>
    <message>
        <source>shut off; light throttle to the next stop, isolate that engine</source>
        <translation>abschalten; leichte Stufe bis zum nächsten Halt, diesen Motor abtrennen</translation>
    </message>
    <message>
        <source>side %1 of car %2</source>
        <translation>Seite %1 von Wagen %2</translation>
    </message>
    <message>
        <source>silent under the fire test, lamp lit</source>
        <translation>still unter der Brandprobe, Lampe an</translation>
    </message>
    <message>
        <source>silent when tried</source>
        <translation>still beim Versuch</translation>
    </message>
    <message>
        <source>skip that gear if the load allows; report</source>
        <translation>diesen Gang auslassen, wenn die Last es erlaubt; melden</translation>
    </message>
    <message>
        <source>slow away, no coasting, blocks seen on at one wheelset with 21 shown</source>
        <translation>zähe Anfahrt, kein Rollen, Klötze an einem Radsatz an bei gezeigten 21</translation>
    </message>
    <message>
        <source>slow away, no coasting, smoke at that car; the gauge says released</source>
        <translation>zähe Anfahrt, kein Rollen, Rauch an diesem Wagen; die Uhr sagt gelöst</translation>
    </message>
    <message>
        <source>slow cranking with good volts; hot starter</source>
        <translation>langsames Drehen bei guten Volt; heißer Anlasser</translation>
    </message>
    <message>
        <source>something was left on</source>
        <translation>etwas blieb an</translation>
    </message>
    <message>
        <source>spare loads off, do not stop both engines, tell the signaller, exchange early</source>
        <translation>entbehrliche Verbraucher aus, nicht beide Motoren abstellen, Fahrdienstleiter verständigen, früh tauschen</translation>
    </message>
    <message>
        <source>spare loads off; report</source>
        <translation>entbehrliche Verbraucher aus; melden</translation>
    </message>
    <message>
        <source>speed</source>
        <translation>Geschwindigkeit</translation>
    </message>
    <message>
        <source>standing applied, that cylinder&apos;s blocks are off after minutes; suck at it</source>
        <translation>im Stand angelegt sind die Klötze dieses Zylinders nach Minuten los; Saugen an ihm</translation>
    </message>
    <message>
        <source>stands tooth on tooth though the engine idles; the shaft does not turn</source>
        <translation>steht Zahn auf Zahn, obwohl der Motor leerläuft; die Welle dreht nicht</translation>
    </message>
    <message>
        <source>start from elsewhere; report</source>
        <translation>von anderswo anlassen; melden</translation>
    </message>
    <message>
        <source>start relay of engine %1</source>
        <translation>Anlassrelais von Motor %1</translation>
    </message>
    <message>
        <source>start the other one first; report</source>
        <translation>den anderen zuerst anlassen; melden</translation>
    </message>
    <message>
        <source>start the other one, go on restricted or fail; report</source>
        <translation>den anderen anlassen, beschränkt weiter oder stilllegen; melden</translation>
    </message>
    <message>
        <source>start the other one; isolate, report</source>
        <translation>den anderen anlassen; abtrennen, melden</translation>
    </message>
    <message>
        <source>starter of engine %1</source>
        <translation>Anlasser von Motor %1</translation>
    </message>
    <message>
        <source>stay stopped, secure, look between</source>
        <translation>stehen bleiben, sichern, dazwischen nachsehen</translation>
    </message>
    <message>
        <source>still stop and look; then report</source>
        <translation>trotzdem halten und nachsehen; dann melden</translation>
    </message>
    <message>
        <source>still when switched on</source>
        <translation>steht, wenn er eingeschaltet wird</translation>
    </message>
    <message>
        <source>stop at a fit place, guard deals with it, reset from outside, test, report</source>
        <translation>an geeigneter Stelle halten, Schaffner kümmert sich, von außen zurückstellen, proben, melden</translation>
    </message>
    <message>
        <source>stop it from cab or ground, fuel cock if need be; isolate</source>
        <translation>von Führerstand oder Boden abstellen, nötigenfalls mit dem Kraftstoffhahn; abtrennen</translation>
    </message>
    <message>
        <source>stop it from the cab at once, brake; isolate</source>
        <translation>sofort vom Führerstand abstellen, bremsen; abtrennen</translation>
    </message>
    <message>
        <source>stop it on the ground; report before it is needed in a fire</source>
        <translation>am Boden abstellen; melden, bevor es bei einem Feuer gebraucht wird</translation>
    </message>
    <message>
        <source>stop it, isolate; report</source>
        <translation>abstellen, abtrennen; melden</translation>
    </message>
    <message>
        <source>stop that engine if it does not hold; report</source>
        <translation>diesen Motor abstellen, wenn es nicht hält; melden</translation>
    </message>
    <message>
        <source>stop that engine; do not start it again</source>
        <translation>diesen Motor abstellen; nicht wieder anlassen</translation>
    </message>
    <message>
        <source>stop, look and feel near the wheels; do not drag a locked wheel</source>
        <translation>halten, nachsehen und in der Nähe der Räder fühlen; kein blockiertes Rad schleifen</translation>
    </message>
    <message>
        <source>stop, shut off, isolate that engine and its drive</source>
        <translation>halten, abschalten, diesen Motor und seinen Antrieb abtrennen</translation>
    </message>
    <message>
        <source>stop, stop that engine from the cab, fuel cock, bottle, people away, protection</source>
        <translation>halten, diesen Motor vom Führerstand abstellen, Kraftstoffhahn, Flasche, Leute weg, Sicherung</translation>
    </message>
    <message>
        <source>tachometer and oil gauge first: with pressure there it is the switch; report</source>
        <translation>erst Drehzahlmesser und Öluhr: mit Druck dort ist es der Schalter; melden</translation>
    </message>
    <message>
        <source>test the device, report</source>
        <translation>den Totmann erproben, melden</translation>
    </message>
    <message>
        <source>that engine does not come back to idle with the throttle shut</source>
        <translation>dieser Motor kommt bei geschlossenem Fahrschalter nicht auf Leerlauf zurück</translation>
    </message>
    <message>
        <source>that engine lags behind the notch, hiss at it while the throttle is open</source>
        <translation>dieser Motor bleibt hinter der Stufe zurück, Zischen bei ihm bei offenem Fahrschalter</translation>
    </message>
    <message>
        <source>that engine runs faster for the same pull; hot smell, brown varnish</source>
        <translation>dieser Motor läuft schneller für denselben Zug; Brandgeruch, brauner Lack</translation>
    </message>
    <message>
        <source>that engine stays at idle in every notch; cab start turns without smoke</source>
        <translation>dieser Motor bleibt in jeder Stufe im Leerlauf; Anlassen vom Führerstand dreht ohne Rauch</translation>
    </message>
    <message>
        <source>that gear takes hold late with air good at the gauge</source>
        <translation>dieser Gang fasst spät bei guter Luft an der Uhr</translation>
    </message>
    <message>
        <source>the air cock was left shut</source>
        <translation>der Lufthahn blieb zu</translation>
    </message>
    <message>
        <source>the air filter is blocked</source>
        <translation>der Luftfilter ist verstopft</translation>
    </message>
    <message>
        <source>the bag is torn, air draws into the chamber</source>
        <translation>der Balg ist gerissen, Luft zieht in die Kammer</translation>
    </message>
    <message>
        <source>the ball valve passes</source>
        <translation>das Kugelventil lässt durch</translation>
    </message>
    <message>
        <source>the band&apos;s cylinder leaks</source>
        <translation>der Zylinder des Bandes ist undicht</translation>
    </message>
    <message>
        <source>the band&apos;s lining is worn</source>
        <translation>der Belag des Bandes ist verschlissen</translation>
    </message>
    <message>
        <source>the battery is worn out</source>
        <translation>die Batterie ist verbraucht</translation>
    </message>
    <message>
        <source>the battery switch was left open</source>
        <translation>der Batterieschalter blieb offen</translation>
    </message>
    <message>
        <source>the bell button of this cab is dead</source>
        <translation>der Klingelknopf dieses Führerstands ist tot</translation>
    </message>
    <message>
        <source>the bell in this cab does not sound</source>
        <translation>die Klingel in diesem Führerstand klingt nicht</translation>
    </message>
    <message>
        <source>the blocks are worn out: long travel</source>
        <translation>die Klötze sind abgenutzt: langer Weg</translation>
    </message>
    <message>
        <source>the box is locked against itself: no movement, the engine is held down</source>
        <translation>das Getriebe ist in sich verriegelt: keine Bewegung, der Motor wird gedrückt</translation>
    </message>
    <message>
        <source>the bracket is empty</source>
        <translation>die Halterung ist leer</translation>
    </message>
    <message>
        <source>the brake sticks on (frozen blocks, stiff rigging)</source>
        <translation>die Bremse bleibt an (angefrorene Klötze, steifes Gestänge)</translation>
    </message>
    <message>
        <source>the breaker of indication lamps and bell is out</source>
        <translation>der Automat der Meldelampen und der Klingel ist aus</translation>
    </message>
    <message>
        <source>the breaker of lights, displays and wipers is out</source>
        <translation>der Automat für Lichter, Zielanzeigen und Wischer ist aus</translation>
    </message>
    <message>
        <source>the cab&apos;s stop button does nothing: the engine runs on, lamp lit</source>
        <translation>der Stoppknopf des Führerstands tut nichts: der Motor läuft weiter, Lampe an</translation>
    </message>
    <message>
        <source>the check valve does not hold</source>
        <translation>das Rückschlagventil hält nicht</translation>
    </message>
    <message>
        <source>the check valve hardly opens</source>
        <translation>das Rückschlagventil öffnet kaum</translation>
    </message>
    <message>
        <source>the choke is partly blocked</source>
        <translation>die Drossel ist teilweise verstopft</translation>
    </message>
    <message>
        <source>the choke is too wide</source>
        <translation>die Drossel ist zu weit</translation>
    </message>
    <message>
        <source>the clutch cylinder leaks</source>
        <translation>der Kupplungszylinder ist undicht</translation>
    </message>
    <message>
        <source>the compressor is worn</source>
        <translation>der Kompressor ist verschlissen</translation>
    </message>
    <message>
        <source>the compressor&apos;s belt is gone</source>
        <translation>der Riemen des Kompressors ist weg</translation>
    </message>
    <message>
        <source>the compressor&apos;s belt slips</source>
        <translation>der Riemen des Kompressors rutscht</translation>
    </message>
    <message>
        <source>the compressors unload too early</source>
        <translation>die Kompressoren entlasten zu früh</translation>
    </message>
    <message>
        <source>the contact under the handle stays made</source>
        <translation>der Kontakt unter dem Griff bleibt geschlossen</translation>
    </message>
    <message>
        <source>the control breaker is out</source>
        <translation>der Automat der Steuerung ist aus</translation>
    </message>
    <message>
        <source>the control jumper is half out of its socket</source>
        <translation>das Steuerkabel ist halb aus der Dose</translation>
    </message>
    <message>
        <source>the control relay does not pull</source>
        <translation>das Steuerrelais zieht nicht an</translation>
    </message>
    <message>
        <source>the control reservoir or its pipes leak</source>
        <translation>der Steuerbehälter oder seine Rohre sind undicht</translation>
    </message>
    <message>
        <source>the detonators are missing</source>
        <translation>die Knallkapseln fehlen</translation>
    </message>
    <message>
        <source>the device&apos;s valve does not open</source>
        <translation>das Ventil des Totmanns öffnet nicht</translation>
    </message>
    <message>
        <source>the display shows another working</source>
        <translation>die Zielanzeige zeigt eine andere Leistung</translation>
    </message>
    <message>
        <source>the dog sleeve sticks where it is</source>
        <translation>die Klauenmuffe klemmt, wo sie ist</translation>
    </message>
    <message>
        <source>the dog teeth do not face gaps</source>
        <translation>die Klauenzähne stehen nicht vor Lücken</translation>
    </message>
    <message>
        <source>the dogs are worn and jump out under load</source>
        <translation>die Klauen sind verschlissen und springen unter Last heraus</translation>
    </message>
    <message>
        <source>the drain cock of the control reservoir is open</source>
        <translation>der Ablasshahn des Steuerbehälters ist offen</translation>
    </message>
    <message>
        <source>the drain cock of the main reservoir is open</source>
        <translation>der Ablasshahn des Hauptbehälters ist offen</translation>
    </message>
    <message>
        <source>the drum is seized to the case</source>
        <translation>die Trommel ist am Gehäuse festgefressen</translation>
    </message>
    <message>
        <source>the engine is on fire</source>
        <translation>der Motor brennt</translation>
    </message>
    <message>
        <source>the engine stops, lamp dark; water and temperature are good</source>
        <translation>der Motor bleibt stehen, Lampe dunkel; Wasser und Temperatur sind gut</translation>
    </message>
    <message>
        <source>the exhauster is worn</source>
        <translation>der Luftsauger ist verschlissen</translation>
    </message>
    <message>
        <source>the exhauster&apos;s belt is gone</source>
        <translation>der Riemen des Luftsaugers ist weg</translation>
    </message>
    <message>
        <source>the exhauster&apos;s belt slips</source>
        <translation>der Riemen des Luftsaugers rutscht</translation>
    </message>
    <message>
        <source>the fan&apos;s belt is gone</source>
        <translation>der Riemen des Lüfters ist weg</translation>
    </message>
    <message>
        <source>the feed valve is set high</source>
        <translation>das Regelventil steht zu hoch</translation>
    </message>
    <message>
        <source>the feed valve is set low</source>
        <translation>das Regelventil steht zu niedrig</translation>
    </message>
    <message>
        <source>the fire bell of this cab is dead</source>
        <translation>die Brandglocke dieses Führerstands ist tot</translation>
    </message>
    <message>
        <source>the fire bottle is empty</source>
        <translation>die Löschflasche ist leer</translation>
    </message>
    <message>
        <source>the fire extinguisher is missing</source>
        <translation>der Feuerlöscher fehlt</translation>
    </message>
    <message>
        <source>the fire test is silent in both cabs; a fire at that engine would not ring</source>
        <translation>die Brandprobe ist in beiden Führerständen still; ein Feuer an diesem Motor würde nicht läuten</translation>
    </message>
    <message>
        <source>the freewheel is seized</source>
        <translation>der Freilauf ist festgefressen</translation>
    </message>
    <message>
        <source>the freewheel slips under load</source>
        <translation>der Freilauf rutscht unter Last</translation>
    </message>
    <message>
        <source>the fuel cock was left shut</source>
        <translation>der Kraftstoffhahn blieb zu</translation>
    </message>
    <message>
        <source>the fuel rack sticks</source>
        <translation>die Regelstange klemmt</translation>
    </message>
    <message>
        <source>the gauge at the engine decides: no pressure within ten seconds, stop it; report</source>
        <translation>die Uhr am Motor entscheidet: kein Druck binnen zehn Sekunden, abstellen; melden</translation>
    </message>
    <message>
        <source>the gauge decides; report</source>
        <translation>die Uhr entscheidet; melden</translation>
    </message>
    <message>
        <source>the gauge drops several psi at each call</source>
        <translation>die Uhr fällt bei jedem Ruf um mehrere psi</translation>
    </message>
    <message>
        <source>the gear&apos;s valve is stuck open</source>
        <translation>das Ventil des Ganges hängt offen</translation>
    </message>
    <message>
        <source>the gear&apos;s valve is stuck shut</source>
        <translation>das Ventil des Ganges hängt zu</translation>
    </message>
    <message>
        <source>the gearbox is low on oil</source>
        <translation>im Getriebe ist zu wenig Öl</translation>
    </message>
    <message>
        <source>the generator does not charge</source>
        <translation>die Lichtmaschine lädt nicht</translation>
    </message>
    <message>
        <source>the generator gives less than it should</source>
        <translation>die Lichtmaschine gibt weniger, als sie soll</translation>
    </message>
    <message>
        <source>the governor over-reacts</source>
        <translation>der Regler überregelt</translation>
    </message>
    <message>
        <source>the guard&apos;s valve was not shut right</source>
        <translation>das Schaffnerventil wurde nicht richtig geschlossen</translation>
    </message>
    <message>
        <source>the guard&apos;s valves pass when shut</source>
        <translation>die Schaffnerventile lassen geschlossen durch</translation>
    </message>
    <message>
        <source>the hand throttle was left out</source>
        <translation>das Handgas blieb herausgezogen</translation>
    </message>
    <message>
        <source>the handbrake is on</source>
        <translation>die Handbremse ist an</translation>
    </message>
    <message>
        <source>the heat line is broken</source>
        <translation>die Wärmeleitung ist unterbrochen</translation>
    </message>
    <message>
        <source>the heat line warns without a fire</source>
        <translation>die Wärmeleitung warnt ohne Feuer</translation>
    </message>
    <message>
        <source>the horn takes far more air than it should</source>
        <translation>das Horn nimmt viel mehr Luft, als es soll</translation>
    </message>
    <message>
        <source>the isolating cock is shut, its seal cut and laid back to look whole</source>
        <translation>der Absperrhahn ist zu, seine Plombe zerschnitten und so hingelegt, dass sie heil aussieht</translation>
    </message>
    <message>
        <source>the isolating switch was left at off</source>
        <translation>der Trennschalter blieb auf Aus</translation>
    </message>
    <message>
        <source>the key switch makes no contact</source>
        <translation>der Schlüsselschalter macht keinen Kontakt</translation>
    </message>
    <message>
        <source>the lamp is blown</source>
        <translation>die Lampe ist durchgebrannt</translation>
    </message>
    <message>
        <source>the lamp is lit whatever is so</source>
        <translation>die Lampe ist an, was auch ist</translation>
    </message>
    <message>
        <source>the lamp lies: listen for both thumps; report</source>
        <translation>die Lampe lügt: auf beide Schläge hören; melden</translation>
    </message>
    <message>
        <source>the linkage is slack</source>
        <translation>das Gestänge ist schlaff</translation>
    </message>
    <message>
        <source>the locking pin was left in the sleeve</source>
        <translation>der Sperrbolzen blieb in der Muffe</translation>
    </message>
    <message>
        <source>the main reservoir or its pipes leak</source>
        <translation>der Hauptbehälter oder seine Rohre sind undicht</translation>
    </message>
    <message>
        <source>the mesh switch is stuck made</source>
        <translation>der Eingriffsschalter hängt geschlossen</translation>
    </message>
    <message>
        <source>the mesh switch is stuck open</source>
        <translation>der Eingriffsschalter hängt offen</translation>
    </message>
    <message>
        <source>the needle follows slowly</source>
        <translation>der Zeiger folgt langsam</translation>
    </message>
    <message>
        <source>the needle is off by the same amount everywhere</source>
        <translation>der Zeiger ist überall um gleich viel verstellt</translation>
    </message>
    <message>
        <source>the needle stays at its rest</source>
        <translation>der Zeiger bleibt in seiner Ruhelage</translation>
    </message>
    <message>
        <source>the needle sticks where it is</source>
        <translation>der Zeiger klemmt, wo er ist</translation>
    </message>
    <message>
        <source>the oil pressure switch does not make</source>
        <translation>der Öldruckschalter schließt nicht</translation>
    </message>
    <message>
        <source>the oil pressure switch is stuck made</source>
        <translation>der Öldruckschalter hängt geschlossen</translation>
    </message>
    <message>
        <source>the other cab&apos;s gauge decides; report</source>
        <translation>die Uhr des anderen Führerstands entscheidet; melden</translation>
    </message>
    <message>
        <source>the passenger alarm has been pulled</source>
        <translation>die Notbremse wurde gezogen</translation>
    </message>
    <message>
        <source>the pawl does not hold</source>
        <translation>die Sperrklinke hält nicht</translation>
    </message>
    <message>
        <source>the pinion does not leave the ring</source>
        <translation>das Ritzel verlässt den Kranz nicht</translation>
    </message>
    <message>
        <source>the plates of the direct clutch are worn</source>
        <translation>die Lamellen der direkten Kupplung sind verschlissen</translation>
    </message>
    <message>
        <source>the pressure switch of the air lamp does not make</source>
        <translation>der Druckschalter der Luftlampe schließt nicht</translation>
    </message>
    <message>
        <source>the pressure switch of the air lamp is stuck made</source>
        <translation>der Druckschalter der Luftlampe hängt geschlossen</translation>
    </message>
    <message>
        <source>the protection trips without a cause</source>
        <translation>der Schutz löst ohne Ursache aus</translation>
    </message>
    <message>
        <source>the radiator is blocked with leaves</source>
        <translation>der Kühler ist mit Laub verstopft</translation>
    </message>
    <message>
        <source>the red lamps are dead</source>
        <translation>die roten Lampen sind tot</translation>
    </message>
    <message>
        <source>the reducing valve gives too little</source>
        <translation>der Druckminderer gibt zu wenig</translation>
    </message>
    <message>
        <source>the release pipe leaks</source>
        <translation>die Löseleitung ist undicht</translation>
    </message>
    <message>
        <source>the resistance</source>
        <translation>des Widerstands</translation>
    </message>
    <message>
        <source>the reverser makes no contact</source>
        <translation>der Richtungshebel macht keinen Kontakt</translation>
    </message>
    <message>
        <source>the safety valve lifts too early</source>
        <translation>das Sicherheitsventil hebt zu früh ab</translation>
    </message>
    <message>
        <source>the seal of the safety device&apos;s cock is gone, the cock is open</source>
        <translation>die Plombe am Totmannhahn ist weg, der Hahn ist offen</translation>
    </message>
    <message>
        <source>the selector makes no contact in one gear (5: in all)</source>
        <translation>der Wähler macht in einem Gang keinen Kontakt (5: in allen)</translation>
    </message>
    <message>
        <source>the shift cylinder leaks</source>
        <translation>der Schaltzylinder ist undicht</translation>
    </message>
    <message>
        <source>the start breaker is out</source>
        <translation>der Automat fürs Anlassen ist aus</translation>
    </message>
    <message>
        <source>the start button makes no contact</source>
        <translation>der Anlassknopf macht keinen Kontakt</translation>
    </message>
    <message>
        <source>the start relay does not pull</source>
        <translation>das Anlassrelais zieht nicht an</translation>
    </message>
    <message>
        <source>the start relay is welded</source>
        <translation>das Anlassrelais ist verschweißt</translation>
    </message>
    <message>
        <source>the starter does not turn</source>
        <translation>der Anlasser dreht nicht</translation>
    </message>
    <message>
        <source>the starter gives little torque</source>
        <translation>der Anlasser gibt wenig Drehmoment</translation>
    </message>
    <message>
        <source>the starter stays in with the button let go; volts stay down</source>
        <translation>der Anlasser bleibt bei losgelassenem Knopf drin; die Volt bleiben unten</translation>
    </message>
    <message>
        <source>the stop code must arrive: no departure</source>
        <translation>das Haltzeichen muss ankommen: keine Abfahrt</translation>
    </message>
    <message>
        <source>the stop solenoid does not pull</source>
        <translation>der Stoppmagnet zieht nicht an</translation>
    </message>
    <message>
        <source>the tail lamp is missing</source>
        <translation>das Schlusslicht fehlt</translation>
    </message>
    <message>
        <source>the terminals are corroded</source>
        <translation>die Klemmen sind zerfressen</translation>
    </message>
    <message>
        <source>the thermostat does not open</source>
        <translation>der Thermostat öffnet nicht</translation>
    </message>
    <message>
        <source>the throttle motor leaks</source>
        <translation>der Stellmotor ist undicht</translation>
    </message>
    <message>
        <source>the tooth faces are burred and grip each other</source>
        <translation>die Zahnflächen haben Grat und halten einander fest</translation>
    </message>
    <message>
        <source>the train pipe leaks</source>
        <translation>die Zugleitung ist undicht</translation>
    </message>
    <message>
        <source>the unit fails; never the cock to get away</source>
        <translation>der Zug fährt nicht; nie der Hahn, um wegzukommen</translation>
    </message>
    <message>
        <source>the unit fails; report</source>
        <translation>der Zug fährt nicht; melden</translation>
    </message>
    <message>
        <source>the unloader does not load</source>
        <translation>der Entlaster belastet nicht</translation>
    </message>
    <message>
        <source>the unloader does not unload</source>
        <translation>der Entlaster entlastet nicht</translation>
    </message>
    <message>
        <source>the valve passes from the release pipe in lap</source>
        <translation>das Ventil lässt auf Abschluss aus der Löseleitung durch</translation>
    </message>
    <message>
        <source>the valve passes to atmosphere in lap</source>
        <translation>das Ventil lässt auf Abschluss ins Freie durch</translation>
    </message>
    <message>
        <source>the valve towards forward is stuck open</source>
        <translation>das Ventil für vorwärts hängt offen</translation>
    </message>
    <message>
        <source>the valve towards forward is stuck shut</source>
        <translation>das Ventil für vorwärts hängt zu</translation>
    </message>
    <message>
        <source>the valve towards reverse is stuck open</source>
        <translation>das Ventil für rückwärts hängt offen</translation>
    </message>
    <message>
        <source>the valve towards reverse is stuck shut</source>
        <translation>das Ventil für rückwärts hängt zu</translation>
    </message>
    <message>
        <source>the valve under the handle stays held</source>
        <translation>das Ventil unter dem Griff bleibt gehalten</translation>
    </message>
    <message>
        <source>the valves of first and second gear are both open</source>
        <translation>die Ventile des ersten und zweiten Ganges sind beide offen</translation>
    </message>
    <message>
        <source>the white lamps are dead</source>
        <translation>die weißen Lampen sind tot</translation>
    </message>
    <message>
        <source>the wiper does not move</source>
        <translation>der Wischer bewegt sich nicht</translation>
    </message>
    <message>
        <source>third gear, light throttle; report</source>
        <translation>dritter Gang, leichte Stufe; melden</translation>
    </message>
    <message>
        <source>three tries at most; start the other one, go on restricted or fail</source>
        <translation>höchstens drei Versuche; den anderen anlassen, beschränkt weiter oder stilllegen</translation>
    </message>
    <message>
        <source>throttle motor of engine %1</source>
        <translation>Stellmotor von Motor %1</translation>
    </message>
    <message>
        <source>throttle shut at once; isolate that engine and its drive</source>
        <translation>Fahrschalter sofort zu; diesen Motor und seinen Antrieb abtrennen</translation>
    </message>
    <message>
        <source>time, warmth, drains blown; do not force</source>
        <translation>Zeit, Wärme, Hähne ausblasen; nicht zwingen</translation>
    </message>
    <message>
        <source>times</source>
        <translation>mal</translation>
    </message>
    <message>
        <source>tones</source>
        <translation>Töne</translation>
    </message>
    <message>
        <source>tones of the horn are dead (1 low, 2 high, 3 both)</source>
        <translation>Töne des Horns sind tot (1 tief, 2 hoch, 3 beide)</translation>
    </message>
    <message>
        <source>touch nothing, ask</source>
        <translation>nichts berühren, fragen</translation>
    </message>
    <message>
        <source>train pipe</source>
        <translation>Zugleitung</translation>
    </message>
    <message>
        <source>train pipe under car %1, side %2</source>
        <translation>Zugleitung unter Wagen %1, Seite %2</translation>
    </message>
    <message>
        <source>travel</source>
        <translation>Weg</translation>
    </message>
    <message>
        <source>turns easily, will not fire cold, little power</source>
        <translation>dreht leicht, zündet kalt nicht, wenig Kraft</translation>
    </message>
    <message>
        <source>turns without smoke or starts and dies; the cock is seen shut</source>
        <translation>dreht ohne Rauch, oder läuft an und stirbt; der Hahn ist als zu zu sehen</translation>
    </message>
    <message>
        <source>two volts missing for each, relays chatter while cranking</source>
        <translation>zwei Volt fehlen für jede, Relais rattern beim Drehen</translation>
    </message>
    <message>
        <source>under 22 do not start away; report</source>
        <translation>unter 22 nicht anfahren; melden</translation>
    </message>
    <message>
        <source>under 22 do not start away; walk and listen</source>
        <translation>unter 22 nicht anfahren; gehen und horchen</translation>
    </message>
    <message>
        <source>under 4 s report</source>
        <translation>unter 4 s melden</translation>
    </message>
    <message>
        <source>under 80 no departure; report</source>
        <translation>unter 80 keine Abfahrt; melden</translation>
    </message>
    <message>
        <source>uneven firing, smoke, dies under load; water in the bowl</source>
        <translation>ungleiches Zünden, Rauch, stirbt unter Last; Wasser im Glas</translation>
    </message>
    <message>
        <source>unloader governor</source>
        <translation>Druckregler der Entlaster</translation>
    </message>
    <message>
        <source>unloader of compressor %1</source>
        <translation>Entlaster von Kompressor %1</translation>
    </message>
    <message>
        <source>use it as needed; report</source>
        <translation>nach Bedarf benutzen; melden</translation>
    </message>
    <message>
        <source>vacuum stalls near 20, lap falls fast, rear gauge lower; suck between the cars</source>
        <translation>Vakuum hängt nahe 20, fällt auf Abschluss rasch, hintere Uhr niedriger; Saugen zwischen den Wagen</translation>
    </message>
    <message>
        <source>vacuum stalls or never comes, hiss in that cab</source>
        <translation>Vakuum hängt oder kommt nie, Zischen in diesem Führerstand</translation>
    </message>
    <message>
        <source>volts</source>
        <translation>Volt</translation>
    </message>
    <message>
        <source>volts low in the morning, breaker warm</source>
        <translation>Volt am Morgen niedrig, Automat warm</translation>
    </message>
    <message>
        <source>volts sink standing with all switched off</source>
        <translation>die Volt sinken im Stand, obwohl alles aus ist</translation>
    </message>
    <message>
        <source>wait for it; report</source>
        <translation>darauf warten; melden</translation>
    </message>
    <message>
        <source>walk and listen; no departure below 75</source>
        <translation>gehen und horchen; keine Abfahrt unter 75</translation>
    </message>
    <message>
        <source>walk to the ends, put it on, test again</source>
        <translation>zu den Enden gehen, aufstecken, noch einmal proben</translation>
    </message>
    <message>
        <source>watch the tachometer; report, isolate if it runs away</source>
        <translation>den Drehzahlmesser beobachten; melden, abtrennen, wenn er durchgeht</translation>
    </message>
    <message>
        <source>water in the fuel</source>
        <translation>Wasser im Kraftstoff</translation>
    </message>
    <message>
        <source>wet bell and drips on the ground; that side pulls a little less</source>
        <translation>nasse Glocke und Tropfen am Boden; diese Seite zieht etwas weniger</translation>
    </message>
    <message>
        <source>wheel hard, chain slack: does not hold on a grade</source>
        <translation>Rad fest, Kette schlaff: hält nicht auf einer Neigung</translation>
    </message>
    <message>
        <source>wheel unwinds when let go</source>
        <translation>das Rad läuft beim Loslassen zurück</translation>
    </message>
    <message>
        <source>white and red lamps, displays and wipers dark together</source>
        <translation>weiße und rote Lampen, Zielanzeigen und Wischer zugleich tot</translation>
    </message>
    <message>
        <source>white crust; volts collapse at the button and come back at once</source>
        <translation>weiße Kruste; die Volt brechen am Knopf zusammen und kommen sofort wieder</translation>
    </message>
    <message>
        <source>will not start cold however long it is turned, weak at low speed; a wet union</source>
        <translation>läuft kalt nicht an, so lange er auch gedreht wird, schwach bei wenig Drehzahl; eine nasse Verschraubung</translation>
    </message>
    <message>
        <source>wiring</source>
        <translation>Verdrahtung</translation>
    </message>
    <message>
        <source>with a compressor that does not unload it roars just above 95, side 1</source>
        <translation>mit einem Kompressor, der nicht entlastet, braust es knapp über 95, Seite 1</translation>
    </message>
    <message>
        <source>with that engine alone the charge lamp stays lit, lamps yellowing after an hour</source>
        <translation>mit diesem Motor allein bleibt die Ladelampe an, Lampen werden nach einer Stunde gelb</translation>
    </message>
</context>
<context>
    <name>Finding</name>
    <message>
        <source>Not yet: %1 was not kept.</source>
        <translation>Noch nicht: %1 wurde nicht eingehalten.</translation>
    </message>
    <message>
        <source>Not yet: %1 was not kept, nor was one other critical rule.</source>
        <translation>Noch nicht: %1 wurde nicht eingehalten, und eine weitere kritische Regel auch nicht.</translation>
    </message>
    <message>
        <source>Not yet: %1 was not kept, nor were %2 other critical rules.</source>
        <translation>Noch nicht: %1 wurde nicht eingehalten, und %2 weitere kritische Regeln auch nicht.</translation>
    </message>
    <message>
        <source>Not yet: a critical defect was judged good: %1, %2.</source>
        <translation>Noch nicht: ein kritischer Mangel wurde für gut befunden: %1, %2.</translation>
    </message>
    <message>
        <source>Not decided: the run has not ended.</source>
        <translation>Nicht entschieden: die Fahrt ist nicht zu Ende.</translation>
    </message>
    <message>
        <source>Not yet: nothing was exercised.</source>
        <translation>Noch nicht: nichts wurde geübt.</translation>
    </message>
    <message>
        <source>Not yet: it did not come to what was asked: %1.</source>
        <translation>Noch nicht: es kam nicht zu dem, was verlangt war: %1.</translation>
    </message>
    <message>
        <source>Not yet: too few points.</source>
        <translation>Noch nicht: zu wenige Punkte.</translation>
    </message>
    <message>
        <source>Not yet: too few points; %1 among others was not kept.</source>
        <translation>Noch nicht: zu wenige Punkte; unter anderem wurde %1 nicht eingehalten.</translation>
    </message>
    <message>
        <source>Not yet: it took longer than the time allowed.</source>
        <translation>Noch nicht: es dauerte länger als erlaubt.</translation>
    </message>
    <message>
        <source>Passed: no critical rule was broken, and it came to what was asked: %1.</source>
        <translation>Bestanden: keine kritische Regel wurde gebrochen, und es kam zu dem, was verlangt war: %1.</translation>
    </message>
    <message>
        <source>Passed: no critical rule was broken, and there were points enough.</source>
        <translation>Bestanden: keine kritische Regel wurde gebrochen, und die Punkte reichen.</translation>
    </message>
    <message>
        <source>attempt %1</source>
        <translation>Versuch %1</translation>
    </message>
    <message>
        <source>trainee %1</source>
        <translation>Anwärter %1</translation>
    </message>
    <message>
        <source>%1 of %2</source>
        <translation>%1 von %2</translation>
    </message>
    <message>
        <source>%1 of %2 points, %3 % needed</source>
        <translation>%1 von %2 Punkten, %3 % nötig</translation>
    </message>
    <message>
        <source>Not yet: the instructor stepped in at %1, before the exercise was done.</source>
        <translation>Noch nicht: der Ausbilder griff bei %1 ein, bevor die Übung geschafft war.</translation>
    </message>
</context>
<context>
    <name>Hearing</name>
    <message>
        <source>one stroke</source>
        <translation>ein Schlag</translation>
    </message>
    <message>
        <source>two strokes</source>
        <translation>zwei Schläge</translation>
    </message>
    <message>
        <source>three strokes</source>
        <translation>drei Schläge</translation>
    </message>
    <message>
        <source>four strokes</source>
        <translation>vier Schläge</translation>
    </message>
    <message>
        <source>five strokes</source>
        <translation>fünf Schläge</translation>
    </message>
    <message>
        <source>six strokes</source>
        <translation>sechs Schläge</translation>
    </message>
    <message>
        <source>seven strokes</source>
        <translation>sieben Schläge</translation>
    </message>
    <message>
        <source>eight strokes</source>
        <translation>acht Schläge</translation>
    </message>
    <message>
        <source>nine strokes</source>
        <translation>neun Schläge</translation>
    </message>
    <message>
        <source>, then </source>
        <comment>between groups of strokes</comment>
        <translation>, dann </translation>
    </message>
    <message>
        <source>Guard</source>
        <translation>Schaffner</translation>
    </message>
    <message>
        <source>%1 just now</source>
        <translation>%1, eben jetzt</translation>
    </message>
    <message>
        <source>silent; %1 %2 s ago</source>
        <translation>still; %1 vor %2 s</translation>
    </message>
    <message>
        <source>silent</source>
        <translation>still</translation>
    </message>
    <message>
        <source>silent, no strokes yet</source>
        <translation>still bisher</translation>
    </message>
    <message>
        <source>even</source>
        <comment>engine note</comment>
        <translation>rund</translation>
    </message>
    <message>
        <source>not quite even</source>
        <comment>engine note</comment>
        <translation>nicht ganz rund</translation>
    </message>
    <message>
        <source>uneven</source>
        <comment>engine note</comment>
        <translation>unrund</translation>
    </message>
    <message>
        <source>fires now and then</source>
        <comment>engine note</comment>
        <translation>zündet ab und zu</translation>
    </message>
    <message>
        <source>very slow</source>
        <comment>engine note</comment>
        <translation>sehr langsam</translation>
    </message>
    <message>
        <source>idling</source>
        <comment>engine note</comment>
        <translation>Leerlauf</translation>
    </message>
    <message>
        <source>fast idling</source>
        <comment>engine note</comment>
        <translation>schneller Leerlauf</translation>
    </message>
    <message>
        <source>middling</source>
        <comment>engine note</comment>
        <translation>mittlere Drehzahl</translation>
    </message>
    <message>
        <source>high</source>
        <comment>engine note</comment>
        <translation>hoch</translation>
    </message>
    <message>
        <source>very high</source>
        <comment>engine note</comment>
        <translation>sehr hoch</translation>
    </message>
    <message>
        <source>rising</source>
        <comment>engine note</comment>
        <translation>steigend</translation>
    </message>
    <message>
        <source>falling</source>
        <comment>engine note</comment>
        <translation>fallend</translation>
    </message>
    <message>
        <source>hunting</source>
        <comment>engine note</comment>
        <translation>pendelnd</translation>
    </message>
    <message>
        <source>a growl, nothing turns</source>
        <translation>ein Knurren, nichts dreht</translation>
    </message>
    <message>
        <source>cranking, %1</source>
        <translation>dreht durch, %1</translation>
    </message>
    <message>
        <source>cranking</source>
        <translation>dreht durch</translation>
    </message>
    <message>
        <source>a howl along with it, %1</source>
        <translation>ein Heulen dazu, %1</translation>
    </message>
    <message>
        <source>turning without firing, %1</source>
        <translation>dreht, ohne zu zünden, %1</translation>
    </message>
    <message>
        <source>%1, %2</source>
        <comment>engine note: evenness, speed</comment>
        <translation>%1, %2</translation>
    </message>
    <message>
        <source>Engine 1</source>
        <translation>Motor 1</translation>
    </message>
    <message>
        <source>Engine 2</source>
        <translation>Motor 2</translation>
    </message>
    <message>
        <source>, with a hum</source>
        <translation>, mit einem Summen</translation>
    </message>
    <message>
        <source>, with a faint hum</source>
        <translation>, mit leisem Summen</translation>
    </message>
    <message>
        <source>, with a light knock</source>
        <translation>, mit leichtem Klopfen</translation>
    </message>
    <message>
        <source>Air</source>
        <translation>Luft</translation>
    </message>
    <message>
        <source>no hiss</source>
        <translation>kein Zischen</translation>
    </message>
    <message>
        <source>deep hiss, faint</source>
        <translation>tiefes Zischen, leise</translation>
    </message>
    <message>
        <source>hiss, faint</source>
        <translation>Zischen, leise</translation>
    </message>
    <message>
        <source>deep hiss</source>
        <translation>tiefes Zischen</translation>
    </message>
    <message>
        <source>hiss</source>
        <translation>Zischen</translation>
    </message>
    <message>
        <source>deep hiss, loud</source>
        <translation>tiefes Zischen, laut</translation>
    </message>
    <message>
        <source>hiss, loud</source>
        <translation>Zischen, laut</translation>
    </message>
    <message>
        <source>low tone</source>
        <translation>tiefer Ton</translation>
    </message>
    <message>
        <source>high tone</source>
        <translation>hoher Ton</translation>
    </message>
    <message>
        <source>, weak</source>
        <comment>horn</comment>
        <translation>, schwach</translation>
    </message>
    <message>
        <source>Horn</source>
        <translation>Horn</translation>
    </message>
    <message>
        <source>Fire bell</source>
        <translation>Brandglocke</translation>
    </message>
    <message>
        <source>ringing without a break</source>
        <translation>läutet ohne Pause</translation>
    </message>
    <message>
        <source>a rattle</source>
        <translation>ein Rattern</translation>
    </message>
    <message>
        <source>a thump just now</source>
        <translation>ein Schlag, eben jetzt</translation>
    </message>
    <message>
        <source>Below</source>
        <translation>Unten</translation>
    </message>
    <message>
        <source>rolling, slow</source>
        <translation>Rollen, langsam</translation>
    </message>
    <message>
        <source>rolling</source>
        <translation>Rollen</translation>
    </message>
    <message>
        <source>rolling, fast</source>
        <translation>Rollen, schnell</translation>
    </message>
    <message>
        <source>, with a squeal</source>
        <translation>, mit Quietschen</translation>
    </message>
    <message>
        <source>, with a rubbing</source>
        <translation>, mit Schleifen</translation>
    </message>
    <message>
        <source>Wheels</source>
        <translation>Räder</translation>
    </message>
    <message>
        <source>Nearby</source>
        <translation>In der Nähe</translation>
    </message>
    <message>
        <source>a click just now</source>
        <translation>ein Klicken, eben jetzt</translation>
    </message>
</context>
<context>
    <name>Item</name>
    <message>
        <source>%1, %2</source>
        <translation>%1, %2</translation>
    </message>
    <message>
        <source>Board, flag or lamp</source>
        <translation>Tafel, Flagge oder Lampe</translation>
    </message>
    <message>
        <source>Fuel cock</source>
        <translation>Kraftstoffhahn</translation>
    </message>
    <message>
        <source>Tray and ground</source>
        <translation>Wanne und Boden</translation>
    </message>
    <message>
        <source>Hand throttle</source>
        <translation>Handgas</translation>
    </message>
    <message>
        <source>Device cock and seal</source>
        <translation>Totmannhahn und Plombe</translation>
    </message>
    <message>
        <source>Handbrake and chain</source>
        <translation>Handbremse und Kette</translation>
    </message>
    <message>
        <source>Controls at rest</source>
        <translation>Hebel in Ruhe</translation>
    </message>
    <message>
        <source>Guard&apos;s valve</source>
        <translation>Schaffnerventil</translation>
    </message>
    <message>
        <source>Guard&apos;s gauge</source>
        <translation>Schaffneruhr</translation>
    </message>
    <message>
        <source>Book and plates</source>
        <translation>Buch und Schilder</translation>
    </message>
    <message>
        <source>Door and lock</source>
        <translation>Tür und Schloss</translation>
    </message>
    <message>
        <source>Battery volts</source>
        <translation>Batteriespannung</translation>
    </message>
    <message>
        <source>Release cord</source>
        <translation>Löseschnur</translation>
    </message>
    <message>
        <source>Cardan shaft and guard</source>
        <translation>Gelenkwelle und Schutz</translation>
    </message>
    <message>
        <source>The working</source>
        <translation>Der Umlauf</translation>
    </message>
    <message>
        <source>Fire bottle</source>
        <translation>Löschflasche</translation>
    </message>
    <message>
        <source>Alarm tell-tale</source>
        <translation>Notbremsanzeiger</translation>
    </message>
    <message>
        <source>First-aid box</source>
        <translation>Verbandkasten</translation>
    </message>
    <message>
        <source>Air filter</source>
        <translation>Luftfilter</translation>
    </message>
    <message>
        <source>Air hose</source>
        <translation>Luftschlauch</translation>
    </message>
    <message>
        <source>Alarm</source>
        <translation>Notbremse</translation>
    </message>
    <message>
        <source>Alarm telltale</source>
        <translation>Notbremsanzeiger</translation>
    </message>
    <message>
        <source>Axleboxes</source>
        <translation>Achslager</translation>
    </message>
    <message>
        <source>Batteries</source>
        <translation>Batterien</translation>
    </message>
    <message>
        <source>Battery switch</source>
        <translation>Batterieschalter</translation>
    </message>
    <message>
        <source>Belts</source>
        <translation>Riemen</translation>
    </message>
    <message>
        <source>Blocks</source>
        <translation>Bremsklötze</translation>
    </message>
    <message>
        <source>Book</source>
        <translation>Buch</translation>
    </message>
    <message>
        <source>Bottle</source>
        <translation>Flasche</translation>
    </message>
    <message>
        <source>Brake cylinder</source>
        <translation>Bremszylinder</translation>
    </message>
    <message>
        <source>Breakers</source>
        <translation>Automaten</translation>
    </message>
    <message>
        <source>Cardan</source>
        <translation>Gelenkwelle</translation>
    </message>
    <message>
        <source>Clips</source>
        <translation>Schienenklemmen</translation>
    </message>
    <message>
        <source>Cock</source>
        <translation>Hahn</translation>
    </message>
    <message>
        <source>Controls neutral</source>
        <translation>Hebel in Ruhe</translation>
    </message>
    <message>
        <source>Coolant</source>
        <translation>Kühlwasser</translation>
    </message>
    <message>
        <source>Cord</source>
        <translation>Löseschnur</translation>
    </message>
    <message>
        <source>Coupler</source>
        <translation>Kupplung</translation>
    </message>
    <message>
        <source>Coupling</source>
        <translation>Kupplung</translation>
    </message>
    <message>
        <source>Cover</source>
        <translation>Deckel</translation>
    </message>
    <message>
        <source>Detonators</source>
        <translation>Knallkapseln</translation>
    </message>
    <message>
        <source>Display</source>
        <translation>Zielanzeige</translation>
    </message>
    <message>
        <source>Door</source>
        <translation>Tür</translation>
    </message>
    <message>
        <source>Doors</source>
        <translation>Türen</translation>
    </message>
    <message>
        <source>Drains</source>
        <translation>Ablasshähne</translation>
    </message>
    <message>
        <source>Exhaust</source>
        <translation>Auspuff</translation>
    </message>
    <message>
        <source>Extinguisher</source>
        <translation>Feuerlöscher</translation>
    </message>
    <message>
        <source>Fan</source>
        <translation>Lüfter</translation>
    </message>
    <message>
        <source>Final drive</source>
        <translation>Achsgetriebe</translation>
    </message>
    <message>
        <source>First aid</source>
        <translation>Verbandkasten</translation>
    </message>
    <message>
        <source>Flags</source>
        <translation>Flaggen</translation>
    </message>
    <message>
        <source>Floor</source>
        <translation>Boden</translation>
    </message>
    <message>
        <source>Fuel</source>
        <translation>Kraftstoff</translation>
    </message>
    <message>
        <source>Gangway</source>
        <translation>Übergang</translation>
    </message>
    <message>
        <source>Gauges</source>
        <translation>Anzeigen</translation>
    </message>
    <message>
        <source>Gearbox</source>
        <translation>Getriebe</translation>
    </message>
    <message>
        <source>Handbrake chain</source>
        <translation>Handbremskette</translation>
    </message>
    <message>
        <source>Heater</source>
        <translation>Heizung</translation>
    </message>
    <message>
        <source>Horn</source>
        <translation>Horn</translation>
    </message>
    <message>
        <source>Hoses</source>
        <translation>Schläuche</translation>
    </message>
    <message>
        <source>Isolating switch</source>
        <translation>Trennschalter</translation>
    </message>
    <message>
        <source>Jumper</source>
        <translation>Steuerkabel</translation>
    </message>
    <message>
        <source>Jumper sockets</source>
        <translation>Kabeldosen</translation>
    </message>
    <message>
        <source>Lamps</source>
        <translation>Lampen</translation>
    </message>
    <message>
        <source>Lifeguard</source>
        <translation>Bahnräumer</translation>
    </message>
    <message>
        <source>Lights</source>
        <translation>Beleuchtung</translation>
    </message>
    <message>
        <source>Notices</source>
        <translation>Aushänge</translation>
    </message>
    <message>
        <source>Oil</source>
        <translation>Öl</translation>
    </message>
    <message>
        <source>People</source>
        <translation>Personen</translation>
    </message>
    <message>
        <source>Pipes</source>
        <translation>Leitungen</translation>
    </message>
    <message>
        <source>Protection</source>
        <translation>Sicherung des Zuges</translation>
    </message>
    <message>
        <source>Rear gauge</source>
        <translation>Schaffneruhr</translation>
    </message>
    <message>
        <source>Repair book</source>
        <translation>Übergabebuch</translation>
    </message>
    <message>
        <source>Rigging</source>
        <translation>Bremsgestänge</translation>
    </message>
    <message>
        <source>Roster</source>
        <translation>Umlauf</translation>
    </message>
    <message>
        <source>Scotches</source>
        <translation>Hemmschuhe</translation>
    </message>
    <message>
        <source>Seal</source>
        <translation>Plombe</translation>
    </message>
    <message>
        <source>Skirts</source>
        <translation>Schürzen</translation>
    </message>
    <message>
        <source>Springs</source>
        <translation>Federn</translation>
    </message>
    <message>
        <source>Steps</source>
        <translation>Tritte</translation>
    </message>
    <message>
        <source>Tail lamp</source>
        <translation>Schlusslampe</translation>
    </message>
    <message>
        <source>Throttle</source>
        <translation>Fahrschalter</translation>
    </message>
    <message>
        <source>Tray</source>
        <translation>Wanne</translation>
    </message>
    <message>
        <source>Underframe</source>
        <translation>Untergestell</translation>
    </message>
    <message>
        <source>Valve</source>
        <translation>Ventil</translation>
    </message>
    <message>
        <source>Volts read</source>
        <translation>Spannungsmesser</translation>
    </message>
    <message>
        <source>Wheels</source>
        <translation>Räder</translation>
    </message>
    <message>
        <source>Window</source>
        <translation>Fenster</translation>
    </message>
    <message>
        <source>Windows</source>
        <translation>Fenster</translation>
    </message>
    <message>
        <source>Wiper</source>
        <translation>Wischer</translation>
    </message>
    <message>
        <source>air filter</source>
        <translation>Luftfilter</translation>
    </message>
    <message>
        <source>air hose</source>
        <translation>Luftschlauch</translation>
    </message>
    <message>
        <source>alarm</source>
        <translation>Notbremse</translation>
    </message>
    <message>
        <source>alarm telltale</source>
        <translation>Notbremsanzeiger</translation>
    </message>
    <message>
        <source>axleboxes</source>
        <translation>Achslager</translation>
    </message>
    <message>
        <source>batteries</source>
        <translation>Batterien</translation>
    </message>
    <message>
        <source>battery switch</source>
        <translation>Batterieschalter</translation>
    </message>
    <message>
        <source>belts</source>
        <translation>Riemen</translation>
    </message>
    <message>
        <source>blocks</source>
        <translation>Bremsklötze</translation>
    </message>
    <message>
        <source>book</source>
        <translation>Buch</translation>
    </message>
    <message>
        <source>bottle</source>
        <translation>Flasche</translation>
    </message>
    <message>
        <source>brake cylinder</source>
        <translation>Bremszylinder</translation>
    </message>
    <message>
        <source>breakers</source>
        <translation>Automaten</translation>
    </message>
    <message>
        <source>cardan</source>
        <translation>Gelenkwelle</translation>
    </message>
    <message>
        <source>clips</source>
        <translation>Schienenklemmen</translation>
    </message>
    <message>
        <source>cock</source>
        <translation>Hahn</translation>
    </message>
    <message>
        <source>controls neutral</source>
        <translation>Hebel in Ruhe</translation>
    </message>
    <message>
        <source>coolant</source>
        <translation>Kühlwasser</translation>
    </message>
    <message>
        <source>cord</source>
        <translation>Löseschnur</translation>
    </message>
    <message>
        <source>coupler</source>
        <translation>Kupplung</translation>
    </message>
    <message>
        <source>coupling</source>
        <translation>Kupplung</translation>
    </message>
    <message>
        <source>cover</source>
        <translation>Deckel</translation>
    </message>
    <message>
        <source>detonators</source>
        <translation>Knallkapseln</translation>
    </message>
    <message>
        <source>display</source>
        <translation>Zielanzeige</translation>
    </message>
    <message>
        <source>door</source>
        <translation>Tür</translation>
    </message>
    <message>
        <source>doors</source>
        <translation>Türen</translation>
    </message>
    <message>
        <source>drains</source>
        <translation>Ablasshähne</translation>
    </message>
    <message>
        <source>exhaust</source>
        <translation>Auspuff</translation>
    </message>
    <message>
        <source>extinguisher</source>
        <translation>Feuerlöscher</translation>
    </message>
    <message>
        <source>fan</source>
        <translation>Lüfter</translation>
    </message>
    <message>
        <source>final drive</source>
        <translation>Achsgetriebe</translation>
    </message>
    <message>
        <source>first aid</source>
        <translation>Verbandkasten</translation>
    </message>
    <message>
        <source>flags</source>
        <translation>Flaggen</translation>
    </message>
    <message>
        <source>floor</source>
        <translation>Boden</translation>
    </message>
    <message>
        <source>fuel</source>
        <translation>Kraftstoff</translation>
    </message>
    <message>
        <source>gangway</source>
        <translation>Übergang</translation>
    </message>
    <message>
        <source>gauges</source>
        <translation>Anzeigen</translation>
    </message>
    <message>
        <source>gearbox</source>
        <translation>Getriebe</translation>
    </message>
    <message>
        <source>handbrake chain</source>
        <translation>Handbremskette</translation>
    </message>
    <message>
        <source>heater</source>
        <translation>Heizung</translation>
    </message>
    <message>
        <source>horn</source>
        <translation>Horn</translation>
    </message>
    <message>
        <source>hoses</source>
        <translation>Schläuche</translation>
    </message>
    <message>
        <source>isolating switch</source>
        <translation>Trennschalter</translation>
    </message>
    <message>
        <source>jumper</source>
        <translation>Steuerkabel</translation>
    </message>
    <message>
        <source>jumper sockets</source>
        <translation>Kabeldosen</translation>
    </message>
    <message>
        <source>lamps</source>
        <translation>Lampen</translation>
    </message>
    <message>
        <source>lifeguard</source>
        <translation>Bahnräumer</translation>
    </message>
    <message>
        <source>lights</source>
        <translation>Beleuchtung</translation>
    </message>
    <message>
        <source>notices</source>
        <translation>Aushänge</translation>
    </message>
    <message>
        <source>oil</source>
        <translation>Öl</translation>
    </message>
    <message>
        <source>people</source>
        <translation>Personen</translation>
    </message>
    <message>
        <source>pipes</source>
        <translation>Leitungen</translation>
    </message>
    <message>
        <source>protection</source>
        <translation>Sicherung des Zuges</translation>
    </message>
    <message>
        <source>rear gauge</source>
        <translation>Schaffneruhr</translation>
    </message>
    <message>
        <source>repair book</source>
        <translation>Übergabebuch</translation>
    </message>
    <message>
        <source>rigging</source>
        <translation>Bremsgestänge</translation>
    </message>
    <message>
        <source>roster</source>
        <translation>Umlauf</translation>
    </message>
    <message>
        <source>scotches</source>
        <translation>Hemmschuhe</translation>
    </message>
    <message>
        <source>seal</source>
        <translation>Plombe</translation>
    </message>
    <message>
        <source>skirts</source>
        <translation>Schürzen</translation>
    </message>
    <message>
        <source>springs</source>
        <translation>Federn</translation>
    </message>
    <message>
        <source>steps</source>
        <translation>Tritte</translation>
    </message>
    <message>
        <source>tail lamp</source>
        <translation>Schlusslampe</translation>
    </message>
    <message>
        <source>throttle</source>
        <translation>Fahrschalter</translation>
    </message>
    <message>
        <source>tray</source>
        <translation>Wanne</translation>
    </message>
    <message>
        <source>underframe</source>
        <translation>Untergestell</translation>
    </message>
    <message>
        <source>valve</source>
        <translation>Ventil</translation>
    </message>
    <message>
        <source>volts read</source>
        <translation>Spannungsmesser</translation>
    </message>
    <message>
        <source>wheels</source>
        <translation>Räder</translation>
    </message>
    <message>
        <source>window</source>
        <translation>Fenster</translation>
    </message>
    <message>
        <source>windows</source>
        <translation>Fenster</translation>
    </message>
    <message>
        <source>wiper</source>
        <translation>Wischer</translation>
    </message>
</context>
<context>
    <name>Layer</name>
    <message>
        <source>shown</source>
        <translation>gezeigt</translation>
    </message>
    <message>
        <source>true</source>
        <translation>wahr</translation>
    </message>
    <message>
        <source>done</source>
        <translation>getan</translation>
    </message>
</context>
<context>
    <name>Lineside</name>
    <message>
        <source>motor car</source>
        <translation>Triebwagen</translation>
    </message>
    <message>
        <source>trailer</source>
        <translation>Steuerwagen</translation>
    </message>
    <message>
        <source>%1 m</source>
        <translation>%1 m</translation>
    </message>
    <message>
        <source>%1, over the line</source>
        <translation>%1, über das Gleis</translation>
    </message>
    <message>
        <source>path, side 1</source>
        <translation>Weg, Seite 1</translation>
    </message>
    <message>
        <source>other line: trains at any time</source>
        <translation>Nachbargleis: jederzeit Züge</translation>
    </message>
    <message>
        <source>other line</source>
        <translation>Nachbargleis</translation>
    </message>
    <message>
        <source>you</source>
        <translation>Sie</translation>
    </message>
    <message>
        <source>booking-on</source>
        <translation>Meldestelle</translation>
    </message>
    <message>
        <source>to engine 1, between the cars, up to cab 1</source>
        <translation>Motor 1, zwischen die Wagen, Führerstand 1</translation>
    </message>
    <message>
        <source>up to the saloon and cab 2</source>
        <translation>Abteil, Führerstand 2</translation>
    </message>
</context>
<context>
    <name>Mechanism</name>
    <message>
        <source>Desk</source>
        <translation>Pult</translation>
    </message>
    <message>
        <source>Breaker</source>
        <translation>Automat</translation>
    </message>
    <message>
        <source>Jumper</source>
        <translation>Steuerkabel</translation>
    </message>
    <message>
        <source>Reverser</source>
        <translation>Richtungshebel</translation>
    </message>
    <message>
        <source>Air switch</source>
        <translation>Luftschalter</translation>
    </message>
    <message>
        <source>Drives</source>
        <translation>Antriebe</translation>
    </message>
    <message>
        <source>alive</source>
        <translation>besetzt</translation>
    </message>
    <message>
        <source>in</source>
        <translation>ein</translation>
    </message>
    <message>
        <source>makes</source>
        <translation>schließt</translation>
    </message>
    <message>
        <source>turned</source>
        <translation>gestellt</translation>
    </message>
    <message>
        <source>%1 psi</source>
        <translation>%1 psi</translation>
    </message>
    <message>
        <source>in mesh</source>
        <translation>im Eingriff</translation>
    </message>
    <message>
        <source>neither in mesh</source>
        <translation>keiner im Eingriff</translation>
    </message>
    <message>
        <source>%1 not in mesh</source>
        <translation>%1 nicht im Eingriff</translation>
    </message>
    <message>
        <source>no way asked</source>
        <translation>keine Richtung verlangt</translation>
    </message>
    <message>
        <source>other way</source>
        <translation>andere Richtung</translation>
    </message>
    <message>
        <source>dead</source>
        <translation>tot</translation>
    </message>
    <message>
        <source>out</source>
        <translation>aus</translation>
    </message>
    <message>
        <source>open</source>
        <translation>offen</translation>
    </message>
    <message>
        <source>forward</source>
        <translation>vorwärts</translation>
    </message>
    <message>
        <source>reverse</source>
        <translation>rückwärts</translation>
    </message>
    <message>
        <source>in the middle</source>
        <translation>in der Mitte</translation>
    </message>
    <message>
        <source>on its way</source>
        <translation>unterwegs</translation>
    </message>
    <message>
        <source>teeth stand on teeth</source>
        <translation>Zahn steht auf Zahn</translation>
    </message>
    <message>
        <source>dropping in</source>
        <translation>fällt ein</translation>
    </message>
    <message>
        <source>in mesh, %1</source>
        <translation>im Eingriff, %1</translation>
    </message>
    <message>
        <source>teeth pass each other: rattling</source>
        <translation>Zähne laufen vorbei: Rattern</translation>
    </message>
    <message>
        <source>pinned in the middle</source>
        <translation>in der Mitte gesperrt</translation>
    </message>
    <message>
        <source>They drop in after %1° more.</source>
        <translation>Sie fallen nach weiteren %1° ein.</translation>
    </message>
    <message>
        <source>Nothing turns them: a shaft that turns frees them.</source>
        <translation>Nichts dreht sie: eine Welle, die dreht, macht sie frei.</translation>
    </message>
    <message>
        <source>Too fast to drop in: %1 rev/min between them.</source>
        <translation>Zu schnell zum Einfallen: %1 U/min dazwischen.</translation>
    </message>
    <message>
        <source>Shaft and wheels are one.</source>
        <translation>Welle und Räder sind eins.</translation>
    </message>
    <message>
        <source>holds</source>
        <translation>hält</translation>
    </message>
    <message>
        <source>closed</source>
        <translation>geschlossen</translation>
    </message>
    <message>
        <source>slips</source>
        <translation>rutscht</translation>
    </message>
    <message>
        <source>it stands</source>
        <translation>es steht</translation>
    </message>
    <message>
        <source>rollers wedged: it drives</source>
        <translation>Rollen geklemmt: treibt</translation>
    </message>
    <message>
        <source>rollers loose: it runs free</source>
        <translation>Rollen lose: läuft frei</translation>
    </message>
    <message>
        <source>first gear</source>
        <translation>erster Gang</translation>
    </message>
    <message>
        <source>second gear</source>
        <translation>zweiter Gang</translation>
    </message>
    <message>
        <source>third gear</source>
        <translation>dritter Gang</translation>
    </message>
    <message>
        <source>top gear</source>
        <translation>oberster Gang</translation>
    </message>
    <message>
        <source>%1 taking hold</source>
        <translation>%1 fasst</translation>
    </message>
    <message>
        <source>no gear</source>
        <translation>kein Gang</translation>
    </message>
    <message>
        <source>Electric path to the lamp AIR, cab %1</source>
        <translation>Strompfad zur Lampe LUFT, Führerstand %1</translation>
    </message>
    <message>
        <source>Battery</source>
        <translation>Batterie</translation>
    </message>
    <message>
        <source>%1 V</source>
        <translation>%1 V</translation>
    </message>
    <message>
        <source>AIR</source>
        <translation>LUFT</translation>
    </message>
    <message>
        <source>Mechanism</source>
        <translation>Mechanik</translation>
    </message>
    <message>
        <source>Drive line %1: %2</source>
        <translation>Antriebsstrang %1: %2</translation>
    </message>
    <message>
        <source>Torque and heat</source>
        <translation>Drehmoment und Wärme</translation>
    </message>
    <message>
        <source>coupling</source>
        <translation>Kupplung</translation>
    </message>
    <message>
        <source>%1 N m</source>
        <translation>%1 N m</translation>
    </message>
    <message>
        <source>cardan shaft</source>
        <translation>Gelenkwelle</translation>
    </message>
    <message>
        <source>coupling oil</source>
        <translation>Kupplungsöl</translation>
    </message>
    <message>
        <source>%1 °C</source>
        <translation>%1 °C</translation>
    </message>
    <message>
        <source>gearbox oil</source>
        <translation>Getriebeöl</translation>
    </message>
    <message>
        <source>hottest drum</source>
        <translation>heißeste Trommel</translation>
    </message>
    <message>
        <source>Direct clutch</source>
        <translation>Direktkupplung</translation>
    </message>
    <message>
        <source>The other drive line, %1</source>
        <translation>Der andere Antriebsstrang, %1</translation>
    </message>
    <message>
        <source>engine</source>
        <translation>Motor</translation>
    </message>
    <message>
        <source>%1 rev/min</source>
        <translation>%1 U/min</translation>
    </message>
    <message>
        <source>input</source>
        <translation>Eingang</translation>
    </message>
    <message>
        <source>output</source>
        <translation>Ausgang</translation>
    </message>
    <message>
        <source>gear</source>
        <translation>Gang</translation>
    </message>
    <message>
        <source>dogs</source>
        <translation>Klauen</translation>
    </message>
    <message>
        <source>not in mesh</source>
        <translation>nicht im Eingriff</translation>
    </message>
    <message>
        <source>It is drawn standing still.</source>
        <translation>Stehend gezeichnet.</translation>
    </message>
    <message>
        <source>It turns as it does.</source>
        <translation>Es dreht wie in Wirklichkeit.</translation>
    </message>
    <message>
        <source>It turns %1 times slower than it does.</source>
        <translation>Es dreht %1-mal langsamer als in Wirklichkeit.</translation>
    </message>
    <message>
        <source>Drive line of engine %1</source>
        <translation>Antriebsstrang von Motor %1</translation>
    </message>
    <message>
        <source>Coupling</source>
        <translation>Kupplung</translation>
    </message>
    <message>
        <source>Freewheel</source>
        <translation>Freilauf</translation>
    </message>
    <message>
        <source>Direct</source>
        <translation>Direkt</translation>
    </message>
    <message>
        <source>Third</source>
        <translation>Dritter</translation>
    </message>
    <message>
        <source>Second</source>
        <translation>Zweiter</translation>
    </message>
    <message>
        <source>First</source>
        <translation>Erster</translation>
    </message>
    <message>
        <source>Cardan shaft</source>
        <translation>Gelenkwelle</translation>
    </message>
    <message>
        <source>Axle</source>
        <translation>Achse</translation>
    </message>
    <message>
        <source>rev/min</source>
        <translation>U/min</translation>
    </message>
    <message>
        <source>runner</source>
        <translation>Läufer</translation>
    </message>
    <message>
        <source>drum 3</source>
        <translation>Trommel 3</translation>
    </message>
    <message>
        <source>drum 2</source>
        <translation>Trommel 2</translation>
    </message>
    <message>
        <source>drum 1</source>
        <translation>Trommel 1</translation>
    </message>
    <message>
        <source>crown</source>
        <translation>Teller</translation>
    </message>
    <message>
        <source>axle</source>
        <translation>Achse</translation>
    </message>
    <message>
        <source>%1: band </source>
        <translation>%1: Band </translation>
    </message>
    <message>
        <source>Reverse dogs, unrolled</source>
        <translation>Klauen rückwärts, abgewickelt</translation>
    </message>
    <message>
        <source>Forward dogs, unrolled</source>
        <translation>Klauen vorwärts, abgewickelt</translation>
    </message>
    <message>
        <source>crown wheel</source>
        <translation>Tellerrad</translation>
    </message>
    <message>
        <source>sleeve</source>
        <translation>Muffe</translation>
    </message>
</context>
<context>
    <name>Outside</name>
    <message>
        <source>platform, %1</source>
        <translation>Bahnsteig, %1</translation>
    </message>
    <message>
        <source>path</source>
        <translation>Weg</translation>
    </message>
    <message>
        <source>other line</source>
        <translation>Nachbargleis</translation>
    </message>
    <message>
        <source>, somebody stands there</source>
        <translation>, dort steht jemand</translation>
    </message>
    <message>
        <source>nobody</source>
        <translation>niemand</translation>
    </message>
    <message>
        <source>silent</source>
        <translation>still</translation>
    </message>
    <message>
        <source>guard</source>
        <translation>Schaffner</translation>
    </message>
    <message>
        <source>answered</source>
        <translation>beantwortet</translation>
    </message>
    <message>
        <source>%1 m</source>
        <translation>%1 m</translation>
    </message>
    <message>
        <source>clear</source>
        <translation>frei</translation>
    </message>
    <message>
        <source>at danger</source>
        <translation>auf Halt</translation>
    </message>
    <message>
        <source>past the mark, %1</source>
        <translation>über der Tafel, %1</translation>
    </message>
    <message>
        <source>stopping mark %1</source>
        <translation>Haltetafel %1</translation>
    </message>
    <message>
        <source>limit %1 mph</source>
        <translation>Grenze %1 mph</translation>
    </message>
    <message>
        <source>Signal %1</source>
        <translation>Signal %1</translation>
    </message>
    <message>
        <source>no signal in sight</source>
        <translation>kein Signal in Sicht</translation>
    </message>
    <message>
        <source>signal %1, %2</source>
        <translation>Signal %1, %2</translation>
    </message>
    <message>
        <source>board %1 mph in %2</source>
        <translation>Tafel %1 mph in %2</translation>
    </message>
</context>
<context>
    <name>PersonView</name>
    <message>
        <source>critical</source>
        <translation>kritisch</translation>
    </message>
    <message>
        <source>serious</source>
        <translation>ernst</translation>
    </message>
    <message>
        <source>technical</source>
        <translation>technisch</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <translation>%1: %2</translation>
    </message>
    <message>
        <source>looked too short</source>
        <translation>zu kurz hingesehen</translation>
    </message>
    <message>
        <source>right: found</source>
        <translation>richtig: gefunden</translation>
    </message>
    <message>
        <source>missed</source>
        <translation>übersehen</translation>
    </message>
    <message>
        <source>false alarm</source>
        <translation>Fehlalarm</translation>
    </message>
    <message>
        <source>right</source>
        <translation>richtig</translation>
    </message>
    <message>
        <source>not sure</source>
        <translation>nicht sicher</translation>
    </message>
    <message>
        <source>not found yet</source>
        <translation>noch nicht gefunden</translation>
    </message>
    <message>
        <source>good</source>
        <translation>gut</translation>
    </message>
    <message>
        <source>defect</source>
        <translation>Mangel</translation>
    </message>
    <message>
        <source>%1, %2</source>
        <translation>%1, %2</translation>
    </message>
</context>
<context>
    <name>Phrase</name>
    <message>
        <source>Ask bell test</source>
        <translation>Klingelprobe vereinbaren</translation>
    </message>
    <message>
        <source>Ask blocks</source>
        <translation>Nach den Klötzen fragen</translation>
    </message>
    <message>
        <source>Ask permission</source>
        <translation>Um Erlaubnis bitten</translation>
    </message>
    <message>
        <source>Ask protection</source>
        <translation>Nach der Sicherung fragen</translation>
    </message>
    <message>
        <source>Ask rear gauge</source>
        <translation>Nach der hinteren Uhr fragen</translation>
    </message>
    <message>
        <source>Ask second person</source>
        <translation>Um zweite Person bitten</translation>
    </message>
    <message>
        <source>Ask switch</source>
        <translation>Nach dem Trennschalter fragen</translation>
    </message>
    <message>
        <source>Ask valve open</source>
        <translation>Ventil hinten öffnen lassen</translation>
    </message>
    <message>
        <source>Ask valve shut</source>
        <translation>Ventil hinten schließen lassen</translation>
    </message>
    <message>
        <source>Call fire</source>
        <translation>Feuer rufen</translation>
    </message>
    <message>
        <source>Call warning</source>
        <translation>Warnung rufen</translation>
    </message>
    <message>
        <source>Count scotches</source>
        <translation>Hemmschuhe zählen</translation>
    </message>
    <message>
        <source>Hand over</source>
        <translation>Übergeben</translation>
    </message>
    <message>
        <source>Look ahead</source>
        <translation>Nach vorn sehen</translation>
    </message>
    <message>
        <source>Look along</source>
        <translation>Am Zug entlangsehen</translation>
    </message>
    <message>
        <source>Look back</source>
        <translation>Zurücksehen</translation>
    </message>
    <message>
        <source>Look both ways</source>
        <translation>Nach beiden Seiten sehen</translation>
    </message>
    <message>
        <source>Refuse unit</source>
        <translation>Zug ablehnen</translation>
    </message>
    <message>
        <source>Stand clear</source>
        <translation>Zurücktreten</translation>
    </message>
    <message>
        <source>Tell guard</source>
        <translation>Schaffner verständigen</translation>
    </message>
    <message>
        <source>Tell shed</source>
        <translation>Werkstatt verständigen</translation>
    </message>
    <message>
        <source>Tell signaller</source>
        <translation>Fahrdienstleiter verständigen</translation>
    </message>
    <message>
        <source>Thank second person</source>
        <translation>Zweite Person entlassen</translation>
    </message>
    <message>
        <source>agrees a bell test with the guard</source>
        <translation>vereinbart mit dem Schaffner eine Klingelprobe</translation>
    </message>
    <message>
        <source>asks for a second person at the rear</source>
        <translation>bittet um eine zweite Person am hinteren Ende</translation>
    </message>
    <message>
        <source>asks the second person for the reading in the rear cab</source>
        <translation>fragt die zweite Person nach der Ablesung im hinteren Führerstand</translation>
    </message>
    <message>
        <source>asks the second person to open the guard&apos;s valve</source>
        <translation>bittet die zweite Person, das Schaffnerventil zu öffnen</translation>
    </message>
    <message>
        <source>asks the second person to shut the guard&apos;s valve</source>
        <translation>bittet die zweite Person, das Schaffnerventil zu schließen</translation>
    </message>
    <message>
        <source>asks the second person whether the blocks are on, each side</source>
        <translation>fragt die zweite Person, ob die Klötze anliegen, auf jeder Seite</translation>
    </message>
    <message>
        <source>asks whether the line may be walked and the unit approached</source>
        <translation>fragt, ob das Gleis betreten und der Zug aufgesucht werden darf</translation>
    </message>
    <message>
        <source>asks who is working on the unit, and whether it may be touched</source>
        <translation>fragt, wer am Zug arbeitet und ob er berührt werden darf</translation>
    </message>
    <message>
        <source>asks why an isolating switch stands at off</source>
        <translation>fragt, warum ein Trennschalter auf Aus steht</translation>
    </message>
    <message>
        <source>calls fire, people away, help</source>
        <translation>ruft Feuer, alle weg, Hilfe</translation>
    </message>
    <message>
        <source>calls out that an engine will start: stand clear</source>
        <translation>ruft, dass ein Motor anläuft: zurücktreten</translation>
    </message>
    <message>
        <source>counts the scotches</source>
        <translation>zählt die Hemmschuhe</translation>
    </message>
    <message>
        <source>hands handles, keys and the unit over by name</source>
        <translation>übergibt Griffe, Schlüssel und Zug mit Namen</translation>
    </message>
    <message>
        <source>lets the second person go</source>
        <translation>entlässt die zweite Person</translation>
    </message>
    <message>
        <source>looks along both sides of the unit</source>
        <translation>sieht an beiden Seiten des Zuges entlang</translation>
    </message>
    <message>
        <source>looks at the signal and the road ahead</source>
        <translation>sieht nach Signal und Fahrweg</translation>
    </message>
    <message>
        <source>looks back along the train</source>
        <translation>sieht am Zug zurück</translation>
    </message>
    <message>
        <source>looks both ways before stepping on the line</source>
        <translation>sieht nach beiden Seiten, bevor das Gleis betreten wird</translation>
    </message>
    <message>
        <source>says that the unit does not go</source>
        <translation>sagt, dass der Zug nicht fährt</translation>
    </message>
    <message>
        <source>stands clear of the moving parts</source>
        <translation>tritt von den bewegten Teilen zurück</translation>
    </message>
    <message>
        <source>tells the guard what is the matter</source>
        <translation>sagt dem Schaffner, was los ist</translation>
    </message>
    <message>
        <source>tells the shed of a defect by word</source>
        <translation>sagt der Werkstatt einen Mangel mündlich</translation>
    </message>
    <message>
        <source>tells the signaller what is the matter</source>
        <translation>sagt dem Fahrdienstleiter, was los ist</translation>
    </message>
    <message>
        <source>ask bell test</source>
        <translation>Klingelprobe vereinbaren</translation>
    </message>
    <message>
        <source>ask blocks</source>
        <translation>Nach den Klötzen fragen</translation>
    </message>
    <message>
        <source>ask permission</source>
        <translation>Um Erlaubnis bitten</translation>
    </message>
    <message>
        <source>ask protection</source>
        <translation>Nach der Sicherung fragen</translation>
    </message>
    <message>
        <source>ask rear gauge</source>
        <translation>Nach der hinteren Uhr fragen</translation>
    </message>
    <message>
        <source>ask second person</source>
        <translation>Um zweite Person bitten</translation>
    </message>
    <message>
        <source>ask switch</source>
        <translation>Nach dem Trennschalter fragen</translation>
    </message>
    <message>
        <source>ask valve open</source>
        <translation>Ventil hinten öffnen lassen</translation>
    </message>
    <message>
        <source>ask valve shut</source>
        <translation>Ventil hinten schließen lassen</translation>
    </message>
    <message>
        <source>call fire</source>
        <translation>Feuer rufen</translation>
    </message>
    <message>
        <source>call warning</source>
        <translation>Warnung rufen</translation>
    </message>
    <message>
        <source>count scotches</source>
        <translation>Hemmschuhe zählen</translation>
    </message>
    <message>
        <source>hand over</source>
        <translation>Übergeben</translation>
    </message>
    <message>
        <source>look ahead</source>
        <translation>Nach vorn sehen</translation>
    </message>
    <message>
        <source>look along</source>
        <translation>Am Zug entlangsehen</translation>
    </message>
    <message>
        <source>look back</source>
        <translation>Zurücksehen</translation>
    </message>
    <message>
        <source>look both ways</source>
        <translation>Nach beiden Seiten sehen</translation>
    </message>
    <message>
        <source>refuse unit</source>
        <translation>Zug ablehnen</translation>
    </message>
    <message>
        <source>stand clear</source>
        <translation>Zurücktreten</translation>
    </message>
    <message>
        <source>tell guard</source>
        <translation>Schaffner verständigen</translation>
    </message>
    <message>
        <source>tell shed</source>
        <translation>Werkstatt verständigen</translation>
    </message>
    <message>
        <source>tell signaller</source>
        <translation>Fahrdienstleiter verständigen</translation>
    </message>
    <message>
        <source>thank second person</source>
        <translation>Zweite Person entlassen</translation>
    </message>
    <message>
        <source>Ask reseat</source>
        <translation>Nach dem Einstecken fragen</translation>
    </message>
    <message>
        <source>Ask restricted</source>
        <translation>Nach beschränkter Weiterfahrt fragen</translation>
    </message>
    <message>
        <source>ask reseat</source>
        <translation>Nach dem Einstecken fragen</translation>
    </message>
    <message>
        <source>ask restricted</source>
        <translation>Nach beschränkter Weiterfahrt fragen</translation>
    </message>
    <message>
        <source>asks the shed whether a jumper may be put home</source>
        <translation>fragt die Werkstatt, ob ein Steuerkabel wieder eingesteckt werden darf</translation>
    </message>
    <message>
        <source>asks the signaller whether the unit may go on restricted</source>
        <translation>fragt den Fahrdienstleiter, ob der Zug beschränkt weiterfahren darf</translation>
    </message>
</context>
<context>
    <name>Place</name>
    <message>
        <source>on the way</source>
        <translation>unterwegs</translation>
    </message>
    <message>
        <source>Booking-on point</source>
        <translation>Meldestelle</translation>
    </message>
    <message>
        <source>Walkway by the line</source>
        <translation>Randweg am Gleis</translation>
    </message>
    <message>
        <source>End 1</source>
        <translation>Ende 1</translation>
    </message>
    <message>
        <source>End 2</source>
        <translation>Ende 2</translation>
    </message>
    <message>
        <source>Motor car, side 1</source>
        <translation>Triebwagen, Seite 1</translation>
    </message>
    <message>
        <source>Motor car, side 2</source>
        <translation>Triebwagen, Seite 2</translation>
    </message>
    <message>
        <source>Trailer, side 1</source>
        <translation>Steuerwagen, Seite 1</translation>
    </message>
    <message>
        <source>Trailer, side 2</source>
        <translation>Steuerwagen, Seite 2</translation>
    </message>
    <message>
        <source>Engine 1</source>
        <translation>Motor 1</translation>
    </message>
    <message>
        <source>Engine 2</source>
        <translation>Motor 2</translation>
    </message>
    <message>
        <source>Between the cars</source>
        <translation>Zwischen den Wagen</translation>
    </message>
    <message>
        <source>Cab 1</source>
        <translation>Führerstand 1</translation>
    </message>
    <message>
        <source>Cab 2</source>
        <translation>Führerstand 2</translation>
    </message>
    <message>
        <source>Electric cupboard</source>
        <translation>Schaltschrank</translation>
    </message>
    <message>
        <source>Saloon</source>
        <translation>Abteil</translation>
    </message>
    <message>
        <source>Between</source>
        <translation>Zwischen den Wagen</translation>
    </message>
    <message>
        <source>Booking</source>
        <translation>Meldestelle</translation>
    </message>
    <message>
        <source>Cupboard</source>
        <translation>Schaltschrank</translation>
    </message>
    <message>
        <source>Lineside</source>
        <translation>Am Gleis</translation>
    </message>
    <message>
        <source>Side 1</source>
        <translation>Seite 1</translation>
    </message>
    <message>
        <source>Side 2</source>
        <translation>Seite 2</translation>
    </message>
    <message>
        <source>Trailer 1</source>
        <translation>Steuerwagen 1</translation>
    </message>
    <message>
        <source>Trailer 2</source>
        <translation>Steuerwagen 2</translation>
    </message>
    <message>
        <source>at engine 1, from side 1</source>
        <translation>an Motor 1, von Seite 1</translation>
    </message>
    <message>
        <source>at engine 2, from side 2</source>
        <translation>an Motor 2, von Seite 2</translation>
    </message>
    <message>
        <source>at the electric cupboard behind cab 1</source>
        <translation>am Schaltschrank hinter Führerstand 1</translation>
    </message>
    <message>
        <source>between</source>
        <translation>Zwischen den Wagen</translation>
    </message>
    <message>
        <source>between the cars</source>
        <translation>Zwischen den Wagen</translation>
    </message>
    <message>
        <source>booking</source>
        <translation>Meldestelle</translation>
    </message>
    <message>
        <source>cab 1</source>
        <translation>Führerstand 1</translation>
    </message>
    <message>
        <source>cab 2</source>
        <translation>Führerstand 2</translation>
    </message>
    <message>
        <source>cupboard</source>
        <translation>Schaltschrank</translation>
    </message>
    <message>
        <source>end 1</source>
        <translation>Ende 1</translation>
    </message>
    <message>
        <source>end 2</source>
        <translation>Ende 2</translation>
    </message>
    <message>
        <source>engine 1</source>
        <translation>Motor 1</translation>
    </message>
    <message>
        <source>engine 2</source>
        <translation>Motor 2</translation>
    </message>
    <message>
        <source>in cab 1</source>
        <translation>in Führerstand 1</translation>
    </message>
    <message>
        <source>in cab 2</source>
        <translation>in Führerstand 2</translation>
    </message>
    <message>
        <source>in the saloon</source>
        <translation>im Abteil</translation>
    </message>
    <message>
        <source>lineside</source>
        <translation>Am Gleis</translation>
    </message>
    <message>
        <source>on the ground along car 1, on side 1 (the cess)</source>
        <translation>am Boden an Wagen 1, Seite 1 (Randweg)</translation>
    </message>
    <message>
        <source>on the ground along car 1, on side 2 (towards the other line)</source>
        <translation>an Wagen 1, Seite 2 (zum Nachbargleis)</translation>
    </message>
    <message>
        <source>on the ground along car 2, on side 1</source>
        <translation>am Boden an Wagen 2, Seite 1</translation>
    </message>
    <message>
        <source>on the ground along car 2, on side 2</source>
        <translation>am Boden an Wagen 2, Seite 2</translation>
    </message>
    <message>
        <source>on the ground before end 1, the end of cab 1</source>
        <translation>am Boden vor Ende 1, bei Führerstand 1</translation>
    </message>
    <message>
        <source>on the ground before end 2, the end of cab 2</source>
        <translation>am Boden vor Ende 2, bei Führerstand 2</translation>
    </message>
    <message>
        <source>saloon</source>
        <translation>Abteil</translation>
    </message>
    <message>
        <source>side 1</source>
        <translation>Seite 1</translation>
    </message>
    <message>
        <source>side 2</source>
        <translation>Seite 2</translation>
    </message>
    <message>
        <source>the booking-on point</source>
        <translation>die Meldestelle</translation>
    </message>
    <message>
        <source>the walkway&apos;s end by the line, before the unit is reached</source>
        <translation>Ende des Randwegs am Gleis, vor dem Zug</translation>
    </message>
    <message>
        <source>trailer 1</source>
        <translation>Steuerwagen 1</translation>
    </message>
    <message>
        <source>trailer 2</source>
        <translation>Steuerwagen 2</translation>
    </message>
</context>
<context>
    <name>Position</name>
    <message>
        <source>%1 %</source>
        <translation>%1 %</translation>
    </message>
    <message>
        <source>N</source>
        <translation>N</translation>
    </message>
    <message>
        <source>at the rear</source>
        <translation>am hinteren Ende</translation>
    </message>
    <message>
        <source>blank</source>
        <translation>leer</translation>
    </message>
    <message>
        <source>blocks differ</source>
        <translation>Klötze ungleich</translation>
    </message>
    <message>
        <source>blocks off</source>
        <translation>Klötze los</translation>
    </message>
    <message>
        <source>blocks on</source>
        <translation>Klötze fest</translation>
    </message>
    <message>
        <source>cab</source>
        <translation>Pult</translation>
    </message>
    <message>
        <source>closed</source>
        <translation>zu</translation>
    </message>
    <message>
        <source>defect</source>
        <translation>Mangel</translation>
    </message>
    <message>
        <source>down</source>
        <translation>unten</translation>
    </message>
    <message>
        <source>fail</source>
        <translation>fährt nicht</translation>
    </message>
    <message>
        <source>fast idle</source>
        <translation>schneller Leerlauf</translation>
    </message>
    <message>
        <source>fitter has it</source>
        <translation>Schlosser hat ihn</translation>
    </message>
    <message>
        <source>flat</source>
        <translation>angelegt</translation>
    </message>
    <message>
        <source>forward</source>
        <translation>vorwärts</translation>
    </message>
    <message>
        <source>free</source>
        <translation>frei</translation>
    </message>
    <message>
        <source>full</source>
        <translation>voll</translation>
    </message>
    <message>
        <source>go on</source>
        <translation>fährt weiter</translation>
    </message>
    <message>
        <source>good</source>
        <translation>gut</translation>
    </message>
    <message>
        <source>granted</source>
        <translation>erlaubt</translation>
    </message>
    <message>
        <source>ground</source>
        <translation>Boden</translation>
    </message>
    <message>
        <source>half</source>
        <translation>halb</translation>
    </message>
    <message>
        <source>high</source>
        <translation>hoch</translation>
    </message>
    <message>
        <source>home</source>
        <translation>zu</translation>
    </message>
    <message>
        <source>hung</source>
        <translation>hängt</translation>
    </message>
    <message>
        <source>idle</source>
        <translation>Leerlauf</translation>
    </message>
    <message>
        <source>in</source>
        <translation>ein</translation>
    </message>
    <message>
        <source>keeper</source>
        <translation>Halter</translation>
    </message>
    <message>
        <source>lap</source>
        <translation>Abschluss</translation>
    </message>
    <message>
        <source>locked</source>
        <translation>verschlossen</translation>
    </message>
    <message>
        <source>low</source>
        <translation>tief</translation>
    </message>
    <message>
        <source>middle</source>
        <translation>Mitte</translation>
    </message>
    <message>
        <source>nobody knows</source>
        <translation>niemand weiß es</translation>
    </message>
    <message>
        <source>nobody seen</source>
        <translation>niemand zu sehen</translation>
    </message>
    <message>
        <source>nobody there</source>
        <translation>niemand da</translation>
    </message>
    <message>
        <source>nobody works</source>
        <translation>niemand arbeitet</translation>
    </message>
    <message>
        <source>none</source>
        <translation>keine</translation>
    </message>
    <message>
        <source>off</source>
        <translation>aus</translation>
    </message>
    <message>
        <source>on</source>
        <translation>ein</translation>
    </message>
    <message>
        <source>on my way</source>
        <translation>bin unterwegs</translation>
    </message>
    <message>
        <source>open</source>
        <translation>offen</translation>
    </message>
    <message>
        <source>out</source>
        <translation>aus</translation>
    </message>
    <message>
        <source>person leaves</source>
        <translation>Person geht weg</translation>
    </message>
    <message>
        <source>person seen</source>
        <translation>Person gesehen</translation>
    </message>
    <message>
        <source>pulled</source>
        <translation>heraus</translation>
    </message>
    <message>
        <source>ready for bell</source>
        <translation>bereit zur Klingelprobe</translation>
    </message>
    <message>
        <source>rear reading</source>
        <translation>Ablesung hinten</translation>
    </message>
    <message>
        <source>release</source>
        <translation>Lösen</translation>
    </message>
    <message>
        <source>restricted</source>
        <translation>beschränkt</translation>
    </message>
    <message>
        <source>reverse</source>
        <translation>rückwärts</translation>
    </message>
    <message>
        <source>shut</source>
        <translation>zu</translation>
    </message>
    <message>
        <source>sleeve</source>
        <translation>Muffe</translation>
    </message>
    <message>
        <source>still working</source>
        <translation>arbeitet noch</translation>
    </message>
    <message>
        <source>under</source>
        <translation>unter</translation>
    </message>
    <message>
        <source>understood</source>
        <translation>verstanden</translation>
    </message>
    <message>
        <source>unlocked</source>
        <translation>offen</translation>
    </message>
    <message>
        <source>unsure</source>
        <translation>unsicher</translation>
    </message>
    <message>
        <source>up</source>
        <translation>oben</translation>
    </message>
    <message>
        <source>valve open</source>
        <translation>Ventil offen</translation>
    </message>
    <message>
        <source>valve shut</source>
        <translation>Ventil zu</translation>
    </message>
    <message>
        <source>general</source>
        <translation>Allgemeines</translation>
    </message>
    <message>
        <source>skip</source>
        <translation>gleich</translation>
    </message>
    <message>
        <source>alarm dealt</source>
        <translation>Notbremse erledigt</translation>
    </message>
    <message>
        <source>hurry</source>
        <translation>Eile</translation>
    </message>
    <message>
        <source>may reseat</source>
        <translation>Einstecken erlaubt</translation>
    </message>
    <message>
        <source>may restricted</source>
        <translation>beschränkt erlaubt</translation>
    </message>
</context>
<context>
    <name>Preset</name>
    <message>
        <source>The run</source>
        <translation>Die Fahrt</translation>
    </message>
    <message>
        <source>Air</source>
        <translation>Luft</translation>
    </message>
    <message>
        <source>Vacuum</source>
        <translation>Vakuum</translation>
    </message>
    <message>
        <source>Engines</source>
        <translation>Motoren</translation>
    </message>
    <message>
        <source>Gearbox</source>
        <translation>Getriebe</translation>
    </message>
    <message>
        <source>Brake</source>
        <translation>Bremse</translation>
    </message>
    <message>
        <source>Electrics</source>
        <translation>Elektrik</translation>
    </message>
</context>
<context>
    <name>Quantity</name>
    <message>
        <source>Pressure</source>
        <translation>Druck</translation>
    </message>
    <message>
        <source>Vacuum</source>
        <translation>Vakuum</translation>
    </message>
    <message>
        <source>Turning</source>
        <translation>Drehzahl</translation>
    </message>
    <message>
        <source>Speed</source>
        <translation>Geschwindigkeit</translation>
    </message>
    <message>
        <source>Temperature</source>
        <translation>Temperatur</translation>
    </message>
    <message>
        <source>Voltage</source>
        <translation>Spannung</translation>
    </message>
    <message>
        <source>Current</source>
        <translation>Strom</translation>
    </message>
    <message>
        <source>Share</source>
        <translation>Anteil</translation>
    </message>
    <message>
        <source>Force</source>
        <translation>Kraft</translation>
    </message>
    <message>
        <source>Torque</source>
        <translation>Drehmoment</translation>
    </message>
    <message>
        <source>Acceleration</source>
        <translation>Beschleunigung</translation>
    </message>
    <message>
        <source>Distance</source>
        <translation>Strecke</translation>
    </message>
    <message>
        <source>Time</source>
        <translation>Zeit</translation>
    </message>
    <message>
        <source>Mass</source>
        <translation>Masse</translation>
    </message>
    <message>
        <source>Work</source>
        <translation>Arbeit</translation>
    </message>
    <message>
        <source>Turns</source>
        <translation>Umdrehungen</translation>
    </message>
    <message>
        <source>Angle</source>
        <translation>Winkel</translation>
    </message>
    <message>
        <source>Heat over time</source>
        <translation>Wärme über Zeit</translation>
    </message>
    <message>
        <source>State</source>
        <translation>Zustand</translation>
    </message>
    <message>
        <source>Levers</source>
        <translation>Hebel</translation>
    </message>
</context>
<context>
    <name>Rail</name>
    <message>
        <source>dry</source>
        <translation>trocken</translation>
    </message>
    <message>
        <source>damp</source>
        <translation>feucht</translation>
    </message>
    <message>
        <source>wet</source>
        <translation>nass</translation>
    </message>
    <message>
        <source>frosty</source>
        <translation>bereift</translation>
    </message>
    <message>
        <source>greasy</source>
        <translation>schmierig</translation>
    </message>
    <message>
        <source>leaves</source>
        <translation>Laub</translation>
    </message>
</context>
<context>
    <name>Ready</name>
    <message>
        <source>When an engine turns</source>
        <translation>Wenn sich ein Motor dreht</translation>
    </message>
    <message>
        <source>When both engines run</source>
        <translation>Wenn beide Motoren laufen</translation>
    </message>
    <message>
        <source>When control air passes 75 psi</source>
        <translation>Wenn die Steuerluft 75 psi überschreitet</translation>
    </message>
    <message>
        <source>When the train pipe passes 20 inHg</source>
        <translation>Wenn die Zugleitung 20 inHg überschreitet</translation>
    </message>
    <message>
        <source>When both handbrakes are off</source>
        <translation>Wenn beide Handbremsen los sind</translation>
    </message>
    <message>
        <source>When the unit moves</source>
        <translation>Wenn sich der Zug bewegt</translation>
    </message>
    <message>
        <source>When it runs at 15 mph</source>
        <translation>Wenn er 15 mph läuft</translation>
    </message>
    <message>
        <source>When third gear is selected</source>
        <translation>Wenn der dritte Gang gewählt ist</translation>
    </message>
</context>
<context>
    <name>Scenario</name>
    <message>
        <source>A board or a flag means somebody may be under the unit: then touch nothing. Hoses off their dummies let the vacuum out.</source>
        <translation>Eine Tafel oder Flagge heißt: jemand kann unter dem Zug sein. Dann nichts anfassen. Schläuche, die nicht auf der Blindkupplung sitzen, lassen das Vakuum hinaus.</translation>
    </message>
    <message>
        <source>A broken heat line stays silent in a fire.</source>
        <translation>Eine gebrochene Meldeleitung schweigt im Brand.</translation>
    </message>
    <message>
        <source>A dead device looks just the same as a sound one.</source>
        <translation>Ein toter Totmann sieht genauso aus wie ein gesunder.</translation>
    </message>
    <message>
        <source>A defect that stops the unit</source>
        <translation>Ein Mangel, der den Zug festhält</translation>
    </message>
    <message>
        <source>A desk without its handles is dead, and the way back for them is long.</source>
        <translation>Ein Pult ohne seine Griffe ist tot, und der Rückweg nach ihnen ist lang.</translation>
    </message>
    <message>
        <source>A dragging block burns.</source>
        <translation>Ein schleifender Klotz verbrennt.</translation>
    </message>
    <message>
        <source>A lamp that cannot burn says nothing when it is dark.</source>
        <translation>Eine Lampe, die nicht brennen kann, sagt dunkel nichts.</translation>
    </message>
    <message>
        <source>A leak is found here and not on the road: less than 3 inches in a minute.</source>
        <translation>Eine Undichtheit wird hier gefunden und nicht auf der Strecke: weniger als 3 Zoll in der Minute.</translation>
    </message>
    <message>
        <source>A minute without oil ruins it.</source>
        <translation>Eine Minute ohne Öl zerstört ihn.</translation>
    </message>
    <message>
        <source>A needle moves in front of a stuck cylinder too.</source>
        <translation>Ein Zeiger bewegt sich auch vor einem klemmenden Zylinder.</translation>
    </message>
    <message>
        <source>A needle that stalls below: device up, guard&apos;s valve open, a hose off its dummy.</source>
        <translation>Ein Zeiger, der unten stehen bleibt: Totmann oben, Schaffnerventil offen, ein Schlauch von der Blindkupplung.</translation>
    </message>
    <message>
        <source>A stroke out of nowhere is an order.</source>
        <translation>Ein Schlag aus heiterem Himmel ist ein Befehl.</translation>
    </message>
    <message>
        <source>A switch at off may be a fitter&apos;s hand. Oil is dipped while the engine stands.</source>
        <translation>Ein Schalter auf Aus kann die Hand eines Schlossers sein. Öl wird bei stehendem Motor gemessen.</translation>
    </message>
    <message>
        <source>A tell-tale that is out is an alarm pulled: the brake will not come off.</source>
        <translation>Ein Anzeiger, der heraussteht, ist eine gezogene Notbremse: die Bremse löst nicht.</translation>
    </message>
    <message>
        <source>A throttle left out runs away with you from the cab, and the cab does not reach an engine whose switch is at ground.</source>
        <translation>Ein Fahrschalter, der offen bleibt, läuft vom Führerstand aus davon, und der Führerstand erreicht keinen Motor, dessen Schalter auf Boden steht.</translation>
    </message>
    <message>
        <source>After three minutes at fast idle: hand throttle right home, isolating switch to cab</source>
        <translation>Nach drei Minuten schnellem Leerlauf: Handgas ganz zurück, Trennschalter auf Pult</translation>
    </message>
    <message>
        <source>Agree the bell test with the guard</source>
        <translation>Die Klingelprobe mit dem Schaffner vereinbaren</translation>
    </message>
    <message>
        <source>Air that does not come: drains open, a belt off, or an engine that does not run.</source>
        <translation>Luft, die nicht kommt: Hähne offen, ein Riemen ab oder ein Motor, der nicht läuft.</translation>
    </message>
    <message>
        <source>All there is, once, before it is needed.</source>
        <translation>Alles, was da ist, einmal, bevor es gebraucht wird.</translation>
    </message>
    <message>
        <source>An open valve is no vacuum.</source>
        <translation>Ein offenes Ventil ist kein Vakuum.</translation>
    </message>
    <message>
        <source>Ask for a second person at the rear, and wait until they are there</source>
        <translation>Um eine zweite Person am hinteren Ende bitten und warten, bis sie dort ist</translation>
    </message>
    <message>
        <source>Ask for the valve to be opened at the rear; see your needle fall</source>
        <translation>Das Ventil hinten öffnen lassen; den eigenen Zeiger fallen sehen</translation>
    </message>
    <message>
        <source>Ask for the valve to be shut</source>
        <translation>Das Ventil schließen lassen</translation>
    </message>
    <message>
        <source>Ask leave to walk the line, and wait for the answer</source>
        <translation>Um Erlaubnis bitten, am Gleis zu gehen, und die Antwort abwarten</translation>
    </message>
    <message>
        <source>Ask whether all blocks are off</source>
        <translation>Fragen, ob alle Klötze los sind</translation>
    </message>
    <message>
        <source>Ask whether all blocks are on</source>
        <translation>Fragen, ob alle Klötze anliegen</translation>
    </message>
    <message>
        <source>At 14 to 15: throttle shut, second gear, two seconds, then open again</source>
        <translation>Bei 14 bis 15: Fahrschalter zu, zweiter Gang, zwei Sekunden, dann wieder öffnen</translation>
    </message>
    <message>
        <source>At 20 to 30: shut off, and 5 to 7 inches of brake; feel it</source>
        <translation>Bei 20 bis 30: abschalten und 5 bis 7 Zoll bremsen; spüren</translation>
    </message>
    <message>
        <source>At 26: third gear, as before</source>
        <translation>Bei 26: dritter Gang, wie zuvor</translation>
    </message>
    <message>
        <source>At the cupboard: breakers, battery switch, and read the volts</source>
        <translation>Am Schaltschrank: Automaten, Batterieschalter, und die Spannung ablesen</translation>
    </message>
    <message>
        <source>Back in cab 1: hold the device, reverser to forward, raise 21 again</source>
        <translation>Zurück in Führerstand 1: Totmann halten, Richtungshebel vorwärts, wieder 21 aufbauen</translation>
    </message>
    <message>
        <source>Below that the dogs do not shift and the throttle is deaf.</source>
        <translation>Darunter schalten die Klauen nicht, und der Fahrschalter ist taub.</translation>
    </message>
    <message>
        <source>Blocks that differ are a defect: enter it, and decide.</source>
        <translation>Ungleiche Klötze sind ein Mangel: eintragen und entscheiden.</translation>
    </message>
    <message>
        <source>Brake to release again: 21 inches, and 80 psi of air or more</source>
        <translation>Bremse wieder auf Lösen: 21 Zoll, und 80 psi Luft oder mehr</translation>
    </message>
    <message>
        <source>Brake to release, and see the train pipe come to 21</source>
        <translation>Bremse auf Lösen, und die Zugleitung auf 21 kommen sehen</translation>
    </message>
    <message>
        <source>Choose the gear by the speed.</source>
        <translation>Den Gang nach der Geschwindigkeit wählen.</translation>
    </message>
    <message>
        <source>Cold preparation after a night</source>
        <translation>Kalte Vorbereitung nach einer Nacht</translation>
    </message>
    <message>
        <source>Cold, it fires long before it runs. Starter and battery want thirty seconds of rest between tries.</source>
        <translation>Kalt zündet er lange, bevor er läuft. Anlasser und Batterie brauchen dreißig Sekunden Ruhe zwischen zwei Versuchen.</translation>
    </message>
    <message>
        <source>Dark with 75 psi on the gauge is not air: one final drive is not in mesh. A turn of its shaft lets it drop in, and starting an engine turns it.</source>
        <translation>Dunkel bei 75 psi an der Uhr ist keine Frage der Luft: ein Achsgetriebe ist nicht im Eingriff. Eine Drehung seiner Welle lässt es einfallen, und das Anlassen eines Motors dreht sie.</translation>
    </message>
    <message>
        <source>Dark with air enough: a drive stands tooth on tooth. Starting an engine turns the shaft, and it drops in.</source>
        <translation>Dunkel bei genug Luft: ein Antrieb steht Zahn auf Zahn. Das Anlassen eines Motors dreht die Welle, und er fällt ein.</translation>
    </message>
    <message>
        <source>Doors, and whoever runs after it.</source>
        <translation>Türen, und wer noch hinterherläuft.</translation>
    </message>
    <message>
        <source>Down to about 10, and lap</source>
        <translation>Hinunter auf etwa 10, und Abschluss</translation>
    </message>
    <message>
        <source>Down to about 16, then lap; the needle stays there</source>
        <translation>Hinunter auf etwa 16, dann Abschluss; der Zeiger bleibt dort</translation>
    </message>
    <message>
        <source>Drivers of other trains do not know that you are there.</source>
        <translation>Die Fahrer anderer Züge wissen nicht, dass Sie dort sind.</translation>
    </message>
    <message>
        <source>Drummelow Road</source>
        <translation>Drummelow Road</translation>
    </message>
    <message>
        <source>Each side has its own scotches, pipes and drains.</source>
        <translation>Jede Seite hat ihre eigenen Hemmschuhe, Leitungen und Hähne.</translation>
    </message>
    <message>
        <source>Ease the hand throttle in to fast idle as it picks up</source>
        <translation>Das Handgas auf schnellen Leerlauf zurücknehmen, wenn er hochkommt</translation>
    </message>
    <message>
        <source>Ease up, stop at the mark, and hold her there with the brake</source>
        <translation>Nachlassen, an der Tafel halten und den Zug dort mit der Bremse halten</translation>
    </message>
    <message>
        <source>Engines start under people.</source>
        <translation>Motoren laufen unter Menschen an.</translation>
    </message>
    <message>
        <source>Engines start under people. The switch gives the button here its current, the throttle gives fuel.</source>
        <translation>Motoren laufen unter Menschen an. Der Schalter gibt dem Knopf hier seinen Strom, das Gas gibt Kraftstoff.</translation>
    </message>
    <message>
        <source>First 5 inches and a pause, then as much as is needed</source>
        <translation>Erst 5 Zoll und eine Pause, dann so viel wie nötig</translation>
    </message>
    <message>
        <source>First gear, throttle shut; then a pause</source>
        <translation>Erster Gang, Fahrschalter zu; dann eine Pause</translation>
    </message>
    <message>
        <source>From 21 down to 15, and lap</source>
        <translation>Von 21 auf 15 hinunter, und Abschluss</translation>
    </message>
    <message>
        <source>From here on the power brake holds her.</source>
        <translation>Von hier an hält die Vakuumbremse den Zug.</translation>
    </message>
    <message>
        <source>Full application, to nothing</source>
        <translation>Vollbremsung, bis auf nichts</translation>
    </message>
    <message>
        <source>Gear to neutral, full application</source>
        <translation>Gang auf neutral, Vollbremsung</translation>
    </message>
    <message>
        <source>Gears slip on less, and the compressor&apos;s cut-out is proved.</source>
        <translation>Gänge rutschen bei weniger, und das Abschalten des Kompressors ist erprobt.</translation>
    </message>
    <message>
        <source>Give a code and hear it repeated</source>
        <translation>Ein Zeichen geben und die Wiederholung hören</translation>
    </message>
    <message>
        <source>Go round end 2; judge everything there</source>
        <translation>Um Ende 2 herumgehen; dort alles beurteilen</translation>
    </message>
    <message>
        <source>Go to cab 1 and wait for 75 psi of control air</source>
        <translation>Zu Führerstand 1 gehen und auf 75 psi Steuerluft warten</translation>
    </message>
    <message>
        <source>Go to end 1; look at and judge everything there</source>
        <translation>Zu Ende 1 gehen; dort alles ansehen und beurteilen</translation>
    </message>
    <message>
        <source>Go to engine 1</source>
        <translation>Zu Motor 1 gehen</translation>
    </message>
    <message>
        <source>Go to engine 1: hand throttle home, switch to cab there as well</source>
        <translation>Zu Motor 1 gehen: Handgas zurück, Schalter auch dort auf Pult</translation>
    </message>
    <message>
        <source>Go to the lineside</source>
        <translation>Zum Gleis gehen</translation>
    </message>
    <message>
        <source>Hill start on 1 in 80</source>
        <translation>Anfahren am Berg, 1 zu 80</translation>
    </message>
    <message>
        <source>Hold the lamp test in, look at the lamps and judge them</source>
        <translation>Die Lampenprobe drücken, die Lampen ansehen und beurteilen</translation>
    </message>
    <message>
        <source>Hold the start button until it runs by itself; fifteen seconds at most</source>
        <translation>Den Anlassknopf halten, bis er von selbst läuft; höchstens fünfzehn Sekunden</translation>
    </message>
    <message>
        <source>Horn, look along, five seconds; notch 2 and start engine 1 again, throttle shut when it runs</source>
        <translation>Horn, entlangsehen, fünf Sekunden; Stufe 2 und Motor 1 wieder anlassen, Fahrschalter zu, wenn er läuft</translation>
    </message>
    <message>
        <source>Horn, look along, five seconds; notch 2 and start engine 2 again, throttle shut when it runs</source>
        <translation>Horn, entlangsehen, fünf Sekunden; Stufe 2 und Motor 2 wieder anlassen, Fahrschalter zu, wenn er läuft</translation>
    </message>
    <message>
        <source>If a board, flag or lamp hangs there: touch nothing and ask who is at work.</source>
        <translation>Hängt dort eine Tafel, Flagge oder Lampe: nichts anfassen und fragen, wer arbeitet.</translation>
    </message>
    <message>
        <source>If it does not run: let go, wait thirty seconds, three tries at most.</source>
        <translation>Läuft er nicht: loslassen, dreißig Sekunden warten, höchstens drei Versuche.</translation>
    </message>
    <message>
        <source>If nobody comes, the rear test waits: go on only as the rules of the place allow.</source>
        <translation>Kommt niemand, wartet die Probe hinten: nur weitermachen, wie es die Regeln des Ortes erlauben.</translation>
    </message>
    <message>
        <source>If nothing moves in five seconds, shut off and look at handbrakes and gauges.</source>
        <translation>Bewegt sich in fünf Sekunden nichts, abschalten und nach Handbremsen und Uhren sehen.</translation>
    </message>
    <message>
        <source>If somebody is there: nothing is started. Speak to them and wait.</source>
        <translation>Ist jemand dort: nichts wird angelassen. Ansprechen und warten.</translation>
    </message>
    <message>
        <source>If somebody stands there: call, wait, and look again.</source>
        <translation>Steht jemand dort: rufen, warten und noch einmal hinsehen.</translation>
    </message>
    <message>
        <source>If the isolating switch is off, ask why before you touch it.</source>
        <translation>Steht der Trennschalter auf Aus, fragen, warum, bevor Sie ihn anfassen.</translation>
    </message>
    <message>
        <source>In a fire it has to stop when it is told.</source>
        <translation>Im Brand muss er stehen bleiben, wenn es verlangt wird.</translation>
    </message>
    <message>
        <source>In cab 1: handbrake hard on, seal, equipment, controls at rest, gauges</source>
        <translation>In Führerstand 1: Handbremse fest, Plombe, Ausrüstung, Hebel in Ruhe, Uhren</translation>
    </message>
    <message>
        <source>In the rear cab: handbrake, seal, equipment, controls at rest, valve, gauge, book</source>
        <translation>Im hinteren Führerstand: Handbremse, Plombe, Ausrüstung, Hebel in Ruhe, Ventil, Uhr, Buch</translation>
    </message>
    <message>
        <source>Iron blocks bite harder as the speed falls.</source>
        <translation>Eisenklötze beißen stärker, je langsamer es wird.</translation>
    </message>
    <message>
        <source>It has to come off as surely as it goes on.</source>
        <translation>Sie muss so sicher lösen, wie sie bremst.</translation>
    </message>
    <message>
        <source>It has to reset as well.</source>
        <translation>Er muss sich auch zurückstellen.</translation>
    </message>
    <message>
        <source>It has to stop where you stop it.</source>
        <translation>Er muss stehen bleiben, wo man ihn anhält.</translation>
    </message>
    <message>
        <source>It is proved to start from here as well, and you warn at each start.</source>
        <translation>Auch von hier ist das Anlassen erprobt, und vor jedem Anlassen wird gewarnt.</translation>
    </message>
    <message>
        <source>It is the one that is forgotten, and it burns the blocks of half the train.</source>
        <translation>Sie ist die, die vergessen wird, und sie verbrennt die Klötze des halben Zuges.</translation>
    </message>
    <message>
        <source>It may have gone back while you listened.</source>
        <translation>Es kann zurückgefallen sein, während Sie hörten.</translation>
    </message>
    <message>
        <source>It says that the drives are in mesh and the air is enough. Torque on a tooth tip breaks it.</source>
        <translation>Sie sagt, dass die Antriebe im Eingriff sind und die Luft reicht. Drehmoment auf einer Zahnspitze bricht sie.</translation>
    </message>
    <message>
        <source>It warns or it does not.</source>
        <translation>Sie warnt oder sie warnt nicht.</translation>
    </message>
    <message>
        <source>Its handbrake is the one you forget to take off, and an open guard&apos;s valve is no vacuum.</source>
        <translation>Seine Handbremse ist die, die man zu lösen vergisst, und ein offenes Schaffnerventil ist kein Vakuum.</translation>
    </message>
    <message>
        <source>Know what the battery has before you spend it on a start.</source>
        <translation>Wissen, was die Batterie hat, bevor sie für einen Anlauf verbraucht wird.</translation>
    </message>
    <message>
        <source>Lap for a minute; enter the loss in the notebook</source>
        <translation>Eine Minute Abschluss; den Verlust ins Notizbuch eintragen</translation>
    </message>
    <message>
        <source>Lap, and ask for the reading of the rear gauge</source>
        <translation>Abschluss, und nach der Ablesung der hinteren Uhr fragen</translation>
    </message>
    <message>
        <source>Lap, device up, reverser off; go to the rear cab</source>
        <translation>Abschluss, Totmann hoch, Richtungshebel aus; zum hinteren Führerstand gehen</translation>
    </message>
    <message>
        <source>Lap, then release in full</source>
        <translation>Abschluss, dann ganz lösen</translation>
    </message>
    <message>
        <source>Let it run a minute, then look both ways and go to engine 2</source>
        <translation>Eine Minute laufen lassen, dann nach beiden Seiten sehen und zu Motor 2 gehen</translation>
    </message>
    <message>
        <source>Lift the pawl and turn the rear handbrake right off</source>
        <translation>Die Klinke heben und die hintere Handbremse ganz lösen</translation>
    </message>
    <message>
        <source>Look again that nobody is there; isolating switch to ground, hand throttle out</source>
        <translation>Noch einmal sehen, dass niemand dort ist; Trennschalter auf Boden, Handgas heraus</translation>
    </message>
    <message>
        <source>Look along both sides</source>
        <translation>An beiden Seiten entlangsehen</translation>
    </message>
    <message>
        <source>Look along both sides, call out, and wait five seconds</source>
        <translation>An beiden Seiten entlangsehen, rufen und fünf Sekunden warten</translation>
    </message>
    <message>
        <source>Look at engine 1 before it is started: switch, fuel, coolant, oil, belts, covers</source>
        <translation>Motor 1 vor dem Anlassen ansehen: Schalter, Kraftstoff, Kühlwasser, Öl, Riemen, Deckel</translation>
    </message>
    <message>
        <source>Look at engine 2 before it is started, as at engine 1</source>
        <translation>Motor 2 vor dem Anlassen ansehen, wie bei Motor 1</translation>
    </message>
    <message>
        <source>Look at the signal again</source>
        <translation>Noch einmal nach dem Signal sehen</translation>
    </message>
    <message>
        <source>Look back along the train</source>
        <translation>Am Zug zurücksehen</translation>
    </message>
    <message>
        <source>Look both ways</source>
        <translation>Nach beiden Seiten sehen</translation>
    </message>
    <message>
        <source>Look both ways again</source>
        <translation>Noch einmal nach beiden Seiten sehen</translation>
    </message>
    <message>
        <source>Look both ways before you cross</source>
        <translation>Nach beiden Seiten sehen, bevor Sie queren</translation>
    </message>
    <message>
        <source>Needles are not blocks, and nobody works device and valve at once.</source>
        <translation>Zeiger sind keine Klötze, und niemand bedient Totmann und Ventil zugleich.</translation>
    </message>
    <message>
        <source>No gauge shows what hangs, leaks or rubs here.</source>
        <translation>Keine Uhr zeigt, was hier hängt, leckt oder scheuert.</translation>
    </message>
    <message>
        <source>No pressure after ten seconds: stop it with the stop lever.</source>
        <translation>Kein Druck nach zehn Sekunden: mit dem Abstellhebel abstellen.</translation>
    </message>
    <message>
        <source>No reservoir, no release.</source>
        <translation>Kein Behälter, kein Lösen.</translation>
    </message>
    <message>
        <source>No throttle and no vacuum without it.</source>
        <translation>Ohne ihn kein Gas und kein Vakuum.</translation>
    </message>
    <message>
        <source>Not before four seconds and not after seven: else it is a defect.</source>
        <translation>Nicht vor vier Sekunden und nicht nach sieben: sonst ist es ein Mangel.</translation>
    </message>
    <message>
        <source>Notch 1, then 2: let her move</source>
        <translation>Stufe 1, dann 2: anrollen lassen</translation>
    </message>
    <message>
        <source>Off again, before power.</source>
        <translation>Wieder ab, vor dem Gasgeben.</translation>
    </message>
    <message>
        <source>On a hill the power comes first and the brake goes last; and a figure is no brake.</source>
        <translation>Am Berg kommt die Kraft zuerst und geht die Bremse zuletzt; und eine Zahl ist keine Bremse.</translation>
    </message>
    <message>
        <source>On side 2 you walk beside the other line.</source>
        <translation>Auf Seite 2 gehen Sie neben dem Nachbargleis.</translation>
    </message>
    <message>
        <source>On the level first the brake, then power; on a rising grade power eases it off.</source>
        <translation>In der Ebene erst die Bremse, dann die Kraft; in der Steigung löst die Kraft die Bremse ab.</translation>
    </message>
    <message>
        <source>One application, few corrections.</source>
        <translation>Eine Bremsung, wenige Korrekturen.</translation>
    </message>
    <message>
        <source>One at a time: the battery feeds one starter. Two seconds with the throttle open are enough.</source>
        <translation>Einer nach dem anderen: die Batterie speist einen Anlasser. Zwei Sekunden mit offenem Fahrschalter genügen.</translation>
    </message>
    <message>
        <source>One engine that charges helps the other to turn.</source>
        <translation>Ein Motor, der lädt, hilft dem anderen beim Drehen.</translation>
    </message>
    <message>
        <source>One set to a unit: only one cab drives.</source>
        <translation>Ein Satz für den Zug: nur ein Führerstand fährt.</translation>
    </message>
    <message>
        <source>Only 21 charges the chambers; 15 on the way up holds nothing.</source>
        <translation>Nur 21 lädt die Kammern; 15 auf dem Weg nach oben hält nichts.</translation>
    </message>
    <message>
        <source>Only what is repeated has been understood.</source>
        <translation>Nur was wiederholt wird, ist verstanden worden.</translation>
    </message>
    <message>
        <source>Pawl out, the leading handbrake right off, last of all</source>
        <translation>Klinke aus, die vordere Handbremse ganz los, als Letztes</translation>
    </message>
    <message>
        <source>People come back.</source>
        <translation>Leute kommen zurück.</translation>
    </message>
    <message>
        <source>People: look where they are, warn, wait, look again; and again before the unit moves.</source>
        <translation>Menschen: hinsehen, wo sie sind, warnen, warten, noch einmal hinsehen; und wieder, bevor der Zug sich bewegt.</translation>
    </message>
    <message>
        <source>Press the fire bell test</source>
        <translation>Die Brandglockenprobe drücken</translation>
    </message>
    <message>
        <source>Put the brake handle and the reversing lever in</source>
        <translation>Bremsgriff und Richtungshebel einstecken</translation>
    </message>
    <message>
        <source>Put the control key in and switch on</source>
        <translation>Den Steuerschlüssel einstecken und einschalten</translation>
    </message>
    <message>
        <source>Quavelow Sidings to Tolvenby Junction</source>
        <translation>Quavelow Sidings bis Tolvenby Junction</translation>
    </message>
    <message>
        <source>Raced cold it runs dry: below 900 until the oil is there.</source>
        <translation>Kalt hochgejagt läuft er trocken: unter 900, bis das Öl da ist.</translation>
    </message>
    <message>
        <source>Rain comes on the road.</source>
        <translation>Unterwegs kommt Regen.</translation>
    </message>
    <message>
        <source>Read the air gauge: 75 psi or more</source>
        <translation>Die Luftuhr ablesen: 75 psi oder mehr</translation>
    </message>
    <message>
        <source>Read the air lamp and the air gauge together before you start</source>
        <translation>Luftlampe und Luftuhr zusammen ablesen, bevor Sie anfahren</translation>
    </message>
    <message>
        <source>Read the notices and the unit&apos;s repair book, and judge both</source>
        <translation>Aushänge und Übergabebuch des Zuges lesen und beide beurteilen</translation>
    </message>
    <message>
        <source>Reading one dark lamp: air or mesh, and which drive.</source>
        <translation>Eine dunkle Lampe lesen: Luft oder Eingriff, und welcher Antrieb.</translation>
    </message>
    <message>
        <source>Release the brake</source>
        <translation>Die Bremse lösen</translation>
    </message>
    <message>
        <source>Release, back to 21</source>
        <translation>Lösen, zurück auf 21</translation>
    </message>
    <message>
        <source>Repeat the code</source>
        <translation>Das Zeichen wiederholen</translation>
    </message>
    <message>
        <source>Reverser to forward, standing</source>
        <translation>Richtungshebel vorwärts, im Stand</translation>
    </message>
    <message>
        <source>Run the wiper, and stop it</source>
        <translation>Den Wischer laufen lassen und anhalten</translation>
    </message>
    <message>
        <source>See the oil pressure rise within ten seconds, the smoke clear and nothing leak</source>
        <translation>Den Öldruck in zehn Sekunden steigen sehen, den Rauch sich verziehen und nichts lecken</translation>
    </message>
    <message>
        <source>She stands until you say otherwise.</source>
        <translation>Der Zug steht, bis Sie etwas anderes sagen.</translation>
    </message>
    <message>
        <source>Shut off and coast; nothing holds her back but the brake</source>
        <translation>Abschalten und rollen lassen; nichts hält den Zug zurück als die Bremse</translation>
    </message>
    <message>
        <source>Sound the horn, both tones</source>
        <translation>Das Horn geben, beide Töne</translation>
    </message>
    <message>
        <source>Sound the horn, look along both sides, wait five seconds</source>
        <translation>Das Horn geben, an beiden Seiten entlangsehen, fünf Sekunden warten</translation>
    </message>
    <message>
        <source>Stop engine 1 with its button</source>
        <translation>Motor 1 mit seinem Knopf abstellen</translation>
    </message>
    <message>
        <source>Stop engine 2 with its button</source>
        <translation>Motor 2 mit seinem Knopf abstellen</translation>
    </message>
    <message>
        <source>Switch the red lamps on at this end</source>
        <translation>Die roten Lampen an diesem Ende einschalten</translation>
    </message>
    <message>
        <source>Switch the white lamps on at this end</source>
        <translation>Die weißen Lampen an diesem Ende einschalten</translation>
    </message>
    <message>
        <source>Take handles, keys, hand lamp, vest and notebook along</source>
        <translation>Griffe, Schlüssel, Handlampe, Weste und Notizbuch mitnehmen</translation>
    </message>
    <message>
        <source>Take hold again; back to 21</source>
        <translation>Wieder festhalten; zurück auf 21</translation>
    </message>
    <message>
        <source>Take the safety device in a hand and keep it down</source>
        <translation>Den Totmann in eine Hand nehmen und unten halten</translation>
    </message>
    <message>
        <source>Taking over a unit with people about</source>
        <translation>Einen Zug übernehmen, mit Leuten ringsum</translation>
    </message>
    <message>
        <source>The brake is proved once while moving, before it is needed.</source>
        <translation>Die Bremse wird einmal im Fahren erprobt, bevor sie gebraucht wird.</translation>
    </message>
    <message>
        <source>The cab was left: what it had is not what it has.</source>
        <translation>Der Führerstand war verlassen: was er hatte, ist nicht, was er hat.</translation>
    </message>
    <message>
        <source>The cab&apos;s throttle is moved by air.</source>
        <translation>Der Fahrschalter des Führerstands wirkt durch Luft.</translation>
    </message>
    <message>
        <source>The device is tested from a full pipe.</source>
        <translation>Der Totmann wird aus voller Leitung geprüft.</translation>
    </message>
    <message>
        <source>The dogs shift by air: about 60 psi move them. At speed they would be broken.</source>
        <translation>Die Klauen schalten mit Luft: etwa 60 psi bewegen sie. In Fahrt würden sie brechen.</translation>
    </message>
    <message>
        <source>The drum has to stand before the band takes.</source>
        <translation>Die Trommel muss stehen, bevor das Band fasst.</translation>
    </message>
    <message>
        <source>The fall comes from the far end: nothing is shut or kinked between.</source>
        <translation>Der Fall kommt vom fernen Ende: dazwischen ist nichts zu oder geknickt.</translation>
    </message>
    <message>
        <source>The far end is the one nobody has looked at since yesterday.</source>
        <translation>Das ferne Ende ist das, das seit gestern niemand angesehen hat.</translation>
    </message>
    <message>
        <source>The first key that is on has the desk; lamps come.</source>
        <translation>Der erste Schlüssel, der ein ist, hat das Pult; die Lampen kommen.</translation>
    </message>
    <message>
        <source>The first of two keys.</source>
        <translation>Der erste von zwei Schlüsseln.</translation>
    </message>
    <message>
        <source>The flag may hang on the far side only.</source>
        <translation>Die Flagge kann nur auf der anderen Seite hängen.</translation>
    </message>
    <message>
        <source>The freewheel lets her run: mind the limit.</source>
        <translation>Der Freilauf lässt den Zug laufen: auf die Grenze achten.</translation>
    </message>
    <message>
        <source>The handbrake is all that holds her until there is vacuum.</source>
        <translation>Die Handbremse ist alles, was den Zug hält, bis Vakuum da ist.</translation>
    </message>
    <message>
        <source>The last vehicle shows red, or the train is taken for half of one.</source>
        <translation>Das letzte Fahrzeug zeigt Rot, sonst gilt der Zug als halber Zug.</translation>
    </message>
    <message>
        <source>The leading handbrake holds her while you are away.</source>
        <translation>Die vordere Handbremse hält den Zug, während Sie weg sind.</translation>
    </message>
    <message>
        <source>The leave to walk the line is asked for there.</source>
        <translation>Die Erlaubnis, am Gleis zu gehen, wird dort erbeten.</translation>
    </message>
    <message>
        <source>The note falls to meet the next gear.</source>
        <translation>Der Ton fällt bis zum nächsten Gang.</translation>
    </message>
    <message>
        <source>The order of preparation from cold and dead, and why each thing waits for the other.</source>
        <translation>Die Folge der Vorbereitung aus kaltem, totem Zug, und warum jedes auf das andere wartet.</translation>
    </message>
    <message>
        <source>The other line is live.</source>
        <translation>Auf dem Nachbargleis fahren Züge.</translation>
    </message>
    <message>
        <source>The second key; neither opens alone.</source>
        <translation>Der zweite Schlüssel; keiner öffnet allein.</translation>
    </message>
    <message>
        <source>The second step proves the first was no chance.</source>
        <translation>Der zweite Schritt zeigt, dass der erste kein Zufall war.</translation>
    </message>
    <message>
        <source>The start circuit of the cab goes through its contacts; at speed the dogs would be broken.</source>
        <translation>Der Anlasskreis des Führerstands geht durch seine Kontakte; in Fahrt würden die Klauen brechen.</translation>
    </message>
    <message>
        <source>The stop code must arrive.</source>
        <translation>Das Haltzeichen muss ankommen.</translation>
    </message>
    <message>
        <source>Throttle to notch 2, hold start 1 until its lamp is lit, then shut the throttle</source>
        <translation>Fahrschalter auf Stufe 2, Anlassen 1 halten, bis seine Lampe leuchtet, dann Fahrschalter zu</translation>
    </message>
    <message>
        <source>Throttle to notch 2, hold start 2 until its lamp is lit, then shut the throttle</source>
        <translation>Fahrschalter auf Stufe 2, Anlassen 2 halten, bis seine Lampe leuchtet, dann Fahrschalter zu</translation>
    </message>
    <message>
        <source>To be seen, and no red in front.</source>
        <translation>Um gesehen zu werden, und kein Rot vorn.</translation>
    </message>
    <message>
        <source>Tolvenby Junction</source>
        <translation>Tolvenby Junction</translation>
    </message>
    <message>
        <source>Too little air: start from the ground.</source>
        <translation>Zu wenig Luft: vom Boden aus anlassen.</translation>
    </message>
    <message>
        <source>Unit 3 has stood for half an hour and has its air. Prepare it from cab 1, start from the cab, and take it away when signal and guard allow.</source>
        <translation>Zug 3 steht seit einer halben Stunde und hat seine Luft. Bereiten Sie ihn von Führerstand 1 aus vor, lassen Sie vom Führerstand aus an und fahren Sie ab, wenn Signal und Schaffner es erlauben.</translation>
    </message>
    <message>
        <source>Unit 3 stands ready in the siding, engines running, the brake proved by your colleague. Walk along both sides once more, and take it away if it is fit to go.</source>
        <translation>Zug 3 steht bereit im Abstellgleis, die Motoren laufen, die Bremse hat Ihr Kollege geprüft. Gehen Sie noch einmal an beiden Seiten entlang und fahren Sie ab, wenn er fahrtauglich ist.</translation>
    </message>
    <message>
        <source>Unit 3 stood in the sidings overnight at 2 degrees. Prepare it from cab 1, take it away when signal and guard allow, try the brake on the road and stop at the halt.</source>
        <translation>Zug 3 stand über Nacht bei 2 Grad im Abstellgleis. Bereiten Sie ihn von Führerstand 1 aus vor, fahren Sie ab, wenn Signal und Schaffner es erlauben, proben Sie unterwegs die Bremse und halten Sie am Haltepunkt.</translation>
    </message>
    <message>
        <source>Unit 3 was stopped by a signal on the moor bank and stands on both handbrakes, engines running, the vacuum up. You are in cab 1. The signal is clear and the guard gives two: take the handbrakes off and start away without rolling back.</source>
        <translation>Zug 3 wurde in der Moorsteigung von einem Signal angehalten und steht auf beiden Handbremsen, Motoren laufen, das Vakuum ist da. Sie sind in Führerstand 1. Das Signal ist frei, und der Schaffner gibt zwei: lösen Sie die Handbremsen und fahren Sie an, ohne zurückzurollen.</translation>
    </message>
    <message>
        <source>Wait for 25 inches in the release pipe</source>
        <translation>Auf 25 Zoll in der Löseleitung warten</translation>
    </message>
    <message>
        <source>Wait for the air lamp, with 75 psi or more on the gauge</source>
        <translation>Auf die Luftlampe warten, mit 75 psi oder mehr an der Uhr</translation>
    </message>
    <message>
        <source>Wait for the signal</source>
        <translation>Auf das Signal warten</translation>
    </message>
    <message>
        <source>Wait for two strokes from the guard</source>
        <translation>Auf zwei Schläge vom Schaffner warten</translation>
    </message>
    <message>
        <source>Walk along car 1 on side 1; judge people, scotches, doors, wheels, brake and pipes</source>
        <translation>An Wagen 1 auf Seite 1 entlanggehen; Personen, Hemmschuhe, Türen, Räder, Bremse und Leitungen beurteilen</translation>
    </message>
    <message>
        <source>Walk along car 1 on side 2; judge everything there</source>
        <translation>An Wagen 1 auf Seite 2 entlanggehen; dort alles beurteilen</translation>
    </message>
    <message>
        <source>Walk along car 2 on side 1; judge everything there</source>
        <translation>An Wagen 2 auf Seite 1 entlanggehen; dort alles beurteilen</translation>
    </message>
    <message>
        <source>Walk along car 2 on side 2; judge everything there</source>
        <translation>An Wagen 2 auf Seite 2 entlanggehen; dort alles beurteilen</translation>
    </message>
    <message>
        <source>Warm preparation, one final drive tooth on tooth</source>
        <translation>Warme Vorbereitung, ein Achsgetriebe Zahn auf Zahn</translation>
    </message>
    <message>
        <source>What holds is let go only when something else holds.</source>
        <translation>Was hält, wird erst losgelassen, wenn etwas anderes hält.</translation>
    </message>
    <message>
        <source>What is found is written down and told, and the unit stays where it is.</source>
        <translation>Was gefunden wird, wird aufgeschrieben und gesagt, und der Zug bleibt, wo er ist.</translation>
    </message>
    <message>
        <source>What is low now is ruined in an hour.</source>
        <translation>Was jetzt niedrig ist, ist in einer Stunde zerstört.</translation>
    </message>
    <message>
        <source>Whoever is in the way needs the time to step back.</source>
        <translation>Wer im Weg ist, braucht Zeit, zurückzutreten.</translation>
    </message>
    <message>
        <source>With the valve in release let go of the device, and count: the pipe falls at five seconds</source>
        <translation>Mit dem Ventil auf Lösen den Totmann loslassen und zählen: nach fünf Sekunden fällt die Leitung</translation>
    </message>
    <message>
        <source>Within an inch of yours: the pipe is one pipe.</source>
        <translation>Auf einen Zoll wie Ihre: die Leitung ist eine Leitung.</translation>
    </message>
    <message>
        <source>Without air the cab cannot move the throttle: the first starts are made at the engine.</source>
        <translation>Ohne Luft kann der Führerstand kein Gas geben: die ersten Anläufe geschehen am Motor.</translation>
    </message>
    <message>
        <source>Yethrick Halt</source>
        <translation>Yethrick Halt</translation>
    </message>
    <message>
        <source>You look for what was wrong yesterday, and for what the road has for you today.</source>
        <translation>Sie suchen, was gestern falsch war und was die Strecke heute für Sie hat.</translation>
    </message>
    <message>
        <source>Your colleague has left unit 3 in the siding with engine 1 running, air and vacuum up, both handbrakes on. Look round it, start engine 2 from cab 1, try the brake, and take the unit away when signal and guard allow.</source>
        <translation>Ihr Kollege hat Zug 3 im Abstellgleis gelassen, Motor 1 läuft, Luft und Vakuum sind da, beide Handbremsen fest. Sehen Sie ihn ringsum an, lassen Sie Motor 2 von Führerstand 1 aus an, proben Sie die Bremse und fahren Sie ab, wenn Signal und Schaffner es erlauben.</translation>
    </message>
    <message>
        <source>boarding</source>
        <translation>Einsteigen</translation>
    </message>
    <message>
        <source>booking on</source>
        <translation>Dienstantritt</translation>
    </message>
    <message>
        <source>brake</source>
        <translation>Bremse</translation>
    </message>
    <message>
        <source>brake and device tests</source>
        <translation>Brems- und Totmannprobe</translation>
    </message>
    <message>
        <source>building air and vacuum</source>
        <translation>Luft und Vakuum aufbauen</translation>
    </message>
    <message>
        <source>depart</source>
        <translation>Abfahren</translation>
    </message>
    <message>
        <source>departure</source>
        <translation>Abfahrt</translation>
    </message>
    <message>
        <source>desk alive</source>
        <translation>Pult besetzt</translation>
    </message>
    <message>
        <source>device</source>
        <translation>Totmann</translation>
    </message>
    <message>
        <source>engine start</source>
        <translation>Motoren anlassen</translation>
    </message>
    <message>
        <source>engines</source>
        <translation>Motoren</translation>
    </message>
    <message>
        <source>ground start</source>
        <translation>Anlassen vom Boden</translation>
    </message>
    <message>
        <source>one dark lamp: air or mesh</source>
        <translation>eine dunkle Lampe: Luft oder Eingriff</translation>
    </message>
    <message>
        <source>ready</source>
        <translation>bereit</translation>
    </message>
    <message>
        <source>run</source>
        <translation>Fahrt</translation>
    </message>
    <message>
        <source>start from the cab</source>
        <translation>Anlassen vom Führerstand</translation>
    </message>
    <message>
        <source>stop</source>
        <translation>Halt</translation>
    </message>
    <message>
        <source>try the brake before the falling grade</source>
        <translation>die Bremse vor dem Gefälle proben</translation>
    </message>
    <message>
        <source>walk round</source>
        <translation>Rundgang</translation>
    </message>
    <message>
        <source>whistle</source>
        <translation>Pfeifen</translation>
    </message>
    <message>
        <source>A dead device looks just the same.</source>
        <translation>Ein toter Totmann sieht genauso aus.</translation>
    </message>
    <message>
        <source>A gear left in drives off at the button.</source>
        <translation>Ein eingelegter Gang fährt auf den Knopf los.</translation>
    </message>
    <message>
        <source>Agree a bell test with the guard, ring 3, and hear it back</source>
        <translation>Mit dem Schaffner eine Klingelprobe vereinbaren, 3 klingeln und die Wiederholung hören</translation>
    </message>
    <message>
        <source>An engine that starts with a hand in it takes the hand.</source>
        <translation>Ein Motor, der mit einer Hand darin anläuft, nimmt die Hand.</translation>
    </message>
    <message>
        <source>Ask whether the line may be walked, and wait for the answer</source>
        <translation>Fragen, ob das Gleis betreten werden darf, und die Antwort abwarten</translation>
    </message>
    <message>
        <source>At engine 2: who is there? Read its isolating switch too</source>
        <translation>An Motor 2: wer ist dort? Auch seinen Trennschalter lesen</translation>
    </message>
    <message>
        <source>Back in cab 1: hold the device, reverser forward, brake to release until the needle stands at 21</source>
        <translation>Zurück in Führerstand 1: Totmann halten, Richtungshebel vorwärts, Bremse auf Lösen, bis der Zeiger bei 21 steht</translation>
    </message>
    <message>
        <source>Brake in lap, device up, reverser off; then cab 2: its handbrake off</source>
        <translation>Bremse auf Abschluss, Totmann hoch, Richtungshebel aus; dann Führerstand 2: seine Handbremse los</translation>
    </message>
    <message>
        <source>Brake to release until 21, then a full application: the needle to nothing</source>
        <translation>Bremse auf Lösen bis 21, dann Vollbremsung: der Zeiger auf nichts</translation>
    </message>
    <message>
        <source>Cab 1: device, reverser forward, 21 again</source>
        <translation>Führerstand 1: Totmann, Richtungshebel vorwärts, wieder 21</translation>
    </message>
    <message>
        <source>Cab 1: handbrake, controls at rest, and the seal of the device&apos;s cock, behind you</source>
        <translation>Führerstand 1: Handbremse, Hebel in Ruhe und die Plombe des Totmannhahns hinter Ihnen</translation>
    </message>
    <message>
        <source>Cab 2: handbrake hard, controls at rest</source>
        <translation>Führerstand 2: Handbremse fest, Hebel in Ruhe</translation>
    </message>
    <message>
        <source>Decide: goes on, goes on restricted, or fails; say it to those who wait</source>
        <translation>Entscheiden: fährt weiter, fährt beschränkt weiter oder fährt nicht; es denen sagen, die warten</translation>
    </message>
    <message>
        <source>Down to 15, lap; then pawl out and the leading handbrake off</source>
        <translation>Hinunter auf 15, Abschluss; dann Klinke aus und die vordere Handbremse los</translation>
    </message>
    <message>
        <source>Ease the brake off against the pull</source>
        <translation>Die Bremse gegen den Zug lösen</translation>
    </message>
    <message>
        <source>Fifteen inches on the way up hold nothing: the chambers have to be full first.</source>
        <translation>Fünfzehn Zoll auf dem Weg nach oben halten nichts: erst müssen die Kammern voll sein.</translation>
    </message>
    <message>
        <source>From 21 down to 14 or 15, then lap</source>
        <translation>Von 21 auf 14 oder 15 hinunter, dann Abschluss</translation>
    </message>
    <message>
        <source>From 21 down, never from below up.</source>
        <translation>Von 21 hinunter, nie von unten herauf.</translation>
    </message>
    <message>
        <source>From now on only the brake holds her.</source>
        <translation>Von jetzt an hält nur die Bremse den Zug.</translation>
    </message>
    <message>
        <source>From the cab you see nobody: the warning is for them.</source>
        <translation>Vom Führerstand aus sehen Sie niemanden: die Warnung ist für sie.</translation>
    </message>
    <message>
        <source>Hold the device, reverser forward. Horn, look along both sides, wait five seconds; throttle 2, start engine 2 until its lamp is lit</source>
        <translation>Totmann halten, Richtungshebel vorwärts. Horn, an beiden Seiten entlangsehen, fünf Sekunden warten; Stufe 2, Motor 2 anlassen, bis seine Lampe leuchtet</translation>
    </message>
    <message>
        <source>If somebody is there: call out, wait until he is clear, and look again.</source>
        <translation>Ist jemand dort: rufen, warten, bis er weg ist, und noch einmal hinsehen.</translation>
    </message>
    <message>
        <source>If somebody stands there: horn or call, wait, and look again.</source>
        <translation>Steht jemand dort: Horn oder Ruf, warten und noch einmal hinsehen.</translation>
    </message>
    <message>
        <source>It is the difference between chamber and pipe that presses the blocks.</source>
        <translation>Der Unterschied zwischen Kammer und Leitung drückt die Klötze an.</translation>
    </message>
    <message>
        <source>It is the only proof that the brake works.</source>
        <translation>Es ist der einzige Beweis, dass die Bremse wirkt.</translation>
    </message>
    <message>
        <source>It resets only in the hand.</source>
        <translation>Er stellt sich nur in der Hand zurück.</translation>
    </message>
    <message>
        <source>It stops the train when you cannot.</source>
        <translation>Er hält den Zug an, wenn Sie es nicht können.</translation>
    </message>
    <message>
        <source>Let go of the device with the brake in release; watch the needle fall after about five seconds</source>
        <translation>Den Totmann bei Bremse auf Lösen loslassen; den Zeiger nach etwa fünf Sekunden fallen sehen</translation>
    </message>
    <message>
        <source>Look along both sides until nobody is there</source>
        <translation>An beiden Seiten entlangsehen, bis niemand dort ist</translation>
    </message>
    <message>
        <source>On a hill there is nothing else to hold the unit when the brake goes.</source>
        <translation>Am Berg hält sonst nichts den Zug, wenn die Bremse löst.</translation>
    </message>
    <message>
        <source>Once round the unit: look for a board, flag or lamp at both ends and on both sides, and judge</source>
        <translation>Einmal um den Zug: an beiden Enden und Seiten nach Tafel, Flagge oder Lampe sehen und beurteilen</translation>
    </message>
    <message>
        <source>One handbrake holds her on this bank; the rear one is the one that is forgotten.</source>
        <translation>Eine Handbremse hält den Zug in dieser Steigung; die hintere ist die, die vergessen wird.</translation>
    </message>
    <message>
        <source>Other trains do not know you.</source>
        <translation>Andere Züge wissen nichts von Ihnen.</translation>
    </message>
    <message>
        <source>Pawl out, and the leading handbrake off, last of all</source>
        <translation>Klinke aus und die vordere Handbremse los, als Letztes</translation>
    </message>
    <message>
        <source>People come back for their tools.</source>
        <translation>Leute kommen nach ihrem Werkzeug zurück.</translation>
    </message>
    <message>
        <source>Release, and wait for 21</source>
        <translation>Lösen und auf 21 warten</translation>
    </message>
    <message>
        <source>Say that the unit does not go</source>
        <translation>Sagen, dass der Zug nicht fährt</translation>
    </message>
    <message>
        <source>She must not roll back; half a metre is a mark, three are a failed run.</source>
        <translation>Der Zug darf nicht zurückrollen; ein halber Meter kostet Punkte, drei kosten die Fahrt.</translation>
    </message>
    <message>
        <source>Signal and guard are no judges of a pin: you are.</source>
        <translation>Signal und Schaffner urteilen nicht über einen Bolzen: Sie tun es.</translation>
    </message>
    <message>
        <source>Somebody may be under it. Look both ways each time before you cross the line.</source>
        <translation>Jemand kann darunter sein. Jedes Mal nach beiden Seiten sehen, bevor Sie das Gleis queren.</translation>
    </message>
    <message>
        <source>Take hold again, and wait for 21</source>
        <translation>Wieder festhalten und auf 21 warten</translation>
    </message>
    <message>
        <source>Tell the shed, by word</source>
        <translation>Der Werkstatt mündlich Bescheid sagen</translation>
    </message>
    <message>
        <source>The book is read tomorrow; the fitter is needed today.</source>
        <translation>Das Buch wird morgen gelesen; der Schlosser wird heute gebraucht.</translation>
    </message>
    <message>
        <source>The brake has to hold her before the handbrake lets go.</source>
        <translation>Die Bremse muss den Zug halten, bevor die Handbremse loslässt.</translation>
    </message>
    <message>
        <source>The next driver reads the book, not your mind.</source>
        <translation>Der nächste Fahrer liest das Buch, nicht Ihre Gedanken.</translation>
    </message>
    <message>
        <source>The rear one is forgotten; the leading one still holds her meanwhile.</source>
        <translation>Die hintere wird vergessen; die vordere hält den Zug inzwischen noch.</translation>
    </message>
    <message>
        <source>They hold a road and a train for you.</source>
        <translation>Sie halten Ihnen ein Gleis und einen Zug frei.</translation>
    </message>
    <message>
        <source>Throttle to notch 2 with the brake still on: feel her lean on it</source>
        <translation>Fahrschalter auf Stufe 2 bei noch angelegter Bremse: spüren, wie er sich dagegenlegt</translation>
    </message>
    <message>
        <source>Up into a cab: write each defect in the repair book, what it is and where</source>
        <translation>Hinauf in einen Führerstand: jeden Mangel ins Übergabebuch, was es ist und wo</translation>
    </message>
    <message>
        <source>Walk along both sides of both cars; look at what carries, brakes and drips, and judge it: good, defect, or not sure</source>
        <translation>An beiden Seiten beider Wagen entlanggehen; ansehen, was trägt, bremst und tropft, und beurteilen: gut, Mangel oder unsicher</translation>
    </message>
    <message>
        <source>Walk to cab 2 and take its handbrake off; cab 1&apos;s stays hard on</source>
        <translation>Zu Führerstand 2 gehen und seine Handbremse lösen; die von Führerstand 1 bleibt fest</translation>
    </message>
    <message>
        <source>What holds on one side says nothing of the other. Look both ways before you cross the line.</source>
        <translation>Was auf einer Seite hält, sagt nichts über die andere. Nach beiden Seiten sehen, bevor Sie das Gleis queren.</translation>
    </message>
    <message>
        <source>a figure is no brake</source>
        <translation>eine Zahl ist keine Bremse</translation>
    </message>
    <message>
        <source>before boarding</source>
        <translation>vor dem Einsteigen</translation>
    </message>
    <message>
        <source>book, tell, refuse</source>
        <translation>eintragen, sagen, ablehnen</translation>
    </message>
    <message>
        <source>looking again before moving</source>
        <translation>noch einmal hinsehen vor der Fahrt</translation>
    </message>
    <message>
        <source>looking on both sides</source>
        <translation>auf beiden Seiten hinsehen</translation>
    </message>
    <message>
        <source>no roll back</source>
        <translation>nicht zurückrollen</translation>
    </message>
    <message>
        <source>people at the unit</source>
        <translation>Personen am Zug</translation>
    </message>
    <message>
        <source>personal safety</source>
        <translation>eigene Sicherheit</translation>
    </message>
    <message>
        <source>starting on a rising grade</source>
        <translation>Anfahren in der Steigung</translation>
    </message>
    <message>
        <source>walk</source>
        <translation>Rundgang</translation>
    </message>
    <message>
        <source>warning before each start</source>
        <translation>warnen vor jedem Anlassen</translation>
    </message>
    <message>
        <source>what goes and what does not</source>
        <translation>was fährt und was nicht</translation>
    </message>
    <message>
        <source>15 from 21 down, and 15 on the way up</source>
        <translation>15 von 21 herunter, und 15 auf dem Weg nach oben</translation>
    </message>
    <message>
        <source>21 inches from one exhauster, then down to 15 and lap</source>
        <translation>21 Zoll mit einem Luftsauger, dann herunter auf 15 und Abschluss</translation>
    </message>
    <message>
        <source>21, down to 15, lap; pawl out and the handbrake off</source>
        <translation>21, herunter auf 15, Abschluss; Sperrklinke aus und die Handbremse los</translation>
    </message>
    <message>
        <source>A band slips in third</source>
        <translation>Ein Band rutscht im dritten Gang</translation>
    </message>
    <message>
        <source>A band that is worn holds a light pull and no more.</source>
        <translation>Ein verschlissenes Band hält einen leichten Zug aus und nicht mehr.</translation>
    </message>
    <message>
        <source>A brake that lets itself off takes nobody up a bank, or down it.</source>
        <translation>Eine Bremse, die sich selbst löst, bringt niemanden eine Rampe hinauf oder hinunter.</translation>
    </message>
    <message>
        <source>A cock that is half shut would be the simplest cause: touch nothing, look.</source>
        <translation>Ein halb geschlossener Hahn wäre die einfachste Ursache: nichts berühren, nachsehen.</translation>
    </message>
    <message>
        <source>A compressor that never unloads is feeding a hole. A hiss tells where.</source>
        <translation>Ein Kompressor, der nie abschaltet, speist ein Loch. Ein Zischen sagt, wo.</translation>
    </message>
    <message>
        <source>A dark lamp with the note still there would be the bulb, or the oil; silence is the engine. On 1 in 50 one engine stalls in third and the coupling boils.</source>
        <translation>Eine dunkle Lampe bei gleichem Ton wäre die Birne oder das Öl; Stille ist der Motor. Auf 1 zu 50 würgt ein einzelner Motor im dritten Gang, und die Kupplung kocht.</translation>
    </message>
    <message>
        <source>A driver who collapses at sixty runs another quarter of a mile for six seconds more.</source>
        <translation>Ein Führer, der bei sechzig zusammenbricht, fährt für sechs Sekunden mehr eine Viertelmeile weiter.</translation>
    </message>
    <message>
        <source>A figure is not a brake: it is the fall from 21 that presses the blocks.</source>
        <translation>Eine Zahl ist keine Bremse: der Fall von 21 drückt die Klötze an.</translation>
    </message>
    <message>
        <source>A figure that was written down can be shown to others.</source>
        <translation>Eine aufgeschriebene Zahl kann man anderen zeigen.</translation>
    </message>
    <message>
        <source>A flag on the far side</source>
        <translation>Eine Flagge auf der fernen Seite</translation>
    </message>
    <message>
        <source>A gear left in there drives off at the button here.</source>
        <translation>Ein dort eingelegter Gang fährt hier beim Knopfdruck los.</translation>
    </message>
    <message>
        <source>A lamp that goes out on a hill leaves you half the pull.</source>
        <translation>Eine Lampe, die am Berg ausgeht, lässt Ihnen die halbe Zugkraft.</translation>
    </message>
    <message>
        <source>A late safety device, and a road that is wanted</source>
        <translation>Ein später Totmann, und ein Fahrweg, der gebraucht wird</translation>
    </message>
    <message>
        <source>A needle that rises in lap: see it, prove whose it is, and do not move.</source>
        <translation>Ein Zeiger, der auf Abschluss steigt: sehen, beweisen, wessen er ist, und nicht fahren.</translation>
    </message>
    <message>
        <source>A shaft that rubs shines: bright metal is never old.</source>
        <translation>Eine scheuernde Welle glänzt: blankes Metall ist nie alt.</translation>
    </message>
    <message>
        <source>A switch at off may be a fitter&apos;s hand, and oil is dipped while the engine stands.</source>
        <translation>Ein Schalter auf Aus kann die Hand eines Schlossers sein, und Öl misst man bei stehendem Motor.</translation>
    </message>
    <message>
        <source>A turning shaft carries the teeth to a gap.</source>
        <translation>Eine drehende Welle bringt die Zähne vor eine Lücke.</translation>
    </message>
    <message>
        <source>Agree a bell test with the guard, give a code, hear it back</source>
        <translation>Mit dem Schaffner eine Klingelprobe vereinbaren, ein Zeichen geben, die Wiederholung hören</translation>
    </message>
    <message>
        <source>Air behind the piston throws the sleeve back over your hand.</source>
        <translation>Luft hinter dem Kolben wirft die Muffe über Ihre Hand zurück.</translation>
    </message>
    <message>
        <source>Air good, one gear only, one engine only: it is the band.</source>
        <translation>Luft gut, nur ein Gang, nur ein Motor: es ist das Band.</translation>
    </message>
    <message>
        <source>Air is good, so it is that gear&apos;s own pipe: it needs time, not power.</source>
        <translation>Die Luft ist gut, also ist es die Leitung dieses Ganges: sie braucht Zeit, nicht Kraft.</translation>
    </message>
    <message>
        <source>Along car 1 on side 1: doors, windows, skirts, wheels, blocks, rigging, cord, springs, boxes, pipes, drains, shaft</source>
        <translation>Am Wagen 1 auf Seite 1 entlang: Türen, Fenster, Schürzen, Räder, Klötze, Gestänge, Löseschnur, Federn, Lager, Rohre, Hähne, Welle</translation>
    </message>
    <message>
        <source>An answer says: I go.</source>
        <translation>Eine Antwort sagt: ich fahre.</translation>
    </message>
    <message>
        <source>As at the first time: the habit is the safety.</source>
        <translation>Wie beim ersten Mal: die Gewohnheit ist die Sicherheit.</translation>
    </message>
    <message>
        <source>Ask the signaller whether you may go on restricted, and wait for the answer</source>
        <translation>Den Fahrdienstleiter fragen, ob Sie beschränkt weiterfahren dürfen, und die Antwort abwarten</translation>
    </message>
    <message>
        <source>Ask who is at work on the unit, and wait for the answer</source>
        <translation>Fragen, wer am Zug arbeitet, und die Antwort abwarten</translation>
    </message>
    <message>
        <source>At 14 to 15: second gear, pause, open; and watch both tachometers</source>
        <translation>Bei 14 bis 15: zweiter Gang, Pause, öffnen; und beide Drehzahlmesser beobachten</translation>
    </message>
    <message>
        <source>At 15 on the way up there are 15 above the pistons too: nothing presses a block.</source>
        <translation>Bei 15 auf dem Weg nach oben stehen auch 15 über den Kolben: nichts drückt einen Klotz an.</translation>
    </message>
    <message>
        <source>At 38 to 41: top gear, as before</source>
        <translation>Bei 38 bis 41: höchster Gang, wie zuvor</translation>
    </message>
    <message>
        <source>At the cupboard: breakers, battery switch, volts</source>
        <translation>Am Schaltschrank: Automaten, Batterieschalter, Volt</translation>
    </message>
    <message>
        <source>At the halt: the slow gear into the book, which gear and which engine, and say your decision</source>
        <translation>Am Haltepunkt: den langsamen Gang ins Buch, welcher Gang und welcher Motor, und die Entscheidung sagen</translation>
    </message>
    <message>
        <source>Back in cab 1: device, reverser forward, one notch in neutral if you like, and wait for the cut-out at 95</source>
        <translation>Zurück in Führerstand 1: Totmann, Richtung vorwärts, wenn Sie mögen eine Stufe im Leerlauf, und auf das Abschalten bei 95 warten</translation>
    </message>
    <message>
        <source>Back in cab 1: hold the device, reverser forward, and wait for 25 in the release pipe</source>
        <translation>Zurück in Führerstand 1: Totmann halten, Richtung vorwärts, und auf 25 in der Löseleitung warten</translation>
    </message>
    <message>
        <source>Back through cab 2: its handbrake off again</source>
        <translation>Zurück durch Führerstand 2: seine Handbremse wieder los</translation>
    </message>
    <message>
        <source>Before going on: 22 inches or more in the release pipe, doors shut, two strokes repeated</source>
        <translation>Vor der Weiterfahrt: 22 Zoll oder mehr in der Löseleitung, Türen zu, zwei Schläge wiederholt</translation>
    </message>
    <message>
        <source>Behind a shut cock the device is dead, and looks just the same.</source>
        <translation>Hinter einem geschlossenen Hahn ist der Totmann tot und sieht genauso aus.</translation>
    </message>
    <message>
        <source>Both drives in mesh and enough air: without it no power is put on.</source>
        <translation>Beide Achsgetriebe im Eingriff und genug Luft: ohne das wird keine Kraft gegeben.</translation>
    </message>
    <message>
        <source>Both permissions or none; and on a hill the power first, the brake last.</source>
        <translation>Beide Erlaubnisse oder keine; und am Berg die Kraft zuerst, die Bremse zuletzt.</translation>
    </message>
    <message>
        <source>Brake and device tests with the guard at the rear</source>
        <translation>Bremsprobe und Totmannprobe mit dem Schaffner am Zugende</translation>
    </message>
    <message>
        <source>Brake in lap, device up, reverser off; then back to cab 1: its handbrake off</source>
        <translation>Bremse auf Abschluss, Totmann hoch, Richtungshebel aus; dann zurück zu Führerstand 1: seine Handbremse los</translation>
    </message>
    <message>
        <source>Brake off, a notch or two to get away; look back; shut off before the fall begins</source>
        <translation>Bremse los, eine oder zwei Stufen zum Anfahren; zurücksehen; abschalten, bevor das Gefälle beginnt</translation>
    </message>
    <message>
        <source>Brake to lap, device up, reverser off; cab 2: its handbrake hard on, pawl in</source>
        <translation>Bremse auf Abschluss, Totmann hoch, Richtungshebel aus; Führerstand 2: seine Handbremse fest, Sperrklinke ein</translation>
    </message>
    <message>
        <source>Brake to release until the needle stands at 21</source>
        <translation>Bremse auf Lösen, bis der Zeiger auf 21 steht</translation>
    </message>
    <message>
        <source>Brake to release, and let the needle go past 15, all the way to 21</source>
        <translation>Bremse auf Lösen, und den Zeiger über 15 hinaus ganz auf 21 gehen lassen</translation>
    </message>
    <message>
        <source>Brake to release, and see the train pipe come to 21; the handbrakes stay on</source>
        <translation>Bremse auf Lösen, und die Zugleitung auf 21 kommen sehen; die Handbremsen bleiben fest</translation>
    </message>
    <message>
        <source>By word first, the book after.</source>
        <translation>Erst mündlich, dann das Buch.</translation>
    </message>
    <message>
        <source>Cab 1: handbrake hard, pawl in, chain tight; controls at rest</source>
        <translation>Führerstand 1: Handbremse fest, Sperrklinke ein, Kette straff; Hebel in Ruhe</translation>
    </message>
    <message>
        <source>Cab 1: hold the device, reverser to reverse until the air lamp lights, then to forward until it lights again</source>
        <translation>Führerstand 1: Totmann halten, Richtungshebel rückwärts, bis die Luftlampe leuchtet, dann vorwärts, bis sie wieder leuchtet</translation>
    </message>
    <message>
        <source>Cab 2: device, reverser forward, lamp seen, 21 again</source>
        <translation>Führerstand 2: Totmann, Richtung vorwärts, Lampe gesehen, wieder 21</translation>
    </message>
    <message>
        <source>Cab 2: its handbrake hard on; judge handbrake, seal, detonators, flags, extinguisher</source>
        <translation>Führerstand 2: seine Handbremse fest; Handbremse, Plombe, Knallkapseln, Flaggen, Feuerlöscher beurteilen</translation>
    </message>
    <message>
        <source>Car 1 on side 2</source>
        <translation>Wagen 1 auf Seite 2</translation>
    </message>
    <message>
        <source>Car 2 on side 1: the same, and underframe, straps and tanks</source>
        <translation>Wagen 2 auf Seite 1: dasselbe, dazu Untergestell, Bänder und Behälter</translation>
    </message>
    <message>
        <source>Change of ends, and one dark lamp</source>
        <translation>Führerstandswechsel, und eine dunkle Lampe</translation>
    </message>
    <message>
        <source>Corrow Bank</source>
        <translation>Corrow Bank</translation>
    </message>
    <message>
        <source>Decide, and say it</source>
        <translation>Entscheiden, und es sagen</translation>
    </message>
    <message>
        <source>Decide: goes on, goes on restricted, or fails</source>
        <translation>Entscheiden: fährt, fährt beschränkt oder fährt nicht</translation>
    </message>
    <message>
        <source>Device in hand, reverser forward; the guard&apos;s two, repeated; first gear</source>
        <translation>Totmann in der Hand, Richtung vorwärts; die zwei Schläge des Schaffners, wiederholt; erster Gang</translation>
    </message>
    <message>
        <source>Device up, reverser off, handle out; in cab 2 put it in, raise 21, down to 15, lap, and watch again</source>
        <translation>Totmann hoch, Richtungshebel aus, Griff heraus; in Führerstand 2 einstecken, auf 21 bringen, herunter auf 15, Abschluss, und wieder beobachten</translation>
    </message>
    <message>
        <source>Down to 15, lap; look along both sides; pawl out and the handbrake of cab 2 off</source>
        <translation>Herunter auf 15, Abschluss; an beiden Seiten entlangsehen; Sperrklinke aus und die Handbremse von Führerstand 2 los</translation>
    </message>
    <message>
        <source>Draw the sleeve to the middle, put the pin in</source>
        <translation>Die Muffe in die Mitte ziehen, den Bolzen einstecken</translation>
    </message>
    <message>
        <source>Each car has its own springs and its own boxes.</source>
        <translation>Jeder Wagen hat eigene Federn und eigene Lager.</translation>
    </message>
    <message>
        <source>Each final drive goes over by itself: two thumps, or one.</source>
        <translation>Jedes Achsgetriebe schaltet für sich um: zwei dumpfe Schläge, oder einer.</translation>
    </message>
    <message>
        <source>Each release is paid out of the reservoir: one application to a stop, and the needle read before going on.</source>
        <translation>Jedes Lösen bezahlt der Behälter: eine Bremsung je Halt, und den Zeiger ablesen, bevor es weitergeht.</translation>
    </message>
    <message>
        <source>Each second under power is burnt lining.</source>
        <translation>Jede Sekunde unter Kraft ist verbrannter Belag.</translation>
    </message>
    <message>
        <source>Engine 1: fuel, coolant, oil, belts, exhaust, tray, gearbox, final drive, cover</source>
        <translation>Motor 1: Kraftstoff, Kühlwasser, Öl, Riemen, Auspuff, Wanne, Getriebe, Achsgetriebe, Haube</translation>
    </message>
    <message>
        <source>Engine 1: who is there? Switch, fuel, coolant, oil, belts, hand throttle, tray, cover</source>
        <translation>Motor 1: wer ist da? Schalter, Kraftstoff, Kühlwasser, Öl, Riemen, Handgas, Wanne, Haube</translation>
    </message>
    <message>
        <source>Engine 2, as engine 1</source>
        <translation>Motor 2, wie Motor 1</translation>
    </message>
    <message>
        <source>Enter it: which cab, what the needle did, in how long</source>
        <translation>Eintragen: welcher Führerstand, was der Zeiger tat, in welcher Zeit</translation>
    </message>
    <message>
        <source>Enter the open drain in the repair book</source>
        <translation>Den offenen Ablasshahn ins Übergabebuch eintragen</translation>
    </message>
    <message>
        <source>Fifteen inches on the way up, on 1 in 80</source>
        <translation>Fünfzehn Zoll auf dem Weg nach oben, auf 1 zu 80</translation>
    </message>
    <message>
        <source>First bite, wait, more; ease up; stop at the mark of Wexholt and hold her</source>
        <translation>Erste Bremsstufe, warten, mehr; nachlassen; an der Tafel von Wexholt halten und festhalten</translation>
    </message>
    <message>
        <source>First gear, pause, brake off, notch by notch; look back</source>
        <translation>Erster Gang, Pause, Bremse los, Stufe um Stufe; zurücksehen</translation>
    </message>
    <message>
        <source>First gear, pause, brake off, one notch</source>
        <translation>Erster Gang, Pause, Bremse los, eine Stufe</translation>
    </message>
    <message>
        <source>First gear, pause, brake off: the grade starts her</source>
        <translation>Erster Gang, Pause, Bremse los: das Gefälle setzt den Zug in Gang</translation>
    </message>
    <message>
        <source>Five seconds is right; four to seven are accepted.</source>
        <translation>Fünf Sekunden sind richtig; vier bis sieben werden anerkannt.</translation>
    </message>
    <message>
        <source>From 21 down to 14 or 15, then lap; on a grade rather more than less</source>
        <translation>Von 21 herunter auf 14 oder 15, dann Abschluss; auf einer Neigung eher mehr als weniger</translation>
    </message>
    <message>
        <source>From 21 down, never from below up; and nothing is let go before the brake is known.</source>
        <translation>Von 21 herunter, nie von unten herauf; und nichts wird losgelassen, bevor die Bremse bekannt ist.</translation>
    </message>
    <message>
        <source>From a platform only with both: doors stand open there.</source>
        <translation>Von einem Bahnsteig nur mit beidem: dort stehen Türen offen.</translation>
    </message>
    <message>
        <source>From the ground nobody reaches the brake valve.</source>
        <translation>Vom Boden aus reicht niemand an das Bremsventil.</translation>
    </message>
    <message>
        <source>From there on she runs by herself: no engine holds her back, and no engine fills the reservoir quickly.</source>
        <translation>Von dort an läuft der Zug von selbst: kein Motor hält ihn zurück, und kein Motor füllt den Behälter schnell.</translation>
    </message>
    <message>
        <source>Full application to nothing</source>
        <translation>Vollbremsung bis auf null</translation>
    </message>
    <message>
        <source>Full application, handbrake of cab 1 hard on, pawl in</source>
        <translation>Vollbremsung, Handbremse von Führerstand 1 fest, Sperrklinke ein</translation>
    </message>
    <message>
        <source>Gauge first, then walk; and air that is good does not excuse a gear that is slow.</source>
        <translation>Erst die Uhr, dann gehen; und gute Luft entschuldigt keinen trägen Gang.</translation>
    </message>
    <message>
        <source>Gear to neutral; wait for the guard&apos;s two, repeat them, look at the signal again</source>
        <translation>Gang auf Leerlauf; auf die zwei Schläge des Schaffners warten, sie wiederholen, das Signal noch einmal ansehen</translation>
    </message>
    <message>
        <source>Gears by speed and note, coasting on the freewheel, a brake tried on the road, a stop at the mark.</source>
        <translation>Gänge nach Geschwindigkeit und Ton, Rollen auf dem Freilauf, eine Bremsprobe unterwegs, ein Halt an der Tafel.</translation>
    </message>
    <message>
        <source>Half the pull, half the air, half the vacuum: whoever takes the unit has to know.</source>
        <translation>Halbe Zugkraft, halbe Luft, halbes Vakuum: wer den Zug übernimmt, muss es wissen.</translation>
    </message>
    <message>
        <source>Handbrake of cab 1 hard on, pawl in; the brake stays at full</source>
        <translation>Handbremse von Führerstand 1 fest, Sperrklinke ein; die Bremse bleibt auf voll</translation>
    </message>
    <message>
        <source>He holds a road for you and counts the minutes.</source>
        <translation>Er hält einen Fahrweg für Sie frei und zählt die Minuten.</translation>
    </message>
    <message>
        <source>He plans the road: at half power you fill it twice as long.</source>
        <translation>Er plant den Fahrweg: mit halber Kraft belegen Sie ihn doppelt so lange.</translation>
    </message>
    <message>
        <source>Hear it, shut off at once; then ask: one gear or all, one engine or both.</source>
        <translation>Hören, sofort abschalten; dann fragen: ein Gang oder alle, ein Motor oder beide.</translation>
    </message>
    <message>
        <source>Held, it is as good as the other.</source>
        <translation>Gehalten ist sie so gut wie die andere.</translation>
    </message>
    <message>
        <source>His first two have lapsed by then: a code stands about a minute.</source>
        <translation>Seine ersten zwei sind bis dahin verfallen: ein Zeichen gilt etwa eine Minute.</translation>
    </message>
    <message>
        <source>Hold the device down, reverser to forward</source>
        <translation>Den Totmann gedrückt halten, Richtungshebel vorwärts</translation>
    </message>
    <message>
        <source>Hold the device, reverser forward, brake in release: 21 on the needle, handbrake hard on</source>
        <translation>Totmann halten, Richtung vorwärts, Bremse auf Lösen: 21 am Zeiger, Handbremse fest</translation>
    </message>
    <message>
        <source>Hold the device, reverser forward, brake to release until the needle stands at 21; both handbrakes stay on</source>
        <translation>Totmann halten, Richtung vorwärts, Bremse auf Lösen, bis der Zeiger auf 21 steht; beide Handbremsen bleiben fest</translation>
    </message>
    <message>
        <source>Hold the device, reverser to forward; listen for the thumps</source>
        <translation>Totmann halten, Richtungshebel vorwärts; auf die dumpfen Schläge hören</translation>
    </message>
    <message>
        <source>If a flag, board or lamp hangs there: touch nothing, judge it, and ask.</source>
        <translation>Hängt dort eine Flagge, Tafel oder Lampe: nichts berühren, beurteilen und fragen.</translation>
    </message>
    <message>
        <source>If he says no, the unit fails here.</source>
        <translation>Sagt er nein, so fährt der Zug von hier nicht weiter.</translation>
    </message>
    <message>
        <source>If it is jammed, ease the brake so that the wheels move a little; never the hammer.</source>
        <translation>Klemmt sie, die Bremse nachlassen, dass sich die Räder ein wenig bewegen; nie der Hammer.</translation>
    </message>
    <message>
        <source>If it slips in every gear, it is not a band: air, or the freewheel.</source>
        <translation>Rutscht es in jedem Gang, ist es kein Band: Luft oder Freilauf.</translation>
    </message>
    <message>
        <source>If it stands still, go on. If it rises, try once more, and then from the other cab.</source>
        <translation>Steht er still, weitermachen. Steigt er, noch einmal versuchen und dann vom anderen Führerstand aus.</translation>
    </message>
    <message>
        <source>If she moves: full application, and the handbrake again.</source>
        <translation>Bewegt sich der Zug: Vollbremsung, und die Handbremse wieder fest.</translation>
    </message>
    <message>
        <source>If you want to know what he sees: 3-3, speak to me.</source>
        <translation>Wenn Sie wissen wollen, was er sieht: 3-3, sprechen Sie mit mir.</translation>
    </message>
    <message>
        <source>In the rear cab: its seal too</source>
        <translation>Im hinteren Führerstand: auch dessen Plombe</translation>
    </message>
    <message>
        <source>Isolating switch to off, air cock of the final drive shut; listen until it has blown out</source>
        <translation>Trennschalter auf Aus, Lufthahn des Achsgetriebes zu; horchen, bis es ausgeblasen hat</translation>
    </message>
    <message>
        <source>It goes on with a longer pause; the next driver has to know which one.</source>
        <translation>Es geht weiter mit längerer Pause; der nächste Führer muss wissen, welcher es ist.</translation>
    </message>
    <message>
        <source>It is all that holds her until there is vacuum.</source>
        <translation>Sie allein hält den Zug, bis Vakuum da ist.</translation>
    </message>
    <message>
        <source>It is another device, too.</source>
        <translation>Es ist auch ein anderer Totmann.</translation>
    </message>
    <message>
        <source>It is another valve: it is proved here.</source>
        <translation>Es ist ein anderes Ventil: hier wird es erprobt.</translation>
    </message>
    <message>
        <source>It is the one that is driven off with.</source>
        <translation>Mit dieser wird losgefahren.</translation>
    </message>
    <message>
        <source>It takes twice as long: wait for it.</source>
        <translation>Es dauert doppelt so lange: darauf warten.</translation>
    </message>
    <message>
        <source>Key in and on, brake handle and reversing lever in; red off, white on, display set</source>
        <translation>Schlüssel ein und an, Bremsgriff und Richtungshebel hinein; Rot aus, Weiß an, Zielanzeige gestellt</translation>
    </message>
    <message>
        <source>Key in and on, lamp test, brake handle and reversing lever in</source>
        <translation>Schlüssel ein und an, Lampenprobe, Bremsgriff und Richtungshebel hinein</translation>
    </message>
    <message>
        <source>Know what the battery has before you spend it.</source>
        <translation>Wissen, was die Batterie hat, bevor Sie es ausgeben.</translation>
    </message>
    <message>
        <source>Lamp 2 dark: read its tachometer. Nothing there: shut off, and stop before the steeper bank</source>
        <translation>Lampe 2 dunkel: ihren Drehzahlmesser ablesen. Nichts da: abschalten, und vor der steileren Rampe halten</translation>
    </message>
    <message>
        <source>Lamp dark: read the air gauge, then warn and look along both sides for a start of engine 1</source>
        <translation>Lampe dunkel: die Luftuhr ablesen, dann warnen und für einen Start von Motor 1 an beiden Seiten entlangsehen</translation>
    </message>
    <message>
        <source>Lamps and number say which way the unit goes.</source>
        <translation>Lampen und Nummer sagen, in welche Richtung der Zug fährt.</translation>
    </message>
    <message>
        <source>Lap closes everything: what is there has to stay.</source>
        <translation>Abschluss schließt alles: was da ist, muss bleiben.</translation>
    </message>
    <message>
        <source>Late is not works; and nobody&apos;s hurry makes it so.</source>
        <translation>Spät ist nicht in Ordnung; und niemandes Eile macht es dazu.</translation>
    </message>
    <message>
        <source>Leaks are found by ear; the gauge only says that there is one.</source>
        <translation>Undichtheiten findet das Ohr; die Uhr sagt nur, dass eine da ist.</translation>
    </message>
    <message>
        <source>Less than 22: wait. Minutes are cheaper than a brake.</source>
        <translation>Weniger als 22: warten. Minuten sind billiger als eine Bremse.</translation>
    </message>
    <message>
        <source>Let go of the device and count until the needle falls; let it fall below 5</source>
        <translation>Den Totmann loslassen und zählen, bis der Zeiger fällt; ihn unter 5 fallen lassen</translation>
    </message>
    <message>
        <source>Let go of the device with the brake in release; count, and watch the needle fall</source>
        <translation>Den Totmann bei Bremse auf Lösen loslassen; zählen, und den Zeiger fallen sehen</translation>
    </message>
    <message>
        <source>Let the second person go</source>
        <translation>Die zweite Person entlassen</translation>
    </message>
    <message>
        <source>Look along both sides; pawl out, the leading handbrake off, last of all</source>
        <translation>An beiden Seiten entlangsehen; Sperrklinke aus, die vordere Handbremse los, als Letztes</translation>
    </message>
    <message>
        <source>Look at everything, judge it, put it in its class, write it down, tell it, decide.</source>
        <translation>Alles ansehen, beurteilen, in seine Klasse setzen, aufschreiben, melden, entscheiden.</translation>
    </message>
    <message>
        <source>Look at the seal of the device&apos;s cock, and judge it</source>
        <translation>Die Plombe am Totmannhahn ansehen und beurteilen</translation>
    </message>
    <message>
        <source>Look both ways and go to end 1: protection first, then hoses, coupling, lamps, display, window, steps, lifeguards</source>
        <translation>Nach beiden Seiten sehen und zu Ende 1 gehen: erst Sicherung, dann Schläuche, Kupplung, Lampen, Zielanzeige, Fenster, Tritte, Bahnräumer</translation>
    </message>
    <message>
        <source>Look both ways, cross, and judge end 2 as end 1, and its tail lamp</source>
        <translation>Nach beiden Seiten sehen, hinübergehen, und Ende 2 wie Ende 1 beurteilen, dazu sein Schlusslicht</translation>
    </message>
    <message>
        <source>Look both ways, go round end 2, and look along the far side of both cars</source>
        <translation>Nach beiden Seiten sehen, um Ende 2 gehen und an der fernen Seite beider Wagen entlangsehen</translation>
    </message>
    <message>
        <source>Look both ways, round the end, and the same at engine 2</source>
        <translation>Nach beiden Seiten sehen, um das Ende herum, und dasselbe an Motor 2</translation>
    </message>
    <message>
        <source>Look both ways, then along end 1 and the near side: a board, a flag, a lamp? Judge what you find</source>
        <translation>Nach beiden Seiten sehen, dann an Ende 1 und der nahen Seite entlang: Tafel, Flagge, Lampe? Beurteilen, was Sie finden</translation>
    </message>
    <message>
        <source>Look both ways, then to engine 2: look what is the matter with it, and judge</source>
        <translation>Nach beiden Seiten sehen, dann zu Motor 2: nachsehen, was mit ihm ist, und beurteilen</translation>
    </message>
    <message>
        <source>Look both ways; car 2 on side 2</source>
        <translation>Nach beiden Seiten sehen; Wagen 2 auf Seite 2</translation>
    </message>
    <message>
        <source>Look out: does she stand?</source>
        <translation>Hinaussehen: steht der Zug?</translation>
    </message>
    <message>
        <source>Low air, and a slow gear</source>
        <translation>Wenig Luft, und ein träger Gang</translation>
    </message>
    <message>
        <source>Marrowick</source>
        <translation>Marrowick</translation>
    </message>
    <message>
        <source>No direction, no throttle; no device, no vacuum.</source>
        <translation>Keine Richtung, kein Fahrschalter; kein Totmann, kein Vakuum.</translation>
    </message>
    <message>
        <source>No engine, no exhauster; no reservoir, no release.</source>
        <translation>Kein Motor, kein Luftsauger; kein Behälter, kein Lösen.</translation>
    </message>
    <message>
        <source>No gauge shows what is seen from the ground.</source>
        <translation>Keine Uhr zeigt, was man vom Boden sieht.</translation>
    </message>
    <message>
        <source>No key, no current; no handle, no vacuum; no lever, no direction. A dark bulb says nothing.</source>
        <translation>Kein Schlüssel, kein Strom; kein Griff, kein Vakuum; kein Hebel, keine Richtung. Eine dunkle Birne sagt nichts.</translation>
    </message>
    <message>
        <source>No key, no handle, no lamp: somebody trusts that flag with his arms.</source>
        <translation>Kein Schlüssel, kein Griff, keine Lampe: jemand vertraut dieser Flagge seine Arme an.</translation>
    </message>
    <message>
        <source>No reservoir, no release: and soon no brake to put on.</source>
        <translation>Kein Behälter, kein Lösen: und bald keine Bremse mehr zum Anlegen.</translation>
    </message>
    <message>
        <source>Nobody stands at an open valve when the unit is made ready.</source>
        <translation>Niemand steht an einem offenen Ventil, wenn der Zug bereitgemacht wird.</translation>
    </message>
    <message>
        <source>Not sure is an answer too: ask, or look again. It costs nothing; a wrong &apos;good&apos; may.</source>
        <translation>Nicht sicher ist auch eine Antwort: fragen oder noch einmal hinsehen. Es kostet nichts; ein falsches &apos;gut&apos; vielleicht doch.</translation>
    </message>
    <message>
        <source>Nothing costs less than what rolls by itself; and nothing holds her back but the brake.</source>
        <translation>Nichts kostet weniger als was von selbst rollt; und nichts hält den Zug zurück als die Bremse.</translation>
    </message>
    <message>
        <source>Nothing on side 1: the other side has a reservoir too. Look both ways.</source>
        <translation>Nichts auf Seite 1: auch die andere Seite hat einen Behälter. Nach beiden Seiten sehen.</translation>
    </message>
    <message>
        <source>Now the chambers hold 21 and the pipe 15: that difference is the brake.</source>
        <translation>Jetzt halten die Kammern 21 und die Leitung 15: dieser Unterschied ist die Bremse.</translation>
    </message>
    <message>
        <source>On a falling grade a unit that is not held goes.</source>
        <translation>Im Gefälle fährt ein Zug, der nicht gehalten wird.</translation>
    </message>
    <message>
        <source>On a hill the power comes first; and here is half of it.</source>
        <translation>Am Berg kommt die Kraft zuerst; und hier ist nur die Hälfte davon da.</translation>
    </message>
    <message>
        <source>Once can be a slip of the thumb; twice is the device.</source>
        <translation>Einmal kann der Daumen gerutscht sein; zweimal ist es der Totmann.</translation>
    </message>
    <message>
        <source>One application, few corrections, the least on at the end.</source>
        <translation>Eine Bremsung, wenige Korrekturen, am Ende so wenig wie möglich angelegt.</translation>
    </message>
    <message>
        <source>One engine lost on the bank</source>
        <translation>Ein Motor auf der Rampe verloren</translation>
    </message>
    <message>
        <source>One handbrake holds her here; the rear one is the one that is forgotten.</source>
        <translation>Eine Handbremse hält den Zug hier; die hintere ist die, die vergessen wird.</translation>
    </message>
    <message>
        <source>One set for the unit: it goes with you.</source>
        <translation>Ein Satz für den Zug: er geht mit Ihnen.</translation>
    </message>
    <message>
        <source>One that runs up by itself says: the gear has not taken hold there.</source>
        <translation>Einer, der allein hochläuft, sagt: dort hat der Gang nicht gefasst.</translation>
    </message>
    <message>
        <source>One that stops the unit is enough.</source>
        <translation>Einer, der den Zug stilllegt, genügt.</translation>
    </message>
    <message>
        <source>Only a gauge that comes to its end says that nothing else leaks.</source>
        <translation>Nur eine Uhr, die an ihr Ende kommt, sagt, dass sonst nichts undicht ist.</translation>
    </message>
    <message>
        <source>Only who hung it knows when it may go.</source>
        <translation>Nur wer sie aufgehängt hat, weiß, wann sie weg darf.</translation>
    </message>
    <message>
        <source>Open up in third, and listen: both notes alike? Look at both tachometers</source>
        <translation>Im dritten Gang öffnen und hören: beide Töne gleich? Beide Drehzahlmesser ansehen</translation>
    </message>
    <message>
        <source>Open: both tachometers alike; and a brake test on the way</source>
        <translation>Öffnen: beide Drehzahlmesser gleich; und eine Bremsprobe unterwegs</translation>
    </message>
    <message>
        <source>Or wait until it is taken away: then ask again, look again, and only then board.</source>
        <translation>Oder warten, bis sie weggenommen ist: dann wieder fragen, wieder hinsehen, und erst dann einsteigen.</translation>
    </message>
    <message>
        <source>Osmundley Quay</source>
        <translation>Osmundley Quay</translation>
    </message>
    <message>
        <source>Osmundley Quay: the same again</source>
        <translation>Osmundley Quay: noch einmal dasselbe</translation>
    </message>
    <message>
        <source>Osmundley Strand</source>
        <translation>Osmundley Strand</translation>
    </message>
    <message>
        <source>Osmundley Strand: one application, eased up once, held at the mark</source>
        <translation>Osmundley Strand: eine Bremsung, einmal nachgelassen, an der Tafel festgehalten</translation>
    </message>
    <message>
        <source>Power here is fuel for the blocks.</source>
        <translation>Kraft ist hier Futter für die Klötze.</translation>
    </message>
    <message>
        <source>Read the air: 77 with two engines running, and it does not rise. Handbrake stays on; lap, reverser off, and down on side 1</source>
        <translation>Die Luft ablesen: 77 bei zwei laufenden Motoren, und sie steigt nicht. Handbremse bleibt fest; Abschluss, Richtungshebel aus, und auf Seite 1 hinunter</translation>
    </message>
    <message>
        <source>Read the air; then second gear, which holds, or third with one notch: on to the next stop, no further</source>
        <translation>Die Luft ablesen; dann der zweite Gang, der hält, oder der dritte mit einer Stufe: bis zum nächsten Halt, nicht weiter</translation>
    </message>
    <message>
        <source>Ready is not going.</source>
        <translation>Bereit ist noch nicht gefahren.</translation>
    </message>
    <message>
        <source>Reverser to off and out; brake to lap, the handle out; key off and out</source>
        <translation>Richtungshebel aus und heraus; Bremse auf Abschluss, der Griff heraus; Schlüssel aus und heraus</translation>
    </message>
    <message>
        <source>Reverser to reverse and forward again is worth a try; revving the other engine is not.</source>
        <translation>Richtungshebel rückwärts und wieder vorwärts ist einen Versuch wert; den anderen Motor hochzujagen nicht.</translation>
    </message>
    <message>
        <source>Roll to Marrowick: 20 mph from its near end on, the signal behind it is at danger; stop and hold</source>
        <translation>Nach Marrowick rollen: 20 mph ab dem nahen Ende, das Signal dahinter steht auf Halt; halten und festhalten</translation>
    </message>
    <message>
        <source>Sallowmere</source>
        <translation>Sallowmere</translation>
    </message>
    <message>
        <source>Sallowmere to Corrow Bank, along the shore</source>
        <translation>Sallowmere nach Corrow Bank, an der Küste entlang</translation>
    </message>
    <message>
        <source>Say that the unit does not go, and leave it alone</source>
        <translation>Sagen, dass der Zug nicht fährt, und ihn in Ruhe lassen</translation>
    </message>
    <message>
        <source>Say the decision: restricted; and enter in the book what you found</source>
        <translation>Die Entscheidung sagen: beschränkt; und ins Buch eintragen, was Sie gefunden haben</translation>
    </message>
    <message>
        <source>Say to those who wait that the unit does not go</source>
        <translation>Denen, die warten, sagen, dass der Zug nicht fährt</translation>
    </message>
    <message>
        <source>See the air lamp lit and the air rise to its cut-out</source>
        <translation>Die Luftlampe leuchten und die Luft bis zum Abschalten steigen sehen</translation>
    </message>
    <message>
        <source>See the needle stand still; then pawl out, and the leading handbrake off</source>
        <translation>Den Zeiger stillstehen sehen; dann Sperrklinke aus, und die vordere Handbremse los</translation>
    </message>
    <message>
        <source>Shut off and coast in the gear that fits</source>
        <translation>Abschalten und in dem Gang rollen, der passt</translation>
    </message>
    <message>
        <source>Shut off; read the air; wait ten seconds in second, then open again</source>
        <translation>Abschalten; die Luft ablesen; im zweiten zehn Sekunden warten, dann wieder öffnen</translation>
    </message>
    <message>
        <source>Signal clear and two strokes: repeat them, and look at the signal again</source>
        <translation>Signal frei und zwei Schläge: wiederholen, und das Signal noch einmal ansehen</translation>
    </message>
    <message>
        <source>Signal, two strokes, repeat; first gear, pause, power against the brake, and away on one engine</source>
        <translation>Signal, zwei Schläge, wiederholen; erster Gang, Pause, Kraft gegen die Bremse, und auf einem Motor fort</translation>
    </message>
    <message>
        <source>Sinking, the brake creeps on. Rising, it creeps off: on a bank that is the one to fear.</source>
        <translation>Sinkt er, kriecht die Bremse an. Steigt er, kriecht sie los: auf einer Rampe ist das die gefährliche.</translation>
    </message>
    <message>
        <source>Somebody may be under the unit.</source>
        <translation>Jemand kann unter dem Zug sein.</translation>
    </message>
    <message>
        <source>Start engine 1, throttle shut when its lamp is lit; see the air lamp come</source>
        <translation>Motor 1 anlassen, Fahrschalter zu, wenn seine Lampe leuchtet; die Luftlampe kommen sehen</translation>
    </message>
    <message>
        <source>Stop at the mark, gear to neutral, full application</source>
        <translation>An der Tafel halten, Gang auf Leerlauf, Vollbremsung</translation>
    </message>
    <message>
        <source>Stop engine 2 from the desk while the direction is in, if it runs</source>
        <translation>Motor 2 vom Pult abstellen, solange die Richtung liegt, falls er läuft</translation>
    </message>
    <message>
        <source>Take hold again, 21, and enter the seconds in the notebook</source>
        <translation>Wieder zufassen, 21, und die Sekunden ins Merkheft eintragen</translation>
    </message>
    <message>
        <source>Take no handbrake off: watch the needle for half a minute</source>
        <translation>Keine Handbremse lösen: den Zeiger eine halbe Minute beobachten</translation>
    </message>
    <message>
        <source>Take the device in hand, reverser to forward</source>
        <translation>Den Totmann in die Hand nehmen, Richtungshebel vorwärts</translation>
    </message>
    <message>
        <source>Take the device in hand, reverser to forward; gear and brake stay where they are</source>
        <translation>Den Totmann in die Hand nehmen, Richtungshebel vorwärts; Gang und Bremse bleiben, wo sie sind</translation>
    </message>
    <message>
        <source>Tarrowby Lane</source>
        <translation>Tarrowby Lane</translation>
    </message>
    <message>
        <source>Tell guard, signaller and shed</source>
        <translation>Schaffner, Fahrdienstleiter und Werkstatt verständigen</translation>
    </message>
    <message>
        <source>Tell the shed, and enter it in the repair book: which cab, how many seconds</source>
        <translation>Die Werkstatt verständigen und ins Übergabebuch eintragen: welcher Führerstand, wie viele Sekunden</translation>
    </message>
    <message>
        <source>Tell the signaller that the unit is not to be had yet</source>
        <translation>Dem Fahrdienstleiter sagen, dass der Zug noch nicht zu haben ist</translation>
    </message>
    <message>
        <source>Test once more, and time it</source>
        <translation>Noch einmal proben, und die Zeit nehmen</translation>
    </message>
    <message>
        <source>The brake that creeps off</source>
        <translation>Die Bremse, die sich löst</translation>
    </message>
    <message>
        <source>The chambers are full when the pipe is.</source>
        <translation>Die Kammern sind voll, wenn die Leitung es ist.</translation>
    </message>
    <message>
        <source>The device is in circuit only where a direction stands; without it there is no vacuum.</source>
        <translation>Der Totmann ist nur dort im Kreis, wo eine Richtung liegt; ohne ihn gibt es kein Vakuum.</translation>
    </message>
    <message>
        <source>The drum has to stand before the engine pulls.</source>
        <translation>Die Trommel muss stehen, bevor der Motor zieht.</translation>
    </message>
    <message>
        <source>The first habit: look everywhere, touch nothing that is protected, ask.</source>
        <translation>Die erste Gewohnheit: überall hinsehen, nichts Gesichertes berühren, fragen.</translation>
    </message>
    <message>
        <source>The flag may hang where only he who walks round sees it.</source>
        <translation>Die Flagge kann hängen, wo sie nur sieht, wer herumgeht.</translation>
    </message>
    <message>
        <source>The guard is at the other end now.</source>
        <translation>Der Schaffner ist jetzt am anderen Ende.</translation>
    </message>
    <message>
        <source>The habit is the safety.</source>
        <translation>Die Gewohnheit ist die Sicherheit.</translation>
    </message>
    <message>
        <source>The last proof of a brake is the ground beside you.</source>
        <translation>Der letzte Beweis einer Bremse ist der Boden neben Ihnen.</translation>
    </message>
    <message>
        <source>The needle, the guard, the signal</source>
        <translation>Der Zeiger, der Schaffner, das Signal</translation>
    </message>
    <message>
        <source>The next driver reads the book, and the fitter looks where you point.</source>
        <translation>Der nächste Führer liest das Buch, und der Schlosser sieht dorthin, wohin Sie zeigen.</translation>
    </message>
    <message>
        <source>The note runs up and the speed does not: shut off at once</source>
        <translation>Der Ton läuft hoch und die Geschwindigkeit nicht: sofort abschalten</translation>
    </message>
    <message>
        <source>The note stops rising before the governor cuts: that is the moment.</source>
        <translation>Der Ton steigt nicht mehr, bevor der Regler abregelt: das ist der Augenblick.</translation>
    </message>
    <message>
        <source>The order of a start from the cab, and why each thing waits for the other.</source>
        <translation>Die Reihenfolge eines Starts vom Pult, und warum eins auf das andere wartet.</translation>
    </message>
    <message>
        <source>The passengers first; then the engine.</source>
        <translation>Erst die Fahrgäste, dann der Motor.</translation>
    </message>
    <message>
        <source>The pin works a by-pass: the lamp speaks for the drive that is left, in both directions.</source>
        <translation>Der Bolzen überbrückt: die Lampe spricht für das verbliebene Achsgetriebe, in beiden Richtungen.</translation>
    </message>
    <message>
        <source>The platform rises a little: half the pull is all there is.</source>
        <translation>Der Bahnsteig steigt ein wenig: mehr als die halbe Zugkraft gibt es nicht.</translation>
    </message>
    <message>
        <source>The same pipe, another valve: if it stays there, it is cab 1&apos;s valve that passes.</source>
        <translation>Dieselbe Leitung, ein anderes Ventil: bleibt er dort, ist es das Ventil von Führerstand 1, das durchlässt.</translation>
    </message>
    <message>
        <source>The second time tells whether the first left anything in the reservoir.</source>
        <translation>Das zweite Mal zeigt, ob das erste etwas im Behälter gelassen hat.</translation>
    </message>
    <message>
        <source>The signal stands clear: the guard is the other half.</source>
        <translation>Das Signal steht frei: der Schaffner ist die andere Hälfte.</translation>
    </message>
    <message>
        <source>The test starts from 21, with the unit held by something else.</source>
        <translation>Die Probe beginnt bei 21, und der Zug wird dabei von etwas anderem gehalten.</translation>
    </message>
    <message>
        <source>The way back leads from there.</source>
        <translation>Der Rückweg führt von dort.</translation>
    </message>
    <message>
        <source>The wheels would turn a box whose oil pump stands still.</source>
        <translation>Die Räder würden ein Getriebe drehen, dessen Ölpumpe stillsteht.</translation>
    </message>
    <message>
        <source>The whole of it: stop, secure, look, isolate, pin, prove, and go on with half of everything.</source>
        <translation>Das Ganze: halten, sichern, nachsehen, abtrennen, sperren, beweisen, und mit der Hälfte von allem weiterfahren.</translation>
    </message>
    <message>
        <source>There are two of everything here, and they age apart.</source>
        <translation>Von allem sind hier zwei da, und sie altern getrennt.</translation>
    </message>
    <message>
        <source>There are two of everything here.</source>
        <translation>Von allem sind hier zwei da.</translation>
    </message>
    <message>
        <source>They hold the road, the passengers and the spanner.</source>
        <translation>Sie halten den Fahrweg, die Fahrgäste und den Schraubenschlüssel.</translation>
    </message>
    <message>
        <source>This end is the rear now.</source>
        <translation>Dieses Ende ist jetzt hinten.</translation>
    </message>
    <message>
        <source>Three stops close together, engines idling</source>
        <translation>Drei Halte dicht hintereinander, Motoren im Leerlauf</translation>
    </message>
    <message>
        <source>Too early it labours, too late it screams and pulls nothing.</source>
        <translation>Zu früh quält er sich, zu spät schreit er und zieht nichts.</translation>
    </message>
    <message>
        <source>Too long. Look at the cock and its seal</source>
        <translation>Zu lange. Den Hahn und seine Plombe ansehen</translation>
    </message>
    <message>
        <source>Top to bottom and always the same way round: then nothing is left out.</source>
        <translation>Von oben nach unten und immer gleich herum: dann bleibt nichts aus.</translation>
    </message>
    <message>
        <source>Two keys, one lock.</source>
        <translation>Zwei Schlüssel, ein Schloss.</translation>
    </message>
    <message>
        <source>Two stops along the shore</source>
        <translation>Zwei Halte an der Küste</translation>
    </message>
    <message>
        <source>Two strokes against a red, and a start uphill</source>
        <translation>Zwei Schläge gegen Rot, und eine Anfahrt bergauf</translation>
    </message>
    <message>
        <source>Two strokes and a clear signal are no answer to a brake that comes too late.</source>
        <translation>Zwei Schläge und ein freies Signal sind keine Antwort auf eine Bremse, die zu spät kommt.</translation>
    </message>
    <message>
        <source>Two strokes, and the signal at danger: do not answer, do not move</source>
        <translation>Zwei Schläge, und das Signal auf Halt: nicht antworten, nicht fahren</translation>
    </message>
    <message>
        <source>Two strokes, repeat; first gear, pause, three notches against the brake, then ease it off</source>
        <translation>Zwei Schläge, wiederholen; erster Gang, Pause, drei Stufen gegen die Bremse, dann nachlassen</translation>
    </message>
    <message>
        <source>Under 22 the next release is slow, and the one after it does not come.</source>
        <translation>Unter 22 ist das nächste Lösen langsam, und das übernächste kommt nicht.</translation>
    </message>
    <message>
        <source>Unit 3 came in last night and stands in siding 1, engines stopped, both handbrakes on. Walk round it, judge what you see, enter in the book what is wrong, and say whether it goes.</source>
        <translation>Zug 3 kam gestern Abend herein und steht in Abstellgleis 1, Motoren aus, beide Handbremsen fest. Gehen Sie herum, beurteilen Sie, was Sie sehen, tragen Sie ins Buch ein, was nicht stimmt, und sagen Sie, ob er fährt.</translation>
    </message>
    <message>
        <source>Unit 3 has stood for a quarter of an hour, warm and with its air. You have walked round it; what is left are the two engines, both cabs and the start. Start both engines from cab 1 and bring up air and vacuum; the handbrakes stay on.</source>
        <translation>Zug 3 steht seit einer Viertelstunde, warm und mit seiner Luft. Sie sind herumgegangen; es bleiben die beiden Motoren, beide Führerstände und der Start. Lassen Sie beide Motoren von Führerstand 1 aus an und bringen Sie Luft und Vakuum hoch; die Handbremsen bleiben fest.</translation>
    </message>
    <message>
        <source>Unit 3 stands at Corrow Bank, 1 in 80 rising, held by the brake, the handbrakes off, doors shut. You are in cab 1: take it away up the bank when you may.</source>
        <translation>Zug 3 steht in Corrow Bank, 1 zu 80 steigend, von der Bremse gehalten, Handbremsen los, Türen zu. Sie sind in Führerstand 1: fahren Sie die Rampe hinauf, wenn Sie dürfen.</translation>
    </message>
    <message>
        <source>Unit 3 stands at Sallowmere, prepared and held by the brake, the handbrakes off. You are in cab 1: take it to Tarrowby Lane and on to Wexholt, and stop at the mark at both. The line is level; the signal and the guard say when.</source>
        <translation>Zug 3 steht in Sallowmere, bereit und von der Bremse gehalten, Handbremsen los. Sie sind in Führerstand 1: fahren Sie nach Tarrowby Lane und weiter nach Wexholt, und halten Sie an beiden an der Tafel. Die Strecke ist eben; Signal und Schaffner sagen, wann.</translation>
    </message>
    <message>
        <source>Unit 3 stands at Wexholt, prepared and held by the brake, the handbrakes off. You are in cab 1: call at Osmundley Strand, Osmundley Quay and Marrowick, close together on a fall of 1 in 100. Start with a little power, then let her roll; the engines idle.</source>
        <translation>Zug 3 steht in Wexholt, bereit und von der Bremse gehalten, Handbremsen los. Sie sind in Führerstand 1: halten Sie in Osmundley Strand, Osmundley Quay und Marrowick, dicht hintereinander in einem Gefälle von 1 zu 100. Fahren Sie mit wenig Kraft an, dann lassen Sie rollen; die Motoren laufen leer.</translation>
    </message>
    <message>
        <source>Unit 3 stands in siding 1 and is down for you. Go to it, walk round it, and get it ready if it may be touched.</source>
        <translation>Zug 3 steht in Abstellgleis 1 und ist für Sie bestimmt. Gehen Sie hin, gehen Sie herum, und machen Sie ihn bereit, wenn er berührt werden darf.</translation>
    </message>
    <message>
        <source>Unit 3 stands in siding 1, both engines running, both handbrakes on, air up, no vacuum yet. The walk round is done. You are in cab 1: try the brake and the safety device with the guard at the rear, and hand the unit from the handbrakes to the power brake.</source>
        <translation>Zug 3 steht in Abstellgleis 1, beide Motoren laufen, beide Handbremsen fest, Luft da, noch kein Vakuum. Der Rundgang ist gemacht. Sie sind in Führerstand 1: proben Sie Bremse und Totmann mit dem Schaffner am Zugende, und übergeben Sie den Zug von den Handbremsen an die Vakuumbremse.</translation>
    </message>
    <message>
        <source>Unit 3 stands in the siding with both engines running, air and vacuum up; your colleague has proved the brake and is gone. The safety device of cab 1 is still to be tested. Test it, and take the unit away if it is fit to go. The signaller wants the road for a train behind you.</source>
        <translation>Zug 3 steht im Abstellgleis mit beiden Motoren laufend, Luft und Vakuum da; Ihr Kollege hat die Bremse erprobt und ist gegangen. Der Totmann von Führerstand 1 ist noch zu proben. Proben Sie ihn, und fahren Sie den Zug weg, wenn er fahren darf. Der Fahrdienstleiter braucht den Fahrweg für einen Zug hinter Ihnen.</translation>
    </message>
    <message>
        <source>Unit 3 stands on the moor bank, 1 in 80, on both handbrakes; its vacuum is all gone, the engines have just been started again, and you are late. Bring it onto the power brake, both handbrakes off, so that it stands ready to start away. Do not start away.</source>
        <translation>Zug 3 steht auf der Moorrampe, 1 zu 80, auf beiden Handbremsen; sein Vakuum ist ganz weg, die Motoren sind eben wieder angelassen, und Sie sind spät dran. Bringen Sie ihn auf die Vakuumbremse, beide Handbremsen los, so dass er zur Anfahrt bereitsteht. Fahren Sie nicht an.</translation>
    </message>
    <message>
        <source>Unit 3 was stopped by a signal on the moor bank, 1 in 80, and stands on both handbrakes, engines running, the vacuum up. The signal is clear and the guard waits. You are in cab 1: bring the unit onto the power brake and take it up the bank if it is fit to go.</source>
        <translation>Zug 3 wurde auf der Moorrampe, 1 zu 80, von einem Signal angehalten und steht auf beiden Handbremsen, Motoren laufen, Vakuum da. Das Signal ist frei und der Schaffner wartet. Sie sind in Führerstand 1: bringen Sie den Zug auf die Vakuumbremse und die Rampe hinauf, wenn er fahren darf.</translation>
    </message>
    <message>
        <source>Up into a cab: enter each defect, what it is and where; not what only looked odd</source>
        <translation>In einen Führerstand hinauf: jeden Mangel eintragen, was und wo; nicht, was nur seltsam aussah</translation>
    </message>
    <message>
        <source>Up the bank, and watch the desk</source>
        <translation>Die Rampe hinauf, und das Pult beobachten</translation>
    </message>
    <message>
        <source>Up through the gears by the speed: 14, 25, 38</source>
        <translation>Durch die Gänge nach der Geschwindigkeit: 14, 25, 38</translation>
    </message>
    <message>
        <source>Vacuum is no brake yet: it has not been tried.</source>
        <translation>Vakuum ist noch keine Bremse: sie ist noch nicht erprobt.</translation>
    </message>
    <message>
        <source>Walk and listen: low down, the drains. Look, judge, shut the cock</source>
        <translation>Gehen und horchen: unten, die Hähne. Ansehen, beurteilen, den Hahn schließen</translation>
    </message>
    <message>
        <source>Walk-round: what goes, what goes with care, what stops the unit</source>
        <translation>Rundgang: was fährt, was mit Vorsicht, was nicht</translation>
    </message>
    <message>
        <source>Warm start from the cab</source>
        <translation>Warmstart vom Pult</translation>
    </message>
    <message>
        <source>Wexholt</source>
        <translation>Wexholt</translation>
    </message>
    <message>
        <source>What holds on one side says nothing of the other.</source>
        <translation>Was auf einer Seite hält, sagt nichts von der anderen.</translation>
    </message>
    <message>
        <source>What is left behind is secured; and a dark air lamp is read: air, or mesh, and which drive.</source>
        <translation>Was zurückbleibt, ist gesichert; und eine dunkle Luftlampe wird gelesen: Luft oder Eingriff, und welches Achsgetriebe.</translation>
    </message>
    <message>
        <source>What is let in now has to be drawn out again, by engines that idle.</source>
        <translation>Was jetzt eingelassen wird, muss wieder abgesaugt werden, von Motoren im Leerlauf.</translation>
    </message>
    <message>
        <source>What is low now is ruined in an hour; an old dry stain is only an old dry stain.</source>
        <translation>Was jetzt niedrig steht, ist in einer Stunde zerstört; ein alter trockener Fleck ist nur ein alter trockener Fleck.</translation>
    </message>
    <message>
        <source>What is seen decides whether it may ever be started again today.</source>
        <translation>Was man sieht, entscheidet, ob er heute überhaupt wieder angelassen werden darf.</translation>
    </message>
    <message>
        <source>What was right in the other cab says nothing of this one.</source>
        <translation>Was im anderen Führerstand stimmte, sagt nichts von diesem.</translation>
    </message>
    <message>
        <source>When the handle is out nobody can put the brake on with a valve.</source>
        <translation>Ist der Griff heraus, kann niemand die Bremse mit einem Ventil anlegen.</translation>
    </message>
    <message>
        <source>White lamps off, red lamps on</source>
        <translation>Weiße Lampen aus, rote Lampen an</translation>
    </message>
    <message>
        <source>Who does what, and what is proof.</source>
        <translation>Wer was tut, und was ein Beweis ist.</translation>
    </message>
    <message>
        <source>Who opened it will open it again.</source>
        <translation>Wer ihn geöffnet hat, wird ihn wieder öffnen.</translation>
    </message>
    <message>
        <source>With air on the gauge it is mesh, and it is the drive whose shaft stands still: that of the stopped engine.</source>
        <translation>Mit Luft an der Uhr ist es der Eingriff, und zwar das Achsgetriebe, dessen Welle steht: das des abgestellten Motors.</translation>
    </message>
    <message>
        <source>With the note still there and no oil at the gauge: stop that engine at once.</source>
        <translation>Ist der Ton noch da und kein Öl an der Uhr: diesen Motor sofort abstellen.</translation>
    </message>
    <message>
        <source>With the reverser off it can only be stopped from the ground.</source>
        <translation>Mit dem Richtungshebel auf Aus kann er nur vom Boden abgestellt werden.</translation>
    </message>
    <message>
        <source>You are going to stand at a wheel.</source>
        <translation>Sie werden an einem Rad stehen.</translation>
    </message>
    <message>
        <source>You have brought unit 3 into Tolvenby Junction and stand at the mark on a full application, in cab 1. Engine 1 has been stopped for the long stop, as the local rule wants it; engine 2 ticks over. Change to cab 2 and take the unit back towards Quavelow when signal and guard allow.</source>
        <translation>Sie haben Zug 3 nach Tolvenby Junction gebracht und stehen an der Tafel in Vollbremsung, in Führerstand 1. Motor 1 ist für den langen Halt abgestellt, wie es die örtliche Regel will; Motor 2 läuft leer. Wechseln Sie in Führerstand 2 und fahren Sie zurück in Richtung Quavelow, wenn Signal und Schaffner es erlauben.</translation>
    </message>
    <message>
        <source>Your colleague has prepared unit 3 in the siding and proved brake and device; both engines have run for a while, the handbrake of cab 1 is on, that of cab 2 off. He says that the air takes its time. Take the unit out to Yethrick Halt when signal and guard allow, and when you are content with it.</source>
        <translation>Ihr Kollege hat Zug 3 im Abstellgleis vorbereitet und Bremse und Totmann erprobt; beide Motoren laufen seit einer Weile, die Handbremse von Führerstand 1 ist fest, die von Führerstand 2 los. Er sagt, die Luft lasse sich Zeit. Fahren Sie den Zug nach Yethrick Halt, wenn Signal und Schaffner es erlauben und wenn Sie mit ihm zufrieden sind.</translation>
    </message>
    <message>
        <source>a code against a red is not answered</source>
        <translation>ein Zeichen gegen Rot wird nicht beantwortet</translation>
    </message>
    <message>
        <source>a code lapses</source>
        <translation>ein Zeichen verfällt</translation>
    </message>
    <message>
        <source>a gear that takes hold late</source>
        <translation>ein Gang, der spät fasst</translation>
    </message>
    <message>
        <source>a hill start on one engine</source>
        <translation>eine Anfahrt am Berg mit einem Motor</translation>
    </message>
    <message>
        <source>a slipping band</source>
        <translation>ein rutschendes Band</translation>
    </message>
    <message>
        <source>air and vacuum</source>
        <translation>Luft und Vakuum</translation>
    </message>
    <message>
        <source>air, direction, device, throttle, button</source>
        <translation>Luft, Richtung, Totmann, Fahrschalter, Knopf</translation>
    </message>
    <message>
        <source>an engine that stops itself</source>
        <translation>ein Motor, der sich selbst abstellt</translation>
    </message>
    <message>
        <source>asking again before the first touch</source>
        <translation>noch einmal fragen vor der ersten Berührung</translation>
    </message>
    <message>
        <source>before the start</source>
        <translation>vor dem Anlassen</translation>
    </message>
    <message>
        <source>book, tell, decide</source>
        <translation>Buch, melden, entscheiden</translation>
    </message>
    <message>
        <source>brake and device of the other cab</source>
        <translation>Bremse und Totmann des anderen Führerstands</translation>
    </message>
    <message>
        <source>brake test in steps</source>
        <translation>Bremsprobe in Stufen</translation>
    </message>
    <message>
        <source>changing ends</source>
        <translation>Führerstandswechsel</translation>
    </message>
    <message>
        <source>changing up by the speed</source>
        <translation>Hochschalten nach Geschwindigkeit</translation>
    </message>
    <message>
        <source>coasting</source>
        <translation>Rollen</translation>
    </message>
    <message>
        <source>continuity from the rear</source>
        <translation>Durchgang vom Zugende</translation>
    </message>
    <message>
        <source>decide</source>
        <translation>entscheiden</translation>
    </message>
    <message>
        <source>departure on the level</source>
        <translation>Abfahrt in der Ebene</translation>
    </message>
    <message>
        <source>ends</source>
        <translation>Enden</translation>
    </message>
    <message>
        <source>fail the unit</source>
        <translation>den Zug stilllegen</translation>
    </message>
    <message>
        <source>finding an open drain</source>
        <translation>einen offenen Ablasshahn finden</translation>
    </message>
    <message>
        <source>from handbrake to power brake</source>
        <translation>von der Handbremse zur Vakuumbremse</translation>
    </message>
    <message>
        <source>going on restricted</source>
        <translation>beschränkt weiterfahren</translation>
    </message>
    <message>
        <source>good, defect, not sure</source>
        <translation>gut, Mangel, nicht sicher</translation>
    </message>
    <message>
        <source>holding on a grade</source>
        <translation>Halten auf einer Neigung</translation>
    </message>
    <message>
        <source>hurry is no reason</source>
        <translation>Eile ist kein Grund</translation>
    </message>
    <message>
        <source>isolating an engine and its final drive</source>
        <translation>einen Motor und sein Achsgetriebe abtrennen</translation>
    </message>
    <message>
        <source>leakage in lap</source>
        <translation>Undichtheit auf Abschluss</translation>
    </message>
    <message>
        <source>looking at an engine before it is started</source>
        <translation>einen Motor ansehen, bevor er angelassen wird</translation>
    </message>
    <message>
        <source>one application to a stop</source>
        <translation>eine Bremsung je Halt</translation>
    </message>
    <message>
        <source>one cab&apos;s valve or both</source>
        <translation>ein Ventil oder beide</translation>
    </message>
    <message>
        <source>one engine at a time</source>
        <translation>ein Motor nach dem anderen</translation>
    </message>
    <message>
        <source>out of course</source>
        <translation>außer der Regel</translation>
    </message>
    <message>
        <source>reading the air gauge</source>
        <translation>die Luftuhr ablesen</translation>
    </message>
    <message>
        <source>running brake test</source>
        <translation>Bremsprobe unterwegs</translation>
    </message>
    <message>
        <source>signal and guard: both</source>
        <translation>Signal und Schaffner: beide</translation>
    </message>
    <message>
        <source>standing on a falling grade</source>
        <translation>Stehen im Gefälle</translation>
    </message>
    <message>
        <source>stopping at a mark</source>
        <translation>Halten an der Tafel</translation>
    </message>
    <message>
        <source>the class of a defect</source>
        <translation>die Klasse eines Mangels</translation>
    </message>
    <message>
        <source>the rear handbrake first, the leading one last</source>
        <translation>die hintere Handbremse zuerst, die vordere zuletzt</translation>
    </message>
    <message>
        <source>the reservoir and its needle</source>
        <translation>der Behälter und sein Zeiger</translation>
    </message>
    <message>
        <source>the safety device</source>
        <translation>der Totmann</translation>
    </message>
    <message>
        <source>the same way round each time</source>
        <translation>jedes Mal gleich herum</translation>
    </message>
    <message>
        <source>the second run</source>
        <translation>die zweite Fahrt</translation>
    </message>
    <message>
        <source>the slow second release</source>
        <translation>das langsame zweite Lösen</translation>
    </message>
    <message>
        <source>the three stops</source>
        <translation>die drei Halte</translation>
    </message>
    <message>
        <source>three stops on the falling grade</source>
        <translation>drei Halte im Gefälle</translation>
    </message>
    <message>
        <source>timing the safety device</source>
        <translation>den Totmann zeitlich prüfen</translation>
    </message>
    <message>
        <source>touch nothing, ask</source>
        <translation>nichts berühren, fragen</translation>
    </message>
    <message>
        <source>watching the needle in lap</source>
        <translation>den Zeiger auf Abschluss beobachten</translation>
    </message>
    <message>
        <source>what does not go does not go</source>
        <translation>was nicht fährt, fährt nicht</translation>
    </message>
    <message>
        <source>21, 15, lap; look along; the handbrake off</source>
        <translation>21, 15, Abschluss; entlangsehen; die Handbremse los</translation>
    </message>
    <message>
        <source>A bell that rings is believed until it has been looked at.</source>
        <translation>Einer Glocke, die läutet, glaubt man, bis nachgesehen ist.</translation>
    </message>
    <message>
        <source>A brake that goes on by itself has been put on by somebody, or has come apart.</source>
        <translation>Eine Bremse, die sich von selbst anlegt, hat jemand angelegt, oder sie ist auseinandergegangen.</translation>
    </message>
    <message>
        <source>A brake that goes on is half of it.</source>
        <translation>Eine Bremse, die anlegt, ist die Hälfte davon.</translation>
    </message>
    <message>
        <source>A breaker that is out would be the simplest. In is in: they are not swapped.</source>
        <translation>Ein ausgelöster Automat wäre das Einfachste. Ein ist ein: daran wird nicht hantiert.</translation>
    </message>
    <message>
        <source>A chafe is on the side that rubs, and not seen from outside.</source>
        <translation>Eine Scheuerstelle ist auf der Seite, die reibt, und von außen nicht zu sehen.</translation>
    </message>
    <message>
        <source>A cock half over would be late too. It is not to be moved either way: it is sealed.</source>
        <translation>Ein halb umgelegter Hahn wäre auch spät. Er wird in keine Richtung bewegt: er ist verplombt.</translation>
    </message>
    <message>
        <source>A colleague has handed unit 3 over to you at Yethrick Halt, both engines running, cab 1&apos;s handbrake off, held by the brake; he says that all is ready. Take it on towards Drummelow Road when the guard allows.</source>
        <translation>Ein Kollege hat Ihnen Zug 3 in Yethrick Halt übergeben, beide Motoren laufen, die Handbremse von Führerstand 1 los, von der Bremse gehalten; er sagt, alles sei bereit. Fahren Sie weiter in Richtung Drummelow Road, wenn der Schaffner es erlaubt.</translation>
    </message>
    <message>
        <source>A dead button in the trailer&apos;s cab</source>
        <translation>Ein toter Knopf im Führerstand des Steuerwagens</translation>
    </message>
    <message>
        <source>A dead button is told apart from a flat battery by the lamps: these burn bright.</source>
        <translation>Ein toter Knopf unterscheidet sich von einer leeren Batterie an den Lampen: diese brennen hell.</translation>
    </message>
    <message>
        <source>A dead engine&apos;s box would be turned by the wheels without its oil pump.</source>
        <translation>Das Getriebe eines toten Motors würde von den Rädern ohne seine Ölpumpe gedreht.</translation>
    </message>
    <message>
        <source>A figure and a time: that is what a fitter wants to hear.</source>
        <translation>Eine Zahl und eine Zeit: das will ein Schlosser hören.</translation>
    </message>
    <message>
        <source>A gauge that stands: walk and listen before blaming a machine; then wait for the cut-out.</source>
        <translation>Eine Uhr, die steht: gehen und horchen, bevor man eine Maschine beschuldigt; dann auf das Abschalten warten.</translation>
    </message>
    <message>
        <source>A lamp that burns all night leaves no start in the morning.</source>
        <translation>Eine Lampe, die die ganze Nacht brennt, lässt am Morgen keinen Start.</translation>
    </message>
    <message>
        <source>A needle does not show a block on a tyre.</source>
        <translation>Ein Zeiger zeigt keinen Klotz auf einem Reifen.</translation>
    </message>
    <message>
        <source>A needle that stalls: a leak, an open valve, or an exhauster that is not there.</source>
        <translation>Ein hängender Zeiger: ein Leck, ein offenes Ventil oder ein fehlender Luftsauger.</translation>
    </message>
    <message>
        <source>A needle that stalls: lap, walk, listen, look, and no departure because it is nearly right.</source>
        <translation>Ein Zeiger, der hängen bleibt: Abschluss, gehen, horchen, sehen, und keine Abfahrt, weil es fast stimmt.</translation>
    </message>
    <message>
        <source>A stop on the open line is worse than a warm band; but only to the next one.</source>
        <translation>Ein Halt auf freier Strecke ist schlimmer als ein warmes Band; aber nur bis zum nächsten.</translation>
    </message>
    <message>
        <source>A test is a figure: timed, repeated once, looked into; and late is not the same as works.</source>
        <translation>Eine Probe ist eine Zahl: mit der Uhr, einmal wiederholt, nachgesehen; und spät ist nicht dasselbe wie in Ordnung.</translation>
    </message>
    <message>
        <source>A tyre that was dragged hot can come loose; it has to cool before it is braked again.</source>
        <translation>Ein heiß geschleifter Reifen kann sich lösen; er muss abkühlen, bevor er wieder gebremst wird.</translation>
    </message>
    <message>
        <source>A valve is set in the shed, not on the road.</source>
        <translation>Ein Ventil stellt man in der Werkstatt, nicht auf der Strecke.</translation>
    </message>
    <message>
        <source>After a change of ends the brake is tried from the new cab.</source>
        <translation>Nach einem Führerstandswechsel wird die Bremse vom neuen Führerstand aus geprobt.</translation>
    </message>
    <message>
        <source>After the cords the brake is proved anew.</source>
        <translation>Nach den Schnüren wird die Bremse neu erprobt.</translation>
    </message>
    <message>
        <source>Air is what it wants: the cover keeps it out.</source>
        <translation>Luft ist, was es will: die Haube hält sie fern.</translation>
    </message>
    <message>
        <source>Air that stops at seventy-eight</source>
        <translation>Luft, die bei achtundsiebzig stehen bleibt</translation>
    </message>
    <message>
        <source>An engine that runs pumps its fuel into the fire; and from the ground you would have to go where it burns.</source>
        <translation>Ein laufender Motor pumpt seinen Kraftstoff ins Feuer; und vom Boden müssten Sie dorthin, wo es brennt.</translation>
    </message>
    <message>
        <source>And the cord of car 2 on this side</source>
        <translation>Und die Schnur von Wagen 2 auf dieser Seite</translation>
    </message>
    <message>
        <source>As always.</source>
        <translation>Wie immer.</translation>
    </message>
    <message>
        <source>Ask for a second person, and whether the blocks are off, with the needle at 21</source>
        <translation>Um eine zweite Person bitten, und fragen, ob die Klötze los sind, mit dem Zeiger auf 21</translation>
    </message>
    <message>
        <source>Ask the shed whether you may put it home</source>
        <translation>Die Werkstatt fragen, ob Sie es einstecken dürfen</translation>
    </message>
    <message>
        <source>At 40 mph eleven seconds are two hundred metres with nobody at the handle.</source>
        <translation>Bei 40 mph sind elf Sekunden zweihundert Meter ohne jemanden am Griff.</translation>
    </message>
    <message>
        <source>At engine 1: who is there? Belts?</source>
        <translation>An Motor 1: wer ist da? Riemen?</translation>
    </message>
    <message>
        <source>At the booking-on point hand over handles, keys and the unit, by name</source>
        <translation>An der Meldestelle Griffe, Schlüssel und Zug mit Namen übergeben</translation>
    </message>
    <message>
        <source>At the cupboard: battery switch open</source>
        <translation>Am Schaltschrank: Batterieschalter aus</translation>
    </message>
    <message>
        <source>At tick-over the generator does not cut in.</source>
        <translation>Im Leerlauf schaltet sich die Lichtmaschine nicht ein.</translation>
    </message>
    <message>
        <source>Back in cab 1: raise 21 from nothing, and ask again whether all blocks are off</source>
        <translation>Zurück in Führerstand 1: 21 von null herstellen, und noch einmal fragen, ob alle Klötze los sind</translation>
    </message>
    <message>
        <source>Back in cab 1: wait until the gauge stands at 95 and the compressors unload</source>
        <translation>Zurück in Führerstand 1: warten, bis die Uhr auf 95 steht und die Kompressoren entlasten</translation>
    </message>
    <message>
        <source>Back in the cab: fail the unit, book it</source>
        <translation>Zurück im Führerstand: den Zug stilllegen, eintragen</translation>
    </message>
    <message>
        <source>Back up: stop both engines before you go between the cars</source>
        <translation>Wieder hinauf: beide Motoren abstellen, bevor Sie zwischen die Wagen gehen</translation>
    </message>
    <message>
        <source>Between the cars only with nothing turning.</source>
        <translation>Zwischen die Wagen nur, wenn sich nichts dreht.</translation>
    </message>
    <message>
        <source>Between the cars: look at the hoses and judge them</source>
        <translation>Zwischen den Wagen: die Schläuche ansehen und beurteilen</translation>
    </message>
    <message>
        <source>Between the cars: look at the jumper, judge it</source>
        <translation>Zwischen den Wagen: das Steuerkabel ansehen, beurteilen</translation>
    </message>
    <message>
        <source>Blocks on at 21: see that both handbrakes are hard, and destroy the vacuum, all of it</source>
        <translation>Klötze an bei 21: sehen, dass beide Handbremsen fest sind, und das Vakuum vernichten, ganz</translation>
    </message>
    <message>
        <source>Blow both reservoirs dry and shut the cocks: side 1 the main one, side 2 the control one</source>
        <translation>Beide Behälter trockenblasen und die Hähne schließen: Seite 1 der Hauptbehälter, Seite 2 der Steuerbehälter</translation>
    </message>
    <message>
        <source>Both engines out, from here, while the direction is in</source>
        <translation>Beide Motoren ab, von hier, solange die Richtung liegt</translation>
    </message>
    <message>
        <source>Both engines turn and one makes no air: then it is a belt or an unloader.</source>
        <translation>Drehen beide Motoren und einer macht keine Luft, dann ist es ein Riemen oder ein Entlaster.</translation>
    </message>
    <message>
        <source>Both handbrakes hard on, pawls in; cab 1&apos;s red lamps off, and lock it as you leave it</source>
        <translation>Beide Handbremsen fest, Sperrklinken ein; rote Lampen von Führerstand 1 aus, und ihn beim Verlassen abschließen</translation>
    </message>
    <message>
        <source>Both handbrakes hold her; and nothing must turn or pull while you are in there.</source>
        <translation>Beide Handbremsen halten ihn; und nichts darf sich drehen oder ziehen, solange Sie dort sind.</translation>
    </message>
    <message>
        <source>Brake to release, and wait for 21</source>
        <translation>Bremse auf Lösen, und auf 21 warten</translation>
    </message>
    <message>
        <source>Brake to release: 21 on the needle</source>
        <translation>Bremse auf Lösen: 21 am Zeiger</translation>
    </message>
    <message>
        <source>Cab 1: 21 again</source>
        <translation>Führerstand 1: wieder 21</translation>
    </message>
    <message>
        <source>Cab 1: enter it, and say your decision</source>
        <translation>Führerstand 1: eintragen, und die Entscheidung sagen</translation>
    </message>
    <message>
        <source>Cab 1: key and lever in, key on, device, reverser: warn, and try engine 1 from here</source>
        <translation>Führerstand 1: Schlüssel und Hebel ein, Schlüssel an, Totmann, Richtung: warnen, und Motor 1 von hier versuchen</translation>
    </message>
    <message>
        <source>Cab 1: key in and on, device held, reverser forward, gear at neutral; horn, look along, five seconds</source>
        <translation>Führerstand 1: Schlüssel ein und an, Totmann gehalten, Richtung vorwärts, Gang auf Leerlauf; Horn, entlangsehen, fünf Sekunden</translation>
    </message>
    <message>
        <source>Cab 1: reverser forward, and see the air lamp light through the by-pass</source>
        <translation>Führerstand 1: Richtung vorwärts, und die Luftlampe durch die Überbrückung leuchten sehen</translation>
    </message>
    <message>
        <source>Cab 2 again: start both engines from there, warned each time; both lamps lit</source>
        <translation>Wieder Führerstand 2: beide Motoren von dort anlassen, jedes Mal gewarnt; beide Lampen an</translation>
    </message>
    <message>
        <source>Cab 2: device, reverser forward, lamp; 21 again, and ask for the blocks: off</source>
        <translation>Führerstand 2: Totmann, Richtung vorwärts, Lampe; wieder 21, und nach den Klötzen fragen: los</translation>
    </message>
    <message>
        <source>Cab 2: its handbrake off</source>
        <translation>Führerstand 2: seine Handbremse los</translation>
    </message>
    <message>
        <source>Cab 2: lamp, 21, down to 15, lap; look along; the handbrake off</source>
        <translation>Führerstand 2: Lampe, 21, herunter auf 15, Abschluss; entlangsehen; die Handbremse los</translation>
    </message>
    <message>
        <source>Call fire: people away, help; tell the guard and the signaller</source>
        <translation>Feuer rufen: Leute weg, Hilfe; Schaffner und Fahrdienstleiter verständigen</translation>
    </message>
    <message>
        <source>Clear of the points, and no vacuum left to trust in.</source>
        <translation>Frei von den Weichen, und kein Vakuum mehr, dem man trauen würde.</translation>
    </message>
    <message>
        <source>Decide and tell the signaller: goes on restricted, the engines are not to be stopped, exchange as early as can be; or it fails</source>
        <translation>Entscheiden und dem Fahrdienstleiter sagen: fährt beschränkt, die Motoren dürfen nicht abgestellt werden, so früh wie möglich tauschen; oder er fährt nicht</translation>
    </message>
    <message>
        <source>Decide by the local rule, and say it</source>
        <translation>Nach der örtlichen Regel entscheiden, und es sagen</translation>
    </message>
    <message>
        <source>Decide: it does not go until the hose is changed; and say so</source>
        <translation>Entscheiden: er fährt nicht, bis der Schlauch getauscht ist; und es sagen</translation>
    </message>
    <message>
        <source>Decide: it fails; and say so</source>
        <translation>Entscheiden: er fährt nicht; und es sagen</translation>
    </message>
    <message>
        <source>Device, reverser forward, horn, look along, five seconds; try engine 1</source>
        <translation>Totmann, Richtung vorwärts, Horn, entlangsehen, fünf Sekunden; Motor 1 versuchen</translation>
    </message>
    <message>
        <source>Device, reverser, signal, the guard&apos;s two repeated; first gear, pause, brake off, notch by notch; look back</source>
        <translation>Totmann, Richtung, Signal, die zwei Schläge des Schaffners wiederholt; erster Gang, Pause, Bremse los, Stufe um Stufe; zurücksehen</translation>
    </message>
    <message>
        <source>Do not fight it: stop, and find out who wanted it.</source>
        <translation>Nicht dagegen ankämpfen: halten, und herausfinden, wer es wollte.</translation>
    </message>
    <message>
        <source>Down on side 1 to car 2: blocks off? Wheels: hand near them, never on a tyre; judge, and give them three minutes</source>
        <translation>Auf Seite 1 hinunter zu Wagen 2: Klötze los? Räder: die Hand in die Nähe, nie auf einen Reifen; beurteilen, und ihnen drei Minuten geben</translation>
    </message>
    <message>
        <source>Down on side 1 to car 2: the tell-tale stands out. Judge it, put it back</source>
        <translation>Auf Seite 1 hinunter zu Wagen 2: der Melder steht heraus. Beurteilen, zurückstellen</translation>
    </message>
    <message>
        <source>Down on side 1: listen, low down, and look at drains and pipes</source>
        <translation>Auf Seite 1 hinunter: unten horchen, und Hähne und Rohre ansehen</translation>
    </message>
    <message>
        <source>Down on side 1: look from a distance, fuel cock shut, bottle pulled; the cover stays shut</source>
        <translation>Auf Seite 1 hinunter: aus der Ferne sehen, Kraftstoffhahn zu, Flasche gezogen; die Haube bleibt zu</translation>
    </message>
    <message>
        <source>Down on side 1: pull the cord of each car until it has stopped hissing</source>
        <translation>Auf Seite 1 hinunter: die Schnur jedes Wagens ziehen, bis es ausgezischt hat</translation>
    </message>
    <message>
        <source>Down, and to engine 1: listen for the hum, look at the belts and the tray; hands off, it runs</source>
        <translation>Hinunter, und zu Motor 1: auf das Summen hören, Riemen und Wanne ansehen; Hände weg, er läuft</translation>
    </message>
    <message>
        <source>Each chamber has its own cord.</source>
        <translation>Jede Kammer hat ihre eigene Schnur.</translation>
    </message>
    <message>
        <source>Eleven seconds</source>
        <translation>Elf Sekunden</translation>
    </message>
    <message>
        <source>Engine 1 has no generator belt: what it takes it does not give back.</source>
        <translation>Motor 1 hat keinen Lichtmaschinenriemen: was er nimmt, gibt er nicht zurück.</translation>
    </message>
    <message>
        <source>Enter it in the book, and say your decision</source>
        <translation>Ins Buch eintragen, und die Entscheidung sagen</translation>
    </message>
    <message>
        <source>Enter it, and say your decision</source>
        <translation>Eintragen, und die Entscheidung sagen</translation>
    </message>
    <message>
        <source>Enter it: which cock, what the gauge did, that it was shut and tried</source>
        <translation>Eintragen: welcher Hahn, was die Uhr tat, dass er geschlossen und erprobt ist</translation>
    </message>
    <message>
        <source>Enter the fall</source>
        <translation>Den Fall eintragen</translation>
    </message>
    <message>
        <source>Enter the seconds</source>
        <translation>Die Sekunden eintragen</translation>
    </message>
    <message>
        <source>Failing it is never wrong.</source>
        <translation>Ihn stillzulegen ist nie falsch.</translation>
    </message>
    <message>
        <source>Fire bell on the road</source>
        <translation>Brandglocke auf der Strecke</translation>
    </message>
    <message>
        <source>Four cylinders, four cords: count them.</source>
        <translation>Vier Zylinder, vier Schnüre: zählen.</translation>
    </message>
    <message>
        <source>Four cylinders, four cords: the one left out drags alone.</source>
        <translation>Vier Zylinder, vier Schnüre: der ausgelassene schleift allein.</translation>
    </message>
    <message>
        <source>Four is early, seven is the most.</source>
        <translation>Vier ist früh, sieben ist das Meiste.</translation>
    </message>
    <message>
        <source>Full application and release: the needle follows</source>
        <translation>Vollbremsung und Lösen: der Zeiger folgt</translation>
    </message>
    <message>
        <source>Full application to nothing, and back to 21</source>
        <translation>Vollbremsung auf null, und zurück auf 21</translation>
    </message>
    <message>
        <source>Full application, handbrake hard on, pawl in</source>
        <translation>Vollbremsung, Handbremse fest, Sperrklinke ein</translation>
    </message>
    <message>
        <source>Gear to neutral, leading handbrake hard, pawl in; the rear one too; tell the guard</source>
        <translation>Gang auf Leerlauf, vordere Handbremse fest, Sperrklinke ein; die hintere auch; den Schaffner verständigen</translation>
    </message>
    <message>
        <source>Give it half a minute more: does it come to 21?</source>
        <translation>Noch eine halbe Minute geben: kommt er auf 21?</translation>
    </message>
    <message>
        <source>Half in, it may have burnt a contact: it is looked at, then trusted.</source>
        <translation>Halb eingesteckt kann ein Kontakt verbrannt sein: es wird angesehen, dann wird ihm getraut.</translation>
    </message>
    <message>
        <source>Handbrake hard, pawl in; tell guard and signaller, and wait for what the guard finds</source>
        <translation>Handbremse fest, Sperrklinke ein; Schaffner und Fahrdienstleiter verständigen und abwarten, was der Schaffner findet</translation>
    </message>
    <message>
        <source>He plans the road by what you can do.</source>
        <translation>Er plant den Fahrweg nach dem, was Sie können.</translation>
    </message>
    <message>
        <source>Hear it, shut off, read: one gear, one engine; to the next stop gently, and isolate there.</source>
        <translation>Hören, abschalten, ablesen: ein Gang, ein Motor; sachte zum nächsten Halt, und dort abtrennen.</translation>
    </message>
    <message>
        <source>Hold the device, reverser forward, brake to release: 21; and ask for a second person at the rear</source>
        <translation>Totmann halten, Richtung vorwärts, Bremse auf Lösen: 21; und um eine zweite Person am Zugende bitten</translation>
    </message>
    <message>
        <source>Hold the device, reverser forward, brake to release: 21; both handbrakes stay on</source>
        <translation>Totmann halten, Richtung vorwärts, Bremse auf Lösen: 21; beide Handbremsen bleiben fest</translation>
    </message>
    <message>
        <source>Hold the device, reverser forward, brake to release: watch both needles</source>
        <translation>Totmann halten, Richtung vorwärts, Bremse auf Lösen: beide Zeiger beobachten</translation>
    </message>
    <message>
        <source>Hold the device, reverser forward: one thump, and a dark lamp. Air good: wait for the other drive</source>
        <translation>Totmann halten, Richtung vorwärts: ein dumpfer Schlag und eine dunkle Lampe. Luft gut: auf das andere Achsgetriebe warten</translation>
    </message>
    <message>
        <source>Hold the device, reverser forward; watch the second needle come up to 25</source>
        <translation>Totmann halten, Richtung vorwärts; den zweiten Zeiger auf 25 kommen sehen</translation>
    </message>
    <message>
        <source>Ice in the pipe lets the air through slowly: time, not force.</source>
        <translation>Eis in der Leitung lässt die Luft langsam durch: Zeit, nicht Kraft.</translation>
    </message>
    <message>
        <source>Iced blocks bite late: know it before you need it.</source>
        <translation>Vereiste Klötze beißen spät: wissen Sie es, bevor Sie sie brauchen.</translation>
    </message>
    <message>
        <source>If it does not turn: let go at once. Three short tries at most, then outside supply.</source>
        <translation>Dreht er nicht: sofort loslassen. Höchstens drei kurze Versuche, dann Fremdversorgung.</translation>
    </message>
    <message>
        <source>If it starts here, engine, battery and breakers are good: it is what lies between the ends.</source>
        <translation>Läuft er hier an, sind Motor, Batterie und Automaten gut: es ist, was zwischen den Enden liegt.</translation>
    </message>
    <message>
        <source>In lap nothing feeds the pipe: what falls now, leaks. Three inches a minute is the most.</source>
        <translation>Auf Abschluss speist nichts die Leitung: was jetzt fällt, ist undicht. Drei Zoll in der Minute sind das Meiste.</translation>
    </message>
    <message>
        <source>Into the book, with the figure</source>
        <translation>Ins Buch, mit der Zahl</translation>
    </message>
    <message>
        <source>Into the book: gearbox 2, third gear, what was done</source>
        <translation>Ins Buch: Getriebe 2, dritter Gang, was getan wurde</translation>
    </message>
    <message>
        <source>Into the book: the feed valve of cab 2 is high; what the chambers held; what was done</source>
        <translation>Ins Buch: das Regelventil von Führerstand 2 steht hoch; was die Kammern hielten; was getan wurde</translation>
    </message>
    <message>
        <source>Into the book: which cab, how many seconds, twice</source>
        <translation>Ins Buch: welcher Führerstand, wie viele Sekunden, zweimal</translation>
    </message>
    <message>
        <source>It comes, but it comes late.</source>
        <translation>Es kommt, aber es kommt spät.</translation>
    </message>
    <message>
        <source>It is not your valve. Throttle shut, stop where the unit can stand, full application</source>
        <translation>Es ist nicht Ihr Ventil. Fahrschalter zu, halten, wo der Zug stehen kann, Vollbremsung</translation>
    </message>
    <message>
        <source>It is tried from 21 with the valve in release: who collapses does not move the valve.</source>
        <translation>Er wird von 21 aus geprobt, das Ventil auf Lösen: wer zusammenbricht, bewegt das Ventil nicht.</translation>
    </message>
    <message>
        <source>It may hang out because somebody pulled it.</source>
        <translation>Es kann hängen, weil es jemand gezogen hat.</translation>
    </message>
    <message>
        <source>It says which car; and it is put back from outside, by whoever knows why it was pulled.</source>
        <translation>Er sagt, welcher Wagen; und er wird von außen zurückgestellt, von dem, der weiß, warum gezogen wurde.</translation>
    </message>
    <message>
        <source>It speaks for the drive that is left.</source>
        <translation>Sie spricht für das verbliebene Achsgetriebe.</translation>
    </message>
    <message>
        <source>Its lever stands out when it is not home.</source>
        <translation>Sein Hebel steht ab, wenn es nicht sitzt.</translation>
    </message>
    <message>
        <source>Know before you spend it: each minute of lights and heater is a start.</source>
        <translation>Wissen, bevor man ausgibt: jede Minute Licht und Heizung ist ein Start.</translation>
    </message>
    <message>
        <source>Know before you spend it: which engine, what can be switched off, and when to stop trying.</source>
        <translation>Wissen, bevor man ausgibt: welcher Motor, was abgeschaltet werden kann, und wann man aufhört zu versuchen.</translation>
    </message>
    <message>
        <source>Lap for a minute, and enter the fall</source>
        <translation>Eine Minute Abschluss, und den Fall eintragen</translation>
    </message>
    <message>
        <source>Lap, and watch the needle</source>
        <translation>Abschluss, und den Zeiger beobachten</translation>
    </message>
    <message>
        <source>Lap, device up, reverser off; down on side 1: pull the cord of car 2 and hold it until it has stopped sucking</source>
        <translation>Abschluss, Totmann hoch, Richtungshebel aus; auf Seite 1 hinunter: die Schnur von Wagen 2 ziehen und halten, bis es ausgesaugt hat</translation>
    </message>
    <message>
        <source>Less than three inches: it is not a leak. So what is wanting is what draws.</source>
        <translation>Weniger als drei Zoll: es ist kein Leck. Also fehlt, was saugt.</translation>
    </message>
    <message>
        <source>Let go and count again</source>
        <translation>Wieder loslassen und zählen</translation>
    </message>
    <message>
        <source>Let go, and count: the needle should fall after five seconds, and be below 5</source>
        <translation>Loslassen und zählen: der Zeiger sollte nach fünf Sekunden fallen und unter 5 gehen</translation>
    </message>
    <message>
        <source>Listen to each gear as it takes hold: the note falls, and then pulls.</source>
        <translation>Jedem Gang beim Fassen zuhören: der Ton fällt, und dann zieht er.</translation>
    </message>
    <message>
        <source>Look at cock and seal behind you, and judge them; touch nothing</source>
        <translation>Hahn und Plombe hinter Ihnen ansehen und beurteilen; nichts berühren</translation>
    </message>
    <message>
        <source>Look both ways, and over: the cord of car 1 on side 2</source>
        <translation>Nach beiden Seiten sehen, und hinüber: die Schnur von Wagen 1 auf Seite 2</translation>
    </message>
    <message>
        <source>Look both ways, and the same at engine 2</source>
        <translation>Nach beiden Seiten sehen, und dasselbe an Motor 2</translation>
    </message>
    <message>
        <source>Look both ways, round the end, and the two on side 2</source>
        <translation>Nach beiden Seiten sehen, um das Ende herum, und die zwei auf Seite 2</translation>
    </message>
    <message>
        <source>Look both ways, to engine 2: isolating switch to off, and a padlock through it</source>
        <translation>Nach beiden Seiten sehen, zu Motor 2: Trennschalter auf Aus, und ein Vorhängeschloss hindurch</translation>
    </message>
    <message>
        <source>More power only makes more heat.</source>
        <translation>Mehr Kraft macht nur mehr Hitze.</translation>
    </message>
    <message>
        <source>Nearly is not a figure.</source>
        <translation>Fast ist keine Zahl.</translation>
    </message>
    <message>
        <source>Nearly twenty-one</source>
        <translation>Fast einundzwanzig</translation>
    </message>
    <message>
        <source>Needle at 21 and she slows: not the brake, the handbrake. Stop, full application, handbrake of cab 1 hard, pawl in</source>
        <translation>Zeiger auf 21, und er wird langsamer: nicht die Bremse, die Handbremse. Halten, Vollbremsung, Handbremse von Führerstand 1 fest, Sperrklinke ein</translation>
    </message>
    <message>
        <source>No hand into what turns.</source>
        <translation>Keine Hand in das, was sich dreht.</translation>
    </message>
    <message>
        <source>Nobody goes to a drive under a unit that only a valve holds.</source>
        <translation>Niemand geht an einen Antrieb unter einem Zug, den nur ein Ventil hält.</translation>
    </message>
    <message>
        <source>Nobody starts it from a cab while you are at it, nor tomorrow.</source>
        <translation>Niemand lässt ihn von einem Führerstand an, solange Sie daran sind, auch morgen nicht.</translation>
    </message>
    <message>
        <source>Not &apos;late&apos;: eleven.</source>
        <translation>Nicht &apos;spät&apos;: elf.</translation>
    </message>
    <message>
        <source>Not a click. Handbrakes stay on; key off and out, handles out; at the cupboard: breakers in?</source>
        <translation>Kein Klicken. Handbremsen bleiben fest; Schlüssel aus und heraus, Griffe heraus; am Schaltschrank: Automaten ein?</translation>
    </message>
    <message>
        <source>Not in two minutes: reverser back and over again. It is in the pipe, not in your hand.</source>
        <translation>Nicht in zwei Minuten: Richtungshebel zurück und wieder um. Es liegt in der Leitung, nicht in Ihrer Hand.</translation>
    </message>
    <message>
        <source>Nothing at seven: keep counting. The figure is what the fitter wants.</source>
        <translation>Nichts bei sieben: weiterzählen. Die Zahl ist, was der Schlosser will.</translation>
    </message>
    <message>
        <source>Nothing else holds through the night.</source>
        <translation>Sonst hält nichts die Nacht über.</translation>
    </message>
    <message>
        <source>Nothing to be seen or smelled at engine 1: look both ways, and at engine 2.</source>
        <translation>Nichts zu sehen oder zu riechen an Motor 1: nach beiden Seiten sehen, und an Motor 2.</translation>
    </message>
    <message>
        <source>Now it has to stay.</source>
        <translation>Jetzt muss es bleiben.</translation>
    </message>
    <message>
        <source>Now the chambers hold what this cab makes, and no more.</source>
        <translation>Jetzt halten die Kammern, was dieser Führerstand macht, und nicht mehr.</translation>
    </message>
    <message>
        <source>Now this valve has filled them.</source>
        <translation>Jetzt hat dieses Ventil sie gefüllt.</translation>
    </message>
    <message>
        <source>On, and listen</source>
        <translation>Weiter, und hören</translation>
    </message>
    <message>
        <source>On, at 21: overcharged. Both handbrakes stay hard on; full application, all vacuum away</source>
        <translation>An, bei 21: überladen. Beide Handbremsen bleiben fest; Vollbremsung, alles Vakuum weg</translation>
    </message>
    <message>
        <source>On; and watch the needle</source>
        <translation>Weiter; und den Zeiger beobachten</translation>
    </message>
    <message>
        <source>Once may be a slip of the hand; twice is the machine; five times is hoping.</source>
        <translation>Einmal kann die Hand gerutscht sein; zweimal ist es die Maschine; fünfmal ist Hoffen.</translation>
    </message>
    <message>
        <source>One chamber forgotten drags as well as four.</source>
        <translation>Eine vergessene Kammer schleift so gut wie vier.</translation>
    </message>
    <message>
        <source>One exhauster</source>
        <translation>Ein Luftsauger</translation>
    </message>
    <message>
        <source>One good engine goes on restricted; or the unit stays: both are safe.</source>
        <translation>Ein guter Motor fährt beschränkt weiter; oder der Zug bleibt: beides ist sicher.</translation>
    </message>
    <message>
        <source>One notch: 900 rpm for four minutes</source>
        <translation>Eine Stufe: 900 Umdrehungen, vier Minuten lang</translation>
    </message>
    <message>
        <source>One sounds right: that is what the other should sound like.</source>
        <translation>Einer klingt richtig: so sollte der andere klingen.</translation>
    </message>
    <message>
        <source>One tachometer leaves the other: shut off at once</source>
        <translation>Ein Drehzahlmesser verlässt den anderen: sofort abschalten</translation>
    </message>
    <message>
        <source>One tachometer runs up</source>
        <translation>Ein Drehzahlmesser läuft hoch</translation>
    </message>
    <message>
        <source>Only the cut-out proves that this was all.</source>
        <translation>Erst das Abschalten beweist, dass das alles war.</translation>
    </message>
    <message>
        <source>Overcharge in frost, then disposal</source>
        <translation>Überladung bei Frost, dann Abstellen</translation>
    </message>
    <message>
        <source>Paint that is brown over third says the same as the tachometer.</source>
        <translation>Braune Farbe über dem dritten sagt dasselbe wie der Drehzahlmesser.</translation>
    </message>
    <message>
        <source>Proved from this cab, it goes from this cab; from the other not before the valve is set.</source>
        <translation>Von diesem Führerstand erprobt, fährt er von diesem; vom anderen erst, wenn das Ventil gestellt ist.</translation>
    </message>
    <message>
        <source>Put it home, lever over; look again</source>
        <translation>Einstecken, Hebel umlegen; noch einmal hinsehen</translation>
    </message>
    <message>
        <source>Put right, proved and entered, it goes.</source>
        <translation>In Ordnung gebracht, erprobt und eingetragen, fährt er.</translation>
    </message>
    <message>
        <source>Read the volts and look at the breakers; heater off</source>
        <translation>Die Volt ablesen und die Automaten ansehen; Heizung aus</translation>
    </message>
    <message>
        <source>Release again, and count until 21</source>
        <translation>Wieder lösen, und bis 21 zählen</translation>
    </message>
    <message>
        <source>Release and power against it only hide it, and burn the blocks.</source>
        <translation>Lösen und Kraft dagegen verbergen es nur und verbrennen die Klötze.</translation>
    </message>
    <message>
        <source>Release to 21, then a full application</source>
        <translation>Lösen auf 21, dann eine Vollbremsung</translation>
    </message>
    <message>
        <source>Release; then lap, device up, reverser off; cab 1: its handbrake off</source>
        <translation>Lösen; dann Abschluss, Totmann hoch, Richtungshebel aus; Führerstand 1: seine Handbremse los</translation>
    </message>
    <message>
        <source>Released, at 21: ask whether all blocks are off</source>
        <translation>Gelöst, bei 21: fragen, ob alle Klötze los sind</translation>
    </message>
    <message>
        <source>Reverser off, brake in release so that it goes on sucking; then down, and listen along the unit</source>
        <translation>Richtungshebel aus, Bremse auf Lösen, damit es weiter saugt; dann hinunter und am Zug entlang horchen</translation>
    </message>
    <message>
        <source>Reverser, brake handle and key out; lamps off; lock cab 2 as you leave it</source>
        <translation>Richtungshebel, Bremsgriff und Schlüssel heraus; Lampen aus; Führerstand 2 beim Verlassen abschließen</translation>
    </message>
    <message>
        <source>Saloon lights off, from cab 1</source>
        <translation>Licht im Abteil aus, von Führerstand 1</translation>
    </message>
    <message>
        <source>Seconds count: what slips, burns. First and second were good, the other engine is good: it is one band.</source>
        <translation>Sekunden zählen: was rutscht, verbrennt. Erster und zweiter waren gut, der andere Motor ist gut: es ist ein Band.</translation>
    </message>
    <message>
        <source>She stands on a grade without an engine.</source>
        <translation>Er steht auf einer Neigung ohne Motor.</translation>
    </message>
    <message>
        <source>Shift air shut, sleeve to the middle by hand, pin in</source>
        <translation>Schaltluft zu, Muffe von Hand in die Mitte, Bolzen ein</translation>
    </message>
    <message>
        <source>Shut the cock, and hear it stop</source>
        <translation>Den Hahn schließen, und hören, dass es aufhört</translation>
    </message>
    <message>
        <source>Slow away on the level is a question; a freewheel answers it.</source>
        <translation>Zähe Anfahrt in der Ebene ist eine Frage; ein Freilauf beantwortet sie.</translation>
    </message>
    <message>
        <source>Slow away, and it will not coast</source>
        <translation>Zähe Anfahrt, und er will nicht rollen</translation>
    </message>
    <message>
        <source>Slow is not a leak: two needles, revs, ears; and what may still be done with half of it.</source>
        <translation>Langsam ist kein Leck: zwei Zeiger, Drehzahl, Ohren; und was mit der Hälfte noch getan werden darf.</translation>
    </message>
    <message>
        <source>Smell, look at gearbox 2, and judge it</source>
        <translation>Riechen, Getriebe 2 ansehen und beurteilen</translation>
    </message>
    <message>
        <source>Somebody may be caught in a door, or ill: nothing is reset before that is known.</source>
        <translation>Jemand kann in einer Tür hängen oder krank sein: nichts wird zurückgestellt, bevor das bekannt ist.</translation>
    </message>
    <message>
        <source>Somebody opened it; the next one should know where to look first.</source>
        <translation>Jemand hat ihn geöffnet; der Nächste soll wissen, wo zuerst zu suchen ist.</translation>
    </message>
    <message>
        <source>Stop engine 2</source>
        <translation>Motor 2 abstellen</translation>
    </message>
    <message>
        <source>Stop in the siding, about 240 metres back; gear to neutral, full application</source>
        <translation>Im Abstellgleis halten, etwa 240 Meter zurück; Gang auf Leerlauf, Vollbremsung</translation>
    </message>
    <message>
        <source>Stop it again, and take key and lever out</source>
        <translation>Wieder abstellen, Schlüssel und Hebel herausnehmen</translation>
    </message>
    <message>
        <source>Stop, engines out from the seat, people away; then the cock and the bottle, and nobody near the cover.</source>
        <translation>Halten, Motoren vom Sitz aus ab, Leute weg; dann Hahn und Flasche, und niemand an die Haube.</translation>
    </message>
    <message>
        <source>Take hold, raise 21, and do it once more, with the time</source>
        <translation>Zufassen, 21 herstellen, und noch einmal, mit der Zeit</translation>
    </message>
    <message>
        <source>Tell guard and signaller</source>
        <translation>Schaffner und Fahrdienstleiter verständigen</translation>
    </message>
    <message>
        <source>Tell guard, signaller and shed what the unit can do and what it cannot</source>
        <translation>Schaffner, Fahrdienstleiter und Werkstatt sagen, was der Zug kann und was nicht</translation>
    </message>
    <message>
        <source>Tell signaller and shed: half the pull, half the air, half the vacuum</source>
        <translation>Fahrdienstleiter und Werkstatt verständigen: halbe Zugkraft, halbe Luft, halbes Vakuum</translation>
    </message>
    <message>
        <source>Tell the shed</source>
        <translation>Die Werkstatt verständigen</translation>
    </message>
    <message>
        <source>Tell the shed and the guard</source>
        <translation>Werkstatt und Schaffner verständigen</translation>
    </message>
    <message>
        <source>The better one is the one that turns and charges.</source>
        <translation>Der bessere ist der, der dreht und lädt.</translation>
    </message>
    <message>
        <source>The brake goes on by itself</source>
        <translation>Die Bremse legt sich von selbst an</translation>
    </message>
    <message>
        <source>The brake holds before the handbrake lets go.</source>
        <translation>Die Bremse hält, bevor die Handbremse loslässt.</translation>
    </message>
    <message>
        <source>The charge lamp stays lit while the battery takes all there is: the volts at the cupboard tell more.</source>
        <translation>Die Ladelampe bleibt an, solange die Batterie alles nimmt, was da ist: mehr sagen die Volt am Schaltschrank.</translation>
    </message>
    <message>
        <source>The cord of car 1, on this side</source>
        <translation>Die Schnur von Wagen 1, auf dieser Seite</translation>
    </message>
    <message>
        <source>The end that was dead has to be proved.</source>
        <translation>Das Ende, das tot war, muss erprobt werden.</translation>
    </message>
    <message>
        <source>The engine that is started first has to charge for the other.</source>
        <translation>Der zuerst angelassene Motor muss für den anderen laden.</translation>
    </message>
    <message>
        <source>The far one on the last walk.</source>
        <translation>Die ferne beim letzten Gang.</translation>
    </message>
    <message>
        <source>The feed valve of cab 1 and the slow drive into the book; tell the shed</source>
        <translation>Das Regelventil von Führerstand 1 und den trägen Antrieb ins Buch; die Werkstatt verständigen</translation>
    </message>
    <message>
        <source>The gauge is right and the drag is real: what lies above the pistons; and secured before the cords.</source>
        <translation>Die Uhr stimmt, und das Schleifen ist wirklich: es ist, was über den Kolben liegt; und gesichert vor den Löseschnüren.</translation>
    </message>
    <message>
        <source>The gauge of this cab was right. Whoever leads from cab 2 next fills them again.</source>
        <translation>Die Uhr dieses Führerstands stimmte. Wer als Nächstes von Führerstand 2 fährt, füllt sie wieder.</translation>
    </message>
    <message>
        <source>The generator belt of engine 1 into the book; tell the shed</source>
        <translation>Den Lichtmaschinenriemen von Motor 1 ins Buch; die Werkstatt verständigen</translation>
    </message>
    <message>
        <source>The main reservoir hangs on this side, the control reservoir on the other.</source>
        <translation>Der Hauptbehälter hängt auf dieser Seite, der Steuerbehälter auf der anderen.</translation>
    </message>
    <message>
        <source>The needle shows the pipe, not the chambers.</source>
        <translation>Der Zeiger zeigt die Leitung, nicht die Kammern.</translation>
    </message>
    <message>
        <source>The next driver finds it there, and not on the bank.</source>
        <translation>Der nächste Führer findet es dort, und nicht auf der Rampe.</translation>
    </message>
    <message>
        <source>The next driver should not take the pin out.</source>
        <translation>Der nächste Führer soll den Bolzen nicht herausnehmen.</translation>
    </message>
    <message>
        <source>The next driver would find out on the road.</source>
        <translation>Der nächste Führer würde es auf der Strecke merken.</translation>
    </message>
    <message>
        <source>The next one to change ends drags as you did.</source>
        <translation>Wer als Nächster die Enden wechselt, schleift wie Sie.</translation>
    </message>
    <message>
        <source>The old code was used up when you stopped.</source>
        <translation>Das alte Zeichen war verbraucht, als Sie hielten.</translation>
    </message>
    <message>
        <source>The old code was used up.</source>
        <translation>Das alte Zeichen war verbraucht.</translation>
    </message>
    <message>
        <source>The other cab filled the chambers higher than this valve can match: then the blocks stay on.</source>
        <translation>Der andere Führerstand füllte die Kammern höher, als dieses Ventil mithält: dann bleiben die Klötze an.</translation>
    </message>
    <message>
        <source>The passengers go first, to the side away from it; and the other line has to be stopped.</source>
        <translation>Die Fahrgäste gehen zuerst, zur abgewandten Seite; und das andere Gleis muss gesperrt werden.</translation>
    </message>
    <message>
        <source>The running generator helps the weak starter to turn.</source>
        <translation>Die laufende Lichtmaschine hilft dem schwachen Anlasser drehen.</translation>
    </message>
    <message>
        <source>The same figure twice is a figure.</source>
        <translation>Dieselbe Zahl zweimal ist eine Zahl.</translation>
    </message>
    <message>
        <source>The second needle says what the exhausters have left: here it sinks to the first, and both stand.</source>
        <translation>Der zweite Zeiger sagt, was die Luftsauger noch haben: hier sinkt er auf den ersten, und beide stehen.</translation>
    </message>
    <message>
        <source>The second release tells what the reservoir has left, and how fast it is filled.</source>
        <translation>Das zweite Lösen sagt, was der Behälter noch hat und wie schnell er sich füllt.</translation>
    </message>
    <message>
        <source>The unit can run with one generator; it cannot start twice.</source>
        <translation>Der Zug kann mit einer Lichtmaschine fahren; zweimal anlassen kann er nicht.</translation>
    </message>
    <message>
        <source>Then it is theirs.</source>
        <translation>Dann gehört er ihnen.</translation>
    </message>
    <message>
        <source>There is a wheel in each cab, each on its own car.</source>
        <translation>In jedem Führerstand ist ein Rad, jedes für seinen Wagen.</translation>
    </message>
    <message>
        <source>There is one start in it: everything else first.</source>
        <translation>Ein Start ist darin: alles andere zuerst.</translation>
    </message>
    <message>
        <source>They hold the spanner and the passengers.</source>
        <translation>Sie haben den Schraubenschlüssel und die Fahrgäste.</translation>
    </message>
    <message>
        <source>They take more than anything else that burns now.</source>
        <translation>Es nimmt mehr als alles andere, was jetzt brennt.</translation>
    </message>
    <message>
        <source>They wait for you, and now they wait for another unit.</source>
        <translation>Sie warten auf Sie, und jetzt warten sie auf einen anderen Zug.</translation>
    </message>
    <message>
        <source>Three minutes at idle; then both engines stopped from cab 2, and heard to stop</source>
        <translation>Drei Minuten Leerlauf; dann beide Motoren von Führerstand 2 abgestellt und verstummen gehört</translation>
    </message>
    <message>
        <source>Throttle 2, start engine 2: the one with its generator; let go when the lamp is lit</source>
        <translation>Fahrschalter 2, Motor 2 anlassen: den mit seiner Lichtmaschine; loslassen, wenn die Lampe leuchtet</translation>
    </message>
    <message>
        <source>Throttle shut, and stop</source>
        <translation>Fahrschalter zu, und halten</translation>
    </message>
    <message>
        <source>To Wexholt, braking early; the fall to Marrowick needs both.</source>
        <translation>Bis Wexholt, früh bremsen; das Gefälle nach Marrowick braucht beide.</translation>
    </message>
    <message>
        <source>To the next stop: coast, at most a light notch where it holds; stop at the mark and hold her</source>
        <translation>Zum nächsten Halt: rollen, höchstens eine leichte Stufe, wo er hält; an der Tafel halten und festhalten</translation>
    </message>
    <message>
        <source>Today 19.9; on the road, when it tears, nothing.</source>
        <translation>Heute 19,9; auf der Strecke, wenn er reißt, nichts.</translation>
    </message>
    <message>
        <source>Twenty-one, and the blocks are on</source>
        <translation>Einundzwanzig, und die Klötze liegen an</translation>
    </message>
    <message>
        <source>Two causes at once; secured before the cords; and the unit left as it should be found.</source>
        <translation>Zwei Ursachen zugleich; gesichert vor den Löseschnüren; und der Zug so verlassen, wie man ihn finden will.</translation>
    </message>
    <message>
        <source>Two compressors that never rest and a needle that stands: as much goes out as comes in.</source>
        <translation>Zwei Kompressoren, die nie ruhen, und ein Zeiger, der steht: es geht so viel hinaus, wie hereinkommt.</translation>
    </message>
    <message>
        <source>Two exhausters at idle do it in three quarters of a minute. Slow is the first sign.</source>
        <translation>Zwei Luftsauger im Leerlauf schaffen es in einer Dreiviertelminute. Langsam ist das erste Zeichen.</translation>
    </message>
    <message>
        <source>Two strokes, repeat, and on: power against the brake, it rises here</source>
        <translation>Zwei Schläge, wiederholen, und weiter: Kraft gegen die Bremse, es steigt hier</translation>
    </message>
    <message>
        <source>Two strokes, repeat, first gear, pause, release, one notch: and an early try of the brake on the frosty rail</source>
        <translation>Zwei Schläge, wiederholen, erster Gang, Pause, lösen, eine Stufe: und ein früher Versuch der Bremse auf der bereiften Schiene</translation>
    </message>
    <message>
        <source>Two strokes, repeat; on, and feel that she runs free</source>
        <translation>Zwei Schläge, wiederholen; weiter, und fühlen, dass er frei läuft</translation>
    </message>
    <message>
        <source>Unit 3 has come in to Sallowmere with cab 2 leading; the ends have just been changed. Both handbrakes are on, both engines run, you are in cab 1. Try the brake with a second person at the rear, put right what you may, and say whether the unit goes.</source>
        <translation>Zug 3 ist mit Führerstand 2 vorn nach Sallowmere gekommen; eben wurden die Enden gewechselt. Beide Handbremsen sind fest, beide Motoren laufen, Sie sind in Führerstand 1. Proben Sie die Bremse mit einer zweiten Person am Zugende, bringen Sie in Ordnung, was Sie dürfen, und sagen Sie, ob der Zug fährt.</translation>
    </message>
    <message>
        <source>Unit 3 has stood in the siding since noon; somebody has left lights and heater on. It is still warm and has its air. You stand at the cupboard behind cab 1, brake handle and reversing lever are in cab 1, the key is with you, both handbrakes are on. Get both engines running and the battery charged, and say whether the unit can go.</source>
        <translation>Zug 3 steht seit Mittag im Abstellgleis; jemand hat Licht und Heizung angelassen. Er ist noch warm und hat seine Luft. Sie stehen am Schaltschrank hinter Führerstand 1, Bremsgriff und Richtungshebel sind in Führerstand 1, den Schlüssel haben Sie, beide Handbremsen sind fest. Bringen Sie beide Motoren zum Laufen und die Batterie zum Laden, und sagen Sie, ob der Zug fahren kann.</translation>
    </message>
    <message>
        <source>Unit 3 stands at Sallowmere, both engines running, both handbrakes on, no vacuum yet; the walk round was done before the engines ran. You are in cab 1: raise the vacuum, try the brake, find out what is not as it should be, and say what the unit may do today. The local rule: with one exhauster as far as Wexholt and no further, braking early; never down to Marrowick.</source>
        <translation>Zug 3 steht in Sallowmere, beide Motoren laufen, beide Handbremsen fest, noch kein Vakuum; der Rundgang war, bevor die Motoren liefen. Sie sind in Führerstand 1: stellen Sie das Vakuum her, proben Sie die Bremse, finden Sie heraus, was nicht ist, wie es sein soll, und sagen Sie, was der Zug heute darf. Die örtliche Regel: mit einem Luftsauger bis Wexholt und nicht weiter, früh bremsen; nie hinunter nach Marrowick.</translation>
    </message>
    <message>
        <source>Unit 3 stands at Sallowmere, prepared and held by the brake, the handbrakes off. You are in cab 1: take it to Tarrowby Lane, the next stop. Whatever is not as it should be on the way: deal with it, put right at the stop what you may, and say how the unit goes on. On the road beyond Tarrowby Lane there is no place to stop for miles.</source>
        <translation>Zug 3 steht in Sallowmere, bereit und von der Bremse gehalten, Handbremsen los. Sie sind in Führerstand 1: fahren Sie nach Tarrowby Lane, dem nächsten Halt. Was unterwegs nicht ist, wie es sein soll: behandeln Sie es, bringen Sie am Halt in Ordnung, was Sie dürfen, und sagen Sie, wie der Zug weiterfährt. Hinter Tarrowby Lane gibt es meilenweit keine Stelle zum Halten.</translation>
    </message>
    <message>
        <source>Unit 3 stands at Yethrick Halt with both engines running, held by the brake, in cab 1. Take it on towards Drummelow Road when signal and guard allow. What happens on the way is yours to deal with.</source>
        <translation>Zug 3 steht in Yethrick Halt mit beiden Motoren laufend, von der Bremse gehalten, in Führerstand 1. Fahren Sie weiter in Richtung Drummelow Road, wenn Signal und Schaffner es erlauben. Was unterwegs geschieht, haben Sie zu behandeln.</translation>
    </message>
    <message>
        <source>Unit 3 stands at Yethrick Halt with both engines running, held by the brake, in cab 1. Take it on towards Drummelow Road when signal and guard allow. What happens on the way is yours to deal with; the guard is in the saloon.</source>
        <translation>Zug 3 steht in Yethrick Halt mit beiden Motoren laufend, von der Bremse gehalten, in Führerstand 1. Fahren Sie weiter in Richtung Drummelow Road, wenn Signal und Schaffner es erlauben. Was unterwegs geschieht, haben Sie zu behandeln; der Schaffner ist im Abteil.</translation>
    </message>
    <message>
        <source>Unit 3 stands in siding 1, both engines running, both handbrakes on, no vacuum yet. You are in cab 1: raise the vacuum, try the pipe for leakage, and take the unit away when signal and guard allow, if it is fit to go.</source>
        <translation>Zug 3 steht in Abstellgleis 1, beide Motoren laufen, beide Handbremsen fest, noch kein Vakuum. Sie sind in Führerstand 1: stellen Sie das Vakuum her, prüfen Sie die Leitung auf Undichtheit, und fahren Sie den Zug weg, wenn Signal und Schaffner es erlauben und wenn er fahren darf.</translation>
    </message>
    <message>
        <source>Unit 3 stands in siding 1, both engines running, the vacuum up, both handbrakes on; the brake was tried with the guard a moment ago. You are in cab 1: the safety device is still to be tried. Try it, and take the unit away when signal and guard allow, if it is fit to go.</source>
        <translation>Zug 3 steht in Abstellgleis 1, beide Motoren laufen, Vakuum da, beide Handbremsen fest; die Bremse wurde eben mit dem Schaffner geprobt. Sie sind in Führerstand 1: der Totmann ist noch zu proben. Proben Sie ihn, und fahren Sie den Zug weg, wenn Signal und Schaffner es erlauben und wenn er fahren darf.</translation>
    </message>
    <message>
        <source>Unit 3 stands in the siding, warm and with its air, both engines stopped, both handbrakes on; it came in with cab 1 leading and was in order. Today cab 2, the trailer&apos;s, leads; handles and key are in it. Start both engines from cab 2, prove them from there, and say whether the unit can go.</source>
        <translation>Zug 3 steht im Abstellgleis, warm und mit seiner Luft, beide Motoren aus, beide Handbremsen fest; er kam mit Führerstand 1 vorn herein und war in Ordnung. Heute fährt Führerstand 2, der des Steuerwagens, voraus; Griffe und Schlüssel stecken dort. Lassen Sie beide Motoren von Führerstand 2 an, erproben Sie sie von dort, und sagen Sie, ob der Zug fahren kann.</translation>
    </message>
    <message>
        <source>Up through first and second; third at 25 to 27</source>
        <translation>Durch den ersten und zweiten hinauf; der dritte bei 25 bis 27</translation>
    </message>
    <message>
        <source>Up to 8, then shut off: does she coast?</source>
        <translation>Auf 8 hinauf, dann abschalten: rollt er?</translation>
    </message>
    <message>
        <source>Up, and into the book: which belt, and what the needles did</source>
        <translation>Hinauf, und ins Buch: welcher Riemen, und was die Zeiger taten</translation>
    </message>
    <message>
        <source>Warn again, look along; start engine 1 with engine 2 charging</source>
        <translation>Wieder warnen, entlangsehen; Motor 1 anlassen, während Motor 2 lädt</translation>
    </message>
    <message>
        <source>Watch the air gauge for a minute: does it climb, does it come to its cut-out? Enter the figure</source>
        <translation>Die Luftuhr eine Minute beobachten: steigt sie, kommt sie zum Abschalten? Die Zahl eintragen</translation>
    </message>
    <message>
        <source>Water left in freezes in the pipes: you have met it today.</source>
        <translation>Zurückgelassenes Wasser friert in den Leitungen: Sie sind ihm heute begegnet.</translation>
    </message>
    <message>
        <source>Weak battery: one start in it</source>
        <translation>Schwache Batterie: ein Start ist noch darin</translation>
    </message>
    <message>
        <source>What does not hum does not draw; and a belt that is off lies somewhere.</source>
        <translation>Was nicht summt, saugt nicht; und ein abgesprungener Riemen liegt irgendwo.</translation>
    </message>
    <message>
        <source>What has burnt once burns again when it is started.</source>
        <translation>Was einmal gebrannt hat, brennt beim Anlassen wieder.</translation>
    </message>
    <message>
        <source>What has worked loose once works loose again.</source>
        <translation>Was sich einmal gelockert hat, lockert sich wieder.</translation>
    </message>
    <message>
        <source>What is left in a cab is anybody&apos;s.</source>
        <translation>Was in einem Führerstand bleibt, gehört jedem.</translation>
    </message>
    <message>
        <source>What is left in one chamber drags that wheelset.</source>
        <translation>Was in einer Kammer bleibt, lässt diesen Radsatz schleifen.</translation>
    </message>
    <message>
        <source>What lies above the pistons is let out there and nowhere else.</source>
        <translation>Was über den Kolben liegt, kommt nur dort heraus.</translation>
    </message>
    <message>
        <source>What stands open by mistake is shut by hand; no more is needed, and no less.</source>
        <translation>Was versehentlich offen steht, schließt man mit der Hand; mehr braucht es nicht, und weniger auch nicht.</translation>
    </message>
    <message>
        <source>What was opened may not have shut.</source>
        <translation>Was offen war, ist vielleicht nicht zu.</translation>
    </message>
    <message>
        <source>When the gauge says released and the unit drags, it is the handbrake: stop, release, look at the heat.</source>
        <translation>Sagt die Uhr gelöst und der Zug schleift, ist es die Handbremse: halten, lösen, nach der Hitze sehen.</translation>
    </message>
    <message>
        <source>When, where, who dealt with it: somebody will ask.</source>
        <translation>Wann, wo, wer sich darum gekümmert hat: jemand wird fragen.</translation>
    </message>
    <message>
        <source>Whoever looks at these wheels tomorrow has to know that they were hot.</source>
        <translation>Wer morgen diese Räder ansieht, muss wissen, dass sie heiß waren.</translation>
    </message>
    <message>
        <source>Whoever stops both engines at the terminus stays there.</source>
        <translation>Wer am Endbahnhof beide Motoren abstellt, bleibt dort.</translation>
    </message>
    <message>
        <source>Wind feeds it; and nobody gets off a train that runs.</source>
        <translation>Wind nährt es; und niemand steigt aus einem Zug, der fährt.</translation>
    </message>
    <message>
        <source>With the cords pulled there is no brake at all.</source>
        <translation>Mit gezogenen Schnüren gibt es gar keine Bremse.</translation>
    </message>
    <message>
        <source>With the cords pulled there is no brake at all: the handbrakes are what is left.</source>
        <translation>Mit gezogenen Schnüren gibt es gar keine Bremse: die Handbremsen sind, was bleibt.</translation>
    </message>
    <message>
        <source>With the device out of circuit it stays raised by itself; a pipe without vacuum is silent.</source>
        <translation>Mit dem Totmann außer Kreis bleibt das Vakuum von selbst stehen; eine Leitung ohne Vakuum ist still.</translation>
    </message>
    <message>
        <source>With the reverser off they can be stopped from the ground only.</source>
        <translation>Mit dem Richtungshebel auf Aus kann man sie nur vom Boden abstellen.</translation>
    </message>
    <message>
        <source>Works from one end and not from the other: so it is between them. And who may put it home.</source>
        <translation>Geht von einem Ende und nicht vom anderen: also liegt es dazwischen. Und wer es einstecken darf.</translation>
    </message>
    <message>
        <source>You have brought unit 3 in with cab 1 leading, changed ends, and sit in cab 2 with the handles in; both handbrakes are on, both engines tick over, bell and safety device are tried. It freezes at 6 degrees below. Set the unit back about 240 metres into the stabling siding when the guard gives two, put it away for the night, and hand handles and keys over at the booking-on point.</source>
        <translation>Sie haben Zug 3 mit Führerstand 1 vorn hereingebracht, die Enden gewechselt und sitzen in Führerstand 2, die Griffe stecken; beide Handbremsen sind fest, beide Motoren laufen leer, Klingel und Totmann sind erprobt. Es friert bei 6 Grad unter null. Setzen Sie den Zug etwa 240 Meter ins Abstellgleis zurück, wenn der Schaffner zwei gibt, stellen Sie ihn für die Nacht ab, und geben Sie Griffe und Schlüssel an der Meldestelle ab.</translation>
    </message>
    <message>
        <source>You stand where nobody expects you.</source>
        <translation>Sie stehen, wo niemand Sie erwartet.</translation>
    </message>
    <message>
        <source>Your colleague leaves unit 3 to you in siding 1: both engines running, both handbrakes on, the vacuum up, the air slow in coming. Find out why, put right what you may, and say whether the unit goes.</source>
        <translation>Ihr Kollege überlässt Ihnen Zug 3 in Abstellgleis 1: beide Motoren laufen, beide Handbremsen fest, Vakuum da, die Luft kommt langsam. Finden Sie heraus, warum, bringen Sie in Ordnung, was Sie dürfen, und sagen Sie, ob der Zug fährt.</translation>
    </message>
    <message>
        <source>a band that slips</source>
        <translation>ein Band, das rutscht</translation>
    </message>
    <message>
        <source>a gauge that stands</source>
        <translation>eine Uhr, die steht</translation>
    </message>
    <message>
        <source>a vacuum that stalls</source>
        <translation>ein Vakuum, das hängen bleibt</translation>
    </message>
    <message>
        <source>asking before resetting</source>
        <translation>fragen vor dem Zurückstellen</translation>
    </message>
    <message>
        <source>between the cars, safely</source>
        <translation>zwischen den Wagen, sicher</translation>
    </message>
    <message>
        <source>cab</source>
        <translation>Führerstand</translation>
    </message>
    <message>
        <source>charging before the second start</source>
        <translation>laden vor dem zweiten Start</translation>
    </message>
    <message>
        <source>choosing the engine</source>
        <translation>den Motor wählen</translation>
    </message>
    <message>
        <source>cock and seal</source>
        <translation>Hahn und Plombe</translation>
    </message>
    <message>
        <source>cords</source>
        <translation>Löseschnüre</translation>
    </message>
    <message>
        <source>destroy, cords, raise, test</source>
        <translation>vernichten, Schnüre, anheben, proben</translation>
    </message>
    <message>
        <source>disposal</source>
        <translation>Abstellen</translation>
    </message>
    <message>
        <source>dragging with the brake released</source>
        <translation>Schleifen bei gelöster Bremse</translation>
    </message>
    <message>
        <source>finding a fault between the ends</source>
        <translation>einen Fehler zwischen den Enden finden</translation>
    </message>
    <message>
        <source>fire</source>
        <translation>Feuer</translation>
    </message>
    <message>
        <source>frost</source>
        <translation>Frost</translation>
    </message>
    <message>
        <source>going on restricted by the local rule</source>
        <translation>beschränkt weiter nach der örtlichen Regel</translation>
    </message>
    <message>
        <source>hearing what is missing</source>
        <translation>hören, was fehlt</translation>
    </message>
    <message>
        <source>hearing where it blows</source>
        <translation>hören, wo es bläst</translation>
    </message>
    <message>
        <source>hearing where it sucks</source>
        <translation>hören, wo es saugt</translation>
    </message>
    <message>
        <source>heat at a wheel</source>
        <translation>Hitze an einem Rad</translation>
    </message>
    <message>
        <source>isolating</source>
        <translation>abtrennen</translation>
    </message>
    <message>
        <source>late is not works</source>
        <translation>spät ist nicht in Ordnung</translation>
    </message>
    <message>
        <source>leave before a plug is touched</source>
        <translation>Erlaubnis, bevor ein Stecker berührt wird</translation>
    </message>
    <message>
        <source>looking back</source>
        <translation>zurücksehen</translation>
    </message>
    <message>
        <source>needles are not blocks</source>
        <translation>Zeiger sind keine Klötze</translation>
    </message>
    <message>
        <source>no departure on nearly</source>
        <translation>keine Abfahrt auf fast</translation>
    </message>
    <message>
        <source>no swapping of breakers</source>
        <translation>kein Hantieren an Automaten</translation>
    </message>
    <message>
        <source>one gear or all, one engine or both</source>
        <translation>ein Gang oder alle, ein Motor oder beide</translation>
    </message>
    <message>
        <source>one repeat, not five</source>
        <translation>einmal wiederholen, nicht fünfmal</translation>
    </message>
    <message>
        <source>overcharge</source>
        <translation>Überladung</translation>
    </message>
    <message>
        <source>proof</source>
        <translation>Beweis</translation>
    </message>
    <message>
        <source>proving the brake again</source>
        <translation>die Bremse neu erproben</translation>
    </message>
    <message>
        <source>put right, tested, entered</source>
        <translation>in Ordnung gebracht, erprobt, eingetragen</translation>
    </message>
    <message>
        <source>putting a unit away</source>
        <translation>einen Zug abstellen</translation>
    </message>
    <message>
        <source>reading the volts</source>
        <translation>die Volt ablesen</translation>
    </message>
    <message>
        <source>release cords</source>
        <translation>Löseschnüre</translation>
    </message>
    <message>
        <source>reporting the other cab&apos;s valve</source>
        <translation>das Ventil des anderen Führerstands melden</translation>
    </message>
    <message>
        <source>secured before cords</source>
        <translation>gesichert vor den Löseschnüren</translation>
    </message>
    <message>
        <source>slow, and steady in lap: not a leak</source>
        <translation>langsam, und auf Abschluss fest: kein Leck</translation>
    </message>
    <message>
        <source>the cut-out as proof</source>
        <translation>das Abschalten als Beweis</translation>
    </message>
    <message>
        <source>the lamp through the by-pass</source>
        <translation>die Lampe durch die Überbrückung</translation>
    </message>
    <message>
        <source>the passenger alarm</source>
        <translation>die Notbremse</translation>
    </message>
    <message>
        <source>the run</source>
        <translation>die Fahrt</translation>
    </message>
    <message>
        <source>the second needle</source>
        <translation>der zweite Zeiger</translation>
    </message>
    <message>
        <source>what comes first</source>
        <translation>was zuerst kommt</translation>
    </message>
    <message>
        <source>21 again; then down, and look at them once more</source>
        <translation>Wieder 21; dann hinunter, und sie noch einmal ansehen</translation>
    </message>
    <message>
        <source>A belt in the tray is seen with the engine running.</source>
        <translation>Einen Riemen in der Wanne sieht man bei laufendem Motor.</translation>
    </message>
    <message>
        <source>A dark lamp and a note that stays: the tachometer first, then the gauge at the engine.</source>
        <translation>Eine dunkle Lampe und ein Ton, der bleibt: erst der Drehzahlmesser, dann die Uhr am Motor.</translation>
    </message>
    <message>
        <source>A morning at six below</source>
        <translation>Ein Morgen bei sechs unter null</translation>
    </message>
    <message>
        <source>Air good at the gauge and none where it is used; and power is no way to free a wheel.</source>
        <translation>Luft gut an der Uhr und keine, wo sie gebraucht wird; und Kraft macht kein Rad frei.</translation>
    </message>
    <message>
        <source>An engine lamp goes out</source>
        <translation>Eine Motorlampe geht aus</translation>
    </message>
    <message>
        <source>At 8 to 10 shut off, and 6 inches of brake: felt? Then release</source>
        <translation>Bei 8 bis 10 abschalten, und 6 Zoll Bremse: gefühlt? Dann lösen</translation>
    </message>
    <message>
        <source>At tick-over it is lit on any unit: only fast idle tells.</source>
        <translation>Im Leerlauf leuchtet sie bei jedem Zug: nur der schnelle Leerlauf sagt etwas.</translation>
    </message>
    <message>
        <source>Cab 1: 21, 15, lap; the handbrake off</source>
        <translation>Führerstand 1: 21, 15, Abschluss; die Handbremse los</translation>
    </message>
    <message>
        <source>Cab 1: tell signaller and shed: nothing charges, engines stay running, exchange as early as can be</source>
        <translation>Führerstand 1: Fahrdienstleiter und Werkstatt sagen: nichts lädt, Motoren laufen weiter, so früh wie möglich tauschen</translation>
    </message>
    <message>
        <source>Cab 1: the bulb into the book, and your decision</source>
        <translation>Führerstand 1: die Birne ins Buch, und Ihre Entscheidung</translation>
    </message>
    <message>
        <source>Dark under the test as well is a bulb; a note at tick-over is an engine that runs. Neither says that it has oil.</source>
        <translation>Auch unter der Probe dunkel ist eine Birne; ein Ton im Leerlauf ist ein Motor, der läuft. Keines sagt, dass er Öl hat.</translation>
    </message>
    <message>
        <source>Device, reverser forward, lamp; 21, 15, lap; the handbrake off</source>
        <translation>Totmann, Richtung vorwärts, Lampe; 21, 15, Abschluss; die Handbremse los</translation>
    </message>
    <message>
        <source>Device, reverser forward: a thump, and a dark lamp. Air 95: wait for the other drive</source>
        <translation>Totmann, Richtung vorwärts: ein dumpfer Schlag und eine dunkle Lampe. Luft 95: auf das andere Achsgetriebe warten</translation>
    </message>
    <message>
        <source>Down to engine 1: belts, without a hand in them</source>
        <translation>Hinunter zu Motor 1: Riemen, ohne eine Hand hinein</translation>
    </message>
    <message>
        <source>Enter it in the book</source>
        <translation>Ins Buch eintragen</translation>
    </message>
    <message>
        <source>Hold the lamp test and look at the lamps; read tachometer 2</source>
        <translation>Die Lampenprobe halten und auf die Lampen sehen; Drehzahlmesser 2 ablesen</translation>
    </message>
    <message>
        <source>Into the book, and the decision: restricted, engines not to be stopped; or the unit is exchanged here</source>
        <translation>Ins Buch, und die Entscheidung: beschränkt, Motoren nicht abstellen; oder der Zug wird hier getauscht</translation>
    </message>
    <message>
        <source>It stays lit. Throttle shut; saloon lights off, cab light off; at the cupboard heater off, breakers and volts read</source>
        <translation>Sie bleibt an. Fahrschalter zu; Abteillicht aus, Führerstandslicht aus; am Schaltschrank Heizung aus, Automaten und Volt abgelesen</translation>
    </message>
    <message>
        <source>Lap, device up, reverser off; round the unit: do the blocks hang free, at all four places? Judge each</source>
        <translation>Abschluss, Totmann hoch, Richtungshebel aus; um den Zug: hängen die Klötze frei, an allen vier Stellen? Jede beurteilen</translation>
    </message>
    <message>
        <source>Look both ways, and the belts of engine 2</source>
        <translation>Nach beiden Seiten sehen, und die Riemen von Motor 2</translation>
    </message>
    <message>
        <source>Look both ways, and to engine 2: the oil gauge there, and the tray</source>
        <translation>Nach beiden Seiten sehen, und zu Motor 2: die Öluhr dort, und die Wanne</translation>
    </message>
    <message>
        <source>Nothing on the gauge: stop that engine at once.</source>
        <translation>Nichts an der Uhr: diesen Motor sofort abstellen.</translation>
    </message>
    <message>
        <source>One generator would be enough: look whether it is.</source>
        <translation>Eine Lichtmaschine wäre genug: sehen, ob sie es ist.</translation>
    </message>
    <message>
        <source>One notch in neutral: does the charge lamp go out above 600?</source>
        <translation>Eine Stufe im Leerlauf: geht die Ladelampe über 600 aus?</translation>
    </message>
    <message>
        <source>Only seen free is free.</source>
        <translation>Nur frei gesehen ist frei.</translation>
    </message>
    <message>
        <source>Release in full</source>
        <translation>Ganz lösen</translation>
    </message>
    <message>
        <source>Released on the needle is not released at the wheel, in frost.</source>
        <translation>Am Zeiger gelöst ist bei Frost nicht am Rad gelöst.</translation>
    </message>
    <message>
        <source>The charge lamp stays lit</source>
        <translation>Die Ladelampe bleibt an</translation>
    </message>
    <message>
        <source>The gauge at the engine has no wire to the lamp: what it shows decides.</source>
        <translation>Die Uhr am Motor hat keinen Draht zur Lampe: was sie zeigt, entscheidet.</translation>
    </message>
    <message>
        <source>The lamp behind you and the relays live on this battery: for an hour, not for a day.</source>
        <translation>Die Lampe hinter Ihnen und die Relais leben von dieser Batterie: eine Stunde, keinen Tag.</translation>
    </message>
    <message>
        <source>Those of car 2 on side 1 are frozen on: in cab 1 a full application, hard, and release again</source>
        <translation>Die von Wagen 2 auf Seite 1 sind angefroren: in Führerstand 1 eine Vollbremsung, kräftig, und wieder lösen</translation>
    </message>
    <message>
        <source>Unit 3 stands at Yethrick Halt with both engines running, both handbrakes on, in cab 1; you are ready to leave, and the lamp of engine 2 is dark. It was lit when you came in. Find out, say whether you go on and how, and take the unit on towards Drummelow Road if it goes.</source>
        <translation>Zug 3 steht in Yethrick Halt mit beiden Motoren laufend, beide Handbremsen fest, in Führerstand 1; Sie sind abfahrbereit, und die Lampe von Motor 2 ist dunkel. Sie leuchtete, als Sie hereinkamen. Finden Sie heraus, warum, sagen Sie, ob und wie Sie weiterfahren, und fahren Sie in Richtung Drummelow Road, wenn der Zug fährt.</translation>
    </message>
    <message>
        <source>Unit 3 stands at Yethrick Halt with both engines running, held by the brake, in cab 1. Take it on to Drummelow Road when signal and guard allow, and from there towards Tolvenby as far as the unit can go in safety: no other one can come. What happens on the way is yours to judge.</source>
        <translation>Zug 3 steht in Yethrick Halt mit beiden Motoren laufend, von der Bremse gehalten, in Führerstand 1. Fahren Sie nach Drummelow Road, wenn Signal und Schaffner es erlauben, und von dort in Richtung Tolvenby, so weit der Zug sicher fahren kann: ein anderer kann nicht kommen. Was unterwegs geschieht, haben Sie zu beurteilen.</translation>
    </message>
    <message>
        <source>Unit 3 stands at Yethrick Halt with both engines running, held by the brake, in cab 1. Take it up the bank of 1 in 80 to Drummelow Road when signal and guard allow. What happens on the way is yours to judge; behind the bank stands a steeper one of 1 in 50, and no other unit can come to fetch you.</source>
        <translation>Zug 3 steht in Yethrick Halt mit beiden Motoren laufend, von der Bremse gehalten, in Führerstand 1. Fahren Sie ihn die Rampe von 1 zu 80 hinauf nach Drummelow Road, wenn Signal und Schaffner es erlauben. Was unterwegs geschieht, haben Sie zu beurteilen; hinter der Rampe kommt eine steilere von 1 zu 50, und kein anderer Zug kann Sie holen kommen.</translation>
    </message>
    <message>
        <source>Volts with revs, belts, breakers; and the habit of stopping both engines that must not be followed.</source>
        <translation>Volt mit Drehzahl, Riemen, Automaten; und die Gewohnheit, beide Motoren abzustellen, der man nicht folgen darf.</translation>
    </message>
    <message>
        <source>What burns now burns the next start.</source>
        <translation>Was jetzt brennt, verbrennt den nächsten Start.</translation>
    </message>
    <message>
        <source>What presses breaks the ice; what pulls drags the wheel flat.</source>
        <translation>Was drückt, bricht das Eis; was zieht, schleift das Rad flach.</translation>
    </message>
    <message>
        <source>Whoever follows the habit and stops both stays here.</source>
        <translation>Wer der Gewohnheit folgt und beide abstellt, bleibt hier.</translation>
    </message>
    <message>
        <source>Whoever stables her tonight should know.</source>
        <translation>Wer ihn heute Abend abstellt, soll es wissen.</translation>
    </message>
    <message>
        <source>With oil on the gauge it goes on; who drives it next has to know that this lamp says nothing.</source>
        <translation>Mit Öl an der Uhr fährt er weiter; wer als Nächster fährt, muss wissen, dass diese Lampe nichts sagt.</translation>
    </message>
    <message>
        <source>You have brought unit 3 into Tolvenby Junction and stand at the mark, both handbrakes on, both engines ticking over; saloon lights and heater have been on all the way. You leave again in half an hour; by habit both engines are stopped here for so long. The charge lamp has been lit for a while. Find out, and say how you go on.</source>
        <translation>Sie haben Zug 3 nach Tolvenby Junction gebracht und stehen an der Tafel, beide Handbremsen fest, beide Motoren im Leerlauf; Abteillicht und Heizung waren den ganzen Weg an. In einer halben Stunde fahren Sie wieder; gewöhnlich werden hier für so lange beide Motoren abgestellt. Die Ladelampe leuchtet seit einer Weile. Finden Sie heraus, warum, und sagen Sie, wie Sie weiterfahren.</translation>
    </message>
    <message>
        <source>Your colleague has prepared unit 3 in the siding at 6 degrees below and proved device and bell; both engines run, cab 1&apos;s handbrake is on, cab 2&apos;s off, the brake is released. Take the unit out when signal and guard allow: see that everything that has to move does, and try the brake early.</source>
        <translation>Ihr Kollege hat Zug 3 im Abstellgleis bei 6 Grad unter null vorbereitet und Totmann und Klingel erprobt; beide Motoren laufen, die Handbremse von Führerstand 1 ist fest, die von Führerstand 2 los, die Bremse gelöst. Fahren Sie den Zug aus, wenn Signal und Schaffner es erlauben: sehen Sie, dass sich alles bewegt, was sich bewegen muss, und versuchen Sie die Bremse früh.</translation>
    </message>
    <message>
        <source>bulb, switch or oil</source>
        <translation>Birne, Schalter oder Öl</translation>
    </message>
    <message>
        <source>early brake test</source>
        <translation>frühe Bremsprobe</translation>
    </message>
    <message>
        <source>frozen blocks</source>
        <translation>angefrorene Klötze</translation>
    </message>
    <message>
        <source>frozen shift air</source>
        <translation>eingefrorene Schaltluft</translation>
    </message>
    <message>
        <source>lamp test</source>
        <translation>Lampenprobe</translation>
    </message>
    <message>
        <source>not stopping the last engine</source>
        <translation>den letzten Motor nicht abstellen</translation>
    </message>
    <message>
        <source>reading the charge lamp</source>
        <translation>die Ladelampe lesen</translation>
    </message>
    <message>
        <source>sparing the battery</source>
        <translation>die Batterie schonen</translation>
    </message>
    <message>
        <source>tachometer and oil gauge</source>
        <translation>Drehzahlmesser und Öluhr</translation>
    </message>
</context>
<context>
    <name>Sections</name>
    <message>
        <source>Time taken</source>
        <translation>Gebrauchte Zeit</translation>
    </message>
    <message>
        <source>In the time allowed</source>
        <translation>In der erlaubten Zeit</translation>
    </message>
    <message>
        <source>Over the time allowed</source>
        <translation>Über der erlaubten Zeit</translation>
    </message>
    <message>
        <source>%1 were allowed</source>
        <translation>%1 waren erlaubt</translation>
    </message>
    <message>
        <source>The run as a whole</source>
        <translation>Die Fahrt im Ganzen</translation>
    </message>
    <message>
        <source>It came to what was asked</source>
        <translation>Es kam zu dem, was verlangt war</translation>
    </message>
    <message>
        <source>It did not come to what was asked</source>
        <translation>Es kam nicht zu dem, was verlangt war</translation>
    </message>
    <message>
        <source>Points enough</source>
        <translation>Punkte genug</translation>
    </message>
    <message>
        <source>Too few points</source>
        <translation>Zu wenige Punkte</translation>
    </message>
    <message>
        <source>after a prompt: earns nothing</source>
        <translation>nach einem Hinweis: bringt nichts</translation>
    </message>
    <message>
        <source>just within the tolerance: %1</source>
        <translation>noch eben in der Toleranz: %1</translation>
    </message>
    <message>
        <source>way taken: %1</source>
        <translation>gewählter Weg: %1</translation>
    </message>
    <message>
        <source>Well done</source>
        <translation>Gut gemacht</translation>
    </message>
    <message>
        <source>Does not count</source>
        <translation>Zählt nicht</translation>
    </message>
    <message>
        <source>Not exercised</source>
        <translation>Nicht geübt</translation>
    </message>
    <message>
        <source>not judged</source>
        <translation>nicht beurteilt</translation>
    </message>
    <message>
        <source>was %1; not judged</source>
        <translation>war: %1; nicht beurteilt</translation>
    </message>
    <message>
        <source>was %1, judged %2, looked %3 s</source>
        <translation>war: %1, beurteilt: %2, %3 s angesehen</translation>
    </message>
    <message>
        <source>; not looked at for long enough</source>
        <translation>; nicht lange genug angesehen</translation>
    </message>
    <message>
        <source>; changed</source>
        <translation>; geändert</translation>
    </message>
    <message>
        <source>Judgements to look at again</source>
        <translation>Urteile, die noch einmal anzusehen sind</translation>
    </message>
    <message>
        <source>Judged as it was</source>
        <translation>Beurteilt, wie es war</translation>
    </message>
    <message>
        <source>Taken again</source>
        <translation>Noch einmal aufgenommen</translation>
    </message>
    <message>
        <source>Time passed at another pace</source>
        <translation>Zeit verging in anderem Tempo</translation>
    </message>
    <message>
        <source>The instructor stepped in; only what came before counts</source>
        <translation>Der Ausbilder griff ein; es zählt nur, was davor war</translation>
    </message>
    <message>
        <source>Remark of the instructor</source>
        <translation>Bemerkung des Ausbilders</translation>
    </message>
</context>
<context>
    <name>Seen</name>
    <message>
        <source>the control relay does not pull, with %1 V</source>
        <translation>das Steuerrelais zieht nicht an, bei %1 V</translation>
    </message>
    <message>
        <source>the control relay is out: %1 V, and %2 V pull it in</source>
        <translation>das Steuerrelais ist abgefallen: %1 V, und %2 V ziehen es an</translation>
    </message>
    <message>
        <source>the control relay is in, with %1 V</source>
        <translation>das Steuerrelais ist angezogen, bei %1 V</translation>
    </message>
    <message>
        <source>the air switch has made, with %1 psi</source>
        <translation>der Luftschalter hat geschlossen, bei %1 psi</translation>
    </message>
    <message>
        <source>control air is enough: %1 psi</source>
        <translation>Steuerluft reicht: %1 psi</translation>
    </message>
    <message>
        <source>the air switch does not make, with %1 psi</source>
        <translation>der Luftschalter schließt nicht, bei %1 psi</translation>
    </message>
    <message>
        <source>not enough control air: %1 psi, and %2 psi are needed</source>
        <translation>nicht genug Steuerluft: %1 psi, und %2 psi sind nötig</translation>
    </message>
    <message>
        <source>engine %1 runs with %2 psi of oil</source>
        <translation>Motor %1 läuft mit %2 psi Öldruck</translation>
    </message>
    <message>
        <source>engine %1 does not run</source>
        <translation>Motor %1 läuft nicht</translation>
    </message>
    <message>
        <source>engine %1 runs, but its oil switch says no pressure: %2 psi</source>
        <translation>Motor %1 läuft, aber sein Ölschalter meldet keinen Druck: %2 psi</translation>
    </message>
    <message>
        <source>final drive %1 is in mesh that way</source>
        <translation>Achsgetriebe %1 ist in dieser Richtung im Eingriff</translation>
    </message>
    <message>
        <source>the switch of final drive %1 makes, though it is not in mesh</source>
        <translation>der Schalter von Achsgetriebe %1 schließt, obwohl es nicht im Eingriff ist</translation>
    </message>
    <message>
        <source>final drive %1: no direction is asked for</source>
        <translation>Achsgetriebe %1: keine Richtung verlangt</translation>
    </message>
    <message>
        <source>final drive %1 is in mesh, but its switch does not make</source>
        <translation>Achsgetriebe %1 ist im Eingriff, aber sein Schalter schließt nicht</translation>
    </message>
    <message>
        <source>final drive %1 is pinned, and by-passed</source>
        <translation>Achsgetriebe %1 ist gesperrt und überbrückt</translation>
    </message>
    <message>
        <source>final drive %1 is pinned; no direction is asked for</source>
        <translation>Achsgetriebe %1 ist gesperrt; keine Richtung verlangt</translation>
    </message>
    <message>
        <source>final drive %1 is in mesh the other way</source>
        <translation>Achsgetriebe %1 ist in der anderen Richtung im Eingriff</translation>
    </message>
    <message>
        <source>final drive %1 stands tooth on tooth</source>
        <translation>Achsgetriebe %1 steht Zahn auf Zahn</translation>
    </message>
    <message>
        <source>final drive %1: its teeth pass too fast to drop in</source>
        <translation>Achsgetriebe %1: seine Zähne laufen zu schnell vorbei zum Einfallen</translation>
    </message>
    <message>
        <source>final drive %1 is going in</source>
        <translation>Achsgetriebe %1 fällt ein</translation>
    </message>
    <message>
        <source>final drive %1 is pinned</source>
        <translation>Achsgetriebe %1 ist gesperrt</translation>
    </message>
    <message>
        <source>final drive %1: its shift air is too low, %2 psi</source>
        <translation>Achsgetriebe %1: seine Schaltluft ist zu niedrig, %2 psi</translation>
    </message>
    <message>
        <source>final drive %1: its sleeve is on its way</source>
        <translation>Achsgetriebe %1: seine Muffe ist unterwegs</translation>
    </message>
    <message>
        <source>final drive %1: its sleeve stands in the middle</source>
        <translation>Achsgetriebe %1: seine Muffe steht in der Mitte</translation>
    </message>
    <message>
        <source>shows %1</source>
        <translation>zeigt %1</translation>
    </message>
    <message>
        <source>%1: %2 inHg</source>
        <translation>%1: %2 inHg</translation>
    </message>
    <message>
        <source>Somebody answers: %1.</source>
        <translation>Jemand antwortet: %1.</translation>
    </message>
    <message>
        <source>The guard gives %1.</source>
        <translation>Der Schaffner gibt %1.</translation>
    </message>
    <message>
        <source>Signal %1 is in sight and shows %2.</source>
        <translation>Signal %1 ist in Sicht und zeigt %2.</translation>
    </message>
    <message>
        <source>Signal %1 shows %2.</source>
        <translation>Signal %1 zeigt %2.</translation>
    </message>
    <message>
        <source>The %1 is lit.</source>
        <translation>Die %1 leuchtet.</translation>
    </message>
    <message>
        <source>The %1 goes out.</source>
        <translation>Die %1 erlischt.</translation>
    </message>
    <message>
        <source>Fire at engine %1.</source>
        <translation>Feuer an Motor %1.</translation>
    </message>
    <message>
        <source>Engine %1 turns.</source>
        <translation>Motor %1 dreht.</translation>
    </message>
    <message>
        <source>Engine %1 stops.</source>
        <translation>Motor %1 bleibt stehen.</translation>
    </message>
    <message>
        <source>Engine %1 runs.</source>
        <translation>Motor %1 läuft.</translation>
    </message>
    <message>
        <source>The white smoke of engine %1 clears.</source>
        <translation>Der weiße Rauch von Motor %1 verzieht sich.</translation>
    </message>
    <message>
        <source>The oil pressure of engine %1</source>
        <translation>Der Öldruck von Motor %1</translation>
    </message>
    <message>
        <source>%1 reaches %2 %3.</source>
        <translation>%1 erreicht %2 %3.</translation>
    </message>
    <message>
        <source>%1 falls to %2 %3.</source>
        <translation>%1 fällt auf %2 %3.</translation>
    </message>
    <message>
        <source>%1 stands at %2 %3.</source>
        <translation>%1 steht bei %2 %3.</translation>
    </message>
    <message>
        <source>fire lamp</source>
        <translation>Brandlampe</translation>
    </message>
    <message>
        <source>lamp of engine 1</source>
        <translation>Lampe von Motor 1</translation>
    </message>
    <message>
        <source>lamp of engine 2</source>
        <translation>Lampe von Motor 2</translation>
    </message>
    <message>
        <source>air lamp</source>
        <translation>Luftlampe</translation>
    </message>
    <message>
        <source>device lamp</source>
        <translation>Totmannlampe</translation>
    </message>
    <message>
        <source>charge lamp</source>
        <translation>Ladelampe</translation>
    </message>
    <message>
        <source>clear</source>
        <translation>frei</translation>
    </message>
    <message>
        <source>danger</source>
        <translation>Halt</translation>
    </message>
    <message>
        <source>Control air</source>
        <translation>Steuerluft</translation>
    </message>
    <message>
        <source>The train pipe</source>
        <translation>Die Zugleitung</translation>
    </message>
    <message>
        <source>The release pipe</source>
        <translation>Die Löseleitung</translation>
    </message>
    <message>
        <source>25 or near it</source>
        <translation>25 oder nahe daran</translation>
    </message>
    <message>
        <source>I read the rear gauge to you</source>
        <translation>ich lese Ihnen die hintere Uhr vor</translation>
    </message>
    <message>
        <source>a belt is frayed</source>
        <translation>ein Riemen ist ausgefranst</translation>
    </message>
    <message>
        <source>a black mark where it blows at a joint</source>
        <translation>eine schwarze Spur, wo es an einer Fuge bläst</translation>
    </message>
    <message>
        <source>a blade is cracked</source>
        <translation>ein Flügel ist gerissen</translation>
    </message>
    <message>
        <source>a block hangs free</source>
        <translation>ein Klotz hängt lose</translation>
    </message>
    <message>
        <source>a block is missing</source>
        <translation>ein Klotz fehlt</translation>
    </message>
    <message>
        <source>a block is worn thin</source>
        <translation>ein Klotz ist dünn abgenutzt</translation>
    </message>
    <message>
        <source>a board hangs at this end: not to be moved</source>
        <translation>an diesem Ende hängt eine Tafel: nicht bewegen</translation>
    </message>
    <message>
        <source>a board hangs on this side: not to be moved</source>
        <translation>an dieser Seite hängt eine Tafel: nicht bewegen</translation>
    </message>
    <message>
        <source>a bolt of the shaft&apos;s flange is gone</source>
        <translation>ein Bolzen am Wellenflansch fehlt</translation>
    </message>
    <message>
        <source>a bottle is pulled once</source>
        <translation>eine Flasche wird nur einmal gezogen</translation>
    </message>
    <message>
        <source>a breaker is held in with tape</source>
        <translation>ein Automat ist mit Klebeband festgehalten</translation>
    </message>
    <message>
        <source>a burnt smell, paint brown over first gear</source>
        <translation>Brandgeruch, Lack braun über dem ersten Gang</translation>
    </message>
    <message>
        <source>a burnt smell, paint brown over second gear</source>
        <translation>Brandgeruch, Lack braun über dem zweiten Gang</translation>
    </message>
    <message>
        <source>a burnt smell, paint brown over the clutch</source>
        <translation>Brandgeruch, Lack braun über der Kupplung</translation>
    </message>
    <message>
        <source>a burnt smell, paint brown over third gear</source>
        <translation>Brandgeruch, Lack braun über dem dritten Gang</translation>
    </message>
    <message>
        <source>a cap is missing, socket dry</source>
        <translation>ein Deckel fehlt, die Dose ist trocken</translation>
    </message>
    <message>
        <source>a cap stands open, water in the socket</source>
        <translation>ein Deckel steht offen, Wasser in der Dose</translation>
    </message>
    <message>
        <source>a clamp is gone</source>
        <translation>eine Schelle fehlt</translation>
    </message>
    <message>
        <source>a clip is gone, the pipe rubs</source>
        <translation>eine Klammer fehlt, das Rohr scheuert</translation>
    </message>
    <message>
        <source>a cotter is gone</source>
        <translation>ein Splint fehlt</translation>
    </message>
    <message>
        <source>a crack across the view</source>
        <translation>ein Riss quer durch die Sicht</translation>
    </message>
    <message>
        <source>a crack runs across the driver&apos;s view</source>
        <translation>ein Riss läuft quer durch die Sicht des Fahrers</translation>
    </message>
    <message>
        <source>a desk is alive</source>
        <translation>ein Pult ist besetzt</translation>
    </message>
    <message>
        <source>a door handle stands out</source>
        <translation>ein Türgriff steht heraus</translation>
    </message>
    <message>
        <source>a door is on its first catch only</source>
        <translation>eine Tür ist nur auf der ersten Raste</translation>
    </message>
    <message>
        <source>a door stands open</source>
        <translation>eine Tür steht offen</translation>
    </message>
    <message>
        <source>a door stands open on side 1</source>
        <translation>auf Seite 1 steht eine Tür offen</translation>
    </message>
    <message>
        <source>a door stands open on side 2, towards the other line</source>
        <translation>auf Seite 2, zum Nachbargleis, steht eine Tür offen</translation>
    </message>
    <message>
        <source>a drain cock is cracked</source>
        <translation>ein Ablasshahn ist gerissen</translation>
    </message>
    <message>
        <source>a drain cock stands open and hisses low down</source>
        <translation>ein Ablasshahn steht offen und zischt tief</translation>
    </message>
    <message>
        <source>a drain drips</source>
        <translation>ein Ablasshahn tropft</translation>
    </message>
    <message>
        <source>a film of rust after the rain</source>
        <translation>ein Hauch Rost nach dem Regen</translation>
    </message>
    <message>
        <source>a final drive in use is not in mesh that way</source>
        <translation>ein benutztes Achsgetriebe ist in dieser Richtung nicht im Eingriff</translation>
    </message>
    <message>
        <source>a fitter has his arms in the engine</source>
        <translation>ein Schlosser hat die Arme im Motor</translation>
    </message>
    <message>
        <source>a flag is torn</source>
        <translation>eine Flagge ist zerrissen</translation>
    </message>
    <message>
        <source>a flat as long as a thumb</source>
        <translation>eine Flachstelle, lang wie ein Daumen</translation>
    </message>
    <message>
        <source>a fresh black pool: oil</source>
        <translation>eine frische schwarze Lache: Öl</translation>
    </message>
    <message>
        <source>a fresh clear pool: rain</source>
        <translation>eine frische klare Lache: Regen</translation>
    </message>
    <message>
        <source>a fresh green pool: coolant</source>
        <translation>eine frische grüne Lache: Kühlwasser</translation>
    </message>
    <message>
        <source>a fresh pool with a rainbow on it: fuel</source>
        <translation>eine frische schillernde Lache: Kraftstoff</translation>
    </message>
    <message>
        <source>a gear is selected</source>
        <translation>ein Gang ist gewählt</translation>
    </message>
    <message>
        <source>a gear selector is not in neutral</source>
        <translation>ein Gangwähler steht nicht auf neutral</translation>
    </message>
    <message>
        <source>a glass is cracked</source>
        <translation>ein Glas ist gesprungen</translation>
    </message>
    <message>
        <source>a glass is cracked, the lamp burns</source>
        <translation>ein Glas ist gesprungen, die Lampe brennt</translation>
    </message>
    <message>
        <source>a handle is pulled</source>
        <translation>ein Griff ist gezogen</translation>
    </message>
    <message>
        <source>a heat line is broken</source>
        <translation>eine Meldeleitung ist gebrochen</translation>
    </message>
    <message>
        <source>a heat line warns</source>
        <translation>eine Meldeleitung warnt</translation>
    </message>
    <message>
        <source>a hose hangs down</source>
        <translation>ein Schlauch hängt herunter</translation>
    </message>
    <message>
        <source>a hose hangs free of its dummy</source>
        <translation>ein Schlauch hängt neben seiner Blindkupplung</translation>
    </message>
    <message>
        <source>a hose is chafed through its canvas</source>
        <translation>ein Schlauch ist bis aufs Gewebe durchgescheuert</translation>
    </message>
    <message>
        <source>a hose is split at the clip</source>
        <translation>ein Schlauch ist an der Schelle gerissen</translation>
    </message>
    <message>
        <source>a hose weeps</source>
        <translation>ein Schlauch schwitzt</translation>
    </message>
    <message>
        <source>a lump of metal on the tread</source>
        <translation>ein Klumpen Metall auf der Lauffläche</translation>
    </message>
    <message>
        <source>a new hose beside an old one, both dry</source>
        <translation>ein neuer Schlauch neben einem alten, beide trocken</translation>
    </message>
    <message>
        <source>a new seal of another colour, entered and signed</source>
        <translation>eine neue Plombe in anderer Farbe, eingetragen und unterschrieben</translation>
    </message>
    <message>
        <source>a padlock is through it</source>
        <translation>ein Vorhängeschloss steckt darin</translation>
    </message>
    <message>
        <source>a pin is working out of its hanger</source>
        <translation>ein Bolzen wandert aus seinem Gehänge</translation>
    </message>
    <message>
        <source>a plug of ice in the drain</source>
        <translation>ein Pfropfen Eis im Ablass</translation>
    </message>
    <message>
        <source>a red flag hangs at this end</source>
        <translation>an diesem Ende hängt eine rote Flagge</translation>
    </message>
    <message>
        <source>a red flag hangs on this side</source>
        <translation>an dieser Seite hängt eine rote Flagge</translation>
    </message>
    <message>
        <source>a red hand lamp hangs on this side</source>
        <translation>an dieser Seite hängt eine rote Handlampe</translation>
    </message>
    <message>
        <source>a red hand lamp stands on the buffer beam</source>
        <translation>auf der Pufferbohle steht eine rote Handlampe</translation>
    </message>
    <message>
        <source>a repair is entered and not signed</source>
        <translation>eine Reparatur ist eingetragen und nicht unterschrieben</translation>
    </message>
    <message>
        <source>a restriction of speed stands for this working</source>
        <translation>für diesen Umlauf gilt eine Langsamfahrstelle</translation>
    </message>
    <message>
        <source>a saloon window is cracked</source>
        <translation>ein Fenster im Abteil ist gesprungen</translation>
    </message>
    <message>
        <source>a scotch under a wheel</source>
        <translation>ein Hemmschuh unter einem Rad</translation>
    </message>
    <message>
        <source>a seal is broken, the handle is up</source>
        <translation>eine Plombe ist gebrochen, der Griff ist oben</translation>
    </message>
    <message>
        <source>a seam of the release reservoir has opened</source>
        <translation>eine Naht des Lösebehälters ist aufgegangen</translation>
    </message>
    <message>
        <source>a second scotch, forgotten</source>
        <translation>ein zweiter Hemmschuh, vergessen</translation>
    </message>
    <message>
        <source>a skirt panel hangs by one latch</source>
        <translation>eine Schürze hängt an einem Riegel</translation>
    </message>
    <message>
        <source>a small chip at the edge, entered and signed</source>
        <translation>ein kleiner Splitter am Rand, eingetragen und unterschrieben</translation>
    </message>
    <message>
        <source>a smell of fumes</source>
        <translation>ein Geruch nach Abgas</translation>
    </message>
    <message>
        <source>a step gives under the foot</source>
        <translation>ein Tritt gibt unter dem Fuß nach</translation>
    </message>
    <message>
        <source>a strap is gone, the hose hangs low</source>
        <translation>ein Riemen fehlt, der Schlauch hängt tief</translation>
    </message>
    <message>
        <source>a tank strap is loose</source>
        <translation>ein Tankband ist lose</translation>
    </message>
    <message>
        <source>a thick shiny spot on the tread</source>
        <translation>eine dicke blanke Stelle auf der Lauffläche</translation>
    </message>
    <message>
        <source>a tyre is blued</source>
        <translation>ein Radreifen ist blau angelaufen</translation>
    </message>
    <message>
        <source>a vacuum pipe is chafed through</source>
        <translation>eine Vakuumleitung ist durchgescheuert</translation>
    </message>
    <message>
        <source>a white crust on both terminals</source>
        <translation>eine weiße Kruste auf beiden Polen</translation>
    </message>
    <message>
        <source>agrees with the other cab</source>
        <translation>stimmt mit dem anderen Führerstand überein</translation>
    </message>
    <message>
        <source>all blocks are off</source>
        <translation>alle Klötze sind los</translation>
    </message>
    <message>
        <source>all blocks are on</source>
        <translation>alle Klötze liegen an</translation>
    </message>
    <message>
        <source>all in</source>
        <translation>alle ein</translation>
    </message>
    <message>
        <source>all in, one is warm to the hand: something is left on</source>
        <translation>alle ein, einer ist handwarm: etwas ist angelassen</translation>
    </message>
    <message>
        <source>all light under the test</source>
        <translation>in der Probe leuchten alle</translation>
    </message>
    <message>
        <source>all right, I am clear</source>
        <translation>in Ordnung, ich bin weg</translation>
    </message>
    <message>
        <source>an air pipe is cracked at its joint</source>
        <translation>eine Luftleitung ist an der Verbindung gerissen</translation>
    </message>
    <message>
        <source>an empty key slot</source>
        <translation>ein leerer Schlüsselschlitz</translation>
    </message>
    <message>
        <source>an entry is open, not for this working</source>
        <translation>ein Eintrag ist offen, nicht für diesen Umlauf</translation>
    </message>
    <message>
        <source>an entry of yesterday is open</source>
        <translation>ein Eintrag von gestern ist offen</translation>
    </message>
    <message>
        <source>an old dry stain</source>
        <translation>ein alter trockener Fleck</translation>
    </message>
    <message>
        <source>as usual</source>
        <translation>wie gewohnt</translation>
    </message>
    <message>
        <source>at cab</source>
        <translation>auf Pult</translation>
    </message>
    <message>
        <source>at ground</source>
        <translation>auf Boden</translation>
    </message>
    <message>
        <source>at off</source>
        <translation>auf Aus</translation>
    </message>
    <message>
        <source>at off, with a padlock through it</source>
        <translation>auf Aus, mit einem Vorhängeschloss darin</translation>
    </message>
    <message>
        <source>at the rear cab</source>
        <translation>im hinteren Führerstand</translation>
    </message>
    <message>
        <source>below the lower mark</source>
        <translation>unter der unteren Marke</translation>
    </message>
    <message>
        <source>below the mark</source>
        <translation>unter der Marke</translation>
    </message>
    <message>
        <source>bent long ago, firm and painted over</source>
        <translation>vor langer Zeit verbogen, fest und überstrichen</translation>
    </message>
    <message>
        <source>bent towards the rail</source>
        <translation>zur Schiene hin verbogen</translation>
    </message>
    <message>
        <source>between the marks, clean</source>
        <translation>zwischen den Marken, sauber</translation>
    </message>
    <message>
        <source>black, as it always is</source>
        <translation>schwarz, wie immer</translation>
    </message>
    <message>
        <source>blade on, arm sprung</source>
        <translation>Wischblatt dran, Arm gefedert</translation>
    </message>
    <message>
        <source>blank</source>
        <translation>leer</translation>
    </message>
    <message>
        <source>both gear selectors are in neutral</source>
        <translation>beide Gangwähler stehen auf neutral</translation>
    </message>
    <message>
        <source>both on their dummies, caps tight</source>
        <translation>beide auf ihren Blindkupplungen, Kappen fest</translation>
    </message>
    <message>
        <source>both trumpets are plugged</source>
        <translation>beide Trichter sind verstopft</translation>
    </message>
    <message>
        <source>both vacuum hoses coupled, straps on</source>
        <translation>beide Vakuumschläuche gekuppelt, Riemen dran</translation>
    </message>
    <message>
        <source>brown varnish on the casing: it has boiled</source>
        <translation>brauner Lack am Gehäuse: sie hat gekocht</translation>
    </message>
    <message>
        <source>brown, oily water</source>
        <translation>braunes, öliges Wasser</translation>
    </message>
    <message>
        <source>burn when switched on</source>
        <translation>brennen, wenn eingeschaltet</translation>
    </message>
    <message>
        <source>caps shut</source>
        <translation>Kappen zu</translation>
    </message>
    <message>
        <source>clamps on, no black</source>
        <translation>Schellen dran, kein Schwarz</translation>
    </message>
    <message>
        <source>clean and whole</source>
        <translation>sauber und ganz</translation>
    </message>
    <message>
        <source>clean, number whole</source>
        <translation>sauber, Nummer ganz</translation>
    </message>
    <message>
        <source>clean, tight</source>
        <translation>sauber, fest</translation>
    </message>
    <message>
        <source>clear of the rail, bolts tight</source>
        <translation>frei von der Schiene, Bolzen fest</translation>
    </message>
    <message>
        <source>clipped, silent</source>
        <translation>angeklammert, still</translation>
    </message>
    <message>
        <source>closed</source>
        <translation>geschlossen</translation>
    </message>
    <message>
        <source>closed, pin in</source>
        <translation>geschlossen, Bolzen drin</translation>
    </message>
    <message>
        <source>cock open to the device, seal whole</source>
        <translation>Hahn zum Totmann offen, Plombe ganz</translation>
    </message>
    <message>
        <source>control air is enough</source>
        <translation>Steuerluft reicht</translation>
    </message>
    <message>
        <source>coupled, silent</source>
        <translation>gekuppelt, still</translation>
    </message>
    <message>
        <source>damp inside</source>
        <translation>innen feucht</translation>
    </message>
    <message>
        <source>dark</source>
        <translation>dunkel</translation>
    </message>
    <message>
        <source>dead button</source>
        <translation>toter Knopf</translation>
    </message>
    <message>
        <source>dented, latched</source>
        <translation>verbeult, verriegelt</translation>
    </message>
    <message>
        <source>desk lamps are looked at under the lamp test</source>
        <translation>Pultlampen werden unter der Lampenprobe angesehen</translation>
    </message>
    <message>
        <source>does not lock</source>
        <translation>schließt nicht ab</translation>
    </message>
    <message>
        <source>does not move</source>
        <translation>bewegt sich nicht</translation>
    </message>
    <message>
        <source>does not read the same as the other cab</source>
        <translation>zeigt nicht dasselbe wie der andere Führerstand</translation>
    </message>
    <message>
        <source>does not stir when tapped</source>
        <translation>rührt sich beim Klopfen nicht</translation>
    </message>
    <message>
        <source>drops of water in the bowl</source>
        <translation>Wassertropfen im Schauglas</translation>
    </message>
    <message>
        <source>dry</source>
        <translation>trocken</translation>
    </message>
    <message>
        <source>dry and clean</source>
        <translation>trocken und sauber</translation>
    </message>
    <message>
        <source>dry, breather clear</source>
        <translation>trocken, Entlüfter frei</translation>
    </message>
    <message>
        <source>dry, but moves when pulled</source>
        <translation>trocken, bewegt sich aber beim Ziehen</translation>
    </message>
    <message>
        <source>dry, firm</source>
        <translation>trocken, fest</translation>
    </message>
    <message>
        <source>dusty and dry</source>
        <translation>staubig und trocken</translation>
    </message>
    <message>
        <source>each final drive in use is in mesh that way</source>
        <translation>jedes benutzte Achsgetriebe ist in dieser Richtung im Eingriff</translation>
    </message>
    <message>
        <source>feet show beneath the skirt</source>
        <translation>unter der Schürze sind Füße zu sehen</translation>
    </message>
    <message>
        <source>flat</source>
        <translation>angelegt</translation>
    </message>
    <message>
        <source>fogged</source>
        <translation>beschlagen</translation>
    </message>
    <message>
        <source>frozen to the glass</source>
        <translation>am Glas festgefroren</translation>
    </message>
    <message>
        <source>gauge over a quarter</source>
        <translation>Anzeige über einem Viertel</translation>
    </message>
    <message>
        <source>gear neutral, throttle shut, reverser off</source>
        <translation>Gang neutral, Fahrschalter zu, Richtungshebel aus</translation>
    </message>
    <message>
        <source>glass whole, needles at rest where they should be</source>
        <translation>Glas ganz, Zeiger in Ruhe, wo sie sein sollen</translation>
    </message>
    <message>
        <source>glasses whole</source>
        <translation>Gläser ganz</translation>
    </message>
    <message>
        <source>grease dry, paint sound</source>
        <translation>Fett trocken, Lack gut</translation>
    </message>
    <message>
        <source>grease weeps from the cover</source>
        <translation>Fett schwitzt aus dem Deckel</translation>
    </message>
    <message>
        <source>guard whole, all bolts in</source>
        <translation>Schutz ganz, alle Bolzen drin</translation>
    </message>
    <message>
        <source>half out of its socket</source>
        <translation>halb aus der Dose</translation>
    </message>
    <message>
        <source>handles up, sealed</source>
        <translation>Griffe oben, verplombt</translation>
    </message>
    <message>
        <source>hangs by one bolt above the rail</source>
        <translation>hängt an einem Bolzen über der Schiene</translation>
    </message>
    <message>
        <source>hangs without its strap</source>
        <translation>hängt ohne seinen Riemen</translation>
    </message>
    <message>
        <source>hard on, pawl in, chain tight</source>
        <translation>fest, Klinke drin, Kette straff</translation>
    </message>
    <message>
        <source>home</source>
        <translation>in Grundstellung</translation>
    </message>
    <message>
        <source>home, lever over</source>
        <translation>fest gesteckt, Hebel zu</translation>
    </message>
    <message>
        <source>hooked up, pin in</source>
        <translation>eingehängt, Bolzen drin</translation>
    </message>
    <message>
        <source>hung up</source>
        <translation>aufgehängt</translation>
    </message>
    <message>
        <source>ice on the steps</source>
        <translation>Eis auf den Tritten</translation>
    </message>
    <message>
        <source>in its bracket, right side up, glass whole</source>
        <translation>im Halter, aufrecht, Glas ganz</translation>
    </message>
    <message>
        <source>in place, sealed</source>
        <translation>am Platz, verplombt</translation>
    </message>
    <message>
        <source>in their bracket</source>
        <translation>im Halter</translation>
    </message>
    <message>
        <source>it cannot be dipped while it turns</source>
        <translation>gemessen wird nur, wenn er steht</translation>
    </message>
    <message>
        <source>it does not turn</source>
        <translation>er dreht sich nicht</translation>
    </message>
    <message>
        <source>it is not at this place</source>
        <translation>das ist nicht an diesem Ort</translation>
    </message>
    <message>
        <source>it is not here</source>
        <translation>es ist nicht hier</translation>
    </message>
    <message>
        <source>it is not on the unit</source>
        <translation>es ist nicht am Zug</translation>
    </message>
    <message>
        <source>it is not with you</source>
        <translation>Sie haben es nicht bei sich</translation>
    </message>
    <message>
        <source>it is pulled inside and put back outside, at its tell-tale</source>
        <translation>innen wird sie gezogen, außen am Anzeiger zurückgestellt</translation>
    </message>
    <message>
        <source>it is with you</source>
        <translation>Sie haben es bei sich</translation>
    </message>
    <message>
        <source>it lies in the cab and at the booking-on point</source>
        <translation>es liegt im Führerstand und an der Meldestelle</translation>
    </message>
    <message>
        <source>it stays out</source>
        <translation>sie bleibt heraus</translation>
    </message>
    <message>
        <source>it takes a lit lamp</source>
        <translation>es braucht eine brennende Lampe</translation>
    </message>
    <message>
        <source>its air cock is shut</source>
        <translation>sein Lufthahn ist zu</translation>
    </message>
    <message>
        <source>its belt is gone, the fan stands</source>
        <translation>sein Riemen fehlt, der Lüfter steht</translation>
    </message>
    <message>
        <source>its blades are burnt</source>
        <translation>seine Messer sind verbrannt</translation>
    </message>
    <message>
        <source>lamps dark, nothing answers</source>
        <translation>Lampen dunkel, nichts antwortet</translation>
    </message>
    <message>
        <source>latched</source>
        <translation>verriegelt</translation>
    </message>
    <message>
        <source>level, leaves whole</source>
        <translation>waagrecht, Blätter ganz</translation>
    </message>
    <message>
        <source>lid on, no smell</source>
        <translation>Deckel drauf, kein Geruch</translation>
    </message>
    <message>
        <source>milky: water in the oil</source>
        <translation>milchig: Wasser im Öl</translation>
    </message>
    <message>
        <source>no blade on the arm</source>
        <translation>kein Wischblatt am Arm</translation>
    </message>
    <message>
        <source>no board, no flag, no lamp</source>
        <translation>keine Tafel, keine Flagge, keine Lampe</translation>
    </message>
    <message>
        <source>no canister</source>
        <translation>kein Behälter</translation>
    </message>
    <message>
        <source>no click</source>
        <translation>kein Klicken</translation>
    </message>
    <message>
        <source>no desk is alive</source>
        <translation>kein Pult ist besetzt</translation>
    </message>
    <message>
        <source>no gear is selected, or its contact does not make</source>
        <translation>kein Gang gewählt, oder sein Kontakt schließt nicht</translation>
    </message>
    <message>
        <source>no hand is on it</source>
        <translation>keine Hand ist daran</translation>
    </message>
    <message>
        <source>no heat line warns</source>
        <translation>keine Meldeleitung warnt</translation>
    </message>
    <message>
        <source>no hiss and no thump</source>
        <translation>kein Zischen und kein Schlag</translation>
    </message>
    <message>
        <source>no oil pressure, or not running</source>
        <translation>kein Öldruck, oder läuft nicht</translation>
    </message>
    <message>
        <source>no open entries</source>
        <translation>keine offenen Einträge</translation>
    </message>
    <message>
        <source>no other cab has control</source>
        <translation>kein anderer Führerstand ist besetzt</translation>
    </message>
    <message>
        <source>no take-up</source>
        <translation>kein Kraftschluss</translation>
    </message>
    <message>
        <source>no washer in the coupling head</source>
        <translation>kein Dichtring im Kupplungskopf</translation>
    </message>
    <message>
        <source>no: people are still working on it</source>
        <translation>nein: es wird noch daran gearbeitet</translation>
    </message>
    <message>
        <source>nobody</source>
        <translation>niemand</translation>
    </message>
    <message>
        <source>nobody answers</source>
        <translation>niemand antwortet</translation>
    </message>
    <message>
        <source>nobody is there</source>
        <translation>niemand ist da</translation>
    </message>
    <message>
        <source>nobody is working on it, you may have it</source>
        <translation>niemand arbeitet daran, Sie können ihn haben</translation>
    </message>
    <message>
        <source>nobody to be seen along the sides</source>
        <translation>niemand zu sehen, an beiden Seiten</translation>
    </message>
    <message>
        <source>none under the wheels</source>
        <translation>keiner unter den Rädern</translation>
    </message>
    <message>
        <source>not enough control air</source>
        <translation>nicht genug Steuerluft</translation>
    </message>
    <message>
        <source>not from here</source>
        <translation>nicht von hier</translation>
    </message>
    <message>
        <source>not hard on</source>
        <translation>nicht fest</translation>
    </message>
    <message>
        <source>not lit</source>
        <translation>nicht eingeschaltet</translation>
    </message>
    <message>
        <source>not on the dipstick</source>
        <translation>nicht am Messstab</translation>
    </message>
    <message>
        <source>not quite shut, it sucks</source>
        <translation>nicht ganz zu, es saugt</translation>
    </message>
    <message>
        <source>not skipped in assessment</source>
        <translation>in der Prüfung wird nichts übersprungen</translation>
    </message>
    <message>
        <source>not there</source>
        <translation>nicht dort</translation>
    </message>
    <message>
        <source>not to be seen from here</source>
        <translation>von hier nicht zu sehen</translation>
    </message>
    <message>
        <source>not while it moves</source>
        <translation>nicht, solange er sich bewegt</translation>
    </message>
    <message>
        <source>nothing for this working</source>
        <translation>nichts für diesen Umlauf</translation>
    </message>
    <message>
        <source>nothing, and no stir when the switch is worked</source>
        <translation>nichts, und rührt sich beim Schalten nicht</translation>
    </message>
    <message>
        <source>nothing: the switch is open</source>
        <translation>nichts: der Schalter ist offen</translation>
    </message>
    <message>
        <source>off: belts in the open</source>
        <translation>ab: die Riemen liegen frei</translation>
    </message>
    <message>
        <source>oil down the wheel</source>
        <translation>Öl läuft am Rad herunter</translation>
    </message>
    <message>
        <source>oil on the step</source>
        <translation>Öl auf dem Tritt</translation>
    </message>
    <message>
        <source>on my way to the rear</source>
        <translation>auf dem Weg zum hinteren Ende</translation>
    </message>
    <message>
        <source>on one catch</source>
        <translation>auf einer Raste</translation>
    </message>
    <message>
        <source>on the way</source>
        <translation>unterwegs</translation>
    </message>
    <message>
        <source>one clip only</source>
        <translation>nur eine Klemme</translation>
    </message>
    <message>
        <source>one flag only</source>
        <translation>nur eine Flagge</translation>
    </message>
    <message>
        <source>one lamp stays dark</source>
        <translation>eine Lampe bleibt dunkel</translation>
    </message>
    <message>
        <source>open</source>
        <translation>offen</translation>
    </message>
    <message>
        <source>open defects cleared and signed</source>
        <translation>offene Mängel behoben und unterschrieben</translation>
    </message>
    <message>
        <source>opened, things used</source>
        <translation>geöffnet, Teile verbraucht</translation>
    </message>
    <message>
        <source>out of date</source>
        <translation>abgelaufen</translation>
    </message>
    <message>
        <source>out of reach</source>
        <translation>außer Reichweite</translation>
    </message>
    <message>
        <source>packed with leaves and soot</source>
        <translation>voll Laub und Ruß</translation>
    </message>
    <message>
        <source>people are on the line beside the siding</source>
        <translation>Leute sind im Gleis neben dem Abstellgleis</translation>
    </message>
    <message>
        <source>permission given, mind the other line</source>
        <translation>erlaubt, Achtung auf das Nachbargleis</translation>
    </message>
    <message>
        <source>pin and seal are gone</source>
        <translation>Stift und Plombe fehlen</translation>
    </message>
    <message>
        <source>pin and seal in, needle in the green</source>
        <translation>Stift und Plombe drin, Zeiger im Grünen</translation>
    </message>
    <message>
        <source>pin in its keeper, sealed, no oil on the wheel</source>
        <translation>Bolzen im Halter, verplombt, kein Öl am Rad</translation>
    </message>
    <message>
        <source>pins and cotters in, links straight</source>
        <translation>Bolzen und Splinte drin, Gelenke gerade</translation>
    </message>
    <message>
        <source>pulled out on its friction</source>
        <translation>gegen seine Reibung herausgezogen</translation>
    </message>
    <message>
        <source>pulled, the red tell-tale is out</source>
        <translation>gezogen, der rote Anzeiger steht heraus</translation>
    </message>
    <message>
        <source>ready for the bell</source>
        <translation>bereit zur Klingelprobe</translation>
    </message>
    <message>
        <source>red lamps off</source>
        <translation>rote Lampen aus</translation>
    </message>
    <message>
        <source>red lamps on</source>
        <translation>rote Lampen ein</translation>
    </message>
    <message>
        <source>rod in its normal travel, bag dry</source>
        <translation>Stange im gewohnten Hub, Balg trocken</translation>
    </message>
    <message>
        <source>rubs on the drawgear</source>
        <translation>reibt an der Zugeinrichtung</translation>
    </message>
    <message>
        <source>sealed, in date, full count</source>
        <translation>verplombt, gültig, vollzählig</translation>
    </message>
    <message>
        <source>shows another working than the other end</source>
        <translation>zeigt einen anderen Umlauf als das andere Ende</translation>
    </message>
    <message>
        <source>shut and latched</source>
        <translation>zu und verriegelt</translation>
    </message>
    <message>
        <source>shut, and still it sucks</source>
        <translation>zu, und saugt dennoch</translation>
    </message>
    <message>
        <source>shut, flush, latched</source>
        <translation>zu, bündig, verriegelt</translation>
    </message>
    <message>
        <source>shut, no smell</source>
        <translation>zu, kein Geruch</translation>
    </message>
    <message>
        <source>shut, silent</source>
        <translation>zu, still</translation>
    </message>
    <message>
        <source>shuts and locks</source>
        <translation>schließt und sperrt</translation>
    </message>
    <message>
        <source>silent</source>
        <translation>still</translation>
    </message>
    <message>
        <source>smoke and flame come from under it</source>
        <translation>Rauch und Flammen kommen darunter hervor</translation>
    </message>
    <message>
        <source>somebody is standing at the unit</source>
        <translation>jemand steht am Zug</translation>
    </message>
    <message>
        <source>somebody stands at the engine</source>
        <translation>jemand steht am Motor</translation>
    </message>
    <message>
        <source>somebody walks along the car</source>
        <translation>jemand geht am Wagen entlang</translation>
    </message>
    <message>
        <source>something drips</source>
        <translation>etwas tropft</translation>
    </message>
    <message>
        <source>sound, no flats, no loose tyre</source>
        <translation>gut, keine Flachstelle, kein loser Reifen</translation>
    </message>
    <message>
        <source>springs back to idle</source>
        <translation>springt zurück auf Leerlauf</translation>
    </message>
    <message>
        <source>stands out from the car&apos;s end</source>
        <translation>steht vom Wagenende ab</translation>
    </message>
    <message>
        <source>straps tight, dry</source>
        <translation>Bänder fest, trocken</translation>
    </message>
    <message>
        <source>switched on, red lamps stay dark</source>
        <translation>eingeschaltet, rote Lampen bleiben dunkel</translation>
    </message>
    <message>
        <source>switched on, white lamps stay dark</source>
        <translation>eingeschaltet, weiße Lampen bleiben dunkel</translation>
    </message>
    <message>
        <source>tell-tale full</source>
        <translation>Anzeiger voll</translation>
    </message>
    <message>
        <source>the air lamp stays dark</source>
        <translation>die Luftlampe bleibt dunkel</translation>
    </message>
    <message>
        <source>the air needle does not rest on its zero</source>
        <translation>der Luftzeiger ruht nicht auf null</translation>
    </message>
    <message>
        <source>the air needle does not stir when tapped</source>
        <translation>der Luftzeiger rührt sich beim Klopfen nicht</translation>
    </message>
    <message>
        <source>the bag is split along its fold</source>
        <translation>der Balg ist an der Falte gerissen</translation>
    </message>
    <message>
        <source>the bag is torn, air draws in</source>
        <translation>der Balg ist zerrissen, Luft dringt ein</translation>
    </message>
    <message>
        <source>the battery is being charged</source>
        <translation>die Batterie wird geladen</translation>
    </message>
    <message>
        <source>the battery is not being charged</source>
        <translation>die Batterie wird nicht geladen</translation>
    </message>
    <message>
        <source>the battery switch is closed</source>
        <translation>der Batterieschalter ist geschlossen</translation>
    </message>
    <message>
        <source>the battery switch is open</source>
        <translation>der Batterieschalter ist offen</translation>
    </message>
    <message>
        <source>the bell button is not at this place</source>
        <translation>der Klingelknopf ist nicht an diesem Ort</translation>
    </message>
    <message>
        <source>the bellows are torn</source>
        <translation>der Faltenbalg ist zerrissen</translation>
    </message>
    <message>
        <source>the blocks are not all the same</source>
        <translation>die Klötze sind nicht alle gleich</translation>
    </message>
    <message>
        <source>the blocks shine like glass</source>
        <translation>die Klötze glänzen wie Glas</translation>
    </message>
    <message>
        <source>the blocks stay on the tyre, frozen or stiff</source>
        <translation>die Klötze bleiben am Reifen, gefroren oder schwergängig</translation>
    </message>
    <message>
        <source>the book is not here</source>
        <translation>das Buch ist nicht hier</translation>
    </message>
    <message>
        <source>the box is gone</source>
        <translation>der Kasten fehlt</translation>
    </message>
    <message>
        <source>the bracket is empty</source>
        <translation>der Halter ist leer</translation>
    </message>
    <message>
        <source>the brake handle is in</source>
        <translation>der Bremsgriff steckt</translation>
    </message>
    <message>
        <source>the brake handle is in lap</source>
        <translation>der Bremsgriff steht auf Abschluss</translation>
    </message>
    <message>
        <source>the brake handle is not in lap</source>
        <translation>der Bremsgriff steht nicht auf Abschluss</translation>
    </message>
    <message>
        <source>the canister&apos;s seal is broken</source>
        <translation>die Plombe des Behälters ist gebrochen</translation>
    </message>
    <message>
        <source>the charge lamp stays dark</source>
        <translation>die Ladelampe bleibt dunkel</translation>
    </message>
    <message>
        <source>the cock is open, the seal is gone</source>
        <translation>der Hahn ist offen, die Plombe fehlt</translation>
    </message>
    <message>
        <source>the cock is shut</source>
        <translation>der Hahn ist zu</translation>
    </message>
    <message>
        <source>the compressor&apos;s belt gives under the hand</source>
        <translation>der Riemen des Kompressors gibt unter der Hand nach</translation>
    </message>
    <message>
        <source>the compressor&apos;s belt lies in the tray</source>
        <translation>der Riemen des Kompressors liegt in der Wanne</translation>
    </message>
    <message>
        <source>the contact of the safety device does not make</source>
        <translation>der Kontakt des Totmanns schließt nicht</translation>
    </message>
    <message>
        <source>the contact of the safety device makes</source>
        <translation>der Kontakt des Totmanns schließt</translation>
    </message>
    <message>
        <source>the control breaker is in</source>
        <translation>der Automat Steuerung ist ein</translation>
    </message>
    <message>
        <source>the control breaker is out</source>
        <translation>der Automat Steuerung ist aus</translation>
    </message>
    <message>
        <source>the control relay is in</source>
        <translation>das Steuerrelais ist angezogen</translation>
    </message>
    <message>
        <source>the control relay is out: volts too low</source>
        <translation>das Steuerrelais ist abgefallen: Spannung zu niedrig</translation>
    </message>
    <message>
        <source>the cord hangs down</source>
        <translation>die Schnur hängt herunter</translation>
    </message>
    <message>
        <source>the cord is caught under a pipe, half pulled</source>
        <translation>die Schnur hängt unter einem Rohr, halb gezogen</translation>
    </message>
    <message>
        <source>the coupling hangs down</source>
        <translation>die Kupplung hängt herunter</translation>
    </message>
    <message>
        <source>the device lamp stays dark</source>
        <translation>die Totmannlampe bleibt dunkel</translation>
    </message>
    <message>
        <source>the dog sleeve is in the middle</source>
        <translation>die Klauenmuffe steht in der Mitte</translation>
    </message>
    <message>
        <source>the dog sleeve is not in the middle</source>
        <translation>die Klauenmuffe steht nicht in der Mitte</translation>
    </message>
    <message>
        <source>the door is locked</source>
        <translation>die Tür ist verschlossen</translation>
    </message>
    <message>
        <source>the door key is not with you</source>
        <translation>Sie haben den Türschlüssel nicht bei sich</translation>
    </message>
    <message>
        <source>the engine is deaf</source>
        <translation>der Motor ist taub</translation>
    </message>
    <message>
        <source>the engine is turning</source>
        <translation>der Motor dreht</translation>
    </message>
    <message>
        <source>the engine runs on</source>
        <translation>der Motor läuft weiter</translation>
    </message>
    <message>
        <source>the engine runs with oil pressure</source>
        <translation>der Motor läuft mit Öldruck</translation>
    </message>
    <message>
        <source>the engine stands</source>
        <translation>der Motor steht</translation>
    </message>
    <message>
        <source>the engine&apos;s oil pressure is up</source>
        <translation>der Öldruck des Motors ist da</translation>
    </message>
    <message>
        <source>the exhauster&apos;s belt gives under the hand</source>
        <translation>der Riemen des Luftsaugers gibt unter der Hand nach</translation>
    </message>
    <message>
        <source>the exhauster&apos;s belt lies in the tray</source>
        <translation>der Riemen des Luftsaugers liegt in der Wanne</translation>
    </message>
    <message>
        <source>the fire lamp stays dark</source>
        <translation>die Brandlampe bleibt dunkel</translation>
    </message>
    <message>
        <source>the fire test is not pressed</source>
        <translation>die Brandglockenprobe ist nicht gedrückt</translation>
    </message>
    <message>
        <source>the fire test is pressed</source>
        <translation>die Brandglockenprobe ist gedrückt</translation>
    </message>
    <message>
        <source>the first tachometer&apos;s needle does not rest on its zero</source>
        <translation>der Zeiger des ersten Drehzahlmessers ruht nicht auf null</translation>
    </message>
    <message>
        <source>the first tachometer&apos;s needle does not stir when tapped</source>
        <translation>der Zeiger des ersten Drehzahlmessers rührt sich beim Klopfen nicht</translation>
    </message>
    <message>
        <source>the fitter has that engine, leave the switch alone</source>
        <translation>der Schlosser hat diesen Motor, Schalter nicht anfassen</translation>
    </message>
    <message>
        <source>the flap stands open</source>
        <translation>die Klappe steht offen</translation>
    </message>
    <message>
        <source>the floor plate stands up</source>
        <translation>die Bodenplatte steht hoch</translation>
    </message>
    <message>
        <source>the fuel cock is half shut</source>
        <translation>der Kraftstoffhahn ist halb zu</translation>
    </message>
    <message>
        <source>the fuel cock is shut</source>
        <translation>der Kraftstoffhahn ist zu</translation>
    </message>
    <message>
        <source>the generator&apos;s belt lies in the tray</source>
        <translation>der Riemen des Generators liegt in der Wanne</translation>
    </message>
    <message>
        <source>the glass is cracked</source>
        <translation>das Glas ist gesprungen</translation>
    </message>
    <message>
        <source>the guard hangs by one end</source>
        <translation>der Schutz hängt an einem Ende</translation>
    </message>
    <message>
        <source>the handle does nothing</source>
        <translation>der Griff bewirkt nichts</translation>
    </message>
    <message>
        <source>the handle will not go in</source>
        <translation>der Griff geht nicht hinein</translation>
    </message>
    <message>
        <source>the handle will not lift</source>
        <translation>der Griff lässt sich nicht heben</translation>
    </message>
    <message>
        <source>the heat lines are whole</source>
        <translation>die Meldeleitungen sind ganz</translation>
    </message>
    <message>
        <source>the high trumpet is plugged</source>
        <translation>der hohe Trichter ist verstopft</translation>
    </message>
    <message>
        <source>the hole does not line up</source>
        <translation>das Loch fluchtet nicht</translation>
    </message>
    <message>
        <source>the isolating switch is at cab</source>
        <translation>der Trennschalter steht auf Pult</translation>
    </message>
    <message>
        <source>the isolating switch is at ground</source>
        <translation>der Trennschalter steht auf Boden</translation>
    </message>
    <message>
        <source>the isolating switch is not at cab</source>
        <translation>der Trennschalter steht nicht auf Pult</translation>
    </message>
    <message>
        <source>the isolating switch is not at ground</source>
        <translation>der Trennschalter steht nicht auf Boden</translation>
    </message>
    <message>
        <source>the isolating switch is not at off</source>
        <translation>der Trennschalter steht nicht auf Aus</translation>
    </message>
    <message>
        <source>the isolating switch is not off</source>
        <translation>der Trennschalter steht nicht auf Aus</translation>
    </message>
    <message>
        <source>the isolating switch is off</source>
        <translation>der Trennschalter steht auf Aus</translation>
    </message>
    <message>
        <source>the jumper between the cars does not make</source>
        <translation>das Steuerkabel zwischen den Wagen hat keinen Kontakt</translation>
    </message>
    <message>
        <source>the jumper between the cars makes</source>
        <translation>das Steuerkabel zwischen den Wagen hat Kontakt</translation>
    </message>
    <message>
        <source>the key switch is off, or has no key</source>
        <translation>der Schlüsselschalter ist aus oder hat keinen Schlüssel</translation>
    </message>
    <message>
        <source>the key switch is on</source>
        <translation>der Schlüsselschalter ist ein</translation>
    </message>
    <message>
        <source>the key will not come out</source>
        <translation>der Schlüssel geht nicht heraus</translation>
    </message>
    <message>
        <source>the lamp breaker is in</source>
        <translation>der Automat Meldelampen ist ein</translation>
    </message>
    <message>
        <source>the lamp breaker is out</source>
        <translation>der Automat Meldelampen ist aus</translation>
    </message>
    <message>
        <source>the lamp has its current and stays dark: it is the lamp itself</source>
        <translation>die Lampe hat Strom und bleibt dunkel: es liegt an der Lampe selbst</translation>
    </message>
    <message>
        <source>the lamp of engine 1 stays dark</source>
        <translation>die Lampe von Motor 1 bleibt dunkel</translation>
    </message>
    <message>
        <source>the lamp of engine 2 stays dark</source>
        <translation>die Lampe von Motor 2 bleibt dunkel</translation>
    </message>
    <message>
        <source>the lamp test is not pressed</source>
        <translation>die Lampenprobe ist nicht gedrückt</translation>
    </message>
    <message>
        <source>the lamp test is pressed</source>
        <translation>die Lampenprobe ist gedrückt</translation>
    </message>
    <message>
        <source>the lever is blocked</source>
        <translation>der Hebel ist gesperrt</translation>
    </message>
    <message>
        <source>the lever will not go in</source>
        <translation>der Hebel geht nicht hinein</translation>
    </message>
    <message>
        <source>the lever will not lift</source>
        <translation>der Hebel lässt sich nicht heben</translation>
    </message>
    <message>
        <source>the lid stands open</source>
        <translation>der Deckel steht offen</translation>
    </message>
    <message>
        <source>the lights breaker is in</source>
        <translation>der Automat Beleuchtung ist ein</translation>
    </message>
    <message>
        <source>the lights breaker is out</source>
        <translation>der Automat Beleuchtung ist aus</translation>
    </message>
    <message>
        <source>the locking pin is gone</source>
        <translation>der Sperrbolzen fehlt</translation>
    </message>
    <message>
        <source>the low trumpet is plugged with snow</source>
        <translation>der tiefe Trichter ist mit Schnee verstopft</translation>
    </message>
    <message>
        <source>the needle is out of the green</source>
        <translation>der Zeiger ist nicht im Grünen</translation>
    </message>
    <message>
        <source>the other cab&apos;s key is on</source>
        <translation>der Schlüssel des anderen Führerstands ist ein</translation>
    </message>
    <message>
        <source>the paint is blue and flaking: it has run hot</source>
        <translation>der Lack ist blau und blättert: es ist heiß gelaufen</translation>
    </message>
    <message>
        <source>the pawl is in the ratchet</source>
        <translation>die Klinke liegt im Sperrrad</translation>
    </message>
    <message>
        <source>the pawl is out of the ratchet</source>
        <translation>die Klinke ist aus dem Sperrrad</translation>
    </message>
    <message>
        <source>the pawl&apos;s tip is worn round</source>
        <translation>die Spitze der Klinke ist rund abgenutzt</translation>
    </message>
    <message>
        <source>the pin is gone, a bolt in its place</source>
        <translation>der Bolzen fehlt, eine Schraube steckt dafür</translation>
    </message>
    <message>
        <source>the pin is in its keeper, the seal is cut</source>
        <translation>der Bolzen ist im Halter, die Plombe ist durchgeschnitten</translation>
    </message>
    <message>
        <source>the pin is in the sleeve</source>
        <translation>der Bolzen steckt in der Muffe</translation>
    </message>
    <message>
        <source>the pin will not go in</source>
        <translation>der Bolzen geht nicht hinein</translation>
    </message>
    <message>
        <source>the red glass has slipped, white shows</source>
        <translation>das rote Glas ist verrutscht, Weiß ist zu sehen</translation>
    </message>
    <message>
        <source>the red tell-tale is out</source>
        <translation>der rote Anzeiger steht heraus</translation>
    </message>
    <message>
        <source>the release pipe needle does not rest on its zero</source>
        <translation>der Zeiger der Löseleitung ruht nicht auf null</translation>
    </message>
    <message>
        <source>the release pipe needle does not stir when tapped</source>
        <translation>der Zeiger der Löseleitung rührt sich beim Klopfen nicht</translation>
    </message>
    <message>
        <source>the reverser is at a direction</source>
        <translation>der Richtungshebel steht auf einer Richtung</translation>
    </message>
    <message>
        <source>the reverser is at off</source>
        <translation>der Richtungshebel steht auf Aus</translation>
    </message>
    <message>
        <source>the reverser is not at off</source>
        <translation>der Richtungshebel steht nicht auf Aus</translation>
    </message>
    <message>
        <source>the reverser stands at forward</source>
        <translation>der Richtungshebel steht auf vorwärts</translation>
    </message>
    <message>
        <source>the reverser stands at reverse</source>
        <translation>der Richtungshebel steht auf rückwärts</translation>
    </message>
    <message>
        <source>the reverser&apos;s contacts do not make</source>
        <translation>die Kontakte des Richtungswenders schließen nicht</translation>
    </message>
    <message>
        <source>the reverser&apos;s contacts make</source>
        <translation>die Kontakte des Richtungswenders schließen</translation>
    </message>
    <message>
        <source>the reversing lever is in</source>
        <translation>der Richtungshebel steckt</translation>
    </message>
    <message>
        <source>the rod stands far out</source>
        <translation>die Stange steht weit heraus</translation>
    </message>
    <message>
        <source>the run is over</source>
        <translation>die Fahrt ist zu Ende</translation>
    </message>
    <message>
        <source>the safety device is held</source>
        <translation>der Totmann wird gehalten</translation>
    </message>
    <message>
        <source>the safety device is not held</source>
        <translation>der Totmann wird nicht gehalten</translation>
    </message>
    <message>
        <source>the seal is cut and laid back to look whole; the cock is shut</source>
        <translation>die Plombe ist durchgeschnitten und zurückgelegt, damit sie ganz aussieht; der Hahn ist zu</translation>
    </message>
    <message>
        <source>the second person is not at the rear</source>
        <translation>die zweite Person ist nicht am hinteren Ende</translation>
    </message>
    <message>
        <source>the second tachometer&apos;s needle does not rest on its zero</source>
        <translation>der Zeiger des zweiten Drehzahlmessers ruht nicht auf null</translation>
    </message>
    <message>
        <source>the second tachometer&apos;s needle does not stir when tapped</source>
        <translation>der Zeiger des zweiten Drehzahlmessers rührt sich beim Klopfen nicht</translation>
    </message>
    <message>
        <source>the shaft is bright where it rubs on its guard</source>
        <translation>die Welle ist blank, wo sie am Schutz scheuert</translation>
    </message>
    <message>
        <source>the speed needle does not rest on its zero</source>
        <translation>der Fahrtzeiger ruht nicht auf null</translation>
    </message>
    <message>
        <source>the speed needle does not stir when tapped</source>
        <translation>der Fahrtzeiger rührt sich beim Klopfen nicht</translation>
    </message>
    <message>
        <source>the start breaker is in</source>
        <translation>der Automat Anlassen ist ein</translation>
    </message>
    <message>
        <source>the start breaker is out</source>
        <translation>der Automat Anlassen ist aus</translation>
    </message>
    <message>
        <source>the start button at the engine is not pressed</source>
        <translation>der Anlassknopf am Motor ist nicht gedrückt</translation>
    </message>
    <message>
        <source>the start button at the engine is pressed</source>
        <translation>der Anlassknopf am Motor ist gedrückt</translation>
    </message>
    <message>
        <source>the start button is not pressed</source>
        <translation>der Anlassknopf ist nicht gedrückt</translation>
    </message>
    <message>
        <source>the start button is pressed</source>
        <translation>der Anlassknopf ist gedrückt</translation>
    </message>
    <message>
        <source>the start relay does not pull</source>
        <translation>das Anlassrelais zieht nicht an</translation>
    </message>
    <message>
        <source>the start relay pulls</source>
        <translation>das Anlassrelais zieht an</translation>
    </message>
    <message>
        <source>the stop button is not pressed</source>
        <translation>der Abstellknopf ist nicht gedrückt</translation>
    </message>
    <message>
        <source>the stop button is pressed</source>
        <translation>der Abstellknopf ist gedrückt</translation>
    </message>
    <message>
        <source>the stop lever at the engine is not pulled</source>
        <translation>der Abstellhebel am Motor ist nicht gezogen</translation>
    </message>
    <message>
        <source>the stop lever at the engine is pulled</source>
        <translation>der Abstellhebel am Motor ist gezogen</translation>
    </message>
    <message>
        <source>the stop solenoid does not pull</source>
        <translation>der Abstellmagnet zieht nicht an</translation>
    </message>
    <message>
        <source>the stop solenoid pulls</source>
        <translation>der Abstellmagnet zieht an</translation>
    </message>
    <message>
        <source>the switch was left from yesterday, put it back</source>
        <translation>der Schalter blieb von gestern stehen, stellen Sie ihn zurück</translation>
    </message>
    <message>
        <source>the throttle is not shut</source>
        <translation>der Fahrschalter ist nicht zu</translation>
    </message>
    <message>
        <source>the throttle is open</source>
        <translation>der Fahrschalter ist offen</translation>
    </message>
    <message>
        <source>the throttle is shut</source>
        <translation>der Fahrschalter ist zu</translation>
    </message>
    <message>
        <source>the throttle motor&apos;s valves do not open</source>
        <translation>die Ventile der Gasverstellung öffnen nicht</translation>
    </message>
    <message>
        <source>the throttle motor&apos;s valves open</source>
        <translation>die Ventile der Gasverstellung öffnen</translation>
    </message>
    <message>
        <source>the top leaf is broken</source>
        <translation>das oberste Federblatt ist gebrochen</translation>
    </message>
    <message>
        <source>the train pipe needle does not rest on its zero</source>
        <translation>der Zeiger der Zugleitung ruht nicht auf null</translation>
    </message>
    <message>
        <source>the train pipe needle does not stir when tapped</source>
        <translation>der Zeiger der Zugleitung rührt sich beim Klopfen nicht</translation>
    </message>
    <message>
        <source>the unit is moving</source>
        <translation>der Zug bewegt sich</translation>
    </message>
    <message>
        <source>the wheel is hard and the chain hangs slack</source>
        <translation>das Rad ist fest, und die Kette hängt schlaff</translation>
    </message>
    <message>
        <source>the wheel will not turn</source>
        <translation>das Rad dreht sich nicht</translation>
    </message>
    <message>
        <source>the working has changed</source>
        <translation>der Umlauf hat sich geändert</translation>
    </message>
    <message>
        <source>there is no brake handle</source>
        <translation>der Bremsgriff fehlt</translation>
    </message>
    <message>
        <source>there is no handle</source>
        <translation>der Griff fehlt</translation>
    </message>
    <message>
        <source>there is no key in it</source>
        <translation>es steckt kein Schlüssel darin</translation>
    </message>
    <message>
        <source>there is no reversing lever</source>
        <translation>der Richtungshebel fehlt</translation>
    </message>
    <message>
        <source>there is none</source>
        <translation>es gibt keines</translation>
    </message>
    <message>
        <source>there is one in it</source>
        <translation>es steckt schon eines darin</translation>
    </message>
    <message>
        <source>thick, all hanging true</source>
        <translation>dick, alle hängen gerade</translation>
    </message>
    <message>
        <source>thin, smells of fuel: diesel in the oil</source>
        <translation>dünn, riecht nach Kraftstoff: Diesel im Öl</translation>
    </message>
    <message>
        <source>this corner sits low</source>
        <translation>diese Ecke hängt tief</translation>
    </message>
    <message>
        <source>this desk is alive</source>
        <translation>dieses Pult ist besetzt</translation>
    </message>
    <message>
        <source>this desk is dead</source>
        <translation>dieses Pult ist tot</translation>
    </message>
    <message>
        <source>tight and whole</source>
        <translation>fest und ganz</translation>
    </message>
    <message>
        <source>to the mark, clear</source>
        <translation>bis zur Marke, klar</translation>
    </message>
    <message>
        <source>too dark to see</source>
        <translation>zu dunkel zum Sehen</translation>
    </message>
    <message>
        <source>too dirty to see through in rain</source>
        <translation>zu schmutzig, um im Regen hindurchzusehen</translation>
    </message>
    <message>
        <source>trumpets clear</source>
        <translation>Trichter frei</translation>
    </message>
    <message>
        <source>two, whole</source>
        <translation>zwei, ganz</translation>
    </message>
    <message>
        <source>under a quarter</source>
        <translation>unter einem Viertel</translation>
    </message>
    <message>
        <source>understood</source>
        <translation>verstanden</translation>
    </message>
    <message>
        <source>valve open at the rear</source>
        <translation>Ventil hinten offen</translation>
    </message>
    <message>
        <source>valve shut at the rear</source>
        <translation>Ventil hinten zu</translation>
    </message>
    <message>
        <source>walking takes its time</source>
        <translation>Gehen braucht seine Zeit</translation>
    </message>
    <message>
        <source>water in the bowl</source>
        <translation>Wasser im Schauglas</translation>
    </message>
    <message>
        <source>well above the upper mark</source>
        <translation>weit über der oberen Marke</translation>
    </message>
    <message>
        <source>well below 24</source>
        <translation>weit unter 24</translation>
    </message>
    <message>
        <source>wet round the bell</source>
        <translation>nass rings um die Glocke</translation>
    </message>
    <message>
        <source>white crust of acid on the terminals</source>
        <translation>weiße Säurekruste auf den Polen</translation>
    </message>
    <message>
        <source>white dark, red dark</source>
        <translation>weiß dunkel, rot dunkel</translation>
    </message>
    <message>
        <source>white dark, red lit</source>
        <translation>weiß dunkel, rot leuchtet</translation>
    </message>
    <message>
        <source>white lamps off</source>
        <translation>weiße Lampen aus</translation>
    </message>
    <message>
        <source>white lamps on</source>
        <translation>weiße Lampen ein</translation>
    </message>
    <message>
        <source>white lit, red dark</source>
        <translation>weiß leuchtet, rot dunkel</translation>
    </message>
    <message>
        <source>white lit, red lit</source>
        <translation>weiß leuchtet, rot leuchtet</translation>
    </message>
    <message>
        <source>whole</source>
        <translation>ganz</translation>
    </message>
    <message>
        <source>whole, plate down</source>
        <translation>ganz, Platte liegt</translation>
    </message>
    <message>
        <source>whole, turns free</source>
        <translation>ganz, dreht frei</translation>
    </message>
    <message>
        <source>whole; the radiator behind it is packed with leaves</source>
        <translation>ganz; der Kühler dahinter ist voll Laub</translation>
    </message>
    <message>
        <source>you are walking</source>
        <translation>Sie gehen gerade</translation>
    </message>
    <message>
        <source>you are walking already</source>
        <translation>Sie gehen schon</translation>
    </message>
    <message>
        <source>The fire bell rings.</source>
        <translation>Die Brandglocke läutet.</translation>
    </message>
    <message>
        <source>The fire bell is silent again.</source>
        <translation>Die Brandglocke ist wieder still.</translation>
    </message>
    <message>
        <source>A thump: a final drive goes into mesh.</source>
        <translation>Ein Schlag: ein Achsgetriebe geht in Eingriff.</translation>
    </message>
    <message>
        <source>Dog teeth rattle.</source>
        <translation>Klauen rattern.</translation>
    </message>
    <message>
        <source>The rattle stops.</source>
        <translation>Das Rattern hört auf.</translation>
    </message>
    <message>
        <source>Air hisses.</source>
        <translation>Luft zischt.</translation>
    </message>
    <message>
        <source>The hissing stops.</source>
        <translation>Das Zischen hört auf.</translation>
    </message>
    <message>
        <source>It smells of hot lining.</source>
        <translation>Es riecht nach heißem Belag.</translation>
    </message>
    <message>
        <source>The unit moves.</source>
        <translation>Der Zug bewegt sich.</translation>
    </message>
    <message>
        <source>The unit comes to a stand.</source>
        <translation>Der Zug kommt zum Stehen.</translation>
    </message>
    <message>
        <source>The blocks here go on.</source>
        <translation>Die Klötze hier legen sich an.</translation>
    </message>
    <message>
        <source>The blocks here come off.</source>
        <translation>Die Klötze hier lösen sich.</translation>
    </message>
    <message>
        <source>The handbrake is hard on.</source>
        <translation>Die Handbremse ist fest.</translation>
    </message>
    <message>
        <source>The handbrake is off.</source>
        <translation>Die Handbremse ist los.</translation>
    </message>
    <message>
        <source>The fire is out.</source>
        <translation>Das Feuer ist aus.</translation>
    </message>
    <message>
        <source>You are there.</source>
        <translation>Sie sind da.</translation>
    </message>
    <message>
        <source>You have looked long enough.</source>
        <translation>Sie haben lange genug hingesehen.</translation>
    </message>
    <message>
        <source>no control key is in the switch</source>
        <translation>im Schalter steckt kein Steuerschlüssel</translation>
    </message>
    <message>
        <source>no gear is selected</source>
        <translation>kein Gang ist gewählt</translation>
    </message>
    <message>
        <source>the button is pressed and makes no contact</source>
        <translation>der Knopf ist gedrückt und hat keinen Kontakt</translation>
    </message>
    <message>
        <source>the contact of this gear does not make</source>
        <translation>der Kontakt dieses Gangs schließt nicht</translation>
    </message>
    <message>
        <source>the key switch is on and makes no contact</source>
        <translation>der Schlüsselschalter ist ein und hat keinen Kontakt</translation>
    </message>
    <message>
        <source>the key switch is off</source>
        <translation>der Schlüsselschalter ist aus</translation>
    </message>
    <message>
        <source>both final drives are pinned: none is in use</source>
        <translation>beide Achsgetriebe sind gesperrt: keines ist in Betrieb</translation>
    </message>
    <message>
        <source>the control relay has no current</source>
        <translation>das Steuerrelais hat keinen Strom</translation>
    </message>
    <message>
        <source>put it home, with the engines stopped and the handbrakes on</source>
        <translation>einstecken, mit abgestellten Motoren und festen Handbremsen</translation>
    </message>
    <message>
        <source>somebody was unwell and is cared for: the alarm may be put back</source>
        <translation>jemandem war nicht wohl, und er ist versorgt: die Notbremse darf zurückgestellt werden</translation>
    </message>
    <message>
        <source>that road is wanted: when do you go?</source>
        <translation>dieser Fahrweg wird gebraucht: wann fahren Sie?</translation>
    </message>
    <message>
        <source>you may go on restricted to the next station, and no further</source>
        <translation>Sie dürfen beschränkt bis zum nächsten Bahnhof fahren, nicht weiter</translation>
    </message>
</context>
<context>
    <name>Sheet</name>
    <message>
        <source>one line</source>
        <translation>eine Zeile</translation>
    </message>
    <message numerus="yes">
        <source>%n lines</source>
        <translation>
            <numerusform>%n Zeile</numerusform>
            <numerusform>%n Zeilen</numerusform>
        </translation>
    </message>
    <message>
        <source>%1 at %2. Nothing was watched up to it: %3.</source>
        <translation>%1 bei %2. Bis dahin wurde nichts beobachtet: %3.</translation>
    </message>
    <message>
        <source>Not done within %1 s of it: %2.</source>
        <translation>Nicht getan innerhalb von %1 s danach: %2.</translation>
    </message>
    <message>
        <source>Not done yet after the one at %1: %2.</source>
        <translation>Noch nicht getan nach dem bei %1: %2.</translation>
    </message>
    <message>
        <source>Not done before the run ended at %1: %2.</source>
        <translation>Nicht getan, bevor die Fahrt bei %1 endete: %2.</translation>
    </message>
    <message>
        <source>Asked after it: %1; reached %2 s after.</source>
        <translation>Danach verlangt: %1; erreicht nach %2 s.</translation>
    </message>
    <message>
        <source>Asked after it: %1; not kept, %2 s after.</source>
        <translation>Danach verlangt: %1; nicht eingehalten, nach %2 s.</translation>
    </message>
    <message>
        <source>Asked after it: %1; kept until %2, %3 s after.</source>
        <translation>Danach verlangt: %1; eingehalten bis: %2, nach %3 s.</translation>
    </message>
    <message>
        <source>Asked after it: %1; %2 before the run ended.</source>
        <translation>Danach verlangt: %1; %2, bevor die Fahrt endete.</translation>
    </message>
    <message>
        <source>Asked after it: %1; %2 within %3 s.</source>
        <translation>Danach verlangt: %1; %2 innerhalb von %3 s.</translation>
    </message>
    <message>
        <source>Asked after it: %1; %2.</source>
        <translation>Danach verlangt: %1; %2.</translation>
    </message>
    <message>
        <source>Asked until %1, %2 s after: %3; not quite kept.</source>
        <translation>Verlangt bis: %1, nach %2 s: %3; nicht ganz eingehalten.</translation>
    </message>
    <message>
        <source>Asked until %1: %2; it failed %3 s after.</source>
        <translation>Verlangt bis: %1: %2; nach %3 s war es nicht mehr so.</translation>
    </message>
    <message>
        <source>Not done since the last time, at %1: %2.</source>
        <translation>Nicht getan seit dem letzten Mal, bei %1: %2.</translation>
    </message>
    <message>
        <source>Not done right before it: %1.</source>
        <translation>Nicht getan unmittelbar davor: %1.</translation>
    </message>
    <message>
        <source>Not done before it, in this order: %1.</source>
        <translation>Nicht getan davor, in dieser Folge: %1.</translation>
    </message>
    <message>
        <source>Not done before it, at least %1 s: %2.</source>
        <translation>Nicht getan davor, mindestens %1 s: %2.</translation>
    </message>
    <message>
        <source>Not done before it, at most %1 s: %2.</source>
        <translation>Nicht getan davor, höchstens %1 s: %2.</translation>
    </message>
    <message>
        <source>Not done before it, %1 s to %2 s: %3.</source>
        <translation>Nicht getan davor, %1 s bis %2 s: %3.</translation>
    </message>
    <message>
        <source>Not done before it: %1.</source>
        <translation>Nicht getan davor: %1.</translation>
    </message>
    <message>
        <source>%1 at %2, %3 %4 s before; asked: at least %5 s.</source>
        <translation>%1 bei %2, %4 s davor: %3; verlangt: mindestens %5 s.</translation>
    </message>
    <message>
        <source>%1 at %2, %3 %4 s before; asked: at most %5 s.</source>
        <translation>%1 bei %2, %4 s davor: %3; verlangt: höchstens %5 s.</translation>
    </message>
    <message>
        <source>%1 at %2, %3 %4 s before; asked: %5 s to %6 s.</source>
        <translation>%1 bei %2, %4 s davor: %3; verlangt: %5 s bis %6 s.</translation>
    </message>
    <message>
        <source>%1 at %2, %3 %4 s before.</source>
        <translation>%1 bei %2, %4 s davor: %3.</translation>
    </message>
    <message>
        <source>%1 at %2, %3 %4 s after.</source>
        <translation>%1 bei %2, %4 s danach: %3.</translation>
    </message>
    <message>
        <source>%1 at %2, %3 s after %4.</source>
        <translation>%1 bei %2, %3 s nach: %4.</translation>
    </message>
    <message>
        <source>%1 at %2, for the %3. time; %4 allowed.</source>
        <translation>%1 bei %2, zum %3. Mal; %4 erlaubt.</translation>
    </message>
    <message>
        <source>%1 at %2, but no %3.</source>
        <translation>%1 bei %2, aber nicht: %3.</translation>
    </message>
    <message>
        <source>%1 at %2 and %3 at %4.</source>
        <translation>%1 bei %2 und %3 bei %4.</translation>
    </message>
    <message>
        <source>%1 at %2, in its place.</source>
        <translation>%1 bei %2, an seinem Platz.</translation>
    </message>
    <message>
        <source>%1 at %2, before %3.</source>
        <translation>%1 bei %2, vor: %3.</translation>
    </message>
    <message>
        <source>%1 at %2: before %3.</source>
        <translation>%1 bei %2: vor: %3.</translation>
    </message>
    <message>
        <source>%1 at %2: too late.</source>
        <translation>%1 bei %2: zu spät.</translation>
    </message>
    <message>
        <source>%1 at %2: %3.</source>
        <translation>%1 bei %2: %3.</translation>
    </message>
    <message>
        <source>%1: never.</source>
        <translation>%1: nie.</translation>
    </message>
    <message>
        <source>%1 did not come by %2.</source>
        <translation>%1 kam nicht bis %2.</translation>
    </message>
    <message>
        <source>%1 came %2 of %3 times by %4.</source>
        <translation>%1 kam %2 von %3 Malen bis %4.</translation>
    </message>
    <message>
        <source>It fell %1 %2 in %3 s, %4 in a minute; asked: within %5.</source>
        <translation>Es fiel um %1 %2 in %3 s, %4 in einer Minute; verlangt: auf %5 genau.</translation>
    </message>
    <message>
        <source>Nothing was watched up to it: %1.</source>
        <translation>Bis dahin wurde nichts beobachtet: %1.</translation>
    </message>
    <message>
        <source>Asked before it: %1, ever since %2, last at %3.</source>
        <translation>Davor verlangt: %1, und zwar seit: %2, zuletzt bei %3.</translation>
    </message>
    <message>
        <source>Asked before it: %1, ever since %2.</source>
        <translation>Davor verlangt: %1, und zwar seit: %2.</translation>
    </message>
    <message>
        <source>Asked before it: %1, for %2 s.</source>
        <translation>Davor verlangt: %1, für %2 s.</translation>
    </message>
    <message>
        <source>Asked before it: %1.</source>
        <translation>Davor verlangt: %1.</translation>
    </message>
    <message>
        <source>It had been so for %1 s.</source>
        <translation>Es war seit %1 s so.</translation>
    </message>
    <message>
        <source>From %1, not kept: %2, while %3, for %4 s and more.</source>
        <translation>Ab %1, nicht eingehalten: %2, während: %3, für %4 s und länger.</translation>
    </message>
    <message>
        <source>From %1, not kept: %2, while %3.</source>
        <translation>Ab %1, nicht eingehalten: %2, während: %3.</translation>
    </message>
    <message>
        <source>From %1, not kept: %2, for %3 s and more.</source>
        <translation>Ab %1, nicht eingehalten: %2, für %3 s und länger.</translation>
    </message>
    <message>
        <source>From %1, not kept: %2.</source>
        <translation>Ab %1, nicht eingehalten: %2.</translation>
    </message>
    <message>
        <source>From %1: %2, while %3, for %4 s and more.</source>
        <translation>Ab %1: %2, während: %3, für %4 s und länger.</translation>
    </message>
    <message>
        <source>From %1: %2, while %3.</source>
        <translation>Ab %1: %2, während: %3.</translation>
    </message>
    <message>
        <source>From %1: %2, for %3 s and more.</source>
        <translation>Ab %1: %2, für %3 s und länger.</translation>
    </message>
    <message>
        <source>From %1: %2.</source>
        <translation>Ab %1: %2.</translation>
    </message>
    <message>
        <source>%1 at %2.</source>
        <translation>%1 bei %2.</translation>
    </message>
    <message>
        <source>%1, %2 and %3</source>
        <translation>%1, %2 und %3</translation>
    </message>
    <message>
        <source>%1 and %2</source>
        <translation>%1 und %2</translation>
    </message>
    <message>
        <source>%1, %2</source>
        <translation>%1, %2</translation>
    </message>
    <message>
        <source>It came too early.</source>
        <translation>Es kam zu früh.</translation>
    </message>
    <message>
        <source>All was done before it.</source>
        <translation>Alles wurde davor getan.</translation>
    </message>
    <message>
        <source>So it was.</source>
        <translation>So war es.</translation>
    </message>
    <message>
        <source>It was not so.</source>
        <translation>So war es nicht.</translation>
    </message>
    <message>
        <source>It had been so.</source>
        <translation>Es war so gewesen.</translation>
    </message>
    <message>
        <source>It had not been so in time.</source>
        <translation>Es war nicht rechtzeitig so gewesen.</translation>
    </message>
    <message>
        <source>That had not been.</source>
        <translation>Das war nicht gewesen.</translation>
    </message>
    <message>
        <source>It was kept.</source>
        <translation>Es wurde eingehalten.</translation>
    </message>
    <message>
        <source>It was not kept.</source>
        <translation>Es wurde nicht eingehalten.</translation>
    </message>
    <message>
        <source>No number was told.</source>
        <translation>Keine Zahl wurde gesagt.</translation>
    </message>
    <message>
        <source>reached</source>
        <translation>erreicht</translation>
    </message>
    <message>
        <source>not reached</source>
        <translation>nicht erreicht</translation>
    </message>
    <message>
        <source>kept</source>
        <translation>eingehalten</translation>
    </message>
    <message>
        <source>not kept</source>
        <translation>nicht eingehalten</translation>
    </message>
    <message>
        <source>10 psi of oil</source>
        <translation>10 psi Öldruck</translation>
    </message>
    <message>
        <source>15 inches on the way up holds nothing, and the unit rolls.</source>
        <translation>15 Zoll auf dem Weg nach oben halten nichts, und der Zug rollt.</translation>
    </message>
    <message>
        <source>15 s at most</source>
        <translation>höchstens 15 s</translation>
    </message>
    <message>
        <source>15 s at most, 30 s rest, three tries, then find out why.</source>
        <translation>Höchstens 15 s, 30 s Ruhe, drei Versuche, dann nach der Ursache suchen.</translation>
    </message>
    <message>
        <source>19.5 inHg counts as 21, 5 inHg left as applied</source>
        <translation>19,5 inHg gelten als 21, 5 verbliebene inHg als angelegt</translation>
    </message>
    <message>
        <source>19.5 or more read at the rear</source>
        <translation>19,5 oder mehr hinten abgelesen</translation>
    </message>
    <message>
        <source>2 inHg or less</source>
        <translation>2 inHg oder weniger</translation>
    </message>
    <message>
        <source>2 inHg or less with the valve</source>
        <translation>2 inHg oder weniger mit dem Ventil</translation>
    </message>
    <message>
        <source>20 inHg again</source>
        <translation>wieder 20 inHg</translation>
    </message>
    <message>
        <source>20 inHg counts as 21, 2 inHg as nothing</source>
        <translation>20 inHg gelten als 21, 2 inHg als nichts</translation>
    </message>
    <message>
        <source>20 inHg or more</source>
        <translation>20 inHg oder mehr</translation>
    </message>
    <message>
        <source>21 shown first, from there down to 16-12, lapped</source>
        <translation>erst 21 gezeigt, von da hinunter auf 16-12, Abschluss</translation>
    </message>
    <message>
        <source>22 inHg at most</source>
        <translation>höchstens 22 inHg</translation>
    </message>
    <message>
        <source>25 inHg in the release pipe</source>
        <translation>25 inHg in der Löseleitung</translation>
    </message>
    <message>
        <source>3 m at most</source>
        <translation>höchstens 3 m</translation>
    </message>
    <message>
        <source>30 seconds of rest between two tries at engine 1</source>
        <translation>30 Sekunden Ruhe zwischen zwei Versuchen an Motor 1</translation>
    </message>
    <message>
        <source>30 seconds of rest between two tries at engine 2</source>
        <translation>30 Sekunden Ruhe zwischen zwei Versuchen an Motor 2</translation>
    </message>
    <message>
        <source>5 inHg of brake</source>
        <translation>5 inHg Bremsung</translation>
    </message>
    <message>
        <source>5 inHg of brake and more</source>
        <translation>5 inHg Bremsung und mehr</translation>
    </message>
    <message>
        <source>5 to 7 inHg at 20 to 30 mph, felt, then full release.</source>
        <translation>5 bis 7 inHg bei 20 bis 30 mph, gespürt, dann ganz lösen.</translation>
    </message>
    <message>
        <source>6 inHg of brake</source>
        <translation>6 inHg Bremsung</translation>
    </message>
    <message>
        <source>80 psi on the gauge, two less forgiven</source>
        <translation>80 psi an der Uhr, zwei weniger werden verziehen</translation>
    </message>
    <message>
        <source>80 psi or more at departure</source>
        <translation>80 psi oder mehr bei der Abfahrt</translation>
    </message>
    <message>
        <source>93 psi seen, from the cab</source>
        <translation>93 psi gesehen, vom Führerstand aus</translation>
    </message>
    <message>
        <source>A dark bulb says the same as a dead circuit.</source>
        <translation>Eine kaputte Lampe sagt dasselbe wie ein toter Stromkreis.</translation>
    </message>
    <message>
        <source>A dead desk ten minutes later.</source>
        <translation>Zehn Minuten später ein totes Pult.</translation>
    </message>
    <message>
        <source>A dead device looks just the same, and the way back leads from there.</source>
        <translation>Ein toter Totmann sieht genauso aus, und der Rückweg führt von dort weg.</translation>
    </message>
    <message>
        <source>A dead device looks just the same.</source>
        <translation>Ein toter Totmann sieht genauso aus.</translation>
    </message>
    <message>
        <source>A defect found is in the repair book within ten minutes</source>
        <translation>Ein gefundener Mangel steht binnen zehn Minuten im Übergabebuch</translation>
    </message>
    <message>
        <source>A driver who collapses does not move the brake valve.</source>
        <translation>Ein Fahrer, der zusammenbricht, bewegt das Bremsventil nicht.</translation>
    </message>
    <message>
        <source>A figure that was not read is worse than none: it is believed.</source>
        <translation>Eine Zahl, die nicht abgelesen wurde, ist schlimmer als keine: man glaubt ihr.</translation>
    </message>
    <message>
        <source>A fourth does what three did not: it empties the battery.</source>
        <translation>Ein vierter schafft, was drei nicht schafften: er leert die Batterie.</translation>
    </message>
    <message>
        <source>A kinked hose, and the rear has no brake.</source>
        <translation>Ein geknickter Schlauch, und hinten ist keine Bremse.</translation>
    </message>
    <message>
        <source>A leak is found here, not on the road.</source>
        <translation>Eine Undichtheit wird hier gefunden, nicht auf der Strecke.</translation>
    </message>
    <message>
        <source>A minute dry ruins it.</source>
        <translation>Eine Minute trocken zerstört ihn.</translation>
    </message>
    <message>
        <source>A needle does not show a block on a tyre.</source>
        <translation>Ein Zeiger zeigt keinen Klotz am Reifen.</translation>
    </message>
    <message>
        <source>A pause of 1.4 seconds between selecting a gear and opening the throttle</source>
        <translation>Eine Pause von 1,4 Sekunden zwischen Gangwahl und Gasgeben</translation>
    </message>
    <message>
        <source>A platform is rarely quite level.</source>
        <translation>Ein Bahnsteig ist selten ganz eben.</translation>
    </message>
    <message>
        <source>A throttle left open or a gear left in waits for the button.</source>
        <translation>Ein offener Fahrschalter oder ein eingelegter Gang wartet nur auf den Knopf.</translation>
    </message>
    <message>
        <source>A valve that only does all or nothing stops no train at a mark.</source>
        <translation>Ein Ventil, das nur alles oder nichts kann, hält keinen Zug an einer Tafel.</translation>
    </message>
    <message>
        <source>After three find out why.</source>
        <translation>Nach dreien die Ursache suchen.</translation>
    </message>
    <message>
        <source>After three minutes of running: stop it, see the lamp go, start it again.</source>
        <translation>Nach drei Minuten Lauf: abstellen, die Lampe erlöschen sehen, wieder anlassen.</translation>
    </message>
    <message>
        <source>Agree it, send a code, hear it come back.</source>
        <translation>Vereinbaren, ein Zeichen geben, es zurückkommen hören.</translation>
    </message>
    <message>
        <source>Air lamp lit before power is put on</source>
        <translation>Luftlampe leuchtet, bevor Gas gegeben wird</translation>
    </message>
    <message>
        <source>An answer says: I go.</source>
        <translation>Eine Antwort heißt: ich fahre.</translation>
    </message>
    <message>
        <source>An open hose is no brake.</source>
        <translation>Ein offener Schlauch ist keine Bremse.</translation>
    </message>
    <message>
        <source>An open valve is no vacuum; a dark end is not seen.</source>
        <translation>Ein offenes Ventil ist kein Vakuum; ein dunkles Ende wird nicht gesehen.</translation>
    </message>
    <message>
        <source>Apply to 16 and lap: it holds. To 10 and lap. Full. Release: 21 again.</source>
        <translation>Auf 16 bremsen und Abschluss: sie hält. Auf 10 und Abschluss. Voll. Lösen: wieder 21.</translation>
    </message>
    <message>
        <source>Ask at the lineside, wait for the answer, look both ways, then go.</source>
        <translation>Am Gleis fragen, die Antwort abwarten, nach beiden Seiten sehen, dann gehen.</translation>
    </message>
    <message>
        <source>Ask leave to walk the line, and wait for the answer, before going to the unit</source>
        <translation>Um Erlaubnis bitten, am Gleis zu gehen, und die Antwort abwarten, bevor der Zug aufgesucht wird</translation>
    </message>
    <message>
        <source>Ask with the brake fully on, ask again with it off, and wait for each answer.</source>
        <translation>Bei voll angelegter Bremse fragen, gelöst noch einmal fragen, und jede Antwort abwarten.</translation>
    </message>
    <message>
        <source>Ask, look again, or enter it.</source>
        <translation>Fragen, noch einmal hinsehen oder eintragen.</translation>
    </message>
    <message>
        <source>At 21 in release, handbrakes on: let go, count, watch the needle fall below 5. Take hold, it resets.</source>
        <translation>Bei 21 auf Lösen, Handbremsen fest: loslassen, zählen, den Zeiger unter 5 fallen sehen. Festhalten, er stellt sich zurück.</translation>
    </message>
    <message>
        <source>At 21, lapped: rear gauge read to you, guard&apos;s valve opened, the needle falls in front; shut, and up again.</source>
        <translation>Bei 21, Abschluss: hintere Uhr vorgelesen, Schaffnerventil geöffnet, der Zeiger vorn fällt; zu, und wieder hoch.</translation>
    </message>
    <message>
        <source>At the cupboard: switch closed, breakers in, volts read.</source>
        <translation>Am Schaltschrank: Schalter geschlossen, Automaten ein, Spannung abgelesen.</translation>
    </message>
    <message>
        <source>Battery switch, breakers and volts read before any start</source>
        <translation>Batterieschalter, Automaten und Spannung vor jedem Anlassen gelesen</translation>
    </message>
    <message>
        <source>Behind it somebody else has the line.</source>
        <translation>Dahinter hat jemand anderes das Gleis.</translation>
    </message>
    <message>
        <source>Bell tried both ways before moving</source>
        <translation>Klingel in beiden Richtungen erprobt, bevor gefahren wird</translation>
    </message>
    <message>
        <source>Belts and shafts take the hand with them.</source>
        <translation>Riemen und Wellen nehmen die Hand mit.</translation>
    </message>
    <message>
        <source>Between the cars only with the brake holding and no engine turning</source>
        <translation>Zwischen die Wagen nur, wenn die Bremse hält und kein Motor dreht</translation>
    </message>
    <message>
        <source>Blocks on and off, seen by the second person, in the brake test</source>
        <translation>Klötze fest und los, von der zweiten Person gesehen, in der Bremsprobe</translation>
    </message>
    <message>
        <source>Blow the drains, shut them; read the tell-tales of the bottles.</source>
        <translation>Die Hähne ausblasen, schließen; die Anzeiger der Flaschen lesen.</translation>
    </message>
    <message>
        <source>Both handbrakes off before moving</source>
        <translation>Beide Handbremsen los, bevor gefahren wird</translation>
    </message>
    <message>
        <source>Brake handle, reversing lever, control key, door key, hand lamp, vest.</source>
        <translation>Bremsgriff, Richtungshebel, Steuerschlüssel, Türschlüssel, Handlampe, Weste.</translation>
    </message>
    <message>
        <source>Brake tried in steps: 16, 10, nothing, and back to 21</source>
        <translation>Bremse in Stufen erprobt: 16, 10, nichts, und zurück auf 21</translation>
    </message>
    <message>
        <source>By the speedometer: first to 16, second to 29, third to 42.</source>
        <translation>Nach dem Fahrtmesser: erster bis 16, zweiter bis 29, dritter bis 42.</translation>
    </message>
    <message>
        <source>Call or sound the horn, wait five seconds; anew each time.</source>
        <translation>Rufen oder Horn geben, fünf Sekunden warten; jedes Mal neu.</translation>
    </message>
    <message>
        <source>Chambers that hold more than the next cab can make drag.</source>
        <translation>Kammern, die mehr halten, als der nächste Führerstand schafft, schleifen.</translation>
    </message>
    <message>
        <source>Change down, or shut off a notch.</source>
        <translation>Herunterschalten oder eine Stufe wegnehmen.</translation>
    </message>
    <message>
        <source>Cock, belts, hand throttle, tray and cover of engine 1 judged before starting it</source>
        <translation>Hahn, Riemen, Handgas, Wanne und Deckel von Motor 1 vor dem Anlassen beurteilt</translation>
    </message>
    <message>
        <source>Cock, belts, hand throttle, tray and cover of engine 2 judged before starting it</source>
        <translation>Hahn, Riemen, Handgas, Wanne und Deckel von Motor 2 vor dem Anlassen beurteilt</translation>
    </message>
    <message>
        <source>Cold oil does not carry.</source>
        <translation>Kaltes Öl trägt nicht.</translation>
    </message>
    <message>
        <source>Continuity proved from the rear cab</source>
        <translation>Durchgang vom hinteren Führerstand aus erwiesen</translation>
    </message>
    <message>
        <source>Control air seen at its cut-out before moving</source>
        <translation>Steuerluft am Abschaltdruck gesehen, bevor gefahren wird</translation>
    </message>
    <message>
        <source>Cords pulled means no brake at all.</source>
        <translation>Gezogene Schnüre heißen: gar keine Bremse.</translation>
    </message>
    <message>
        <source>Count them in, count them out.</source>
        <translation>Hineinzählen, herauszählen.</translation>
    </message>
    <message>
        <source>Dark: read the gauge first, then listen for which drive stands tooth on tooth.</source>
        <translation>Dunkel: erst die Uhr lesen, dann hören, welcher Antrieb Zahn auf Zahn steht.</translation>
    </message>
    <message>
        <source>Detonators, flags, clips, extinguisher, first aid: there, whole, in date.</source>
        <translation>Knallkapseln, Flaggen, Klemmen, Löscher, Verbandkasten: da, ganz, gültig.</translation>
    </message>
    <message>
        <source>Dogs at speed break teeth; and off takes the safety device away.</source>
        <translation>Klauen in Fahrt brechen Zähne; und Aus nimmt den Totmann weg.</translation>
    </message>
    <message>
        <source>Doors stand open there.</source>
        <translation>Dort stehen Türen offen.</translation>
    </message>
    <message>
        <source>Doors, people, smoke.</source>
        <translation>Türen, Leute, Rauch.</translation>
    </message>
    <message>
        <source>Drivers of other trains do not know that you are there.</source>
        <translation>Die Fahrer anderer Züge wissen nicht, dass Sie dort sind.</translation>
    </message>
    <message>
        <source>Each defect found entered in the repair book before moving</source>
        <translation>Jeder gefundene Mangel im Übergabebuch, bevor gefahren wird</translation>
    </message>
    <message>
        <source>Ease the hand throttle in as it picks up: below 900 rpm while cold.</source>
        <translation>Das Handgas zurücknehmen, wenn er hochkommt: unter 900 U/min, solange er kalt ist.</translation>
    </message>
    <message>
        <source>Engine 1 stopped once and started again</source>
        <translation>Motor 1 einmal abgestellt und wieder angelassen</translation>
    </message>
    <message>
        <source>Engine 2 stopped once and started again</source>
        <translation>Motor 2 einmal abgestellt und wieder angelassen</translation>
    </message>
    <message>
        <source>Engines start under people.</source>
        <translation>Motoren laufen unter Menschen an.</translation>
    </message>
    <message>
        <source>Enter it, take the decision, tell the shed.</source>
        <translation>Eintragen, entscheiden, der Werkstatt sagen.</translation>
    </message>
    <message>
        <source>Fast idle, no gear, three minutes.</source>
        <translation>Schneller Leerlauf, kein Gang, drei Minuten.</translation>
    </message>
    <message>
        <source>From 21 down to 15, lap; then the handbrake.</source>
        <translation>Von 21 auf 15 hinunter, Abschluss; dann die Handbremse.</translation>
    </message>
    <message>
        <source>From 21: to 16, to 10, full, release; the needle follows each step and stops where left.</source>
        <translation>Von 21: auf 16, auf 10, voll, lösen; der Zeiger folgt jeder Stufe und bleibt, wo man ihn lässt.</translation>
    </message>
    <message>
        <source>From a platform only with signal and guard</source>
        <translation>Aus einem Bahnsteig nur mit Signal und Schaffner</translation>
    </message>
    <message>
        <source>From the cab it neither starts nor stops.</source>
        <translation>Vom Führerstand aus springt er weder an noch geht er aus.</translation>
    </message>
    <message>
        <source>From the cab you see nobody.</source>
        <translation>Vom Führerstand aus sehen Sie niemanden.</translation>
    </message>
    <message>
        <source>From the seat, with the brake in your hand, you feel the unit go.</source>
        <translation>Vom Sitz aus, mit der Bremse in der Hand, spüren Sie den Zug anrollen.</translation>
    </message>
    <message>
        <source>Fuel, coolant and oil of engine 1 judged before starting it</source>
        <translation>Kraftstoff, Kühlwasser und Öl von Motor 1 vor dem Anlassen beurteilt</translation>
    </message>
    <message>
        <source>Fuel, coolant and oil of engine 2 judged before starting it</source>
        <translation>Kraftstoff, Kühlwasser und Öl von Motor 2 vor dem Anlassen beurteilt</translation>
    </message>
    <message>
        <source>Full application from 21, seen on the needle, before the leading handbrake comes off</source>
        <translation>Vollbremsung aus 21, am Zeiger gesehen, bevor die vordere Handbremse gelöst wird</translation>
    </message>
    <message>
        <source>Gauge, header tank, dipstick out, wiped, in, out, read.</source>
        <translation>Anzeige, Ausgleichsbehälter, Messstab heraus, abgewischt, hinein, heraus, abgelesen.</translation>
    </message>
    <message>
        <source>Gear at neutral in both cabs before a hand goes to a start button.</source>
        <translation>Gang auf neutral in beiden Führerständen, bevor eine Hand an einen Anlassknopf geht.</translation>
    </message>
    <message>
        <source>Gear neutral, throttle shut, reverser off: in both cabs.</source>
        <translation>Gang neutral, Fahrschalter zu, Richtungshebel aus: in beiden Führerständen.</translation>
    </message>
    <message>
        <source>Gear to neutral and throttle shut once it stands</source>
        <translation>Gang auf neutral und Fahrschalter zu, sobald er steht</translation>
    </message>
    <message>
        <source>Gears slip on less.</source>
        <translation>Gänge rutschen bei weniger.</translation>
    </message>
    <message>
        <source>Ground start of engine 1: switch at ground, hand throttle out</source>
        <translation>Anlassen von Motor 1 vom Boden: Schalter auf Boden, Handgas heraus</translation>
    </message>
    <message>
        <source>Ground start of engine 2: switch at ground, hand throttle out</source>
        <translation>Anlassen von Motor 2 vom Boden: Schalter auf Boden, Handgas heraus</translation>
    </message>
    <message>
        <source>Hand throttles home before a gear is selected</source>
        <translation>Handgas in Grundstellung, bevor ein Gang gewählt wird</translation>
    </message>
    <message>
        <source>Handbrake of the leading cab hard on, pawl in, and judged, before any start</source>
        <translation>Handbremse des vorderen Führerstands fest, Klinke drin und beurteilt, vor jedem Anlassen</translation>
    </message>
    <message>
        <source>Handbrake of the rear cab hard on and judged before any start</source>
        <translation>Handbremse des hinteren Führerstands fest und beurteilt, vor jedem Anlassen</translation>
    </message>
    <message>
        <source>Handbrake off only with the power brake holding: 5 inHg or more between chambers and pipe</source>
        <translation>Handbremse nur los, wenn die Vakuumbremse hält: 5 inHg oder mehr zwischen Kammern und Leitung</translation>
    </message>
    <message>
        <source>Handbrakes on, engines stopped, somebody told: then go between.</source>
        <translation>Handbremsen fest, Motoren abgestellt, jemand weiß es: dann dazwischengehen.</translation>
    </message>
    <message>
        <source>Held by the brake once it stands</source>
        <translation>Von der Bremse gehalten, sobald er steht</translation>
    </message>
    <message>
        <source>Hill: one notch first, ease the brake off against the pull.</source>
        <translation>Berg: erst eine Stufe, dann die Bremse gegen den Zug lösen.</translation>
    </message>
    <message>
        <source>Home, and the switch back to cab, before you leave the engine.</source>
        <translation>Zurück, und den Schalter auf Pult, bevor Sie den Motor verlassen.</translation>
    </message>
    <message>
        <source>Horn in both tones, wiper, fire bell and lights tried before moving</source>
        <translation>Horn in beiden Tönen, Wischer, Brandglocke und Lampen erprobt, bevor gefahren wird</translation>
    </message>
    <message>
        <source>Hoses on their dummies, coupling hooked up, lamps and display right.</source>
        <translation>Schläuche auf Blindkupplung, Kupplung eingehängt, Lampen und Anzeige richtig.</translation>
    </message>
    <message>
        <source>Hoses, couplings, lamps and displays of both ends judged</source>
        <translation>Schläuche, Kupplungen, Lampen und Anzeigen beider Enden beurteilt</translation>
    </message>
    <message>
        <source>Hot blocks, flat wheels, a boiling coupling.</source>
        <translation>Heiße Klötze, flache Räder, eine kochende Kupplung.</translation>
    </message>
    <message>
        <source>If it stands at off, find out who and why before you touch it.</source>
        <translation>Steht er auf Aus, herausfinden, wer und warum, bevor Sie ihn anfassen.</translation>
    </message>
    <message>
        <source>In a fire it has to stop when told.</source>
        <translation>Im Brand muss er stehen bleiben, wenn es verlangt wird.</translation>
    </message>
    <message>
        <source>Isolating switches back at cab before a gear is selected</source>
        <translation>Trennschalter zurück auf Pult, bevor ein Gang gewählt wird</translation>
    </message>
    <message>
        <source>It derails, or breaks the rigging.</source>
        <translation>Er entgleist oder zerbricht das Gestänge.</translation>
    </message>
    <message>
        <source>It is all that holds the unit until the power brake is proved.</source>
        <translation>Sie ist alles, was den Zug hält, bis die Vakuumbremse erwiesen ist.</translation>
    </message>
    <message>
        <source>It is the one you forget to take off.</source>
        <translation>Sie ist die, die man zu lösen vergisst.</translation>
    </message>
    <message>
        <source>It is the only proof that the brake works.</source>
        <translation>Es ist der einzige Beweis, dass die Bremse wirkt.</translation>
    </message>
    <message>
        <source>It lets go of the train when you let go of it.</source>
        <translation>Er lässt den Zug los, wenn Sie ihn loslassen.</translation>
    </message>
    <message>
        <source>It may have gone back.</source>
        <translation>Es kann zurückgefallen sein.</translation>
    </message>
    <message>
        <source>It may stand at off because of a fitter&apos;s hand.</source>
        <translation>Er kann wegen eines Schlossers auf Aus stehen.</translation>
    </message>
    <message>
        <source>It protects a failed train.</source>
        <translation>Sie schützt einen liegen gebliebenen Zug.</translation>
    </message>
    <message>
        <source>It races with cold oil.</source>
        <translation>Er dreht hoch, mit kaltem Öl.</translation>
    </message>
    <message>
        <source>It shakes itself to pieces.</source>
        <translation>Er rüttelt sich zu Bruch.</translation>
    </message>
    <message>
        <source>It was enough; is it still?</source>
        <translation>Es reichte; reicht es noch?</translation>
    </message>
    <message>
        <source>Judge the cock and seal of the leading cab&apos;s safety device before moving</source>
        <translation>Hahn und Plombe des Totmanns im vorderen Führerstand beurteilen, bevor gefahren wird</translation>
    </message>
    <message>
        <source>Judge the cock and seal of the rear cab&apos;s safety device before moving</source>
        <translation>Hahn und Plombe des Totmanns im hinteren Führerstand beurteilen, bevor gefahren wird</translation>
    </message>
    <message>
        <source>Key on, hold the lamp test, look at each.</source>
        <translation>Schlüssel ein, Lampenprobe halten, jede ansehen.</translation>
    </message>
    <message>
        <source>Know before you spend it.</source>
        <translation>Wissen, bevor man sie ausgibt.</translation>
    </message>
    <message>
        <source>Lamps at departure: both engines, air, device; white in front, no red</source>
        <translation>Lampen bei der Abfahrt: beide Motoren, Luft, Totmann; vorn weiß, kein Rot</translation>
    </message>
    <message>
        <source>Lamps of the desk judged under the lamp test</source>
        <translation>Lampen des Pults unter der Lampenprobe beurteilt</translation>
    </message>
    <message>
        <source>Lap at 21, watch a full minute, enter what you read.</source>
        <translation>Abschluss bei 21, eine volle Minute beobachten, eintragen, was Sie ablesen.</translation>
    </message>
    <message>
        <source>Lean out on both sides, after the tests, before the handbrake or the lever. Somebody there: warn, wait, and look again.</source>
        <translation>Auf beiden Seiten hinauslehnen, nach den Proben, vor Handbremse oder Hebel. Jemand dort: warnen, warten und noch einmal hinsehen.</translation>
    </message>
    <message>
        <source>Lean out, look along both sides, then the button.</source>
        <translation>Hinauslehnen, an beiden Seiten entlangsehen, dann der Knopf.</translation>
    </message>
    <message>
        <source>Level: brake off, then power. Hill: one notch, ease off against the pull.</source>
        <translation>Eben: Bremse los, dann Gas. Berg: eine Stufe, gegen den Zug lösen.</translation>
    </message>
    <message>
        <source>Look along both sides before each start</source>
        <translation>Vor jedem Anlassen an beiden Seiten entlangsehen</translation>
    </message>
    <message>
        <source>Look along the unit again before moving, and see nobody there</source>
        <translation>Vor der Fahrt noch einmal am Zug entlangsehen und dort niemanden sehen</translation>
    </message>
    <message>
        <source>Look at engine 1 again once it runs, after a start at its side</source>
        <translation>Motor 1 noch einmal ansehen, wenn er läuft, nach einem Anlassen an seiner Seite</translation>
    </message>
    <message>
        <source>Look at engine 2 again once it runs, after a start at its side</source>
        <translation>Motor 2 noch einmal ansehen, wenn er läuft, nach einem Anlassen an seiner Seite</translation>
    </message>
    <message>
        <source>Look at its lamp, listen, then press.</source>
        <translation>Auf seine Lampe sehen, hören, dann drücken.</translation>
    </message>
    <message>
        <source>Look at the controls of both cabs before any start</source>
        <translation>Die Hebel beider Führerstände vor jedem Anlassen ansehen</translation>
    </message>
    <message>
        <source>Look at the engine itself, from its own side.</source>
        <translation>Den Motor selbst ansehen, von seiner eigenen Seite.</translation>
    </message>
    <message>
        <source>Look at the place itself, warn, wait, and look again.</source>
        <translation>Die Stelle selbst ansehen, warnen, warten und noch einmal hinsehen.</translation>
    </message>
    <message>
        <source>Look back along the train over the first lengths</source>
        <translation>Auf den ersten Längen am Zug zurücksehen</translation>
    </message>
    <message>
        <source>Look both ways before each crossing of the line</source>
        <translation>Vor jedem Queren des Gleises nach beiden Seiten sehen</translation>
    </message>
    <message>
        <source>Look for boards, flags and lamps at both ends and along both sides before touching anything</source>
        <translation>An beiden Enden und beiden Seiten nach Tafeln, Flaggen und Lampen sehen, bevor etwas angefasst wird</translation>
    </message>
    <message>
        <source>Look for people at engine 1 before starting it</source>
        <translation>Vor dem Anlassen an Motor 1 nach Personen sehen</translation>
    </message>
    <message>
        <source>Look for people at engine 2 before starting it</source>
        <translation>Vor dem Anlassen an Motor 2 nach Personen sehen</translation>
    </message>
    <message>
        <source>No critical defect found and not booked when the unit moves</source>
        <translation>Kein kritischer Mangel gefunden und nicht eingetragen, wenn der Zug fährt</translation>
    </message>
    <message>
        <source>No engine turned and nothing moved with somebody at it; nothing touched that is protected</source>
        <translation>Kein Motor gedreht und nichts bewegt, wenn jemand daran ist; nichts angefasst, was gesichert ist</translation>
    </message>
    <message>
        <source>No gauge shows what is seen from the ground.</source>
        <translation>Keine Uhr zeigt, was man vom Boden sieht.</translation>
    </message>
    <message>
        <source>No gear selected with the throttle open</source>
        <translation>Kein Gang gewählt bei offenem Fahrschalter</translation>
    </message>
    <message>
        <source>No gear too low for the speed</source>
        <translation>Kein Gang zu niedrig für die Geschwindigkeit</translation>
    </message>
    <message>
        <source>No hand into a running engine</source>
        <translation>Keine Hand in einen laufenden Motor</translation>
    </message>
    <message>
        <source>No hand on a start button with a gear selected</source>
        <translation>Keine Hand an einem Anlassknopf mit gewähltem Gang</translation>
    </message>
    <message>
        <source>No labouring under 900 rpm at full throttle</source>
        <translation>Kein Quälen unter 900 U/min bei vollem Gas</translation>
    </message>
    <message>
        <source>No power against the brake</source>
        <translation>Kein Gas gegen die Bremse</translation>
    </message>
    <message>
        <source>No racing of a cold engine</source>
        <translation>Kein Hochjagen eines kalten Motors</translation>
    </message>
    <message>
        <source>No reservoir, no release.</source>
        <translation>Kein Behälter, kein Lösen.</translation>
    </message>
    <message>
        <source>No rolling back over 3 m</source>
        <translation>Kein Zurückrollen über 3 m</translation>
    </message>
    <message>
        <source>No rolling back over half a metre</source>
        <translation>Kein Zurückrollen über einen halben Meter</translation>
    </message>
    <message>
        <source>No signal passed at danger</source>
        <translation>Kein Signal bei Halt überfahren</translation>
    </message>
    <message>
        <source>No start button on an engine that runs</source>
        <translation>Kein Anlassknopf an einem laufenden Motor</translation>
    </message>
    <message>
        <source>No starter held for more than 15 seconds</source>
        <translation>Kein Anlasser länger als 15 Sekunden gehalten</translation>
    </message>
    <message>
        <source>No throttle and no vacuum without it.</source>
        <translation>Ohne ihn kein Gas und kein Vakuum.</translation>
    </message>
    <message>
        <source>Not moved against a scotch</source>
        <translation>Nicht gegen einen Hemmschuh gefahren</translation>
    </message>
    <message>
        <source>Not moved with a door open</source>
        <translation>Nicht mit offener Tür gefahren</translation>
    </message>
    <message>
        <source>Not sure is a question, not an answer.</source>
        <translation>Unsicher ist eine Frage, keine Antwort.</translation>
    </message>
    <message>
        <source>Nothing left at &quot;not sure&quot; when the unit moves</source>
        <translation>Nichts bleibt auf „unsicher“, wenn der Zug fährt</translation>
    </message>
    <message>
        <source>Oil can only be dipped while it stands; without it the engine is ruined in a minute, and on low coolant it stops itself on the road.</source>
        <translation>Öl lässt sich nur im Stand messen; ohne Öl ist der Motor in einer Minute zerstört, und bei wenig Kühlwasser stellt er sich unterwegs selbst ab.</translation>
    </message>
    <message>
        <source>Oil pressure within ten seconds of each start of engine 1</source>
        <translation>Öldruck binnen zehn Sekunden nach jedem Anlassen von Motor 1</translation>
    </message>
    <message>
        <source>Oil pressure within ten seconds of each start of engine 2</source>
        <translation>Öldruck binnen zehn Sekunden nach jedem Anlassen von Motor 2</translation>
    </message>
    <message>
        <source>On a hill there is nothing else to hold the unit.</source>
        <translation>Am Berg hält sonst nichts den Zug.</translation>
    </message>
    <message>
        <source>One engine at a time</source>
        <translation>Ein Motor zur Zeit</translation>
    </message>
    <message>
        <source>One eye on the lamp, one hand on the lever.</source>
        <translation>Ein Auge auf der Lampe, eine Hand am Hebel.</translation>
    </message>
    <message>
        <source>One look before going tells all of it.</source>
        <translation>Ein Blick vor dem Fahren sagt alles.</translation>
    </message>
    <message>
        <source>One notch, feel it lean on the brake, then ease the brake off.</source>
        <translation>Eine Stufe, spüren, wie er sich gegen die Bremse legt, dann die Bremse lösen.</translation>
    </message>
    <message>
        <source>One set for the unit: this cab drives from now on.</source>
        <translation>Ein Satz für den Zug: von jetzt an fährt dieser Führerstand.</translation>
    </message>
    <message>
        <source>One side at a time, car by car, each thing judged.</source>
        <translation>Eine Seite zur Zeit, Wagen für Wagen, jedes Ding beurteilt.</translation>
    </message>
    <message>
        <source>People come back.</source>
        <translation>Leute kommen zurück.</translation>
    </message>
    <message>
        <source>People fall out.</source>
        <translation>Menschen fallen hinaus.</translation>
    </message>
    <message>
        <source>Power taken before the brake is let off</source>
        <translation>Gas gegeben, bevor die Bremse gelöst wird</translation>
    </message>
    <message>
        <source>Raise 21 again if the cab was left; then 15 and lap.</source>
        <translation>21 neu aufbauen, wenn der Führerstand verlassen war; dann 15 und Abschluss.</translation>
    </message>
    <message>
        <source>Read the isolating switch of engine 1 before starting it</source>
        <translation>Den Trennschalter von Motor 1 vor dem Anlassen lesen</translation>
    </message>
    <message>
        <source>Read the isolating switch of engine 2 before starting it</source>
        <translation>Den Trennschalter von Motor 2 vor dem Anlassen lesen</translation>
    </message>
    <message>
        <source>Read the needle at the lap and after a full minute: the difference is the figure. Nothing at all is never right.</source>
        <translation>Den Zeiger beim Abschluss und nach einer vollen Minute lesen: der Unterschied ist die Zahl. Gar nichts ist nie richtig.</translation>
    </message>
    <message>
        <source>Read the notices and the unit&apos;s repair book first</source>
        <translation>Zuerst Aushänge und Übergabebuch des Zuges lesen</translation>
    </message>
    <message>
        <source>Rear cab: guard&apos;s valve and gauge judged, red lamps lit</source>
        <translation>Hinterer Führerstand: Schaffnerventil und Uhr beurteilt, rote Lampen leuchten</translation>
    </message>
    <message>
        <source>Rear handbrake on the last walk, while the leading one is still hard.</source>
        <translation>Die hintere Handbremse auf dem letzten Gang, solange die vordere noch fest ist.</translation>
    </message>
    <message>
        <source>Release cords pulled only with both handbrakes on</source>
        <translation>Löseschnüre nur gezogen, wenn beide Handbremsen fest sind</translation>
    </message>
    <message>
        <source>Release pipe seen at 25 before the train pipe is first raised</source>
        <translation>Löseleitung bei 25 gesehen, bevor die Zugleitung zum ersten Mal aufgebaut wird</translation>
    </message>
    <message>
        <source>Reservoir drains and fire bottles judged before any start</source>
        <translation>Behälterhähne und Löschflaschen vor jedem Anlassen beurteilt</translation>
    </message>
    <message>
        <source>Reversers not moved while moving</source>
        <translation>Richtungshebel in Fahrt nicht bewegt</translation>
    </message>
    <message>
        <source>Rigging of the motor car judged on both sides before the decision</source>
        <translation>Gestänge des Triebwagens auf beiden Seiten beurteilt, vor der Entscheidung</translation>
    </message>
    <message>
        <source>Running brake test in the first mile: applied at 15 mph or more, felt, and released again</source>
        <translation>Bremsprobe in Fahrt auf der ersten Meile: bei 15 mph oder mehr angelegt, gespürt und wieder gelöst</translation>
    </message>
    <message>
        <source>Safety device held as soon as a direction is selected</source>
        <translation>Totmann gehalten, sobald eine Richtung gewählt ist</translation>
    </message>
    <message>
        <source>Safety device held on the way</source>
        <translation>Totmann unterwegs gehalten</translation>
    </message>
    <message>
        <source>Safety device tested from 21, valve in release, before the leading handbrake comes off</source>
        <translation>Totmann aus 21 geprüft, Ventil auf Lösen, bevor die vordere Handbremse gelöst wird</translation>
    </message>
    <message>
        <source>Safety equipment of the leading cab judged</source>
        <translation>Sicherheitsausrüstung des vorderen Führerstands beurteilt</translation>
    </message>
    <message>
        <source>Safety equipment of the rear cab judged</source>
        <translation>Sicherheitsausrüstung des hinteren Führerstands beurteilt</translation>
    </message>
    <message>
        <source>Scotches looked for on both sides</source>
        <translation>Auf beiden Seiten nach Hemmschuhen gesehen</translation>
    </message>
    <message>
        <source>Secure first, then pull.</source>
        <translation>Erst sichern, dann ziehen.</translation>
    </message>
    <message>
        <source>Select, let it take hold, then open.</source>
        <translation>Wählen, fassen lassen, dann öffnen.</translation>
    </message>
    <message>
        <source>Signal clear before the brake is released or the unit moves</source>
        <translation>Signal frei, bevor die Bremse gelöst wird oder der Zug sich bewegt</translation>
    </message>
    <message>
        <source>Signal looked at again after the code</source>
        <translation>Nach dem Zeichen noch einmal nach dem Signal gesehen</translation>
    </message>
    <message>
        <source>Signaller and guard told that the unit does not go</source>
        <translation>Fahrdienstleiter und Schaffner verständigt, dass der Zug nicht fährt</translation>
    </message>
    <message>
        <source>Smoke clears, no leak, belts run, no smell: look before you leave it.</source>
        <translation>Rauch verzieht sich, nichts leckt, Riemen laufen, kein Geruch: hinsehen, bevor Sie weggehen.</translation>
    </message>
    <message>
        <source>Somebody may be under the unit, and the flag may hang on the far side only.</source>
        <translation>Jemand kann unter dem Zug sein, und die Flagge kann nur auf der anderen Seite hängen.</translation>
    </message>
    <message>
        <source>Speed limits kept</source>
        <translation>Geschwindigkeitsgrenzen eingehalten</translation>
    </message>
    <message>
        <source>Stop it first.</source>
        <translation>Erst abstellen.</translation>
    </message>
    <message>
        <source>Stop within five metres of the mark</source>
        <translation>Halt auf fünf Meter an der Tafel</translation>
    </message>
    <message>
        <source>Stop, look, then cross.</source>
        <translation>Stehen bleiben, hinsehen, dann queren.</translation>
    </message>
    <message>
        <source>Switch to cab as you leave the engine.</source>
        <translation>Schalter auf Pult, wenn Sie den Motor verlassen.</translation>
    </message>
    <message>
        <source>Take handles, keys, hand lamp and vest along</source>
        <translation>Griffe, Schlüssel, Handlampe und Weste mitnehmen</translation>
    </message>
    <message>
        <source>The band has to stop its drum first; under power it burns.</source>
        <translation>Das Band muss erst seine Trommel anhalten; unter Kraft verbrennt es.</translation>
    </message>
    <message>
        <source>The band takes hold under power and burns.</source>
        <translation>Das Band fasst unter Kraft und verbrennt.</translation>
    </message>
    <message>
        <source>The battery starts one; two at once it starts neither.</source>
        <translation>Die Batterie lässt einen an; zwei zugleich lässt sie keinen an.</translation>
    </message>
    <message>
        <source>The better one first; when it charges, the other.</source>
        <translation>Den besseren zuerst; wenn er lädt, den anderen.</translation>
    </message>
    <message>
        <source>The book is read tomorrow; the fitter is needed today.</source>
        <translation>Das Buch wird morgen gelesen; der Schlosser wird heute gebraucht.</translation>
    </message>
    <message>
        <source>The brake handle goes in after the handbrake has been judged</source>
        <translation>Der Bremsgriff wird eingesteckt, wenn die Handbremse beurteilt ist</translation>
    </message>
    <message>
        <source>The brake is proved moving before it is needed; the stop itself proves it too late.</source>
        <translation>Die Bremse wird in Fahrt erprobt, bevor sie gebraucht wird; der Halt selbst erprobt sie zu spät.</translation>
    </message>
    <message>
        <source>The classic is driving off with the other one on: hot blocks, flat wheels.</source>
        <translation>Der Klassiker ist, mit der anderen Handbremse loszufahren: heiße Klötze, flache Räder.</translation>
    </message>
    <message>
        <source>The coupling boils in silence.</source>
        <translation>Die Kupplung kocht lautlos.</translation>
    </message>
    <message>
        <source>The defect is in the book, and the unit is failed.</source>
        <translation>Der Mangel steht im Buch, und der Zug ist abgelehnt.</translation>
    </message>
    <message>
        <source>The engine runs away from you from the cab.</source>
        <translation>Der Motor läuft Ihnen vom Führerstand aus davon.</translation>
    </message>
    <message>
        <source>The fall entered is what the gauge fell in a minute, to half an inch</source>
        <translation>Der eingetragene Fall ist, was die Uhr in einer Minute fiel, auf einen halben Zoll</translation>
    </message>
    <message>
        <source>The figure proves nothing unless it came down from 21.</source>
        <translation>Die Zahl beweist nichts, wenn sie nicht von 21 herunterkam.</translation>
    </message>
    <message>
        <source>The first minute tells.</source>
        <translation>Die erste Minute sagt es.</translation>
    </message>
    <message>
        <source>The forgotten scotch.</source>
        <translation>Der vergessene Hemmschuh.</translation>
    </message>
    <message>
        <source>The freewheel spares the engine; the gearbox&apos;s drums it does not spare.</source>
        <translation>Der Freilauf schont den Motor; die Trommeln des Getriebes schont er nicht.</translation>
    </message>
    <message>
        <source>The guard&apos;s code repeated before the departure</source>
        <translation>Das Zeichen des Schaffners vor der Abfahrt wiederholt</translation>
    </message>
    <message>
        <source>The last door has to be at the platform too.</source>
        <translation>Auch die letzte Tür muss am Bahnsteig sein.</translation>
    </message>
    <message>
        <source>The leading handbrake last: the rear one off before it</source>
        <translation>Die vordere Handbremse zuletzt: die hintere vorher los</translation>
    </message>
    <message>
        <source>The next driver does not know; and the unit must not go.</source>
        <translation>Der nächste Fahrer weiß es nicht; und der Zug darf nicht fahren.</translation>
    </message>
    <message>
        <source>The next driver looks there.</source>
        <translation>Der nächste Fahrer sieht dort nach.</translation>
    </message>
    <message>
        <source>The next driver reads the book, not your mind.</source>
        <translation>Der nächste Fahrer liest das Buch, nicht Ihre Gedanken.</translation>
    </message>
    <message>
        <source>The oil is not there yet.</source>
        <translation>Das Öl ist noch nicht da.</translation>
    </message>
    <message>
        <source>The other line is live.</source>
        <translation>Auf dem Nachbargleis fahren Züge.</translation>
    </message>
    <message>
        <source>The pinion meets a turning ring.</source>
        <translation>Das Ritzel trifft einen drehenden Kranz.</translation>
    </message>
    <message>
        <source>The same things in the same order, on both sides.</source>
        <translation>Dieselben Dinge in derselben Folge, auf beiden Seiten.</translation>
    </message>
    <message>
        <source>The shed told, by word, before the decision</source>
        <translation>Die Werkstatt mündlich verständigt, vor der Entscheidung</translation>
    </message>
    <message>
        <source>The stop code must arrive.</source>
        <translation>Das Haltzeichen muss ankommen.</translation>
    </message>
    <message>
        <source>The unit climbs the bank.</source>
        <translation>Der Zug fährt die Steigung hinauf.</translation>
    </message>
    <message>
        <source>The unit is on its way.</source>
        <translation>Der Zug ist unterwegs.</translation>
    </message>
    <message>
        <source>The unit stands at the halt, held by the brake.</source>
        <translation>Der Zug steht am Haltepunkt, von der Bremse gehalten.</translation>
    </message>
    <message>
        <source>The winding burns and the battery is gone when it is needed again.</source>
        <translation>Die Wicklung verbrennt, und die Batterie ist leer, wenn sie wieder gebraucht wird.</translation>
    </message>
    <message>
        <source>The winding cools slowly.</source>
        <translation>Die Wicklung kühlt langsam ab.</translation>
    </message>
    <message>
        <source>The word is closed.</source>
        <translation>Damit ist die Verständigung abgeschlossen.</translation>
    </message>
    <message>
        <source>There is a wheel in each cab, each on its own car. Know how both stand.</source>
        <translation>In jedem Führerstand ist ein Rad, jedes für seinen Wagen. Wissen, wie beide stehen.</translation>
    </message>
    <message>
        <source>They are needed at once or not at all.</source>
        <translation>Sie werden sofort gebraucht oder gar nicht.</translation>
    </message>
    <message>
        <source>They are there for the curve, the points and the people.</source>
        <translation>Sie sind für den Bogen, die Weichen und die Menschen da.</translation>
    </message>
    <message>
        <source>They hold a road and a train for you.</source>
        <translation>Sie halten Ihnen ein Gleis und einen Zug frei.</translation>
    </message>
    <message>
        <source>Three minutes without load after each cold start</source>
        <translation>Drei Minuten ohne Last nach jedem Kaltstart</translation>
    </message>
    <message>
        <source>Three tries at most</source>
        <translation>Höchstens drei Versuche</translation>
    </message>
    <message>
        <source>Throttle shut within two seconds of lamp 1 at a cab start</source>
        <translation>Fahrschalter zu binnen zwei Sekunden nach Lampe 1 beim Anlassen vom Führerstand</translation>
    </message>
    <message>
        <source>Throttle shut within two seconds of lamp 2 at a cab start</source>
        <translation>Fahrschalter zu binnen zwei Sekunden nach Lampe 2 beim Anlassen vom Führerstand</translation>
    </message>
    <message>
        <source>Throttle shut, a heartbeat, then the gear.</source>
        <translation>Fahrschalter zu, ein Herzschlag, dann der Gang.</translation>
    </message>
    <message>
        <source>Top to bottom, always the same way round.</source>
        <translation>Von oben nach unten, immer in derselben Runde.</translation>
    </message>
    <message>
        <source>Torque on the tip of a tooth breaks it.</source>
        <translation>Drehmoment auf einer Zahnspitze bricht sie.</translation>
    </message>
    <message>
        <source>Train pipe lapped and watched for 30 seconds or more, and the fall entered</source>
        <translation>Zugleitung im Abschluss 30 Sekunden oder mehr beobachtet und der Fall eingetragen</translation>
    </message>
    <message>
        <source>Train pipe never above 22</source>
        <translation>Zugleitung nie über 22</translation>
    </message>
    <message>
        <source>Turning shafts and moving wheels kill.</source>
        <translation>Drehende Wellen und bewegte Räder töten.</translation>
    </message>
    <message>
        <source>Two keys, one lock: this is the first.</source>
        <translation>Zwei Schlüssel, ein Schloss: dies ist der erste.</translation>
    </message>
    <message>
        <source>Two keys, one lock: this is the second.</source>
        <translation>Zwei Schlüssel, ein Schloss: dies ist der zweite.</translation>
    </message>
    <message>
        <source>Two minutes at the booking-on point save an hour at the unit.</source>
        <translation>Zwei Minuten an der Meldestelle sparen eine Stunde am Zug.</translation>
    </message>
    <message>
        <source>Two strokes against a red are not answered</source>
        <translation>Zwei Schläge gegen Rot werden nicht beantwortet</translation>
    </message>
    <message>
        <source>Two strokes from the guard, still valid, before the brake is released or the unit moves</source>
        <translation>Zwei Schläge vom Schaffner, noch gültig, bevor die Bremse gelöst wird oder der Zug sich bewegt</translation>
    </message>
    <message>
        <source>Two thirds of the way at 10 mph, ease up, stop with the least on.</source>
        <translation>Nach zwei Dritteln des Weges 10 mph, nachlassen, mit wenig Bremse halten.</translation>
    </message>
    <message>
        <source>Up into the cab, open the book, write what it is and where.</source>
        <translation>Hinauf in den Führerstand, das Buch öffnen, schreiben, was es ist und wo.</translation>
    </message>
    <message>
        <source>Valve shut, gauge read, red lamps on, before you leave it.</source>
        <translation>Ventil zu, Uhr gelesen, rote Lampen ein, bevor Sie weggehen.</translation>
    </message>
    <message>
        <source>Wait for the second needle.</source>
        <translation>Auf den zweiten Zeiger warten.</translation>
    </message>
    <message>
        <source>Wait, count to thirty, then the button again.</source>
        <translation>Warten, bis dreißig zählen, dann wieder der Knopf.</translation>
    </message>
    <message>
        <source>Walk along side 1: doors, wheels, blocks, rigging, cords, pipes</source>
        <translation>An Seite 1 entlanggehen: Türen, Räder, Klötze, Gestänge, Schnüre, Leitungen</translation>
    </message>
    <message>
        <source>Walk along side 2: doors, wheels, blocks, rigging, cords, pipes</source>
        <translation>An Seite 2 entlanggehen: Türen, Räder, Klötze, Gestänge, Schnüre, Leitungen</translation>
    </message>
    <message>
        <source>Walk round first: both ends, both sides of both cars. If one hangs there, touch nothing and ask.</source>
        <translation>Erst herumgehen: beide Enden, beide Seiten beider Wagen. Hängt dort eine, nichts anfassen und fragen.</translation>
    </message>
    <message>
        <source>Warn before each start, and wait</source>
        <translation>Vor jedem Anlassen warnen und warten</translation>
    </message>
    <message>
        <source>Watch the gauge at the engine, the lamp in the cab; no pressure after ten seconds: stop it.</source>
        <translation>Die Uhr am Motor beobachten, im Führerstand die Lampe; kein Druck nach zehn Sekunden: abstellen.</translation>
    </message>
    <message>
        <source>Water freezes; and through an open drain air never builds.</source>
        <translation>Wasser gefriert; und durch einen offenen Hahn baut sich nie Luft auf.</translation>
    </message>
    <message>
        <source>What hangs loose now is gone a minute later.</source>
        <translation>Was jetzt lose hängt, ist eine Minute später weg.</translation>
    </message>
    <message>
        <source>What holds on one side says nothing of the other.</source>
        <translation>Was auf einer Seite hält, sagt nichts über die andere.</translation>
    </message>
    <message>
        <source>What stands behind is not looking.</source>
        <translation>Was hinten steht, sieht nicht hin.</translation>
    </message>
    <message>
        <source>Wheel hard, pawl in, chain tight: look at each, then say so in the notebook.</source>
        <translation>Rad fest, Klinke drin, Kette straff: jedes ansehen, dann ins Notizbuch.</translation>
    </message>
    <message>
        <source>Where the starter answers, the unit drives off at the button; that this one stays dead is luck and wiring, not care.</source>
        <translation>Wo der Anlasser anspricht, fährt der Zug auf den Knopf los; dass dieser tot bleibt, ist Glück und Schaltung, nicht Sorgfalt.</translation>
    </message>
    <message>
        <source>Whoever stands between the buffers cannot jump.</source>
        <translation>Wer zwischen den Puffern steht, kann nicht wegspringen.</translation>
    </message>
    <message>
        <source>Without fuel it only turns; with the switch at cab the button is dead.</source>
        <translation>Ohne Kraftstoff dreht er nur; mit dem Schalter auf Pult ist der Knopf tot.</translation>
    </message>
    <message>
        <source>You look for what was wrong yesterday.</source>
        <translation>Sie suchen, was gestern falsch war.</translation>
    </message>
    <message>
        <source>a bell test agreed</source>
        <translation>eine vereinbarte Klingelprobe</translation>
    </message>
    <message>
        <source>a code sent</source>
        <translation>ein gegebenes Zeichen</translation>
    </message>
    <message>
        <source>a defect found</source>
        <translation>ein gefundener Mangel</translation>
    </message>
    <message>
        <source>a direction selected</source>
        <translation>eine gewählte Richtung</translation>
    </message>
    <message>
        <source>a gear is selected</source>
        <translation>ein Gang ist gewählt</translation>
    </message>
    <message>
        <source>a hand throttle out</source>
        <translation>ein Handgas heraus</translation>
    </message>
    <message>
        <source>a handbrake on</source>
        <translation>eine Handbremse fest</translation>
    </message>
    <message>
        <source>a look ahead</source>
        <translation>ein Blick nach vorn</translation>
    </message>
    <message>
        <source>a look along both sides</source>
        <translation>ein Blick an beiden Seiten entlang</translation>
    </message>
    <message>
        <source>a look at it running</source>
        <translation>ein Blick auf den laufenden Motor</translation>
    </message>
    <message>
        <source>a look back</source>
        <translation>ein Blick zurück</translation>
    </message>
    <message>
        <source>a minute more than five is forgiven</source>
        <translation>eine Minute über fünf wird verziehen</translation>
    </message>
    <message>
        <source>a release cord is pulled</source>
        <translation>eine Löseschnur ist gezogen</translation>
    </message>
    <message>
        <source>a second less is forgiven</source>
        <translation>eine Sekunde weniger wird verziehen</translation>
    </message>
    <message>
        <source>a second more is forgiven</source>
        <translation>eine Sekunde mehr wird verziehen</translation>
    </message>
    <message>
        <source>a start</source>
        <translation>ein Anlassen</translation>
    </message>
    <message>
        <source>a start from the cab</source>
        <translation>ein Anlassen vom Führerstand</translation>
    </message>
    <message>
        <source>a starter turns an engine</source>
        <translation>ein Anlasser dreht einen Motor</translation>
    </message>
    <message>
        <source>a stop button of engine 1</source>
        <translation>ein Abstellknopf von Motor 1</translation>
    </message>
    <message>
        <source>a stop button of engine 2</source>
        <translation>ein Abstellknopf von Motor 2</translation>
    </message>
    <message>
        <source>a switch at ground</source>
        <translation>ein Schalter auf Boden</translation>
    </message>
    <message>
        <source>a warning</source>
        <translation>eine Warnung</translation>
    </message>
    <message>
        <source>all five judged</source>
        <translation>alle fünf beurteilt</translation>
    </message>
    <message>
        <source>all of it carried</source>
        <translation>alles mitgenommen</translation>
    </message>
    <message>
        <source>all of it judged</source>
        <translation>alles beurteilt</translation>
    </message>
    <message>
        <source>an application at 15 mph or more</source>
        <translation>eine Bremsung bei 15 mph oder mehr</translation>
    </message>
    <message>
        <source>an engine cold and less than three minutes old</source>
        <translation>ein Motor kalt und weniger als drei Minuten gelaufen</translation>
    </message>
    <message>
        <source>an engine runs</source>
        <translation>ein Motor läuft</translation>
    </message>
    <message>
        <source>an engine that stands</source>
        <translation>ein stehender Motor</translation>
    </message>
    <message>
        <source>assessment</source>
        <translation>Prüfung</translation>
    </message>
    <message>
        <source>battery switch, breakers and volts judged</source>
        <translation>Batterieschalter, Automaten und Spannung beurteilt</translation>
    </message>
    <message>
        <source>between or under the cars</source>
        <translation>zwischen oder unter den Wagen</translation>
    </message>
    <message>
        <source>blocks told off</source>
        <translation>Klötze los gemeldet</translation>
    </message>
    <message>
        <source>blocks told on</source>
        <translation>Klötze fest gemeldet</translation>
    </message>
    <message>
        <source>both ends and both sides of both cars looked at and judged</source>
        <translation>beide Enden und beide Seiten beider Wagen angesehen und beurteilt</translation>
    </message>
    <message>
        <source>both ends judged</source>
        <translation>beide Enden beurteilt</translation>
    </message>
    <message>
        <source>both starters at once</source>
        <translation>beide Anlasser zugleich</translation>
    </message>
    <message>
        <source>cock and seal judged</source>
        <translation>Hahn und Plombe beurteilt</translation>
    </message>
    <message>
        <source>critical</source>
        <translation>kritisch</translation>
    </message>
    <message>
        <source>defect</source>
        <translation>Mangel</translation>
    </message>
    <message>
        <source>doors shut</source>
        <translation>Türen zu</translation>
    </message>
    <message>
        <source>down to 3.5 inHg it counts as serious</source>
        <translation>bis hinunter zu 3,5 inHg gilt es als ernst</translation>
    </message>
    <message>
        <source>drains and bottles judged</source>
        <translation>Hähne und Flaschen beurteilt</translation>
    </message>
    <message>
        <source>each critical defect that was found entered</source>
        <translation>jeder gefundene kritische Mangel eingetragen</translation>
    </message>
    <message>
        <source>each defect entered</source>
        <translation>jeder Mangel eingetragen</translation>
    </message>
    <message>
        <source>engine 1 running</source>
        <translation>Motor 1 läuft</translation>
    </message>
    <message>
        <source>engine 1 running, started at its side</source>
        <translation>Motor 1 läuft, an seiner Seite angelassen</translation>
    </message>
    <message>
        <source>engine 2 running</source>
        <translation>Motor 2 läuft</translation>
    </message>
    <message>
        <source>engine 2 running, started at its side</source>
        <translation>Motor 2 läuft, an seiner Seite angelassen</translation>
    </message>
    <message>
        <source>engines are started or the unit moves</source>
        <translation>Motoren werden angelassen oder der Zug bewegt sich</translation>
    </message>
    <message>
        <source>engines, air, device lit; white in front, no red</source>
        <translation>Motoren, Luft, Totmann leuchten; vorn weiß, kein Rot</translation>
    </message>
    <message>
        <source>failing the unit</source>
        <translation>das Ablehnen des Zuges</translation>
    </message>
    <message>
        <source>false alarm</source>
        <translation>Fehlalarm</translation>
    </message>
    <message>
        <source>five metres to the mark at most</source>
        <translation>höchstens fünf Meter bis zur Tafel</translation>
    </message>
    <message>
        <source>fuel, coolant and oil judged</source>
        <translation>Kraftstoff, Kühlwasser und Öl beurteilt</translation>
    </message>
    <message>
        <source>going to the unit</source>
        <translation>das Aufsuchen des Zuges</translation>
    </message>
    <message>
        <source>good</source>
        <translation>gut</translation>
    </message>
    <message>
        <source>half a metre at most</source>
        <translation>höchstens ein halber Meter</translation>
    </message>
    <message>
        <source>half a second</source>
        <translation>eine halbe Sekunde</translation>
    </message>
    <message>
        <source>hands kept out</source>
        <translation>Hände draußen gelassen</translation>
    </message>
    <message>
        <source>hardly a turn above fast idle</source>
        <translation>kaum eine Drehung über schnellem Leerlauf</translation>
    </message>
    <message>
        <source>hit</source>
        <translation>gefunden</translation>
    </message>
    <message>
        <source>if both drives were truly in mesh, the lamp alone being dark, it counts as serious</source>
        <translation>sind beide Antriebe wirklich im Eingriff und nur die Lampe dunkel, gilt es als ernst</translation>
    </message>
    <message>
        <source>it stands</source>
        <translation>es steht</translation>
    </message>
    <message>
        <source>its release on the move</source>
        <translation>das Lösen in Fahrt</translation>
    </message>
    <message>
        <source>lamp 1 with the throttle open</source>
        <translation>Lampe 1 bei offenem Fahrschalter</translation>
    </message>
    <message>
        <source>lamp 2 with the throttle open</source>
        <translation>Lampe 2 bei offenem Fahrschalter</translation>
    </message>
    <message>
        <source>lapped</source>
        <translation>Abschluss</translation>
    </message>
    <message>
        <source>lapped at 16 to 12</source>
        <translation>Abschluss bei 16 bis 12</translation>
    </message>
    <message>
        <source>lapped at about 10</source>
        <translation>Abschluss bei etwa 10</translation>
    </message>
    <message>
        <source>lapped at about 16</source>
        <translation>Abschluss bei etwa 16</translation>
    </message>
    <message>
        <source>lapped, with vacuum</source>
        <translation>Abschluss, mit Vakuum</translation>
    </message>
    <message>
        <source>leave to walk the line given</source>
        <translation>die Erlaubnis, am Gleis zu gehen</translation>
    </message>
    <message>
        <source>leaving a platform</source>
        <translation>das Verlassen eines Bahnsteigs</translation>
    </message>
    <message>
        <source>leaving for the unit</source>
        <translation>der Aufbruch zum Zug</translation>
    </message>
    <message>
        <source>letting go at 21 with the valve in release</source>
        <translation>das Loslassen bei 21 mit dem Ventil auf Lösen</translation>
    </message>
    <message>
        <source>little work at full rack below 900 rpm</source>
        <translation>wenig Arbeit bei voller Füllung unter 900 U/min</translation>
    </message>
    <message>
        <source>looked both ways</source>
        <translation>nach beiden Seiten gesehen</translation>
    </message>
    <message>
        <source>miss</source>
        <translation>übersehen</translation>
    </message>
    <message>
        <source>moving</source>
        <translation>fährt</translation>
    </message>
    <message>
        <source>moving off</source>
        <translation>das Anfahren</translation>
    </message>
    <message>
        <source>neutral in both cabs</source>
        <translation>neutral in beiden Führerständen</translation>
    </message>
    <message>
        <source>neutral, throttle shut</source>
        <translation>neutral, Fahrschalter zu</translation>
    </message>
    <message>
        <source>no question open</source>
        <translation>keine Frage offen</translation>
    </message>
    <message>
        <source>no scotch under a wheel</source>
        <translation>kein Hemmschuh unter einem Rad</translation>
    </message>
    <message>
        <source>no signal at danger</source>
        <translation>kein Signal auf Halt</translation>
    </message>
    <message>
        <source>no signal passed at danger</source>
        <translation>kein Signal bei Halt überfahren</translation>
    </message>
    <message>
        <source>nobody at the engine, looked at and judged</source>
        <translation>niemand am Motor, angesehen und beurteilt</translation>
    </message>
    <message>
        <source>nobody endangered</source>
        <translation>niemand gefährdet</translation>
    </message>
    <message>
        <source>nobody to be seen</source>
        <translation>niemand zu sehen</translation>
    </message>
    <message>
        <source>none: either it was entered or it was not</source>
        <translation>keine: eingetragen wurde es oder nicht</translation>
    </message>
    <message>
        <source>none: either it was judged or it was not</source>
        <translation>keine: beurteilt wurde es oder nicht</translation>
    </message>
    <message>
        <source>none: either it was looked at or it was not</source>
        <translation>keine: angesehen wurde es oder nicht</translation>
    </message>
    <message>
        <source>none: either it was read or it was not</source>
        <translation>keine: gelesen wurde er oder nicht</translation>
    </message>
    <message>
        <source>none: either leave was given or it was not</source>
        <translation>keine: erlaubt wurde es oder nicht</translation>
    </message>
    <message>
        <source>none: harm is harm</source>
        <translation>keine: Schaden ist Schaden</translation>
    </message>
    <message>
        <source>none: it was passed or it was not</source>
        <translation>keine: überfahren wurde es oder nicht</translation>
    </message>
    <message>
        <source>none: the lever stands at neutral or it does not</source>
        <translation>keine: der Hebel steht auf neutral oder nicht</translation>
    </message>
    <message>
        <source>none: without the code nobody has said that the doors are shut</source>
        <translation>keine: ohne das Zeichen hat niemand gesagt, dass die Türen zu sind</translation>
    </message>
    <message>
        <source>not judged</source>
        <translation>nicht beurteilt</translation>
    </message>
    <message>
        <source>not sure</source>
        <translation>unsicher</translation>
    </message>
    <message>
        <source>notices and repair book read</source>
        <translation>Aushänge und Übergabebuch gelesen</translation>
    </message>
    <message>
        <source>on the way</source>
        <translation>unterwegs</translation>
    </message>
    <message>
        <source>one second of seeing it clear is enough</source>
        <translation>eine Sekunde frei gesehen genügt</translation>
    </message>
    <message>
        <source>power</source>
        <translation>Gas</translation>
    </message>
    <message>
        <source>power is on</source>
        <translation>es wird Gas gegeben</translation>
    </message>
    <message>
        <source>protected while between the cars</source>
        <translation>geschützt, während jemand zwischen den Wagen ist</translation>
    </message>
    <message>
        <source>right</source>
        <translation>richtig</translation>
    </message>
    <message>
        <source>running</source>
        <translation>läuft</translation>
    </message>
    <message>
        <source>running again</source>
        <translation>läuft wieder</translation>
    </message>
    <message>
        <source>saying that it does not go</source>
        <translation>die Aussage, dass er nicht fährt</translation>
    </message>
    <message>
        <source>scotches judged</source>
        <translation>Hemmschuhe beurteilt</translation>
    </message>
    <message>
        <source>secured</source>
        <translation>gesichert</translation>
    </message>
    <message>
        <source>selecting a gear</source>
        <translation>die Wahl eines Gangs</translation>
    </message>
    <message>
        <source>selecting the gear</source>
        <translation>die Wahl des Gangs</translation>
    </message>
    <message>
        <source>serious</source>
        <translation>ernst</translation>
    </message>
    <message>
        <source>standing in the platform</source>
        <translation>Stehen am Bahnsteig</translation>
    </message>
    <message>
        <source>starting engine 1</source>
        <translation>das Anlassen von Motor 1</translation>
    </message>
    <message>
        <source>starting engine 1 at its side</source>
        <translation>das Anlassen von Motor 1 an seiner Seite</translation>
    </message>
    <message>
        <source>starting engine 2</source>
        <translation>das Anlassen von Motor 2</translation>
    </message>
    <message>
        <source>starting engine 2 at its side</source>
        <translation>das Anlassen von Motor 2 an seiner Seite</translation>
    </message>
    <message>
        <source>switch at ground, hand throttle out</source>
        <translation>Schalter auf Boden, Handgas heraus</translation>
    </message>
    <message>
        <source>technique</source>
        <translation>Technik</translation>
    </message>
    <message>
        <source>telling the shed</source>
        <translation>die Meldung an die Werkstatt</translation>
    </message>
    <message>
        <source>the air lamp lit</source>
        <translation>die leuchtende Luftlampe</translation>
    </message>
    <message>
        <source>the box below its safe speed</source>
        <translation>das Getriebe unter seiner sicheren Drehzahl</translation>
    </message>
    <message>
        <source>the brake handle going in</source>
        <translation>das Einstecken des Bremsgriffs</translation>
    </message>
    <message>
        <source>the brake let off</source>
        <translation>das Lösen der Bremse</translation>
    </message>
    <message>
        <source>the code coming back</source>
        <translation>das zurückkommende Zeichen</translation>
    </message>
    <message>
        <source>the controls of both cabs judged</source>
        <translation>die Hebel beider Führerstände beurteilt</translation>
    </message>
    <message>
        <source>the decision</source>
        <translation>die Entscheidung</translation>
    </message>
    <message>
        <source>the departure</source>
        <translation>die Abfahrt</translation>
    </message>
    <message>
        <source>the device held</source>
        <translation>der gehaltene Totmann</translation>
    </message>
    <message>
        <source>the device let go</source>
        <translation>das Loslassen des Totmanns</translation>
    </message>
    <message>
        <source>the fall entered</source>
        <translation>der eingetragene Fall</translation>
    </message>
    <message>
        <source>the fire bell</source>
        <translation>die Brandglocke</translation>
    </message>
    <message>
        <source>the first hand on the unit</source>
        <translation>die erste Hand am Zug</translation>
    </message>
    <message>
        <source>the first stop</source>
        <translation>der erste Halt</translation>
    </message>
    <message>
        <source>the guard&apos;s two strokes and no signal at danger</source>
        <translation>die zwei Schläge des Schaffners und kein Signal auf Halt</translation>
    </message>
    <message>
        <source>the guard&apos;s two strokes, still valid</source>
        <translation>die zwei Schläge des Schaffners, noch gültig</translation>
    </message>
    <message>
        <source>the handbrake judged</source>
        <translation>die Handbremse beurteilt</translation>
    </message>
    <message>
        <source>the handbrake on, pawl in, judged</source>
        <translation>die Handbremse fest, Klinke drin, beurteilt</translation>
    </message>
    <message>
        <source>the high tone</source>
        <translation>der hohe Ton</translation>
    </message>
    <message>
        <source>the lamps judged</source>
        <translation>die Lampen beurteilt</translation>
    </message>
    <message>
        <source>the last try</source>
        <translation>der letzte Versuch</translation>
    </message>
    <message>
        <source>the leading handbrake coming off</source>
        <translation>das Lösen der vorderen Handbremse</translation>
    </message>
    <message>
        <source>the limit, three mph forgiven</source>
        <translation>die Grenze, drei mph werden verziehen</translation>
    </message>
    <message>
        <source>the line is crossed</source>
        <translation>das Gleis wird gequert</translation>
    </message>
    <message>
        <source>the low tone</source>
        <translation>der tiefe Ton</translation>
    </message>
    <message>
        <source>the needle below 5 with the valve in release</source>
        <translation>der Zeiger unter 5 mit dem Ventil auf Lösen</translation>
    </message>
    <message>
        <source>the needle brought below 15 with the valve</source>
        <translation>der Zeiger mit dem Ventil unter 15 gebracht</translation>
    </message>
    <message>
        <source>the needle falling in front</source>
        <translation>der fallende Zeiger vorn</translation>
    </message>
    <message>
        <source>the rear handbrake off</source>
        <translation>die hintere Handbremse los</translation>
    </message>
    <message>
        <source>the rear handbrake on and judged</source>
        <translation>die hintere Handbremse fest und beurteilt</translation>
    </message>
    <message>
        <source>the reversers left alone</source>
        <translation>die Richtungshebel in Ruhe gelassen</translation>
    </message>
    <message>
        <source>the rigging judged on both sides</source>
        <translation>das Gestänge auf beiden Seiten beurteilt</translation>
    </message>
    <message>
        <source>the signal seen clear</source>
        <translation>das frei gesehene Signal</translation>
    </message>
    <message>
        <source>the switch read and judged</source>
        <translation>der Schalter gelesen und beurteilt</translation>
    </message>
    <message>
        <source>the throttle shut</source>
        <translation>der Fahrschalter zu</translation>
    </message>
    <message>
        <source>the train pipe rising</source>
        <translation>das Steigen der Zugleitung</translation>
    </message>
    <message>
        <source>the unit counts as standing below 0.2 mph</source>
        <translation>unter 0,2 mph gilt der Zug als stehend</translation>
    </message>
    <message>
        <source>the valve at the rear opened</source>
        <translation>das Ventil hinten geöffnet</translation>
    </message>
    <message>
        <source>the valve shut</source>
        <translation>das Ventil geschlossen</translation>
    </message>
    <message>
        <source>the wheel may stand a tenth short of hard</source>
        <translation>das Rad darf ein Zehntel vor fest stehen</translation>
    </message>
    <message>
        <source>the white lamps</source>
        <translation>die weißen Lampen</translation>
    </message>
    <message>
        <source>the wiper</source>
        <translation>der Wischer</translation>
    </message>
    <message>
        <source>there is vacuum</source>
        <translation>Vakuum ist da</translation>
    </message>
    <message>
        <source>three metres are six times the half metre that counts as serious already</source>
        <translation>drei Meter sind das Sechsfache des halben Meters, der schon als ernst gilt</translation>
    </message>
    <message>
        <source>three tries at most</source>
        <translation>höchstens drei Versuche</translation>
    </message>
    <message>
        <source>two seconds less are forgiven</source>
        <translation>zwei Sekunden weniger werden verziehen</translation>
    </message>
    <message>
        <source>two strokes repeated</source>
        <translation>zwei Schläge wiederholt</translation>
    </message>
    <message>
        <source>unsure</source>
        <translation>unsicher</translation>
    </message>
    <message>
        <source>valve and gauge judged, red lamps lit</source>
        <translation>Ventil und Uhr beurteilt, rote Lampen leuchten</translation>
    </message>
    <message>
        <source>with 5 inHg of brake truly holding it counts as serious</source>
        <translation>halten wirklich 5 inHg Bremsung, gilt es als ernst</translation>
    </message>
    <message>
        <source>guided</source>
        <translation>geführt</translation>
    </message>
    <message>
        <source>practice</source>
        <translation>Übung</translation>
    </message>
    <message>
        <source>The closest of %1 times.</source>
        <translation>Das knappste von %1 Malen.</translation>
    </message>
    <message>
        <source>It did not come to this.</source>
        <translation>Dazu kam es nicht.</translation>
    </message>
    <message>
        <source>It never came to this, and it had to.</source>
        <translation>Dazu kam es nie, und es musste.</translation>
    </message>
    <message>
        <source>Kept to the end.</source>
        <translation>Bis zum Ende eingehalten.</translation>
    </message>
    <message>
        <source>The first of %1 times.</source>
        <translation>Das erste von %1 Malen.</translation>
    </message>
    <message>
        <source>Inside the tolerance: %1.</source>
        <translation>In der Toleranz: %1.</translation>
    </message>
    <message>
        <source>Kept so far.</source>
        <translation>Bisher eingehalten.</translation>
    </message>
    <message>
        <source>Still to come.</source>
        <translation>Steht noch aus.</translation>
    </message>
    <message>
        <source>Not kept.</source>
        <translation>Nicht eingehalten.</translation>
    </message>
    <message>
        <source>1 in 80 has two miles to fall, and somebody&apos;s train at the bottom.</source>
        <translation>1 zu 80 hat zwei Meilen zum Fallen, und unten steht jemandes Zug.</translation>
    </message>
    <message>
        <source>120 C at most</source>
        <translation>höchstens 120 °C</translation>
    </message>
    <message>
        <source>13 to 15, 25 to 27, 38 to 41; the note stops rising before the governor cuts: that is the moment.</source>
        <translation>13 bis 15, 25 bis 27, 38 bis 41; der Ton steigt nicht mehr, bevor der Regler abregelt: das ist der Augenblick.</translation>
    </message>
    <message>
        <source>16 or less with the valve lapped or applied</source>
        <translation>16 oder weniger bei Ventil auf Abschluss oder angelegt</translation>
    </message>
    <message>
        <source>16.5 in lap, the handbrakes off</source>
        <translation>16,5 auf Abschluss, die Handbremsen los</translation>
    </message>
    <message>
        <source>2 inHg or less with cab 2&apos;s valve</source>
        <translation>2 inHg oder weniger mit dem Ventil von Führerstand 2</translation>
    </message>
    <message>
        <source>2.5 inHg of brake</source>
        <translation>2,5 inHg Bremse</translation>
    </message>
    <message>
        <source>20 inHg or more, lapped</source>
        <translation>20 inHg oder mehr, auf Abschluss</translation>
    </message>
    <message>
        <source>200 C at most</source>
        <translation>höchstens 200 °C</translation>
    </message>
    <message>
        <source>200 C stand for more than half a minute of full power through a slipping band</source>
        <translation>200 °C stehen für mehr als eine halbe Minute voller Kraft durch ein rutschendes Band</translation>
    </message>
    <message>
        <source>21 raised from cab 2</source>
        <translation>21 von Führerstand 2 aus hergestellt</translation>
    </message>
    <message>
        <source>21 shown first, from there down to 16 or less, and not raised again</source>
        <translation>Erst 21 gezeigt, von dort herunter auf 16 oder weniger, und nicht wieder angehoben</translation>
    </message>
    <message>
        <source>22 inHg in the release pipe, half an inch forgiven</source>
        <translation>22 inHg in der Löseleitung, ein halber Zoll wird verziehen</translation>
    </message>
    <message>
        <source>22 inHg or more in the release pipe before each start from a stop</source>
        <translation>22 inHg oder mehr in der Löseleitung vor jeder Anfahrt nach einem Halt</translation>
    </message>
    <message>
        <source>30 cm at most</source>
        <translation>höchstens 30 cm</translation>
    </message>
    <message>
        <source>5 inHg of brake, half an inch forgiven</source>
        <translation>5 inHg Bremse, ein halber Zoll wird verziehen</translation>
    </message>
    <message>
        <source>75 psi on the gauge, two less forgiven</source>
        <translation>75 psi an der Uhr, zwei weniger werden verziehen</translation>
    </message>
    <message>
        <source>75 psi or more on the gauge, and seen, before a start from the cab</source>
        <translation>75 psi oder mehr an der Uhr, und gesehen, vor einem Anlassen vom Führerstand</translation>
    </message>
    <message>
        <source>80 psi on cab 2&apos;s gauge, two less forgiven</source>
        <translation>80 psi an der Uhr von Führerstand 2, zwei weniger werden verziehen</translation>
    </message>
    <message>
        <source>9 inHg of brake or less</source>
        <translation>9 inHg Bremse oder weniger</translation>
    </message>
    <message>
        <source>92 psi seen, from the cab</source>
        <translation>92 psi gesehen, vom Führerstand aus</translation>
    </message>
    <message>
        <source>A board, flag or lamp found: ask who is at work, and wait for the answer</source>
        <translation>Eine Tafel, Flagge oder Lampe gefunden: fragen, wer arbeitet, und die Antwort abwarten</translation>
    </message>
    <message>
        <source>A box that runs hot, a pin on its way out, a shaft that rubs: each of them puts a train on the ground.</source>
        <translation>Ein Lager, das heiß läuft, ein Bolzen, der herauswandert, eine Welle, die scheuert: jedes davon legt einen Zug auf den Boden.</translation>
    </message>
    <message>
        <source>A brake that is right now and gone in a minute is not right.</source>
        <translation>Eine Bremse, die jetzt stimmt und in einer Minute weg ist, stimmt nicht.</translation>
    </message>
    <message>
        <source>A cab with its handles in can be driven by whoever walks in; and at the other end the desk is dead.</source>
        <translation>Einen Führerstand mit seinen Griffen kann fahren, wer hereinkommt; und am anderen Ende ist das Pult tot.</translation>
    </message>
    <message>
        <source>A cock half shut would be the simplest cause.</source>
        <translation>Ein halb geschlossener Hahn wäre die einfachste Ursache.</translation>
    </message>
    <message>
        <source>A coupling that boils blows its plug, and then there is no engine at all.</source>
        <translation>Eine kochende Kupplung bläst ihren Stopfen aus, und dann gibt es gar keinen Motor mehr.</translation>
    </message>
    <message>
        <source>A dark lamp is a question; it has to be answered before the unit goes.</source>
        <translation>Eine dunkle Lampe ist eine Frage; sie muss beantwortet sein, bevor der Zug fährt.</translation>
    </message>
    <message>
        <source>A decision without the needle is a guess; and the needle rises slowly enough to be missed.</source>
        <translation>Eine Entscheidung ohne den Zeiger ist geraten; und der Zeiger steigt so langsam, dass man ihn übersieht.</translation>
    </message>
    <message>
        <source>A drum that has been blue breaks, and a box that breaks throws its pieces at the track.</source>
        <translation>Eine blau gewordene Trommel bricht, und ein Getriebe, das bricht, wirft seine Teile aufs Gleis.</translation>
    </message>
    <message>
        <source>A figure can be shown to others; a feeling cannot.</source>
        <translation>Eine Zahl kann man anderen zeigen, ein Gefühl nicht.</translation>
    </message>
    <message>
        <source>A first bite of 5 to 7 inches, then a wait of two seconds, before more</source>
        <translation>Eine erste Bremsstufe von 5 bis 7 Zoll, dann zwei Sekunden warten, bevor es mehr wird</translation>
    </message>
    <message>
        <source>A flag that is gone may have been taken by the wind, or by the first of two fitters.</source>
        <translation>Eine Flagge, die weg ist, kann der Wind genommen haben, oder der erste von zwei Schlossern.</translation>
    </message>
    <message>
        <source>A handbrake hard on, pawl in, before the trainee steps down from a unit that stands on the road</source>
        <translation>Eine Handbremse fest, Sperrklinke ein, bevor der Lernende von einem auf der Strecke stehenden Zug absteigt</translation>
    </message>
    <message>
        <source>A middle notch open before the button</source>
        <translation>Eine mittlere Stufe offen vor dem Knopf</translation>
    </message>
    <message>
        <source>A needle that wanders says that the brake is going somewhere.</source>
        <translation>Ein wandernder Zeiger sagt, dass die Bremse irgendwohin geht.</translation>
    </message>
    <message>
        <source>A pipe that is only lapped creeps; an empty one holds all it can.</source>
        <translation>Eine nur abgeschlossene Leitung kriecht; eine leere hält, was sie kann.</translation>
    </message>
    <message>
        <source>A stop that is run through is a brake that was not in hand.</source>
        <translation>Ein durchfahrener Halt ist eine Bremse, die man nicht in der Hand hatte.</translation>
    </message>
    <message>
        <source>A unit found protected is touched only when it is said that nobody works on it any more</source>
        <translation>Ein gesichert gefundener Zug wird erst berührt, wenn gesagt ist, dass niemand mehr an ihm arbeitet</translation>
    </message>
    <message>
        <source>A unit with a critical defect is not let go, restricted or not</source>
        <translation>Ein Zug mit einem kritischen Mangel wird nicht freigegeben, auch nicht beschränkt</translation>
    </message>
    <message>
        <source>After the stop put 6 on to hold.</source>
        <translation>Nach dem Halt 6 anlegen, um ihn festzuhalten.</translation>
    </message>
    <message>
        <source>Air behind the piston throws the sleeve back over your hand.</source>
        <translation>Luft hinter dem Kolben wirft die Muffe über Ihre Hand zurück.</translation>
    </message>
    <message>
        <source>Air lamp lit within five minutes of the reverser being put over in cab 2</source>
        <translation>Luftlampe leuchtet binnen fünf Minuten nach dem Umlegen des Richtungshebels in Führerstand 2</translation>
    </message>
    <message>
        <source>Air seen to come to its cut-out before moving</source>
        <translation>Luft am Abschaltdruck gesehen, bevor gefahren wird</translation>
    </message>
    <message>
        <source>Air that stands at 77 with two compressors working is going out somewhere; on the road it takes the gears along.</source>
        <translation>Luft, die bei zwei arbeitenden Kompressoren auf 77 stehen bleibt, entweicht irgendwo; auf der Strecke nimmt sie die Gänge mit.</translation>
    </message>
    <message>
        <source>All three defects found</source>
        <translation>Alle drei Mängel gefunden</translation>
    </message>
    <message>
        <source>An open hose is no brake; a loose lifeguard goes under the first wheel.</source>
        <translation>Ein offener Schlauch ist keine Bremse; ein loser Bahnräumer gerät unter das erste Rad.</translation>
    </message>
    <message>
        <source>Apply to 15, lap, half a minute with your eyes on it.</source>
        <translation>Auf 15 bremsen, Abschluss, eine halbe Minute die Augen darauf.</translation>
    </message>
    <message>
        <source>Ask again, hear that it is yours, look again at the place: then touch it.</source>
        <translation>Noch einmal fragen, hören, dass er Ihnen gehört, noch einmal an der Stelle nachsehen: dann berühren.</translation>
    </message>
    <message>
        <source>Ask early: the walk to the rear takes the best part of a minute.</source>
        <translation>Früh fragen: der Weg nach hinten dauert fast eine Minute.</translation>
    </message>
    <message>
        <source>At 60 mph six seconds more are a sixth of a mile with nobody driving.</source>
        <translation>Bei 60 mph sind sechs Sekunden mehr eine Sechstelmeile ohne Führer.</translation>
    </message>
    <message>
        <source>At the stop: down at side 2, the burnt smell, the brown paint.</source>
        <translation>Beim Halt: auf Seite 2 hinunter, der Brandgeruch, die braune Farbe.</translation>
    </message>
    <message>
        <source>At walking pace anything stops her; a minute later nothing does.</source>
        <translation>Im Schritttempo hält ihn alles auf, eine Minute später nichts mehr.</translation>
    </message>
    <message>
        <source>Bell of cab 2 tried both ways before moving</source>
        <translation>Klingel von Führerstand 2 in beiden Richtungen erprobt, bevor gefahren wird</translation>
    </message>
    <message>
        <source>Bell tried both ways before the unit is ready</source>
        <translation>Klingel in beiden Richtungen erprobt, bevor der Zug bereit ist</translation>
    </message>
    <message>
        <source>Both ends judged before the decision: hoses, coupling, lamps, display, window, steps, lifeguards</source>
        <translation>Beide Enden vor der Entscheidung beurteilt: Schläuche, Kupplung, Lampen, Zielanzeige, Fenster, Tritte, Bahnräumer</translation>
    </message>
    <message>
        <source>Both engines judged before the decision: fuel, coolant, oil, belts, exhaust, tray, gearbox, final drive, cover</source>
        <translation>Beide Motoren vor der Entscheidung beurteilt: Kraftstoff, Kühlwasser, Öl, Riemen, Auspuff, Wanne, Getriebe, Achsgetriebe, Haube</translation>
    </message>
    <message>
        <source>Both engines run, air and vacuum are up, the handbrake holds.</source>
        <translation>Beide Motoren laufen, Luft und Vakuum sind da, die Handbremse hält.</translation>
    </message>
    <message>
        <source>Both handbrakes hard on while the sleeve is drawn</source>
        <translation>Beide Handbremsen fest, während die Muffe gezogen wird</translation>
    </message>
    <message>
        <source>Both handbrakes left on, and no gear selected</source>
        <translation>Beide Handbremsen fest gelassen und kein Gang eingelegt</translation>
    </message>
    <message>
        <source>Both handbrakes on while brake and device are tried</source>
        <translation>Beide Handbremsen fest, während Bremse und Totmann erprobt werden</translation>
    </message>
    <message>
        <source>Brake handle, reversing lever and key taken along</source>
        <translation>Bremsgriff, Richtungshebel und Schlüssel mitgenommen</translation>
    </message>
    <message>
        <source>By its lamps the others know which way you go.</source>
        <translation>An seinen Lampen sehen die anderen, wohin er fährt.</translation>
    </message>
    <message>
        <source>Cab 2&apos;s air lamp lit before power is put on</source>
        <translation>Luftlampe von Führerstand 2 leuchtet, bevor Kraft gegeben wird</translation>
    </message>
    <message>
        <source>Cab 2&apos;s safety device held on the way</source>
        <translation>Totmann von Führerstand 2 unterwegs gehalten</translation>
    </message>
    <message>
        <source>Cab 2&apos;s safety device tested from 21, valve in release, before the last handbrake comes off</source>
        <translation>Totmann von Führerstand 2 von 21 aus erprobt, Ventil auf Lösen, bevor die letzte Handbremse losgeht</translation>
    </message>
    <message>
        <source>Called at Osmundley Strand and Osmundley Quay before Marrowick</source>
        <translation>In Osmundley Strand und Osmundley Quay gehalten, vor Marrowick</translation>
    </message>
    <message>
        <source>Cock and seal looked at before the decision</source>
        <translation>Hahn und Plombe angesehen, bevor entschieden wird</translation>
    </message>
    <message>
        <source>Coolant and tray of engine 2 looked at and judged before the decision</source>
        <translation>Kühlwasser und Wanne von Motor 2 angesehen und beurteilt, bevor entschieden wird</translation>
    </message>
    <message>
        <source>Count from letting go to the fall of the needle, enter the figure.</source>
        <translation>Vom Loslassen bis zum Fallen des Zeigers zählen, die Zahl eintragen.</translation>
    </message>
    <message>
        <source>Coupling of the engine that is left below 120 C</source>
        <translation>Kupplung des verbliebenen Motors unter 120 °C</translation>
    </message>
    <message>
        <source>Critical: somebody is hurt or the train is lost. Serious: it fails on the road. Technical: it goes with the unit.</source>
        <translation>Kritisch: jemand wird verletzt, oder der Zug ist verloren. Ernst: er bleibt unterwegs liegen. Technisch: es fährt mit.</translation>
    </message>
    <message>
        <source>Dark: read the gauge first. Good air and a dark lamp is mesh: let the shaft of that drive turn, or put the reverser the other way and back.</source>
        <translation>Dunkel: erst die Uhr ablesen. Gute Luft und dunkle Lampe ist der Eingriff: die Welle dieses Achsgetriebes drehen lassen, oder den Richtungshebel in die andere Richtung und zurück.</translation>
    </message>
    <message>
        <source>Defects put in the class they have: goes, goes with care, stops the unit</source>
        <translation>Mängel in die richtige Klasse gesetzt: fährt, fährt mit Vorsicht, legt den Zug still</translation>
    </message>
    <message>
        <source>Detonators, flags, extinguisher, handbrake: look at each, judge it.</source>
        <translation>Knallkapseln, Flaggen, Feuerlöscher, Handbremse: jedes ansehen, beurteilen.</translation>
    </message>
    <message>
        <source>Device held, notch 2, a breath for the air to get there, then the button.</source>
        <translation>Totmann gehalten, Stufe 2, einen Atemzug, bis die Luft dort ist, dann der Knopf.</translation>
    </message>
    <message>
        <source>Device tested from 21, valve in release, handbrake on, down to below 5</source>
        <translation>Totmann von 21 aus erprobt, Ventil auf Lösen, Handbremse fest, herunter bis unter 5</translation>
    </message>
    <message>
        <source>Display of the new front end set as at the rear</source>
        <translation>Zielanzeige des neuen vorderen Endes wie am hinteren gestellt</translation>
    </message>
    <message>
        <source>Doors are open; and 1 in 100 does not ask.</source>
        <translation>Türen stehen offen; und 1 zu 100 fragt nicht.</translation>
    </message>
    <message>
        <source>Down at side 2: the green pool, the empty header tank.</source>
        <translation>Auf Seite 2 hinunter: die grüne Lache, der leere Ausgleichbehälter.</translation>
    </message>
    <message>
        <source>Each defect found is in the repair book before the decision</source>
        <translation>Jeder gefundene Mangel steht im Übergabebuch, bevor entschieden wird</translation>
    </message>
    <message>
        <source>Each release is paid out of the reservoir; the third is slow and the fourth does not come.</source>
        <translation>Jedes Lösen bezahlt der Behälter; das dritte ist langsam, und das vierte kommt nicht.</translation>
    </message>
    <message>
        <source>Each second under power is burnt lining.</source>
        <translation>Jede Sekunde unter Kraft ist verbrannter Belag.</translation>
    </message>
    <message>
        <source>Ease up in steps to 17 or 18, stop with the least on, then put 6 on to hold.</source>
        <translation>In Stufen auf 17 oder 18 nachlassen, mit so wenig wie möglich halten, dann 6 anlegen, um festzuhalten.</translation>
    </message>
    <message>
        <source>Engine 2 and its drive are out of use, and the unit climbs on restricted.</source>
        <translation>Motor 2 und sein Antrieb sind außer Betrieb, und der Zug fährt beschränkt bergauf weiter.</translation>
    </message>
    <message>
        <source>Engine 2 and its drive are out of use, and the unit goes on restricted.</source>
        <translation>Motor 2 und sein Antrieb sind außer Betrieb, und der Zug fährt beschränkt weiter.</translation>
    </message>
    <message>
        <source>Engine 2 not tried again more than once</source>
        <translation>Motor 2 nicht mehr als einmal wieder versucht</translation>
    </message>
    <message>
        <source>Engine stopped, switch off, shift air shut, sleeve to the middle, pin in.</source>
        <translation>Motor aus, Schalter aus, Schaltluft zu, Muffe in die Mitte, Bolzen ein.</translation>
    </message>
    <message>
        <source>Fifteen that becomes nineteen by itself holds nobody on a bank.</source>
        <translation>Fünfzehn, die von selbst neunzehn werden, halten niemanden auf einer Rampe.</translation>
    </message>
    <message>
        <source>First gear only when the signal is clear</source>
        <translation>Erster Gang erst, wenn das Signal frei ist</translation>
    </message>
    <message>
        <source>First gear, pause, three notches, feel it lean on the brake, then ease the brake off.</source>
        <translation>Erster Gang, Pause, drei Stufen, fühlen, wie er sich gegen die Bremse legt, dann nachlassen.</translation>
    </message>
    <message>
        <source>From 21 to nothing and back to 21, handbrakes on.</source>
        <translation>Von 21 auf null und zurück auf 21, Handbremsen fest.</translation>
    </message>
    <message>
        <source>From the ground nobody reaches the brake valve; and vacuum leaks away.</source>
        <translation>Vom Boden aus reicht niemand an das Bremsventil, und Vakuum leckt weg.</translation>
    </message>
    <message>
        <source>From then on nobody in the train can put the brake on with a valve.</source>
        <translation>Von da an kann niemand im Zug die Bremse mit einem Ventil anlegen.</translation>
    </message>
    <message>
        <source>Full application before the brake handle comes out</source>
        <translation>Vollbremsung, bevor der Bremsgriff herauskommt</translation>
    </message>
    <message>
        <source>Full application from 21 with cab 2&apos;s valve, seen on its needle, before the last handbrake comes off</source>
        <translation>Vollbremsung von 21 mit dem Ventil von Führerstand 2, an seinem Zeiger gesehen, bevor die letzte Handbremse losgeht</translation>
    </message>
    <message>
        <source>Gauge good and lamp dark is mesh. Which drive? The one whose shaft stands still.</source>
        <translation>Uhr gut und Lampe dunkel ist der Eingriff. Welches Achsgetriebe? Das, dessen Welle steht.</translation>
    </message>
    <message>
        <source>Gear at neutral, throttle shut, reverser at off in the cab that is left</source>
        <translation>Gang auf Leerlauf, Fahrschalter zu, Richtungshebel aus im verlassenen Führerstand</translation>
    </message>
    <message>
        <source>Handbrake hard on, pawl in, before the brake handle comes out of the cab that is left</source>
        <translation>Handbremse fest, Sperrklinke ein, bevor der Bremsgriff aus dem verlassenen Führerstand herauskommt</translation>
    </message>
    <message>
        <source>Handle to cab 2, 21, 15, lap, half a minute.</source>
        <translation>Griff in Führerstand 2, 21, 15, Abschluss, eine halbe Minute.</translation>
    </message>
    <message>
        <source>He has the passengers, the rear valve and half the eyes.</source>
        <translation>Er hat die Fahrgäste, das hintere Ventil und die halben Augen.</translation>
    </message>
    <message>
        <source>He holds a road for you and counts the minutes.</source>
        <translation>Er hält einen Fahrweg für Sie frei und zählt die Minuten.</translation>
    </message>
    <message>
        <source>He holds a road for you, and others behind you.</source>
        <translation>Er hält einen Fahrweg für Sie frei, und andere hinter Ihnen.</translation>
    </message>
    <message>
        <source>He plans the road by what you can do.</source>
        <translation>Er plant den Fahrweg nach dem, was Sie können.</translation>
    </message>
    <message>
        <source>He plans the road: a unit at half power fills it twice as long.</source>
        <translation>Er plant den Fahrweg: ein Zug mit halber Kraft belegt ihn doppelt so lange.</translation>
    </message>
    <message>
        <source>Held by 6 inHg or more while it waits on the bank</source>
        <translation>Mit 6 inHg oder mehr gehalten, während er auf der Rampe wartet</translation>
    </message>
    <message>
        <source>If she moves: full application or the handbrake within five seconds</source>
        <translation>Bewegt er sich: Vollbremsung oder die Handbremse binnen fünf Sekunden</translation>
    </message>
    <message>
        <source>If she stirs: full application at once, and the handbrake.</source>
        <translation>Rührt er sich: sofort Vollbremsung, und die Handbremse.</translation>
    </message>
    <message>
        <source>If the needle has wandered: apply again.</source>
        <translation>Ist der Zeiger gewandert: noch einmal bremsen.</translation>
    </message>
    <message>
        <source>If the needle rises with the handbrakes off: full application at once, and the wheel.</source>
        <translation>Steigt der Zeiger bei losen Handbremsen: sofort Vollbremsung, und das Rad.</translation>
    </message>
    <message>
        <source>In gear against the brake the coupling boils in silence.</source>
        <translation>Im Gang gegen die Bremse kocht die Kupplung still vor sich hin.</translation>
    </message>
    <message>
        <source>In neutral the drums spin far above the shaft; and power is not to be had when it is wanted.</source>
        <translation>Im Leerlauf drehen die Trommeln weit über der Welle; und Kraft ist nicht da, wenn sie gebraucht wird.</translation>
    </message>
    <message>
        <source>Iron blocks bite harder as the speed falls: what was right at 30 throws people over at 5.</source>
        <translation>Eisenklötze beißen fester, wenn die Geschwindigkeit fällt: was bei 30 recht war, wirft die Leute bei 5 um.</translation>
    </message>
    <message>
        <source>It has stopped itself: what stopped it is still there.</source>
        <translation>Er hat sich selbst abgestellt: was ihn abgestellt hat, ist noch da.</translation>
    </message>
    <message>
        <source>It is another device: the one in cab 1 will not stop this cab.</source>
        <translation>Es ist ein anderer Totmann: der in Führerstand 1 hält diesen Führerstand nicht an.</translation>
    </message>
    <message>
        <source>It is another valve: what the one in cab 1 did proves nothing of it.</source>
        <translation>Es ist ein anderes Ventil: was das in Führerstand 1 tat, beweist nichts für dieses.</translation>
    </message>
    <message>
        <source>It is in the book, the unit does not go up the bank with this valve, and a handbrake holds it.</source>
        <translation>Es steht im Buch, der Zug fährt mit diesem Ventil nicht die Rampe hinauf, und eine Handbremse hält ihn.</translation>
    </message>
    <message>
        <source>It stays where it is, on its handbrakes, until it is fetched or mended.</source>
        <translation>Er bleibt, wo er ist, auf seinen Handbremsen, bis er geholt oder instand gesetzt wird.</translation>
    </message>
    <message>
        <source>Judge the cock and seal of cab 2&apos;s safety device before moving</source>
        <translation>Hahn und Plombe des Totmanns von Führerstand 2 beurteilen, bevor gefahren wird</translation>
    </message>
    <message>
        <source>Judge the cock and seal of the leading cab&apos;s safety device before its handbrake comes off</source>
        <translation>Hahn und Plombe des Totmanns im vorderen Führerstand beurteilen, bevor dessen Handbremse losgeht</translation>
    </message>
    <message>
        <source>Judge the cock and seal of the rear cab&apos;s safety device before the leading handbrake comes off</source>
        <translation>Hahn und Plombe des Totmanns im hinteren Führerstand beurteilen, bevor die vordere Handbremse losgeht</translation>
    </message>
    <message>
        <source>Keep the engine near its governed speed: a lower gear; do not hang on the hill in third.</source>
        <translation>Den Motor nahe seiner Höchstdrehzahl halten: ein niedrigerer Gang; nicht im dritten am Berg hängen.</translation>
    </message>
    <message>
        <source>Lamp lit, throttle shut, listen; warn anew; then the other one.</source>
        <translation>Lampe an, Fahrschalter zu, hören; neu warnen; dann der andere.</translation>
    </message>
    <message>
        <source>Lamps of the desk judged under the lamp test before any start</source>
        <translation>Lampen des Pults unter der Lampenprobe beurteilt, bevor angelassen wird</translation>
    </message>
    <message>
        <source>Lap, count three, look again.</source>
        <translation>Abschluss, bis drei zählen, wieder hinsehen.</translation>
    </message>
    <message>
        <source>Last handbrake off only with the power brake holding: 5 inHg or more between chambers and pipe</source>
        <translation>Letzte Handbremse nur los, wenn die Vakuumbremse hält: 5 inHg oder mehr zwischen Kammern und Leitung</translation>
    </message>
    <message>
        <source>Late is not works. The unit fails; signal and guard do not know what you know.</source>
        <translation>Spät ist nicht in Ordnung. Der Zug fährt nicht; Signal und Schaffner wissen nicht, was Sie wissen.</translation>
    </message>
    <message>
        <source>Leave it in the gear that fits the speed: the freewheel does the rest.</source>
        <translation>Im Gang bleiben, der zur Geschwindigkeit passt: den Rest tut der Freilauf.</translation>
    </message>
    <message>
        <source>Leave it unanswered and tell him what is the matter.</source>
        <translation>Unbeantwortet lassen und ihm sagen, was los ist.</translation>
    </message>
    <message>
        <source>Look both ways, cross, and do it all once more.</source>
        <translation>Nach beiden Seiten sehen, hinübergehen, und alles noch einmal.</translation>
    </message>
    <message>
        <source>Look for boards, flags and lamps at both ends and along both sides before boarding</source>
        <translation>Vor dem Einsteigen an beiden Enden und an beiden Seiten nach Tafeln, Flaggen und Lampen sehen</translation>
    </message>
    <message>
        <source>Low down on either side, by ear; then the hand on the cock.</source>
        <translation>Unten auf beiden Seiten, nach dem Gehör; dann die Hand an den Hahn.</translation>
    </message>
    <message>
        <source>Minutes are long on a grade, and vacuum leaks.</source>
        <translation>Minuten sind lang auf einer Neigung, und Vakuum leckt.</translation>
    </message>
    <message>
        <source>Never both handbrakes off with hardly any brake left: 2.5 inHg at the least</source>
        <translation>Nie beide Handbremsen los bei kaum noch Bremse: mindestens 2,5 inHg</translation>
    </message>
    <message>
        <source>No gear selected with the air lamp dark</source>
        <translation>Kein Gang bei dunkler Luftlampe eingelegt</translation>
    </message>
    <message>
        <source>No more than one sound thing called a defect</source>
        <translation>Nicht mehr als ein heiles Ding einen Mangel genannt</translation>
    </message>
    <message>
        <source>No more than three releases to a stop</source>
        <translation>Nicht mehr als drei Lösungen je Halt</translation>
    </message>
    <message>
        <source>No power on the falling grade</source>
        <translation>Keine Kraft im Gefälle</translation>
    </message>
    <message>
        <source>No power through a band that slips: second gear, or one notch.</source>
        <translation>Keine Kraft durch ein rutschendes Band: zweiter Gang, oder eine Stufe.</translation>
    </message>
    <message>
        <source>No refill hot, no trying again and again: look, isolate.</source>
        <translation>Heiß nicht nachfüllen, nicht immer wieder versuchen: nachsehen, abtrennen.</translation>
    </message>
    <message>
        <source>No revving to knock the teeth in</source>
        <translation>Kein Hochjagen, um die Zähne hineinzuschlagen</translation>
    </message>
    <message>
        <source>No rolling in neutral above 25 mph</source>
        <translation>Kein Rollen im Leerlauf über 25 mph</translation>
    </message>
    <message>
        <source>Nobody can hold the device in front and look at blocks behind.</source>
        <translation>Niemand kann vorn den Totmann halten und hinten Klötze ansehen.</translation>
    </message>
    <message>
        <source>Not moved with a safety device that acts late</source>
        <translation>Nicht gefahren mit einem Totmann, der spät wirkt</translation>
    </message>
    <message>
        <source>Old, dry, painted over, entered and signed: that is history, not a defect.</source>
        <translation>Alt, trocken, überstrichen, eingetragen und unterschrieben: das ist Vergangenheit, kein Mangel.</translation>
    </message>
    <message>
        <source>On a hill there is nothing else to hold the unit, and here is half of it.</source>
        <translation>Am Berg hält den Zug sonst nichts, und hier ist nur die Hälfte davon da.</translation>
    </message>
    <message>
        <source>On restricted only with the signaller&apos;s leave</source>
        <translation>Beschränkt weiter nur mit Erlaubnis des Fahrdienstleiters</translation>
    </message>
    <message>
        <source>On the bank power taken before the brake is let off</source>
        <translation>Auf der Rampe Kraft gegeben, bevor die Bremse gelöst wird</translation>
    </message>
    <message>
        <source>On, off, on, off: each of them is paid out of the reservoir.</source>
        <translation>An, los, an, los: jedes davon bezahlt der Behälter.</translation>
    </message>
    <message>
        <source>Once can be a slip of the thumb; twice is the device.</source>
        <translation>Einmal kann der Daumen gerutscht sein; zweimal ist es der Totmann.</translation>
    </message>
    <message>
        <source>One application, one easing up, few corrections.</source>
        <translation>Eine Bremsung, einmal nachlassen, wenige Korrekturen.</translation>
    </message>
    <message>
        <source>One critical defect is enough: fail it.</source>
        <translation>Ein kritischer Mangel genügt: den Zug stilllegen.</translation>
    </message>
    <message>
        <source>One gear or all, one engine or both: the ear says where, the eye says what.</source>
        <translation>Ein Gang oder alle, ein Motor oder beide: das Ohr sagt, wo, das Auge sagt, was.</translation>
    </message>
    <message>
        <source>One look at the gauge. Less than 75: start at the engine.</source>
        <translation>Ein Blick auf die Uhr. Weniger als 75: am Motor anlassen.</translation>
    </message>
    <message>
        <source>One pipe, two valves: the one that holds says which does not.</source>
        <translation>Eine Leitung, zwei Ventile: das, welches hält, sagt, welches nicht.</translation>
    </message>
    <message>
        <source>One tachometer leaves the other: shut off, read the air, give that gear ten seconds, open again.</source>
        <translation>Ein Drehzahlmesser verlässt den anderen: abschalten, die Luft ablesen, diesem Gang zehn Sekunden geben, wieder öffnen.</translation>
    </message>
    <message>
        <source>Only so is it the device that puts the brake on.</source>
        <translation>Nur so ist es der Totmann, der die Bremse anlegt.</translation>
    </message>
    <message>
        <source>Only who hung it knows when it may go.</source>
        <translation>Nur wer sie aufgehängt hat, weiß, wann sie weg darf.</translation>
    </message>
    <message>
        <source>Passengers read the front.</source>
        <translation>Fahrgäste lesen die Front.</translation>
    </message>
    <message>
        <source>Power shut off within eight seconds of one engine running away in second, each time</source>
        <translation>Kraft abgeschaltet binnen acht Sekunden, nachdem ein Motor im zweiten davonläuft, jedes Mal</translation>
    </message>
    <message>
        <source>Power shut off within eight seconds of the band slipping under power, each time</source>
        <translation>Kraft abgeschaltet binnen acht Sekunden, nachdem das Band unter Kraft rutscht, jedes Mal</translation>
    </message>
    <message>
        <source>Power up to the brake is fuel turned into hot blocks.</source>
        <translation>Kraft bis zur Bremse ist Kraftstoff, aus dem heiße Klötze werden.</translation>
    </message>
    <message>
        <source>Raise 21, lap, ask: within an inch of yours, 19.5 at the least.</source>
        <translation>Auf 21 bringen, Abschluss, fragen: bis auf einen Zoll wie bei Ihnen, mindestens 19,5.</translation>
    </message>
    <message>
        <source>Read the gauge, walk and listen, shut what is open, wait for 95.</source>
        <translation>Die Uhr ablesen, gehen und horchen, schließen, was offen ist, auf 95 warten.</translation>
    </message>
    <message>
        <source>Read the second needle. Less than 22: wait at idle, half a minute does it.</source>
        <translation>Den zweiten Zeiger ablesen. Weniger als 22: im Leerlauf warten, eine halbe Minute genügt.</translation>
    </message>
    <message>
        <source>Read the tachometer, shut off, stop where you can stand; not on the steep part.</source>
        <translation>Den Drehzahlmesser ablesen, abschalten, halten, wo Sie stehen können; nicht auf dem steilen Stück.</translation>
    </message>
    <message>
        <source>Red behind and none in front, white in front and none behind, before moving</source>
        <translation>Rot hinten und keines vorn, Weiß vorn und keines hinten, bevor gefahren wird</translation>
    </message>
    <message>
        <source>Red on in the cab you leave, white off; the other way round in the cab you take.</source>
        <translation>Rot an im verlassenen Führerstand, Weiß aus; umgekehrt in dem, den Sie übernehmen.</translation>
    </message>
    <message>
        <source>Repeat it once, and time it. Not five times: that is hoping.</source>
        <translation>Einmal wiederholen, und die Zeit nehmen. Nicht fünfmal: das ist Hoffen.</translation>
    </message>
    <message>
        <source>Reverser each way, standing: the pinned sleeve does not stir, the lamp lights.</source>
        <translation>Richtungshebel beide Wege, im Stand: die gesperrte Muffe rührt sich nicht, die Lampe leuchtet.</translation>
    </message>
    <message>
        <source>Safety equipment and handbrake of cab 2 judged before moving</source>
        <translation>Sicherheitsausrüstung und Handbremse von Führerstand 2 beurteilt, bevor gefahren wird</translation>
    </message>
    <message>
        <source>Said to those who wait that the unit does not go, within two minutes of the decision</source>
        <translation>Denen, die warten, binnen zwei Minuten nach der Entscheidung gesagt, dass der Zug nicht fährt</translation>
    </message>
    <message>
        <source>Say what is out of use and what you can do, ask, wait for the answer.</source>
        <translation>Sagen, was außer Betrieb ist und was Sie können, fragen, die Antwort abwarten.</translation>
    </message>
    <message>
        <source>Say what is the matter and what you are going to do, first by word, then in the book.</source>
        <translation>Sagen, was los ist und was Sie tun werden, erst mündlich, dann im Buch.</translation>
    </message>
    <message>
        <source>Second gear not below 11 mph, third not below 22, top not below 34, when power is put on</source>
        <translation>Zweiter Gang nicht unter 11 mph, dritter nicht unter 22, höchster nicht unter 34, wenn Kraft gegeben wird</translation>
    </message>
    <message>
        <source>Seen rising with both handbrakes off: full application or the handbrake within 20 seconds</source>
        <translation>Steigen gesehen bei losen Handbremsen: Vollbremsung oder die Handbremse binnen 20 Sekunden</translation>
    </message>
    <message>
        <source>She runs by herself; power there is fuel for the blocks.</source>
        <translation>Er läuft von selbst; Kraft ist dort Futter für die Klötze.</translation>
    </message>
    <message>
        <source>Shift air of the final drive shut and vented before the sleeve is drawn</source>
        <translation>Schaltluft des Achsgetriebes zu und entlüftet, bevor die Muffe gezogen wird</translation>
    </message>
    <message>
        <source>Shut off early, leave it in the gear that fits, let her roll.</source>
        <translation>Früh abschalten, im passenden Gang bleiben, rollen lassen.</translation>
    </message>
    <message>
        <source>Side 1 of both cars judged before the decision: doors, windows, skirts, wheels, brake, springs, boxes, pipes</source>
        <translation>Seite 1 beider Wagen vor der Entscheidung beurteilt: Türen, Fenster, Schürzen, Räder, Bremse, Federn, Lager, Rohre</translation>
    </message>
    <message>
        <source>Side 2 of both cars judged before the decision: the same things as on side 1</source>
        <translation>Seite 2 beider Wagen vor der Entscheidung beurteilt: dasselbe wie auf Seite 1</translation>
    </message>
    <message>
        <source>Signal clear before the brake is released or the unit moves, cab 2 leading</source>
        <translation>Signal frei, bevor die Bremse gelöst wird oder der Zug sich bewegt, Führerstand 2 vorn</translation>
    </message>
    <message>
        <source>Signaller told, by word, within two minutes of deciding not to go on as usual</source>
        <translation>Dem Fahrdienstleiter mündlich gesagt, binnen zwei Minuten nach dem Entschluss, nicht wie üblich weiterzufahren</translation>
    </message>
    <message>
        <source>Standing at a stop she stands: no creeping down the grade</source>
        <translation>Am Halt steht der Zug: kein Kriechen ins Gefälle</translation>
    </message>
    <message>
        <source>Standing within two minutes of an engine going silent on the bank</source>
        <translation>Steht binnen zwei Minuten, nachdem ein Motor auf der Rampe verstummt</translation>
    </message>
    <message>
        <source>Stop, full application, handbrake hard, pawl in, signaller told: then step down.</source>
        <translation>Halten, Vollbremsung, Handbremse fest, Sperrklinke ein, Fahrdienstleiter verständigt: dann absteigen.</translation>
    </message>
    <message>
        <source>Stop, full application, wheel hard, pawl in; then the handle.</source>
        <translation>Halten, Vollbremsung, Rad fest, Sperrklinke ein; dann der Griff.</translation>
    </message>
    <message>
        <source>Ten seconds of coasting before the brake for a stop</source>
        <translation>Zehn Sekunden gerollt vor der Bremse zu einem Halt</translation>
    </message>
    <message>
        <source>Tested twice before the decision</source>
        <translation>Zweimal erprobt, bevor entschieden wird</translation>
    </message>
    <message>
        <source>The band that comes late slips under power and burns.</source>
        <translation>Das Band, das spät kommt, rutscht unter Kraft und verbrennt.</translation>
    </message>
    <message>
        <source>The blocks need the time to come on; what is put on before they bite is too much a moment later.</source>
        <translation>Die Klötze brauchen Zeit zum Anlegen; was vor dem Biss dazukommt, ist einen Augenblick später zu viel.</translation>
    </message>
    <message>
        <source>The brake has vacuum now; nobody has proved yet that it brakes.</source>
        <translation>Die Bremse hat jetzt Vakuum; dass sie bremst, hat noch niemand bewiesen.</translation>
    </message>
    <message>
        <source>The brake holds for 20 seconds from when the leading handbrake is off</source>
        <translation>Die Bremse hält 20 Sekunden, nachdem die vordere Handbremse los ist</translation>
    </message>
    <message>
        <source>The brake not fanned: never less than 20 inHg in the release pipe on the move</source>
        <translation>Die Bremse nicht leergepumpt: nie weniger als 20 inHg in der Löseleitung während der Fahrt</translation>
    </message>
    <message>
        <source>The by-pass proved: air lamp lit in both directions with the drive pinned, before going on</source>
        <translation>Die Überbrückung bewiesen: Luftlampe leuchtet in beiden Richtungen bei gesperrtem Achsgetriebe, bevor es weitergeht</translation>
    </message>
    <message>
        <source>The cab you were in says nothing of this one.</source>
        <translation>Der vorige Führerstand sagt nichts von diesem.</translation>
    </message>
    <message>
        <source>The cab&apos;s throttle is moved by air: without it the engine turns and does not fire, and the battery pays.</source>
        <translation>Den Fahrschalter des Führerstands bewegt Luft: ohne sie dreht der Motor und zündet nicht, und die Batterie bezahlt.</translation>
    </message>
    <message>
        <source>The class said with each of the three: critical, serious, technical</source>
        <translation>Zu jedem der drei die Klasse gesagt: kritisch, ernst, technisch</translation>
    </message>
    <message>
        <source>The cock is the shed&apos;s. A device that does not work right fails the unit; it is not shut off to get away.</source>
        <translation>Der Hahn gehört der Werkstatt. Ein Totmann, der nicht richtig wirkt, legt den Zug still; er wird nicht abgesperrt, um wegzukommen.</translation>
    </message>
    <message>
        <source>The device&apos;s isolating cock left open</source>
        <translation>Der Absperrhahn des Totmanns offen gelassen</translation>
    </message>
    <message>
        <source>The drum not burnt: below 200 C</source>
        <translation>Die Trommel nicht verbrannt: unter 200 °C</translation>
    </message>
    <message>
        <source>The far side is the one nobody has looked at since yesterday.</source>
        <translation>Die ferne Seite ist die, die seit gestern niemand angesehen hat.</translation>
    </message>
    <message>
        <source>The flag is found, asked after and told of, and the unit left alone; or it is given free, looked at again and taken over.</source>
        <translation>Die Flagge ist gefunden, erfragt und gemeldet, und der Zug in Ruhe gelassen; oder er ist freigegeben, noch einmal angesehen und übernommen.</translation>
    </message>
    <message>
        <source>The gauge says that there is a hole; only the walk says where.</source>
        <translation>Die Uhr sagt, dass ein Loch da ist; nur der Gang herum sagt, wo.</translation>
    </message>
    <message>
        <source>The gearbox of engine 2 looked at and judged before the decision</source>
        <translation>Das Getriebe von Motor 2 angesehen und beurteilt, bevor entschieden wird</translation>
    </message>
    <message>
        <source>The guard is at the other end now; the stop code must arrive.</source>
        <translation>Der Schaffner ist jetzt am anderen Ende; das Haltzeichen muss ankommen.</translation>
    </message>
    <message>
        <source>The guard told what is the matter, before the decision</source>
        <translation>Dem Schaffner gesagt, was los ist, bevor entschieden wird</translation>
    </message>
    <message>
        <source>The guard&apos;s two strokes not repeated</source>
        <translation>Die zwei Schläge des Schaffners nicht wiederholt</translation>
    </message>
    <message>
        <source>The lamp has to speak for the drive that is left, in either direction.</source>
        <translation>Die Lampe muss für das verbliebene Achsgetriebe sprechen, in jeder Richtung.</translation>
    </message>
    <message>
        <source>The leading handbrake last, from the seat</source>
        <translation>Die vordere Handbremse zuletzt, vom Sitz aus</translation>
    </message>
    <message>
        <source>The matter entered in the repair book within five minutes of the decision</source>
        <translation>Die Sache binnen fünf Minuten nach der Entscheidung ins Übergabebuch eingetragen</translation>
    </message>
    <message>
        <source>The needle seen rising in lap, before the decision</source>
        <translation>Den Zeiger auf Abschluss steigen gesehen, bevor entschieden wird</translation>
    </message>
    <message>
        <source>The needle seen still for three seconds before the leading handbrake comes off</source>
        <translation>Den Zeiger drei Sekunden stillstehen gesehen, bevor die vordere Handbremse losgeht</translation>
    </message>
    <message>
        <source>The next hand goes to the throttle, and then it is too late.</source>
        <translation>Die nächste Hand geht an den Fahrschalter, und dann ist es zu spät.</translation>
    </message>
    <message>
        <source>The note runs up, the speed does not, one tachometer leaves the other: shut off first, think then.</source>
        <translation>Der Ton läuft hoch, die Geschwindigkeit nicht, ein Drehzahlmesser verlässt den anderen: erst abschalten, dann denken.</translation>
    </message>
    <message>
        <source>The one at the far end on the last walk, cab 2&apos;s own when you sit.</source>
        <translation>Die am fernen Ende beim letzten Gang, die von Führerstand 2, wenn Sie sitzen.</translation>
    </message>
    <message>
        <source>The one that runs helps the battery to turn the other.</source>
        <translation>Der laufende hilft der Batterie, den anderen zu drehen.</translation>
    </message>
    <message>
        <source>The one that was walked past is the one that fails.</source>
        <translation>Woran man vorbeiging, das versagt.</translation>
    </message>
    <message>
        <source>The open drain found, judged and shut before moving</source>
        <translation>Den offenen Ablasshahn gefunden, beurteilt und geschlossen, bevor gefahren wird</translation>
    </message>
    <message>
        <source>The power brake holds the unit, both handbrakes are off.</source>
        <translation>Die Vakuumbremse hält den Zug, beide Handbremsen sind los.</translation>
    </message>
    <message>
        <source>The rear reading asked for with the front lapped at 21</source>
        <translation>Die hintere Ablesung erfragt, vorn bei 21 auf Abschluss</translation>
    </message>
    <message>
        <source>The rear valve told shut before 21 is raised again</source>
        <translation>Das hintere Ventil als geschlossen gemeldet, bevor 21 wieder hergestellt wird</translation>
    </message>
    <message>
        <source>The running engine is not the one whose drive stands still; and teeth that are knocked in have chipped.</source>
        <translation>Der laufende Motor ist nicht der, dessen Achsgetriebe steht; und hineingeschlagene Zähne sind abgesplittert.</translation>
    </message>
    <message>
        <source>The same things in the same order at each car.</source>
        <translation>Dasselbe in derselben Reihenfolge an jedem Wagen.</translation>
    </message>
    <message>
        <source>The same tried with the other cab&apos;s valve, before the decision</source>
        <translation>Dasselbe mit dem Ventil des anderen Führerstands versucht, bevor entschieden wird</translation>
    </message>
    <message>
        <source>The second engine after the first has run for five seconds</source>
        <translation>Der zweite Motor, nachdem der erste fünf Sekunden gelaufen ist</translation>
    </message>
    <message>
        <source>The second person is at the rear before the full application of the test</source>
        <translation>Die zweite Person ist hinten, bevor die Vollbremsung der Probe kommt</translation>
    </message>
    <message>
        <source>The second person let go before the leading handbrake comes off</source>
        <translation>Die zweite Person entlassen, bevor die vordere Handbremse losgeht</translation>
    </message>
    <message>
        <source>The seconds written down before the decision</source>
        <translation>Die Sekunden aufgeschrieben, bevor entschieden wird</translation>
    </message>
    <message>
        <source>The shed has one fitter and five units: he comes to the one you call critical.</source>
        <translation>Die Werkstatt hat einen Schlosser und fünf Züge: er kommt zu dem, den Sie kritisch nennen.</translation>
    </message>
    <message>
        <source>The shed told, by word, before the unit is failed or goes on restricted</source>
        <translation>Die Werkstatt mündlich verständigt, bevor der Zug stillgelegt wird oder beschränkt weiterfährt</translation>
    </message>
    <message>
        <source>The shed told, by word, within two minutes of failing the unit</source>
        <translation>Die Werkstatt mündlich verständigt, binnen zwei Minuten nach dem Stilllegen</translation>
    </message>
    <message>
        <source>The signaller told before the unit goes on restricted</source>
        <translation>Den Fahrdienstleiter verständigt, bevor der Zug beschränkt weiterfährt</translation>
    </message>
    <message>
        <source>The signaller told that the unit is not to be had, within three minutes of knowing it</source>
        <translation>Dem Fahrdienstleiter binnen drei Minuten, nachdem man es weiß, gesagt, dass der Zug nicht zu haben ist</translation>
    </message>
    <message>
        <source>The starter turns an engine without fuel for nothing.</source>
        <translation>Der Anlasser dreht einen Motor ohne Kraftstoff für nichts.</translation>
    </message>
    <message>
        <source>The stop with a light brake: eased up at the end</source>
        <translation>Der Halt mit leichter Bremse: am Ende nachgelassen</translation>
    </message>
    <message>
        <source>The unit does not leave with this valve: no power put on</source>
        <translation>Der Zug fährt mit diesem Ventil nicht ab: keine Kraft gegeben</translation>
    </message>
    <message>
        <source>The unit does not run away</source>
        <translation>Der Zug läuft nicht weg</translation>
    </message>
    <message>
        <source>The unit is failed, those who wait know it, and it is in the book.</source>
        <translation>Der Zug ist stillgelegt, wer wartet, weiß es, und es steht im Buch.</translation>
    </message>
    <message>
        <source>The unit is on its way back, cab 2 leading.</source>
        <translation>Der Zug ist auf dem Rückweg, Führerstand 2 vorn.</translation>
    </message>
    <message>
        <source>The unit stands at Marrowick, held by the brake.</source>
        <translation>Der Zug steht in Marrowick, von der Bremse gehalten.</translation>
    </message>
    <message>
        <source>The unit stands at Wexholt, held by the brake.</source>
        <translation>Der Zug steht in Wexholt, von der Bremse gehalten.</translation>
    </message>
    <message>
        <source>The unit stands at the halt with good air, and both matters are in the book.</source>
        <translation>Der Zug steht am Haltepunkt mit guter Luft, und beides steht im Buch.</translation>
    </message>
    <message>
        <source>The unit stands on the power brake, both handbrakes off, and was looked at.</source>
        <translation>Der Zug steht auf der Vakuumbremse, beide Handbremsen los, und es wurde nach ihm gesehen.</translation>
    </message>
    <message>
        <source>The unit stands: no more than 30 cm</source>
        <translation>Der Zug steht: nicht mehr als 30 cm</translation>
    </message>
    <message>
        <source>The wheels turn its box without oil; and the steeper bank is not to be climbed like this.</source>
        <translation>Die Räder drehen sein Getriebe ohne Öl; und die steilere Rampe ist so nicht zu ersteigen.</translation>
    </message>
    <message>
        <source>The wheels turn the box of a dead engine, and its oil pump stands still.</source>
        <translation>Die Räder drehen das Getriebe eines toten Motors, und seine Ölpumpe steht still.</translation>
    </message>
    <message>
        <source>Throttle shut at each gear, and a pause of 1.4 seconds before it is opened</source>
        <translation>Fahrschalter zu bei jedem Gang, und eine Pause von 1,4 Sekunden, bevor er öffnet</translation>
    </message>
    <message>
        <source>To 16, wait, feel it; then to 12 or 10 as it needs.</source>
        <translation>Auf 16, warten, fühlen; dann auf 12 oder 10, wie es nötig ist.</translation>
    </message>
    <message>
        <source>Touch nothing, ask within two minutes, and listen to the answer.</source>
        <translation>Nichts berühren, binnen zwei Minuten fragen und auf die Antwort hören.</translation>
    </message>
    <message>
        <source>Two gauges on one pipe are compared when nothing moves in it.</source>
        <translation>Zwei Uhren an einer Leitung vergleicht man, wenn sich in ihr nichts bewegt.</translation>
    </message>
    <message>
        <source>Two strokes from the guard, still valid, before the brake is released or the unit moves, cab 2 leading</source>
        <translation>Zwei Schläge des Schaffners, noch gültig, bevor die Bremse gelöst wird oder der Zug sich bewegt, Führerstand 2 vorn</translation>
    </message>
    <message>
        <source>Under 22 the next release is slow, and the one after it does not come.</source>
        <translation>Unter 22 ist das nächste Lösen langsam, und das übernächste kommt nicht.</translation>
    </message>
    <message>
        <source>Under 900 turns at full throttle an engine labours and pulls nothing.</source>
        <translation>Unter 900 Umdrehungen bei vollem Fahrschalter quält sich ein Motor und zieht nichts.</translation>
    </message>
    <message>
        <source>Vacuum against an open valve is never raised, and the fault is looked for in the wrong place.</source>
        <translation>Gegen ein offenes Ventil kommt nie Vakuum, und der Fehler wird am falschen Ort gesucht.</translation>
    </message>
    <message>
        <source>Valve to full, see the needle at nothing, then back to lap for the handle.</source>
        <translation>Ventil auf voll, den Zeiger auf null sehen, dann zurück auf Abschluss für den Griff.</translation>
    </message>
    <message>
        <source>What does not hold standing does not stop going; and this bank has another side.</source>
        <translation>Was im Stand nicht hält, hört auch nicht auf zu fahren; und diese Rampe hat eine andere Seite.</translation>
    </message>
    <message>
        <source>What is being tried is not what holds her.</source>
        <translation>Was erprobt wird, ist nicht, was ihn hält.</translation>
    </message>
    <message>
        <source>What is held does not move.</source>
        <translation>Was gehalten wird, bewegt sich nicht.</translation>
    </message>
    <message>
        <source>What is left in there waits for the next key.</source>
        <translation>Was dort liegen bleibt, wartet auf den nächsten Schlüssel.</translation>
    </message>
    <message>
        <source>What is low now is ruined in an hour.</source>
        <translation>Was jetzt niedrig steht, ist in einer Stunde zerstört.</translation>
    </message>
    <message>
        <source>What is wrong is in the book, and the unit is failed.</source>
        <translation>Was nicht stimmt, steht im Buch, und der Zug ist stillgelegt.</translation>
    </message>
    <message>
        <source>What lets itself off does not stop at nineteen.</source>
        <translation>Was sich von selbst löst, bleibt nicht bei neunzehn stehen.</translation>
    </message>
    <message>
        <source>What, where, which end or number, what the gauge said.</source>
        <translation>Was, wo, welches Ende oder welche Nummer, was die Uhr sagte.</translation>
    </message>
    <message>
        <source>Whether it may ever be started again today is seen there, not in the cab.</source>
        <translation>Ob er heute überhaupt wieder angelassen werden darf, sieht man dort, nicht im Führerstand.</translation>
    </message>
    <message>
        <source>Who calls everything a defect has looked at nothing.</source>
        <translation>Wer alles einen Mangel nennt, hat nichts angesehen.</translation>
    </message>
    <message>
        <source>Who calls everything critical is not believed when it is; who calls a loose axlebox a blemish kills.</source>
        <translation>Wer alles kritisch nennt, dem glaubt man nicht, wenn es das ist; wer ein loses Achslager einen Schönheitsfehler nennt, tötet.</translation>
    </message>
    <message>
        <source>Who is told nothing stays where he is, with a hand on the valve.</source>
        <translation>Wem nichts gesagt wird, der bleibt, wo er ist, mit der Hand am Ventil.</translation>
    </message>
    <message>
        <source>With the brake in your hand you feel the unit go.</source>
        <translation>Mit der Bremse in der Hand fühlen Sie den Zug losgehen.</translation>
    </message>
    <message>
        <source>With the cock shut there is no device at all, and it looks just the same.</source>
        <translation>Bei geschlossenem Hahn gibt es gar keinen Totmann, und es sieht genauso aus.</translation>
    </message>
    <message>
        <source>You stand at a wheel.</source>
        <translation>Sie stehen an einem Rad.</translation>
    </message>
    <message>
        <source>a board, flag or lamp found</source>
        <translation>eine Tafel, Flagge oder Lampe gefunden</translation>
    </message>
    <message>
        <source>a code sent from cab 2</source>
        <translation>ein Zeichen von Führerstand 2 aus</translation>
    </message>
    <message>
        <source>a door is open</source>
        <translation>eine Tür ist offen</translation>
    </message>
    <message>
        <source>a gear that fits the speed</source>
        <translation>ein Gang, der zur Geschwindigkeit passt</translation>
    </message>
    <message>
        <source>a hand&apos;s turn of the wheel, or a gear touched for less than three seconds, is forgiven</source>
        <translation>eine Handbreit am Rad oder ein Gang unter drei Sekunden wird verziehen</translation>
    </message>
    <message>
        <source>a handbrake hard on, its pawl in</source>
        <translation>eine Handbremse fest, ihre Sperrklinke ein</translation>
    </message>
    <message>
        <source>a metre, for a unit that settles on its brake</source>
        <translation>ein Meter, für einen Zug, der sich auf seine Bremse setzt</translation>
    </message>
    <message>
        <source>a number on the display of end 2</source>
        <translation>eine Nummer in der Zielanzeige von Ende 2</translation>
    </message>
    <message>
        <source>a release on the move</source>
        <translation>ein Lösen während der Fahrt</translation>
    </message>
    <message>
        <source>a start of engine 2</source>
        <translation>ein Anlassen von Motor 2</translation>
    </message>
    <message>
        <source>above 25 mph</source>
        <translation>über 25 mph</translation>
    </message>
    <message>
        <source>air cock shut, switch at off</source>
        <translation>Lufthahn zu, Schalter aus</translation>
    </message>
    <message>
        <source>all four judged</source>
        <translation>alle vier beurteilt</translation>
    </message>
    <message>
        <source>all of side 1 judged</source>
        <translation>ganz Seite 1 beurteilt</translation>
    </message>
    <message>
        <source>all of side 2 judged</source>
        <translation>ganz Seite 2 beurteilt</translation>
    </message>
    <message>
        <source>all three taken out of cab 1</source>
        <translation>alle drei aus Führerstand 1 genommen</translation>
    </message>
    <message>
        <source>an engine running by its lamp</source>
        <translation>ein nach seiner Lampe laufender Motor</translation>
    </message>
    <message>
        <source>an entry for each thing found</source>
        <translation>ein Eintrag für jedes Gefundene</translation>
    </message>
    <message>
        <source>anywhere in the platform counts: the mark lies a car&apos;s length and more before its end</source>
        <translation>überall am Bahnsteig zählt: die Tafel steht eine Wagenlänge und mehr vor seinem Ende</translation>
    </message>
    <message>
        <source>arriving in cab 2</source>
        <translation>die Ankunft in Führerstand 2</translation>
    </message>
    <message>
        <source>asked, and answered</source>
        <translation>gefragt und beantwortet</translation>
    </message>
    <message>
        <source>asking for the rear reading</source>
        <translation>die Frage nach der hinteren Ablesung</translation>
    </message>
    <message>
        <source>boarding</source>
        <translation>das Einsteigen</translation>
    </message>
    <message>
        <source>both engines judged</source>
        <translation>beide Motoren beurteilt</translation>
    </message>
    <message>
        <source>both handbrakes are off</source>
        <translation>beide Handbremsen sind los</translation>
    </message>
    <message>
        <source>both handbrakes hard on</source>
        <translation>beide Handbremsen fest</translation>
    </message>
    <message>
        <source>both handbrakes on</source>
        <translation>beide Handbremsen an</translation>
    </message>
    <message>
        <source>both handbrakes on, gear neutral</source>
        <translation>beide Handbremsen an, Gang auf Leerlauf</translation>
    </message>
    <message>
        <source>both judged defective</source>
        <translation>beides als Mangel beurteilt</translation>
    </message>
    <message>
        <source>brake or handbrake on</source>
        <translation>Bremse oder Handbremse an</translation>
    </message>
    <message>
        <source>creeping</source>
        <translation>das Kriechen</translation>
    </message>
    <message>
        <source>decided, or on the way</source>
        <translation>entschieden, oder unterwegs</translation>
    </message>
    <message>
        <source>drawing the sleeve</source>
        <translation>das Ziehen der Muffe</translation>
    </message>
    <message>
        <source>engine 1 running away</source>
        <translation>das Davonlaufen von Motor 1</translation>
    </message>
    <message>
        <source>engine 2 silent on the way</source>
        <translation>das Verstummen von Motor 2 unterwegs</translation>
    </message>
    <message>
        <source>failing it</source>
        <translation>das Stilllegen</translation>
    </message>
    <message>
        <source>first gear</source>
        <translation>erster Gang</translation>
    </message>
    <message>
        <source>full power</source>
        <translation>volle Kraft</translation>
    </message>
    <message>
        <source>going on restricted</source>
        <translation>die beschränkte Weiterfahrt</translation>
    </message>
    <message>
        <source>half of what has to be applied, and five seconds on top</source>
        <translation>die Hälfte dessen, was anzulegen ist, und fünf Sekunden dazu</translation>
    </message>
    <message>
        <source>handbrake on, or the brake full on</source>
        <translation>Handbremse an, oder die Bremse voll angelegt</translation>
    </message>
    <message>
        <source>in cab 2, the brake handle in</source>
        <translation>in Führerstand 2, der Bremsgriff eingesteckt</translation>
    </message>
    <message>
        <source>it works</source>
        <translation>er wirkt</translation>
    </message>
    <message>
        <source>lapped at 16 or less</source>
        <translation>bei 16 oder weniger auf Abschluss</translation>
    </message>
    <message>
        <source>lapped there at 16 or less</source>
        <translation>dort bei 16 oder weniger auf Abschluss</translation>
    </message>
    <message>
        <source>leave given</source>
        <translation>Erlaubnis gegeben</translation>
    </message>
    <message>
        <source>letting go</source>
        <translation>das Loslassen</translation>
    </message>
    <message>
        <source>letting go again</source>
        <translation>das erneute Loslassen</translation>
    </message>
    <message>
        <source>letting go at 21 with the valve in release and the handbrake on</source>
        <translation>das Loslassen bei 21 mit Ventil auf Lösen und fester Handbremse</translation>
    </message>
    <message>
        <source>letting the brake off to start away</source>
        <translation>das Lösen der Bremse zur Anfahrt</translation>
    </message>
    <message>
        <source>letting the second person go</source>
        <translation>das Entlassen der zweiten Person</translation>
    </message>
    <message>
        <source>letting the unit go</source>
        <translation>das Freigeben des Zuges</translation>
    </message>
    <message>
        <source>neutral, idle, off</source>
        <translation>Leerlauf, zu, aus</translation>
    </message>
    <message>
        <source>no defect in a wrong class</source>
        <translation>kein Mangel in einer falschen Klasse</translation>
    </message>
    <message>
        <source>no more than 8 inches</source>
        <translation>nicht mehr als 8 Zoll</translation>
    </message>
    <message>
        <source>none: either it was said or it was not</source>
        <translation>keine: es wurde gesagt oder nicht</translation>
    </message>
    <message>
        <source>none: power is put on or it is not</source>
        <translation>keine: Kraft wird gegeben oder nicht</translation>
    </message>
    <message>
        <source>none: the pin is in or it is not</source>
        <translation>keine: der Bolzen steckt oder nicht</translation>
    </message>
    <message>
        <source>not moved</source>
        <translation>nicht bewegt</translation>
    </message>
    <message>
        <source>not repeated</source>
        <translation>nicht wiederholt</translation>
    </message>
    <message>
        <source>notch 3 or more</source>
        <translation>Stufe 3 oder mehr</translation>
    </message>
    <message>
        <source>on the falling grade</source>
        <translation>im Gefälle</translation>
    </message>
    <message>
        <source>one called critical</source>
        <translation>einen kritisch genannt</translation>
    </message>
    <message>
        <source>one called serious</source>
        <translation>einen ernst genannt</translation>
    </message>
    <message>
        <source>one called technical</source>
        <translation>einen technisch genannt</translation>
    </message>
    <message>
        <source>one false alarm at most</source>
        <translation>höchstens ein Fehlalarm</translation>
    </message>
    <message>
        <source>power above 12 mph</source>
        <translation>Kraft über 12 mph</translation>
    </message>
    <message>
        <source>power on, in gear</source>
        <translation>Kraft an, im Gang</translation>
    </message>
    <message>
        <source>power put on</source>
        <translation>Kraft gegeben</translation>
    </message>
    <message>
        <source>raising again</source>
        <translation>das erneute Anheben</translation>
    </message>
    <message>
        <source>red at end 1 only, white at end 2 only</source>
        <translation>Rot nur an Ende 1, Weiß nur an Ende 2</translation>
    </message>
    <message>
        <source>risen by itself in lap</source>
        <translation>auf Abschluss von selbst gestiegen</translation>
    </message>
    <message>
        <source>selecting the gear with the throttle shut</source>
        <translation>das Einlegen des Ganges bei geschlossenem Fahrschalter</translation>
    </message>
    <message>
        <source>somebody at the rear</source>
        <translation>jemand am Zugende</translation>
    </message>
    <message>
        <source>standing</source>
        <translation>im Stand</translation>
    </message>
    <message>
        <source>standing at Marrowick</source>
        <translation>der Stand in Marrowick</translation>
    </message>
    <message>
        <source>standing at Osmundley Quay</source>
        <translation>der Stand in Osmundley Quay</translation>
    </message>
    <message>
        <source>standing at Osmundley Strand</source>
        <translation>der Stand in Osmundley Strand</translation>
    </message>
    <message>
        <source>starting the second engine</source>
        <translation>das Anlassen des zweiten Motors</translation>
    </message>
    <message>
        <source>stepping down</source>
        <translation>das Absteigen</translation>
    </message>
    <message>
        <source>switch at off, pin in the sleeve</source>
        <translation>Schalter aus, Bolzen in der Muffe</translation>
    </message>
    <message>
        <source>taken back within a minute it is forgiven: nothing has moved</source>
        <translation>binnen einer Minute zurückgenommen wird es verziehen: nichts hat sich bewegt</translation>
    </message>
    <message>
        <source>taking the brake handle out of cab 1</source>
        <translation>das Herausnehmen des Bremsgriffs aus Führerstand 1</translation>
    </message>
    <message>
        <source>taking the key out of cab 1</source>
        <translation>das Herausnehmen des Schlüssels aus Führerstand 1</translation>
    </message>
    <message>
        <source>telling the guard</source>
        <translation>das Verständigen des Schaffners</translation>
    </message>
    <message>
        <source>telling the signaller</source>
        <translation>das Verständigen des Fahrdienstleiters</translation>
    </message>
    <message>
        <source>the air lamp is dark</source>
        <translation>die Luftlampe ist dunkel</translation>
    </message>
    <message>
        <source>the answer that people are still working</source>
        <translation>die Antwort, dass noch Leute arbeiten</translation>
    </message>
    <message>
        <source>the brake for the stop</source>
        <translation>die Bremse zum Halt</translation>
    </message>
    <message>
        <source>the brake on</source>
        <translation>die angelegte Bremse</translation>
    </message>
    <message>
        <source>the brake on again</source>
        <translation>die wieder angelegte Bremse</translation>
    </message>
    <message>
        <source>the brake on, seen</source>
        <translation>die angelegte Bremse, gesehen</translation>
    </message>
    <message>
        <source>the cock open</source>
        <translation>der Hahn offen</translation>
    </message>
    <message>
        <source>the device is in use</source>
        <translation>der Totmann ist in Gebrauch</translation>
    </message>
    <message>
        <source>the drains of side 1 judged defective, the cock shut</source>
        <translation>die Hähne von Seite 1 als Mangel beurteilt, der Hahn zu</translation>
    </message>
    <message>
        <source>the first bite</source>
        <translation>die erste Bremsstufe</translation>
    </message>
    <message>
        <source>the full application</source>
        <translation>die Vollbremsung</translation>
    </message>
    <message>
        <source>the gear in neutral</source>
        <translation>der Gang auf Leerlauf</translation>
    </message>
    <message>
        <source>the gearbox of engine 2 judged defective</source>
        <translation>das Getriebe von Motor 2 als Mangel beurteilt</translation>
    </message>
    <message>
        <source>the guard has given two</source>
        <translation>der Schaffner hat zwei gegeben</translation>
    </message>
    <message>
        <source>the handbrake is off</source>
        <translation>die Handbremse ist los</translation>
    </message>
    <message>
        <source>the lamp lit in forward</source>
        <translation>die Lampe leuchtet vorwärts</translation>
    </message>
    <message>
        <source>the lamp lit in reverse</source>
        <translation>die Lampe leuchtet rückwärts</translation>
    </message>
    <message>
        <source>the last handbrake coming off</source>
        <translation>das Lösen der letzten Handbremse</translation>
    </message>
    <message>
        <source>the leading handbrake off</source>
        <translation>die vordere Handbremse los</translation>
    </message>
    <message>
        <source>the needle below 5</source>
        <translation>der Zeiger unter 5</translation>
    </message>
    <message>
        <source>the needle brought below 15 with cab 2&apos;s valve</source>
        <translation>der Zeiger mit dem Ventil von Führerstand 2 unter 15 gebracht</translation>
    </message>
    <message>
        <source>the pipe emptied</source>
        <translation>die leere Leitung</translation>
    </message>
    <message>
        <source>the release pipe below 20</source>
        <translation>die Löseleitung unter 20</translation>
    </message>
    <message>
        <source>the reverser put over</source>
        <translation>das Umlegen des Richtungshebels</translation>
    </message>
    <message>
        <source>the seconds in the notebook</source>
        <translation>die Sekunden im Merkheft</translation>
    </message>
    <message>
        <source>the shed told</source>
        <translation>die Werkstatt verständigt</translation>
    </message>
    <message>
        <source>the signal clear</source>
        <translation>das Signal frei</translation>
    </message>
    <message>
        <source>the signaller told</source>
        <translation>der Fahrdienstleiter verständigt</translation>
    </message>
    <message>
        <source>the tachometers parting under power</source>
        <translation>das Auseinanderlaufen der Drehzahlmesser unter Kraft</translation>
    </message>
    <message>
        <source>the throttle at one notch or shut</source>
        <translation>der Fahrschalter auf einer Stufe oder zu</translation>
    </message>
    <message>
        <source>the throttle open, the device held</source>
        <translation>der Fahrschalter offen, der Totmann gehalten</translation>
    </message>
    <message>
        <source>the train pipe needle at 3 or less</source>
        <translation>der Zeiger der Zugleitung bei 3 oder weniger</translation>
    </message>
    <message>
        <source>the valve told shut</source>
        <translation>das Ventil als geschlossen gemeldet</translation>
    </message>
    <message>
        <source>three defects judged defect</source>
        <translation>drei Mängel als Mangel beurteilt</translation>
    </message>
    <message>
        <source>three metres are ten times what counts as serious already</source>
        <translation>drei Meter sind das Zehnfache dessen, was schon als ernst gilt</translation>
    </message>
    <message>
        <source>told that nobody works on it</source>
        <translation>gesagt, dass niemand an ihm arbeitet</translation>
    </message>
    <message>
        <source>two seconds more are forgiven</source>
        <translation>zwei Sekunden mehr werden verziehen</translation>
    </message>
    <message>
        <source>waiting in neutral</source>
        <translation>das Warten im Leerlauf</translation>
    </message>
    <message>
        <source>19.5 again</source>
        <translation>wieder 19,5</translation>
    </message>
    <message>
        <source>2 inHg of brake left on</source>
        <translation>2 inHg Bremse übrig</translation>
    </message>
    <message>
        <source>21 again</source>
        <translation>wieder 21</translation>
    </message>
    <message>
        <source>21 on the needle and no coasting: stop, handbrakes, destroy, cords, raise, test.</source>
        <translation>21 am Zeiger und kein Rollen: halten, Handbremsen, vernichten, Schnüre, anheben, proben.</translation>
    </message>
    <message>
        <source>21 raised again</source>
        <translation>21 wieder hergestellt</translation>
    </message>
    <message>
        <source>21 raised again from nothing, and the blocks seen or told off, before the decision to go</source>
        <translation>21 wieder von null hergestellt, und die Klötze los gesehen oder gemeldet, bevor die Weiterfahrt entschieden wird</translation>
    </message>
    <message>
        <source>21, full, and up again with your eyes on both needles.</source>
        <translation>21, voll, und wieder hinauf, die Augen auf beiden Zeigern.</translation>
    </message>
    <message>
        <source>3 inHg or less in the train pipe</source>
        <translation>3 inHg oder weniger in der Zugleitung</translation>
    </message>
    <message>
        <source>4 inHg or less in the pipe</source>
        <translation>4 inHg oder weniger in der Leitung</translation>
    </message>
    <message>
        <source>93 psi seen from the cab</source>
        <translation>93 psi vom Führerstand gesehen</translation>
    </message>
    <message>
        <source>A burnt contact is seen, not felt.</source>
        <translation>Einen verbrannten Kontakt sieht man, man fühlt ihn nicht.</translation>
    </message>
    <message>
        <source>A cock half over is late too, and somebody&apos;s doing.</source>
        <translation>Ein halb umgelegter Hahn ist auch spät, und jemandes Werk.</translation>
    </message>
    <message>
        <source>A compressor is dear and innocent; a cock costs nothing to look at.</source>
        <translation>Ein Kompressor ist teuer und unschuldig; einen Hahn anzusehen kostet nichts.</translation>
    </message>
    <message>
        <source>A cord that is pulled against a full pipe draws from the reservoir for ever.</source>
        <translation>Eine gegen eine volle Leitung gezogene Schnur saugt ewig aus dem Behälter.</translation>
    </message>
    <message>
        <source>A figure that was not counted is worse than none: it is believed.</source>
        <translation>Eine nicht gezählte Zahl ist schlimmer als keine: man glaubt sie.</translation>
    </message>
    <message>
        <source>A full application and a second release seen through, before the decision</source>
        <translation>Eine Vollbremsung und ein zweites Lösen zu Ende gesehen, bevor entschieden wird</translation>
    </message>
    <message>
        <source>A generator without its belt takes and does not give.</source>
        <translation>Eine Lichtmaschine ohne Riemen nimmt und gibt nicht.</translation>
    </message>
    <message>
        <source>A hole that sucks says where it is; a book entry without a place costs the fitter an hour.</source>
        <translation>Ein saugendes Loch sagt, wo es ist; ein Eintrag ohne Ort kostet den Schlosser eine Stunde.</translation>
    </message>
    <message>
        <source>A lamp that burns all night leaves no start in the morning.</source>
        <translation>Eine Lampe, die die ganze Nacht brennt, lässt am Morgen keinen Start.</translation>
    </message>
    <message>
        <source>A needle at 21 says nothing of chambers that hold more.</source>
        <translation>Ein Zeiger auf 21 sagt nichts von Kammern, die mehr halten.</translation>
    </message>
    <message>
        <source>A needle that stalls may be an exhauster; one that falls in lap is a hole.</source>
        <translation>Ein hängender Zeiger kann ein Luftsauger sein; einer, der auf Abschluss fällt, ist ein Loch.</translation>
    </message>
    <message>
        <source>A needle that stands below its cut-out is a reason to stay.</source>
        <translation>Ein Zeiger, der unter seinem Abschalten steht, ist ein Grund zu bleiben.</translation>
    </message>
    <message>
        <source>A new two strokes before going on</source>
        <translation>Neue zwei Schläge, bevor es weitergeht</translation>
    </message>
    <message>
        <source>A pin that is driven in against air or a tooth bends, and holds nothing.</source>
        <translation>Ein gegen Luft oder einen Zahn getriebener Bolzen verbiegt sich und hält nichts.</translation>
    </message>
    <message>
        <source>A stop button that was pressed is not an engine that stands.</source>
        <translation>Ein gedrückter Stoppknopf ist noch kein stehender Motor.</translation>
    </message>
    <message>
        <source>A test cut short proves that you were in a hurry.</source>
        <translation>Eine abgebrochene Probe beweist, dass Sie es eilig hatten.</translation>
    </message>
    <message>
        <source>A tyre that was dragged hot can be loose.</source>
        <translation>Ein heiß geschleifter Reifen kann lose sein.</translation>
    </message>
    <message>
        <source>A unit that was failed does not move</source>
        <translation>Ein stillgelegter Zug bewegt sich nicht</translation>
    </message>
    <message>
        <source>A valve is set in the shed, not on the road; and this one comes back tonight.</source>
        <translation>Ein Ventil stellt man in der Werkstatt, nicht auf der Strecke; und dieses kommt heute Abend zurück.</translation>
    </message>
    <message>
        <source>After half a minute there is no band left, and hot metal where it was.</source>
        <translation>Nach einer halben Minute ist kein Band mehr da, und heißes Metall, wo es war.</translation>
    </message>
    <message>
        <source>After three: outside supply, or report.</source>
        <translation>Nach dreien: Fremdversorgung, oder melden.</translation>
    </message>
    <message>
        <source>All four cords pulled before the decision to go</source>
        <translation>Alle vier Schnüre gezogen, bevor die Weiterfahrt entschieden wird</translation>
    </message>
    <message>
        <source>All four release cords pulled before the last handbrake comes off</source>
        <translation>Alle vier Löseschnüre gezogen, bevor die letzte Handbremse losgeht</translation>
    </message>
    <message>
        <source>All vacuum destroyed before a cord is pulled</source>
        <translation>Alles Vakuum vernichtet, bevor eine Schnur gezogen wird</translation>
    </message>
    <message>
        <source>Ask for a second person; ask for the blocks at 21, and wait for the answer.</source>
        <translation>Um eine zweite Person bitten; bei 21 nach den Klötzen fragen, und die Antwort abwarten.</translation>
    </message>
    <message>
        <source>At 21 in release: let go, keep your hands off, count to the end.</source>
        <translation>Bei 21 auf Lösen: loslassen, Hände weg, bis zum Ende zählen.</translation>
    </message>
    <message>
        <source>At 40 mph eleven seconds are two hundred metres with nobody at the handle.</source>
        <translation>Bei 40 mph sind elf Sekunden zweihundert Meter ohne jemanden am Griff.</translation>
    </message>
    <message>
        <source>Battery switch open when the unit is handed over</source>
        <translation>Batterieschalter offen, wenn der Zug übergeben wird</translation>
    </message>
    <message>
        <source>Belts of both engines judged before the first start</source>
        <translation>Riemen beider Motoren beurteilt vor dem ersten Start</translation>
    </message>
    <message>
        <source>Beyond it there is no place to stop; and a band that slips today is gone tomorrow.</source>
        <translation>Dahinter gibt es keine Stelle zum Halten; und ein Band, das heute rutscht, ist morgen weg.</translation>
    </message>
    <message>
        <source>Blocks told off, by the second person, with the needle at 21, before the last handbrake comes off</source>
        <translation>Klötze von der zweiten Person als los gemeldet, mit dem Zeiger auf 21, bevor die letzte Handbremse losgeht</translation>
    </message>
    <message>
        <source>Blued tyres, burnt blocks, and a fire under the floor.</source>
        <translation>Blaue Reifen, verbrannte Klötze und ein Feuer unter dem Boden.</translation>
    </message>
    <message>
        <source>Both air reservoirs drained of water, and their cocks shut again</source>
        <translation>Beide Luftbehälter entwässert, und ihre Hähne wieder zu</translation>
    </message>
    <message>
        <source>Both cabs locked and the doors shut when the unit is handed over</source>
        <translation>Beide Führerstände abgeschlossen und die Türen zu, wenn der Zug übergeben wird</translation>
    </message>
    <message>
        <source>Both engines answer from cab 2, and the jumper is in the book.</source>
        <translation>Beide Motoren gehorchen Führerstand 2, und das Steuerkabel steht im Buch.</translation>
    </message>
    <message>
        <source>Both engines run, the missing belt is in the book, and it is decided.</source>
        <translation>Beide Motoren laufen, der fehlende Riemen steht im Buch, und es ist entschieden.</translation>
    </message>
    <message>
        <source>Both engines stopped, and heard to stop, before the battery switch is opened</source>
        <translation>Beide Motoren abgestellt und verstummen gehört, bevor der Batterieschalter geöffnet wird</translation>
    </message>
    <message>
        <source>Both handbrakes hard on before a hand goes to the drive</source>
        <translation>Beide Handbremsen fest, bevor eine Hand an den Antrieb geht</translation>
    </message>
    <message>
        <source>Both handbrakes hard, pawls in, when the unit is handed over</source>
        <translation>Beide Handbremsen fest, Sperrklinken ein, wenn der Zug übergeben wird</translation>
    </message>
    <message>
        <source>Both wheels, both pawls; on a grade scotches as well.</source>
        <translation>Beide Räder, beide Sperrklinken; auf einer Neigung auch Hemmschuhe.</translation>
    </message>
    <message>
        <source>Brake handle, reversing lever and keys in the hand at the handing over, at the booking-on point</source>
        <translation>Bremsgriff, Richtungshebel und Schlüssel in der Hand bei der Übergabe, an der Meldestelle</translation>
    </message>
    <message>
        <source>By the local rule: as far as Wexholt, or not at all.</source>
        <translation>Nach der örtlichen Regel: bis Wexholt, oder gar nicht.</translation>
    </message>
    <message>
        <source>Call it from the cab, at once, and tell the guard.</source>
        <translation>Sofort vom Führerstand rufen, und den Schaffner verständigen.</translation>
    </message>
    <message>
        <source>Cock and seal looked at and judged before the decision</source>
        <translation>Hahn und Plombe angesehen und beurteilt, bevor entschieden wird</translation>
    </message>
    <message>
        <source>Down to Marrowick three stops follow in a mile; with one exhauster the third has no release, and the fourth no brake.</source>
        <translation>Hinunter nach Marrowick folgen drei Halte in einer Meile; mit einem Luftsauger hat der dritte kein Lösen und der vierte keine Bremse.</translation>
    </message>
    <message>
        <source>Each defect of the day in the repair book before the unit is handed over</source>
        <translation>Jeder Mangel des Tages im Übergabebuch, bevor der Zug übergeben wird</translation>
    </message>
    <message>
        <source>Each gear and each reverser takes its share; at 75 the bands slip, at 60 the dogs do not shift.</source>
        <translation>Jeder Gang und jedes Umlegen nimmt seinen Teil; bei 75 rutschen die Bänder, bei 60 schalten die Klauen nicht.</translation>
    </message>
    <message>
        <source>Engine 2 and its final drive are isolated and entered, the lamp speaks for the other, and the decision is told.</source>
        <translation>Motor 2 und sein Achsgetriebe sind abgetrennt und eingetragen, die Lampe spricht für das andere, und die Entscheidung ist gesagt.</translation>
    </message>
    <message>
        <source>Engine 2 first: the one whose generator charges</source>
        <translation>Motor 2 zuerst: der, dessen Lichtmaschine lädt</translation>
    </message>
    <message>
        <source>Engine 2 stopped and its switch at off before a hand goes to the drive</source>
        <translation>Motor 2 abgestellt und sein Schalter aus, bevor eine Hand an den Antrieb geht</translation>
    </message>
    <message>
        <source>Eyes on both needles as each gear takes hold; one leaves the other: throttle shut.</source>
        <translation>Die Augen auf beiden Zeigern, wenn ein Gang fasst; verlässt einer den anderen: Fahrschalter zu.</translation>
    </message>
    <message>
        <source>Fire called, and people sent away, before stepping down</source>
        <translation>Feuer gerufen und Leute weggeschickt, bevor abgestiegen wird</translation>
    </message>
    <message>
        <source>Four cylinders, four cords: two on each side.</source>
        <translation>Vier Zylinder, vier Schnüre: zwei auf jeder Seite.</translation>
    </message>
    <message>
        <source>From 21 to nothing and back, handbrake on.</source>
        <translation>Von 21 auf null und zurück, Handbremse fest.</translation>
    </message>
    <message>
        <source>From a distance: smoke and smell say enough.</source>
        <translation>Aus der Ferne: Rauch und Geruch sagen genug.</translation>
    </message>
    <message>
        <source>Fuel cock shut before the bottle is pulled</source>
        <translation>Kraftstoffhahn zu, bevor die Flasche gezogen wird</translation>
    </message>
    <message>
        <source>Full application and 21 again after the alarm was put back, before moving on</source>
        <translation>Vollbremsung und wieder 21, nachdem die Notbremse zurückgestellt wurde, bevor es weitergeht</translation>
    </message>
    <message>
        <source>Full application seen again after the cords</source>
        <translation>Vollbremsung nach den Schnüren wieder gesehen</translation>
    </message>
    <message>
        <source>Full application, the needle at nothing, then down.</source>
        <translation>Vollbremsung, der Zeiger auf null, dann hinunter.</translation>
    </message>
    <message>
        <source>Gauge first, then walk and listen.</source>
        <translation>Erst die Uhr, dann gehen und horchen.</translation>
    </message>
    <message>
        <source>Half the pull, half the air, half the vacuum is not a unit as usual.</source>
        <translation>Halbe Zugkraft, halbe Luft, halbes Vakuum ist kein Zug wie üblich.</translation>
    </message>
    <message>
        <source>Hand near the wheel, never on a tyre.</source>
        <translation>Hand in die Nähe des Rades, nie auf einen Reifen.</translation>
    </message>
    <message>
        <source>Handbrake of cab 1 hard on before the cab is left</source>
        <translation>Handbremse von Führerstand 1 fest, bevor der Führerstand verlassen wird</translation>
    </message>
    <message>
        <source>He does not see why the road stays full.</source>
        <translation>Er sieht nicht, warum der Fahrweg besetzt bleibt.</translation>
    </message>
    <message>
        <source>He would send you down the fall, and expect you at the bottom in time.</source>
        <translation>Er würde Sie das Gefälle hinunterschicken und Sie unten pünktlich erwarten.</translation>
    </message>
    <message>
        <source>Heard is half; seen is the entry.</source>
        <translation>Gehört ist die Hälfte; gesehen ist der Eintrag.</translation>
    </message>
    <message>
        <source>Heard is half; the belt in the tray is the entry.</source>
        <translation>Gehört ist die Hälfte; der Riemen in der Wanne ist der Eintrag.</translation>
    </message>
    <message>
        <source>Heater and saloon lights take as much in a quarter of a minute as a start.</source>
        <translation>Heizung und Abteillicht nehmen in einer Viertelminute so viel wie ein Start.</translation>
    </message>
    <message>
        <source>Heater at the cupboard, saloon lights from the cab.</source>
        <translation>Heizung am Schaltschrank, Abteillicht vom Führerstand.</translation>
    </message>
    <message>
        <source>Hot blocks do not bite.</source>
        <translation>Heiße Klötze beißen nicht.</translation>
    </message>
    <message>
        <source>Hot blocks on a frosty rail: flat wheels, and a brake that is on cannot be put on.</source>
        <translation>Heiße Klötze auf bereifter Schiene: Flachstellen, und eine Bremse, die an ist, kann man nicht anlegen.</translation>
    </message>
    <message>
        <source>It fails. &apos;Late, but it works&apos; is what is said at the inquiry.</source>
        <translation>Er fährt nicht. &apos;Spät, aber er wirkt&apos; sagt man bei der Untersuchung.</translation>
    </message>
    <message>
        <source>It hides what has happened, and burns the blocks.</source>
        <translation>Es verbirgt, was geschehen ist, und verbrennt die Klötze.</translation>
    </message>
    <message>
        <source>It is the one thing on board that acts when you cannot.</source>
        <translation>Er ist das eine an Bord, das handelt, wenn Sie es nicht können.</translation>
    </message>
    <message>
        <source>It may hang out because somebody pulled it, and has his hand at the other end.</source>
        <translation>Es kann hängen, weil es jemand gezogen hat und am anderen Ende die Hand hat.</translation>
    </message>
    <message>
        <source>It pumps its fuel into the fire; and its stop lever on the ground is where it burns.</source>
        <translation>Er pumpt seinen Kraftstoff ins Feuer; und sein Abstellhebel am Boden ist dort, wo es brennt.</translation>
    </message>
    <message>
        <source>It says which car, and whether it has gone home.</source>
        <translation>Er sagt, welcher Wagen, und ob er zurückgegangen ist.</translation>
    </message>
    <message>
        <source>It speaks for the drive that is left; dark, the by-pass or the pin is wrong.</source>
        <translation>Sie spricht für das verbliebene Achsgetriebe; ist sie dunkel, stimmt die Überbrückung oder der Bolzen nicht.</translation>
    </message>
    <message>
        <source>It stays until the hose is changed, whatever signal and guard say.</source>
        <translation>Er bleibt, bis der Schlauch getauscht ist, was Signal und Schaffner auch sagen.</translation>
    </message>
    <message>
        <source>Lap, and watch it go: more than three inches in a minute is a leak.</source>
        <translation>Abschluss, und zusehen: mehr als drei Zoll in einer Minute ist ein Leck.</translation>
    </message>
    <message>
        <source>Lapped, and the fall seen, before the decision</source>
        <translation>Abgeschlossen und den Fall gesehen, bevor entschieden wird</translation>
    </message>
    <message>
        <source>Leave asked before the jumper is put home</source>
        <translation>Um Erlaubnis gefragt, bevor das Steuerkabel eingesteckt wird</translation>
    </message>
    <message>
        <source>Leave it sucking, go down, listen along the side.</source>
        <translation>Saugen lassen, hinuntergehen, an der Seite entlang horchen.</translation>
    </message>
    <message>
        <source>Look at them; in is in.</source>
        <translation>Ansehen; ein ist ein.</translation>
    </message>
    <message>
        <source>Loose controls that are left in a cab are left to anybody.</source>
        <translation>Was lose im Führerstand bleibt, bleibt jedem.</translation>
    </message>
    <message>
        <source>Ninety-five on the gauge, and it stops climbing.</source>
        <translation>Fünfundneunzig an der Uhr, und sie steigt nicht mehr.</translation>
    </message>
    <message>
        <source>No breaker worked blindly</source>
        <translation>Kein Automat blind betätigt</translation>
    </message>
    <message>
        <source>No close look under the cover while it burns</source>
        <translation>Kein naher Blick unter die Haube, solange es brennt</translation>
    </message>
    <message>
        <source>No departure before the signaller has been told what the unit cannot do</source>
        <translation>Keine Abfahrt, bevor der Fahrdienstleiter weiß, was der Zug nicht kann</translation>
    </message>
    <message>
        <source>No departure on nearly twenty-one</source>
        <translation>Keine Abfahrt mit fast einundzwanzig</translation>
    </message>
    <message>
        <source>No departure while the air goes out through an open drain</source>
        <translation>Keine Abfahrt, solange die Luft durch einen offenen Hahn hinausgeht</translation>
    </message>
    <message>
        <source>No departure with a device that comes late</source>
        <translation>Keine Abfahrt mit einem Totmann, der spät kommt</translation>
    </message>
    <message>
        <source>No further than the next stop before engine 2 and its final drive are isolated</source>
        <translation>Nicht weiter als bis zum nächsten Halt, bevor Motor 2 und sein Achsgetriebe abgetrennt sind</translation>
    </message>
    <message>
        <source>No more than three trials</source>
        <translation>Nicht mehr als drei Proben</translation>
    </message>
    <message>
        <source>No power against the brake that went on by itself</source>
        <translation>Keine Kraft gegen die Bremse, die sich selbst anlegte</translation>
    </message>
    <message>
        <source>No proof of the stop button today; tell it to whoever takes the unit.</source>
        <translation>Heute keine Probe des Stoppknopfs; sagen Sie es dem, der den Zug übernimmt.</translation>
    </message>
    <message>
        <source>No running engine stopped again</source>
        <translation>Kein laufender Motor wieder abgestellt</translation>
    </message>
    <message>
        <source>No unit is left standing on vacuum: it is gone in three hours, and the brake with it.</source>
        <translation>Kein Zug bleibt auf Vakuum stehen: in drei Stunden ist es weg, und die Bremse mit ihm.</translation>
    </message>
    <message>
        <source>Nobody goes to a drive under a unit that only a valve holds.</source>
        <translation>Niemand geht an einen Antrieb unter einem Zug, den nur ein Ventil hält.</translation>
    </message>
    <message>
        <source>Not &apos;late&apos;: eleven. Four to seven are right, and nothing else is.</source>
        <translation>Nicht &apos;spät&apos;: elf. Vier bis sieben sind richtig, sonst nichts.</translation>
    </message>
    <message>
        <source>Not driven for more than a minute and a half with a handbrake on</source>
        <translation>Nicht länger als anderthalb Minuten mit einer angezogenen Handbremse gefahren</translation>
    </message>
    <message>
        <source>Not driven with the blocks on</source>
        <translation>Nicht mit anliegenden Klötzen gefahren</translation>
    </message>
    <message>
        <source>Not moved against an overcharged brake</source>
        <translation>Nicht gegen eine überladene Bremse gefahren</translation>
    </message>
    <message>
        <source>Nothing else holds it through the night.</source>
        <translation>Sonst hält ihn nichts die Nacht über.</translation>
    </message>
    <message>
        <source>Once may be a slip of the hand.</source>
        <translation>Einmal kann die Hand gerutscht sein.</translation>
    </message>
    <message>
        <source>One chamber forgotten drags as well as four.</source>
        <translation>Eine vergessene Kammer schleift so gut wie vier.</translation>
    </message>
    <message>
        <source>One notch in neutral: over 600 rpm, two minutes and more.</source>
        <translation>Eine Stufe im Leerlauf: über 600 Umdrehungen, zwei Minuten und mehr.</translation>
    </message>
    <message>
        <source>Open each drain until it blows dry, shut it again.</source>
        <translation>Jeden Hahn öffnen, bis er trocken bläst, wieder schließen.</translation>
    </message>
    <message>
        <source>Opened, it gets the air it wants, and you stand before it.</source>
        <translation>Geöffnet bekommt es die Luft, die es will, und Sie stehen davor.</translation>
    </message>
    <message>
        <source>People on the line beside you run where the other train comes.</source>
        <translation>Leute auf dem Nachbargleis laufen, wo der andere Zug kommt.</translation>
    </message>
    <message>
        <source>Power not held through the slip</source>
        <translation>Kraft nicht durch das Rutschen hindurch gehalten</translation>
    </message>
    <message>
        <source>Press, listen until the note is gone, look at the lamp.</source>
        <translation>Drücken, hören, bis der Ton weg ist, auf die Lampe sehen.</translation>
    </message>
    <message>
        <source>Raise 21, let go, count: the same again, or not.</source>
        <translation>21 herstellen, loslassen, zählen: dasselbe wieder, oder nicht.</translation>
    </message>
    <message>
        <source>Read it, count twenty, read it again; enter the figure.</source>
        <translation>Ablesen, bis zwanzig zählen, wieder ablesen; die Zahl eintragen.</translation>
    </message>
    <message>
        <source>Release needle good, valve in release, and the pipe still falls: shut off, let it stop you at a fit place.</source>
        <translation>Löseleitung gut, Ventil auf Lösen, und die Zugleitung fällt trotzdem: abschalten, sich an geeigneter Stelle anhalten lassen.</translation>
    </message>
    <message>
        <source>Released, at 21: ask, or go and look.</source>
        <translation>Gelöst, bei 21: fragen, oder hingehen und sehen.</translation>
    </message>
    <message>
        <source>Repeated once before the decision</source>
        <translation>Einmal wiederholt, bevor entschieden wird</translation>
    </message>
    <message>
        <source>Seconds count: what slips, burns.</source>
        <translation>Sekunden zählen: was rutscht, verbrennt.</translation>
    </message>
    <message>
        <source>Shift air shut, sleeve to the middle, then the pin</source>
        <translation>Schaltluft zu, Muffe in die Mitte, dann der Bolzen</translation>
    </message>
    <message>
        <source>Shut off within eight seconds when one tachometer runs up</source>
        <translation>Binnen acht Sekunden abgeschaltet, wenn ein Drehzahlmesser hochläuft</translation>
    </message>
    <message>
        <source>Shut off; a light notch only if it holds there.</source>
        <translation>Abschalten; eine leichte Stufe nur, wenn er dort hält.</translation>
    </message>
    <message>
        <source>Signaller told before going on</source>
        <translation>Fahrdienstleiter verständigt, bevor es weitergeht</translation>
    </message>
    <message>
        <source>Signaller told within three minutes of standing</source>
        <translation>Fahrdienstleiter binnen drei Minuten nach dem Halt verständigt</translation>
    </message>
    <message>
        <source>Signaller told within two minutes of the bell</source>
        <translation>Fahrdienstleiter binnen zwei Minuten nach der Glocke verständigt</translation>
    </message>
    <message>
        <source>Slow and standing are two faults: the one is a compressor, the other a hole.</source>
        <translation>Langsam und stehend sind zwei Fehler: das eine ist ein Kompressor, das andere ein Loch.</translation>
    </message>
    <message>
        <source>Slow away and no coasting, with 21 on the gauge: shut off, stop, look at both wheels.</source>
        <translation>Zähe Anfahrt und kein Rollen bei 21 an der Uhr: abschalten, halten, beide Räder ansehen.</translation>
    </message>
    <message>
        <source>Slow away with 21 shown: shut off, stop, look at a block.</source>
        <translation>Zähe Anfahrt bei gezeigten 21: abschalten, halten, einen Klotz ansehen.</translation>
    </message>
    <message>
        <source>Somebody in a cab sees a dark lamp and presses the button.</source>
        <translation>Jemand im Führerstand sieht eine dunkle Lampe und drückt den Knopf.</translation>
    </message>
    <message>
        <source>Somebody may hang in a door, or lie beside the line.</source>
        <translation>Jemand kann in einer Tür hängen oder neben dem Gleis liegen.</translation>
    </message>
    <message>
        <source>Somebody opened it; the next one should know where to look first.</source>
        <translation>Jemand hat ihn geöffnet; der Nächste soll wissen, wo zuerst zu suchen ist.</translation>
    </message>
    <message>
        <source>Spare loads off before the first start</source>
        <translation>Entbehrliche Verbraucher aus vor dem ersten Start</translation>
    </message>
    <message>
        <source>Standing within a minute of the fire bell</source>
        <translation>Steht binnen einer Minute nach der Brandglocke</translation>
    </message>
    <message>
        <source>Stop, switch, padlock: then the drive.</source>
        <translation>Abstellen, Schalter, Vorhängeschloss: dann der Antrieb.</translation>
    </message>
    <message>
        <source>Tell the guard, wait until he has dealt with it; then the tell-tale.</source>
        <translation>Den Schaffner verständigen, warten, bis er sich darum gekümmert hat; dann der Melder.</translation>
    </message>
    <message>
        <source>Tell-tale looked at and judged before moving on</source>
        <translation>Melder angesehen und beurteilt, bevor es weitergeht</translation>
    </message>
    <message>
        <source>The air lamp seen lit again after the pin is in, before the decision</source>
        <translation>Die Luftlampe wieder leuchten gesehen, nachdem der Bolzen steckt, bevor entschieden wird</translation>
    </message>
    <message>
        <source>The alarm is back, the brake proved again, and the unit goes on.</source>
        <translation>Die Notbremse ist zurück, die Bremse neu erprobt, und der Zug fährt weiter.</translation>
    </message>
    <message>
        <source>The alarm put back only after the guard has said what it was</source>
        <translation>Die Notbremse erst zurückgestellt, nachdem der Schaffner gesagt hat, was es war</translation>
    </message>
    <message>
        <source>The belt is in the book, and the unit goes restricted by the local rule, or not at all.</source>
        <translation>Der Riemen steht im Buch, und der Zug fährt beschränkt nach der örtlichen Regel, oder gar nicht.</translation>
    </message>
    <message>
        <source>The belts of engine 1 looked at and judged a defect, before the decision</source>
        <translation>Die Riemen von Motor 1 angesehen und als Mangel beurteilt, bevor entschieden wird</translation>
    </message>
    <message>
        <source>The cock is shut and in the book, the air is at its cut-out, and the unit goes.</source>
        <translation>Der Hahn ist zu und im Buch, die Luft am Abschaltdruck, und der Zug fährt.</translation>
    </message>
    <message>
        <source>The cut-out seen after the cock was shut, before the unit is let go</source>
        <translation>Das Abschalten gesehen, nachdem der Hahn zu war, bevor der Zug freigegeben wird</translation>
    </message>
    <message>
        <source>The dead button not tried more than three times for each engine</source>
        <translation>Der tote Knopf nicht öfter als dreimal je Motor versucht</translation>
    </message>
    <message>
        <source>The drain entered in the book before the unit is let go</source>
        <translation>Der Hahn im Buch eingetragen, bevor der Zug freigegeben wird</translation>
    </message>
    <message>
        <source>The engine that burns stopped before anybody steps down to it</source>
        <translation>Der brennende Motor abgestellt, bevor jemand zu ihm hinuntersteigt</translation>
    </message>
    <message>
        <source>The engine that has burnt not started again</source>
        <translation>Der Motor, der gebrannt hat, nicht wieder angelassen</translation>
    </message>
    <message>
        <source>The engine that is started first has to charge for the other.</source>
        <translation>Der zuerst angelassene Motor muss für den anderen laden.</translation>
    </message>
    <message>
        <source>The engine that slipped is the one isolated</source>
        <translation>Abgetrennt ist der Motor, der rutschte</translation>
    </message>
    <message>
        <source>The figure entered is the one the device took: between 9.5 and 13.5 seconds</source>
        <translation>Die eingetragene Zahl ist die, die der Totmann brauchte: zwischen 9,5 und 13,5 Sekunden</translation>
    </message>
    <message>
        <source>The fire is out, the people are away, and the unit is failed.</source>
        <translation>Das Feuer ist aus, die Leute sind weg, und der Zug ist stillgelegt.</translation>
    </message>
    <message>
        <source>The first release is paid out of a full reservoir; only the second one tells.</source>
        <translation>Das erste Lösen bezahlt ein voller Behälter; erst das zweite sagt etwas.</translation>
    </message>
    <message>
        <source>The gauge watched for 20 seconds and its figure entered, before leaving the cab</source>
        <translation>Die Uhr 20 Sekunden beobachtet und ihre Zahl eingetragen, bevor der Führerstand verlassen wird</translation>
    </message>
    <message>
        <source>The good one taken out and the bad one left in is a unit that does not move at all.</source>
        <translation>Den guten heraus und den schlechten drin gelassen, das ist ein Zug, der sich gar nicht bewegt.</translation>
    </message>
    <message>
        <source>The handbrake is off, it is in the book, and the unit runs free.</source>
        <translation>Die Handbremse ist los, es steht im Buch, und der Zug läuft frei.</translation>
    </message>
    <message>
        <source>The hose is in the book, the unit is failed and stands on its handbrakes.</source>
        <translation>Der Schlauch steht im Buch, der Zug ist stillgelegt und steht auf seinen Handbremsen.</translation>
    </message>
    <message>
        <source>The hoses between the cars looked at and judged before the decision</source>
        <translation>Die Schläuche zwischen den Wagen angesehen und beurteilt, bevor entschieden wird</translation>
    </message>
    <message>
        <source>The isolating cock not shut to get away</source>
        <translation>Den Absperrhahn nicht geschlossen, um wegzukommen</translation>
    </message>
    <message>
        <source>The jumper looked at and judged before it is touched</source>
        <translation>Das Steuerkabel angesehen und beurteilt, bevor es berührt wird</translation>
    </message>
    <message>
        <source>The late device is in the book, the unit is failed and stands on its handbrakes.</source>
        <translation>Der späte Totmann steht im Buch, der Zug ist stillgelegt und steht auf seinen Handbremsen.</translation>
    </message>
    <message>
        <source>The old code was used up when the unit stood.</source>
        <translation>Das alte Zeichen war verbraucht, als der Zug stand.</translation>
    </message>
    <message>
        <source>The old code was used up; and whoever was ill may just be getting off.</source>
        <translation>Das alte Zeichen war verbraucht; und wer krank war, steigt vielleicht gerade aus.</translation>
    </message>
    <message>
        <source>The one left out drags alone, and its wheels get the flat.</source>
        <translation>Der ausgelassene schleift allein, und seine Räder bekommen die Flachstelle.</translation>
    </message>
    <message>
        <source>The one that sounds right is the measure of the one that does not; and belts are of one age.</source>
        <translation>Der, der richtig klingt, ist das Maß für den, der es nicht tut; und Riemen sind gleich alt.</translation>
    </message>
    <message>
        <source>The open drain judged a defect before it is touched</source>
        <translation>Der offene Ablasshahn als Mangel beurteilt, bevor er berührt wird</translation>
    </message>
    <message>
        <source>The other cab&apos;s valve entered before the decision</source>
        <translation>Das Ventil des anderen Führerstands eingetragen, bevor entschieden wird</translation>
    </message>
    <message>
        <source>The other engine looked at as well</source>
        <translation>Auch den anderen Motor angesehen</translation>
    </message>
    <message>
        <source>The place heard or looked at on the ground before anything is blamed</source>
        <translation>Die Stelle vom Boden gehört oder angesehen, bevor etwas beschuldigt wird</translation>
    </message>
    <message>
        <source>The place of the leak heard on the ground before the decision</source>
        <translation>Die Stelle des Lecks vom Boden gehört, bevor entschieden wird</translation>
    </message>
    <message>
        <source>The running generator helps the starter, if it has cut in.</source>
        <translation>Die laufende Lichtmaschine hilft dem Anlasser, wenn sie sich eingeschaltet hat.</translation>
    </message>
    <message>
        <source>The seconds entered in the notebook before the decision</source>
        <translation>Die Sekunden im Merkheft eingetragen, bevor entschieden wird</translation>
    </message>
    <message>
        <source>The shed told, by word, before the handing over</source>
        <translation>Die Werkstatt mündlich verständigt, vor der Übergabe</translation>
    </message>
    <message>
        <source>The unit is put away, and handed over at the booking-on point.</source>
        <translation>Der Zug ist abgestellt und an der Meldestelle übergeben.</translation>
    </message>
    <message>
        <source>The vacuum destroyed before a cord is pulled</source>
        <translation>Das Vakuum vernichtet, bevor eine Schnur gezogen wird</translation>
    </message>
    <message>
        <source>The valve that is set high is in the other cab; the next one to change ends drags as you did.</source>
        <translation>Das hoch gestellte Ventil ist im anderen Führerstand; wer als Nächster die Enden wechselt, schleift wie Sie.</translation>
    </message>
    <message>
        <source>Then nobody holds the train when you do not.</source>
        <translation>Dann hält niemand den Zug, wenn Sie es nicht tun.</translation>
    </message>
    <message>
        <source>There is no restricted way with half a brake pipe.</source>
        <translation>Mit einer halben Bremsleitung gibt es keinen beschränkten Weg.</translation>
    </message>
    <message>
        <source>There is one bottle. What still runs into the fire lights it again.</source>
        <translation>Es gibt eine Flasche. Was noch ins Feuer läuft, zündet es wieder an.</translation>
    </message>
    <message>
        <source>There is one start in the battery; it belongs to the engine that gives it back.</source>
        <translation>Ein Start ist in der Batterie; er gehört dem Motor, der ihn zurückgibt.</translation>
    </message>
    <message>
        <source>There may be a second hole behind the first.</source>
        <translation>Hinter dem ersten kann ein zweites Loch sein.</translation>
    </message>
    <message>
        <source>They have a belt and a battery; you do not.</source>
        <translation>Dort gibt es Riemen und Batterie; bei Ihnen nicht.</translation>
    </message>
    <message>
        <source>They were in. Out and in again wears them, and hides what you look for.</source>
        <translation>Sie waren ein. Aus und wieder ein nutzt sie ab und verdeckt, was Sie suchen.</translation>
    </message>
    <message>
        <source>Three minutes at idle before the engines are stopped</source>
        <translation>Drei Minuten Leerlauf, bevor die Motoren abgestellt werden</translation>
    </message>
    <message>
        <source>Three minutes for the wheels to cool before going on</source>
        <translation>Drei Minuten Abkühlen für die Räder, bevor es weitergeht</translation>
    </message>
    <message>
        <source>Three tries at engine 1 at most</source>
        <translation>Höchstens drei Versuche an Motor 1</translation>
    </message>
    <message>
        <source>Three tries at engine 2 at most</source>
        <translation>Höchstens drei Versuche an Motor 2</translation>
    </message>
    <message>
        <source>Throttle shut, brake, stop: whatever you think of the bell.</source>
        <translation>Fahrschalter zu, Bremse, halten: was immer Sie von der Glocke denken.</translation>
    </message>
    <message>
        <source>Throttle shut, gear at neutral, three to five minutes; the rest of the work fits in.</source>
        <translation>Fahrschalter zu, Gang auf Leerlauf, drei bis fünf Minuten; die übrige Arbeit passt hinein.</translation>
    </message>
    <message>
        <source>Tried from 21 with the valve in release, and let go until the needle is below 5</source>
        <translation>Von 21 aus geprobt, das Ventil auf Lösen, und losgelassen, bis der Zeiger unter 5 ist</translation>
    </message>
    <message>
        <source>Tried from the other cab before going between the cars</source>
        <translation>Vom anderen Führerstand versucht, bevor zwischen die Wagen gegangen wird</translation>
    </message>
    <message>
        <source>Twenty-five kilonewtons of drag: hot tyres, flat wheels, a boiling coupling, and a fire in the dry grass.</source>
        <translation>Fünfundzwanzig Kilonewton Schleifen: heiße Reifen, Flachstellen, eine kochende Kupplung und ein Feuer im trockenen Gras.</translation>
    </message>
    <message>
        <source>Two minutes of charging before engine 1 is started</source>
        <translation>Zwei Minuten geladen, bevor Motor 1 angelassen wird</translation>
    </message>
    <message>
        <source>Vacuum destroyed before the handles are handed over</source>
        <translation>Vakuum vernichtet, bevor die Griffe übergeben werden</translation>
    </message>
    <message>
        <source>Volts read and judged before the first start</source>
        <translation>Die Volt abgelesen und beurteilt vor dem ersten Start</translation>
    </message>
    <message>
        <source>Water left in them freezes in the pipes to the gears.</source>
        <translation>Zurückgelassenes Wasser friert in den Leitungen zu den Gängen.</translation>
    </message>
    <message>
        <source>What does not click the first time does not click the fifth.</source>
        <translation>Was beim ersten Mal nicht klickt, klickt beim fünften nicht.</translation>
    </message>
    <message>
        <source>What has burnt once burns again; and what it burnt through is not seen.</source>
        <translation>Was einmal gebrannt hat, brennt wieder; und was es durchgebrannt hat, sieht man nicht.</translation>
    </message>
    <message>
        <source>What is hot and stands still boils and seizes.</source>
        <translation>Was heiß ist und steht, kocht und frisst.</translation>
    </message>
    <message>
        <source>What is put right unlooked-at is put right by luck.</source>
        <translation>Was ungesehen in Ordnung gebracht wird, ist aus Glück in Ordnung.</translation>
    </message>
    <message>
        <source>What stalls at idle today is gone on the road, and the train stands across the points.</source>
        <translation>Was heute im Leerlauf hängt, ist auf der Strecke weg, und der Zug steht quer über den Weichen.</translation>
    </message>
    <message>
        <source>What was opened may not have shut.</source>
        <translation>Was offen war, ist vielleicht nicht zu.</translation>
    </message>
    <message>
        <source>What was put right is right when it has been tried.</source>
        <translation>Was in Ordnung gebracht wurde, ist in Ordnung, wenn es erprobt ist.</translation>
    </message>
    <message>
        <source>What works from one end and not from the other lies between them; and then you know where to look.</source>
        <translation>Was von einem Ende geht und vom anderen nicht, liegt dazwischen; und dann wissen Sie, wo zu suchen ist.</translation>
    </message>
    <message>
        <source>Wheels and blocks of car 2 looked at and judged before going on</source>
        <translation>Räder und Klötze von Wagen 2 angesehen und beurteilt, bevor es weitergeht</translation>
    </message>
    <message>
        <source>When the other one comes off, something has to hold.</source>
        <translation>Geht die andere los, muss etwas halten.</translation>
    </message>
    <message>
        <source>Which one it is you do not know yet: both out, from the desk, while the direction is in.</source>
        <translation>Welcher es ist, wissen Sie noch nicht: beide ab, vom Pult, solange die Richtung liegt.</translation>
    </message>
    <message>
        <source>Who tries until it comes out right has tested nothing but his patience.</source>
        <translation>Wer probt, bis es richtig herauskommt, hat nichts geprobt als seine Geduld.</translation>
    </message>
    <message>
        <source>Whoever fails a unit and moves it has failed nothing.</source>
        <translation>Wer einen Zug stilllegt und ihn bewegt, hat nichts stillgelegt.</translation>
    </message>
    <message>
        <source>Whoever gets in can let the handbrake off.</source>
        <translation>Wer hineinkommt, kann die Handbremse lösen.</translation>
    </message>
    <message>
        <source>Whoever has emptied the chambers has taken the brake away: it is proved anew.</source>
        <translation>Wer die Kammern geleert hat, hat die Bremse weggenommen: sie wird neu erprobt.</translation>
    </message>
    <message>
        <source>Whoever leads from there next fills the chambers again.</source>
        <translation>Wer als Nächstes von dort fährt, füllt die Kammern wieder.</translation>
    </message>
    <message>
        <source>Wind feeds it, and nobody gets off a train that runs.</source>
        <translation>Wind nährt es, und niemand steigt aus einem Zug, der fährt.</translation>
    </message>
    <message>
        <source>With a battery like this a stopped engine may stay stopped.</source>
        <translation>Mit einer solchen Batterie bleibt ein abgestellter Motor vielleicht stehen.</translation>
    </message>
    <message>
        <source>With the pipe raised the chambers fill again behind the cord.</source>
        <translation>Bei gefüllter Leitung füllen sich die Kammern hinter der Schnur wieder.</translation>
    </message>
    <message>
        <source>You are one; they are fifty, and they do not know.</source>
        <translation>Sie sind einer; sie sind fünfzig, und sie wissen es nicht.</translation>
    </message>
    <message>
        <source>You stand where nobody expects you.</source>
        <translation>Sie stehen, wo niemand Sie erwartet.</translation>
    </message>
    <message>
        <source>a cord</source>
        <translation>eine Schnur</translation>
    </message>
    <message>
        <source>a cord pulled</source>
        <translation>eine gezogene Schnur</translation>
    </message>
    <message>
        <source>a figure entered</source>
        <translation>eine Zahl eingetragen</translation>
    </message>
    <message>
        <source>a figure of 9.5 to 13.5</source>
        <translation>eine Zahl von 9,5 bis 13,5</translation>
    </message>
    <message>
        <source>a full application</source>
        <translation>eine Vollbremsung</translation>
    </message>
    <message>
        <source>a hand at the drive</source>
        <translation>eine Hand am Antrieb</translation>
    </message>
    <message>
        <source>a minute and a half is enough to feel it, to shut off and to stop</source>
        <translation>anderthalb Minuten genügen, um es zu fühlen, abzuschalten und zu halten</translation>
    </message>
    <message>
        <source>a start from cab 1</source>
        <translation>ein Anlassen von Führerstand 1</translation>
    </message>
    <message>
        <source>a start of engine 1</source>
        <translation>ein Anlassen von Motor 1</translation>
    </message>
    <message>
        <source>a tell-tale judged</source>
        <translation>ein Melder beurteilt</translation>
    </message>
    <message>
        <source>a trial</source>
        <translation>eine Probe</translation>
    </message>
    <message>
        <source>a try at engine 1</source>
        <translation>ein Versuch an Motor 1</translation>
    </message>
    <message>
        <source>a try at engine 2</source>
        <translation>ein Versuch an Motor 2</translation>
    </message>
    <message>
        <source>a try from cab 2</source>
        <translation>ein Versuch von Führerstand 2</translation>
    </message>
    <message>
        <source>a wheel may stand a tenth short of hard</source>
        <translation>einem Rad darf ein Zehntel an fest fehlen</translation>
    </message>
    <message>
        <source>all of them carried, at the booking-on point</source>
        <translation>alles bei sich, an der Meldestelle</translation>
    </message>
    <message>
        <source>an entry or a decision</source>
        <translation>ein Eintrag oder eine Entscheidung</translation>
    </message>
    <message>
        <source>blocks on with the pipe raised</source>
        <translation>Klötze an bei gefüllter Leitung</translation>
    </message>
    <message>
        <source>blocks told off at 21</source>
        <translation>Klötze bei 21 als los gemeldet</translation>
    </message>
    <message>
        <source>both engines silent</source>
        <translation>beide Motoren still</translation>
    </message>
    <message>
        <source>both handbrakes hard on, pawls in</source>
        <translation>beide Handbremsen fest, Sperrklinken ein</translation>
    </message>
    <message>
        <source>cabs locked, doors shut</source>
        <translation>Führerstände abgeschlossen, Türen zu</translation>
    </message>
    <message>
        <source>cord 1</source>
        <translation>Schnur 1</translation>
    </message>
    <message>
        <source>cord 2</source>
        <translation>Schnur 2</translation>
    </message>
    <message>
        <source>cord 3</source>
        <translation>Schnur 3</translation>
    </message>
    <message>
        <source>cord 4</source>
        <translation>Schnur 4</translation>
    </message>
    <message>
        <source>driving under power</source>
        <translation>Fahren unter Kraft</translation>
    </message>
    <message>
        <source>engine 1 standing</source>
        <translation>Motor 1 steht</translation>
    </message>
    <message>
        <source>engine 2 above 600 rpm</source>
        <translation>Motor 2 über 600 Umdrehungen</translation>
    </message>
    <message>
        <source>engine 2 off, engine 1 in use</source>
        <translation>Motor 2 aus, Motor 1 in Gebrauch</translation>
    </message>
    <message>
        <source>entered</source>
        <translation>eingetragen</translation>
    </message>
    <message>
        <source>fifteen seconds to notice it and shut off; under 2 inHg nothing drags</source>
        <translation>fünfzehn Sekunden, um es zu merken und abzuschalten; unter 2 inHg schleift nichts</translation>
    </message>
    <message>
        <source>fire called</source>
        <translation>Feuer gerufen</translation>
    </message>
    <message>
        <source>going between the cars</source>
        <translation>das Gehen zwischen die Wagen</translation>
    </message>
    <message>
        <source>going on</source>
        <translation>die Weiterfahrt</translation>
    </message>
    <message>
        <source>half a metre, and half a second</source>
        <translation>ein halber Meter, und eine halbe Sekunde</translation>
    </message>
    <message>
        <source>half a minute more, for who brings it to a better place</source>
        <translation>eine halbe Minute mehr, für wen er an eine bessere Stelle bringt</translation>
    </message>
    <message>
        <source>handing over</source>
        <translation>die Übergabe</translation>
    </message>
    <message>
        <source>heater and saloon lights off</source>
        <translation>Heizung und Abteillicht aus</translation>
    </message>
    <message>
        <source>in the cab, before the gauge</source>
        <translation>im Führerstand, vor der Uhr</translation>
    </message>
    <message>
        <source>it may still be turning its last turns</source>
        <translation>er mag noch seine letzten Umdrehungen machen</translation>
    </message>
    <message>
        <source>leaving the cab</source>
        <translation>das Verlassen des Führerstands</translation>
    </message>
    <message>
        <source>letting the unit go on as usual</source>
        <translation>die Freigabe wie üblich</translation>
    </message>
    <message>
        <source>looking under the cover</source>
        <translation>der Blick unter die Haube</translation>
    </message>
    <message>
        <source>moving on</source>
        <translation>das Weiterfahren</translation>
    </message>
    <message>
        <source>no word that the unit fails</source>
        <translation>kein Wort, dass der Zug nicht fährt</translation>
    </message>
    <message>
        <source>none: either it was asked or it was not</source>
        <translation>keine: es wurde gefragt oder nicht</translation>
    </message>
    <message>
        <source>none: either somebody has looked or nobody has</source>
        <translation>keine: jemand hat nachgesehen oder niemand</translation>
    </message>
    <message>
        <source>none: he was told or he was not</source>
        <translation>keine: es wurde ihm gesagt oder nicht</translation>
    </message>
    <message>
        <source>none: it is shut or it is not</source>
        <translation>keine: er ist zu oder nicht</translation>
    </message>
    <message>
        <source>none: it moves or it does not</source>
        <translation>keine: er bewegt sich oder nicht</translation>
    </message>
    <message>
        <source>none: it was failed or it was not; a decision may be taken back, in words, before</source>
        <translation>keine: er wurde stillgelegt oder nicht; eine Entscheidung kann vorher mit Worten zurückgenommen werden</translation>
    </message>
    <message>
        <source>none: it was tried or it was not</source>
        <translation>keine: es wurde versucht oder nicht</translation>
    </message>
    <message>
        <source>not yet at the next stop, or engine 2 off and its pin in</source>
        <translation>noch nicht am nächsten Halt, oder Motor 2 aus und sein Bolzen ein</translation>
    </message>
    <message>
        <source>opening the battery switch</source>
        <translation>das Öffnen des Batterieschalters</translation>
    </message>
    <message>
        <source>power on, tachometer 2 far above tachometer 1</source>
        <translation>Kraft an, Drehzahlmesser 2 weit über Drehzahlmesser 1</translation>
    </message>
    <message>
        <source>pulling a breaker</source>
        <translation>das Ziehen eines Automaten</translation>
    </message>
    <message>
        <source>pulling a cord</source>
        <translation>das Ziehen einer Schnur</translation>
    </message>
    <message>
        <source>pulling the bottle</source>
        <translation>das Ziehen der Flasche</translation>
    </message>
    <message>
        <source>putting the alarm back</source>
        <translation>das Zurückstellen der Notbremse</translation>
    </message>
    <message>
        <source>putting the jumper home</source>
        <translation>das Einstecken des Steuerkabels</translation>
    </message>
    <message>
        <source>released, and the blocks still on</source>
        <translation>gelöst, und die Klötze noch an</translation>
    </message>
    <message>
        <source>restricting or failing it</source>
        <translation>das Beschränken oder Stilllegen</translation>
    </message>
    <message>
        <source>seen falling in lap</source>
        <translation>auf Abschluss fallen gesehen</translation>
    </message>
    <message>
        <source>shutting it</source>
        <translation>das Schließen</translation>
    </message>
    <message>
        <source>shutting the cock</source>
        <translation>das Schließen des Hahns</translation>
    </message>
    <message>
        <source>standing at idle</source>
        <translation>im Stand im Leerlauf</translation>
    </message>
    <message>
        <source>stepping down on side 1</source>
        <translation>das Absteigen auf Seite 1</translation>
    </message>
    <message>
        <source>stopping an engine</source>
        <translation>das Abstellen eines Motors</translation>
    </message>
    <message>
        <source>taken back within a minute it is forgiven</source>
        <translation>binnen einer Minute zurückgenommen wird es verziehen</translation>
    </message>
    <message>
        <source>ten seconds less are forgiven</source>
        <translation>zehn Sekunden weniger werden verziehen</translation>
    </message>
    <message>
        <source>ten seconds of rolling are enough to feel it; under 2.5 inHg it is not felt</source>
        <translation>zehn Sekunden Rollen genügen, um es zu fühlen; unter 2,5 inHg fühlt man es nicht</translation>
    </message>
    <message>
        <source>the air lamp seen lit from the cab</source>
        <translation>die Luftlampe vom Führerstand leuchten gesehen</translation>
    </message>
    <message>
        <source>the alarm</source>
        <translation>die Notbremse</translation>
    </message>
    <message>
        <source>the alarm put back</source>
        <translation>die Notbremse zurückgestellt</translation>
    </message>
    <message>
        <source>the battery switch open</source>
        <translation>der Batterieschalter offen</translation>
    </message>
    <message>
        <source>the belts of both judged</source>
        <translation>die Riemen beider beurteilt</translation>
    </message>
    <message>
        <source>the belts of engine 1 judged a defect, or asked about</source>
        <translation>die Riemen von Motor 1 als Mangel beurteilt, oder nachgefragt</translation>
    </message>
    <message>
        <source>the belts of engine 2 judged</source>
        <translation>die Riemen von Motor 2 beurteilt</translation>
    </message>
    <message>
        <source>the book written up</source>
        <translation>das Buch geschrieben</translation>
    </message>
    <message>
        <source>the control reservoir blown and shut</source>
        <translation>der Steuerbehälter ausgeblasen und zu</translation>
    </message>
    <message>
        <source>the drain judged</source>
        <translation>der Hahn beurteilt</translation>
    </message>
    <message>
        <source>the drain shut</source>
        <translation>der Hahn zu</translation>
    </message>
    <message>
        <source>the drain shut, or standing</source>
        <translation>der Hahn zu, oder im Stand</translation>
    </message>
    <message>
        <source>the entry</source>
        <translation>der Eintrag</translation>
    </message>
    <message>
        <source>the figure entered</source>
        <translation>die eingetragene Zahl</translation>
    </message>
    <message>
        <source>the first trial</source>
        <translation>die erste Probe</translation>
    </message>
    <message>
        <source>the fuel cock shut</source>
        <translation>der Kraftstoffhahn zu</translation>
    </message>
    <message>
        <source>the guard&apos;s word that it has been dealt with</source>
        <translation>das Wort des Schaffners, dass es erledigt ist</translation>
    </message>
    <message>
        <source>the handbrake of cab 1 hard, its pawl in</source>
        <translation>die Handbremse von Führerstand 1 fest, ihre Sperrklinke ein</translation>
    </message>
    <message>
        <source>the handbrake of cab 2 coming off</source>
        <translation>das Lösen der Handbremse von Führerstand 2</translation>
    </message>
    <message>
        <source>the handbrake of cab 2 on</source>
        <translation>die Handbremse von Führerstand 2 an</translation>
    </message>
    <message>
        <source>the hiss heard on the ground</source>
        <translation>das Zischen vom Boden gehört</translation>
    </message>
    <message>
        <source>the hoses judged a defect, or asked about</source>
        <translation>die Schläuche als Mangel beurteilt, oder nachgefragt</translation>
    </message>
    <message>
        <source>the jumper judged defective</source>
        <translation>das Steuerkabel als Mangel beurteilt</translation>
    </message>
    <message>
        <source>the main reservoir blown and shut</source>
        <translation>der Hauptbehälter ausgeblasen und zu</translation>
    </message>
    <message>
        <source>the needle has fallen by itself, on the way</source>
        <translation>der Zeiger ist unterwegs von selbst gefallen</translation>
    </message>
    <message>
        <source>the pin</source>
        <translation>der Bolzen</translation>
    </message>
    <message>
        <source>the pin in</source>
        <translation>der Bolzen steckt</translation>
    </message>
    <message>
        <source>the second</source>
        <translation>die zweite</translation>
    </message>
    <message>
        <source>the shift air shut</source>
        <translation>die Schaltluft zu</translation>
    </message>
    <message>
        <source>the sleeve drawn to the middle</source>
        <translation>die Muffe in die Mitte gezogen</translation>
    </message>
    <message>
        <source>the suck heard on the ground</source>
        <translation>das Saugen vom Boden gehört</translation>
    </message>
    <message>
        <source>the switch at off</source>
        <translation>der Schalter aus</translation>
    </message>
    <message>
        <source>the volts judged</source>
        <translation>die Volt beurteilt</translation>
    </message>
    <message>
        <source>the wheels may stand a tenth short of hard</source>
        <translation>den Rädern darf ein Zehntel an fest fehlen</translation>
    </message>
    <message>
        <source>third gear is in</source>
        <translation>der dritte Gang liegt</translation>
    </message>
    <message>
        <source>three times the eight seconds that count as serious already</source>
        <translation>das Dreifache der acht Sekunden, die schon als ernst gelten</translation>
    </message>
    <message>
        <source>two strokes, still valid</source>
        <translation>zwei Schläge, noch gültig</translation>
    </message>
    <message>
        <source>wheels and blocks of car 2 judged</source>
        <translation>Räder und Klötze von Wagen 2 beurteilt</translation>
    </message>
    <message>
        <source>10 psi of oil, seen at the running engine</source>
        <translation>10 psi Öl, am laufenden Motor gesehen</translation>
    </message>
    <message>
        <source>A breaker that is out would be the simplest, a belt in the tray the next.</source>
        <translation>Ein ausgelöster Automat wäre das Einfachste, ein Riemen in der Wanne das Nächste.</translation>
    </message>
    <message>
        <source>A full application and a release break the ice; look again.</source>
        <translation>Eine Vollbremsung und ein Lösen brechen das Eis; noch einmal hinsehen.</translation>
    </message>
    <message>
        <source>A lamp that is dark may be a bulb; it may also be the oil, and a minute dry ruins it.</source>
        <translation>Eine dunkle Lampe kann eine Birne sein; sie kann auch das Öl sein, und eine Minute trocken zerstört ihn.</translation>
    </message>
    <message>
        <source>A unit whose brake pipe leaks is not let go, not even restricted</source>
        <translation>Ein Zug, dessen Bremsleitung undicht ist, wird nicht freigegeben, auch nicht beschränkt</translation>
    </message>
    <message>
        <source>A unit whose device comes late is not let go, not even restricted</source>
        <translation>Ein Zug, dessen Totmann spät kommt, wird nicht freigegeben, auch nicht beschränkt</translation>
    </message>
    <message>
        <source>A unit with one engine isolated is not let go as if nothing were the matter</source>
        <translation>Ein Zug mit einem abgetrennten Motor wird nicht freigegeben, als wäre nichts</translation>
    </message>
    <message>
        <source>A unit with one exhauster is not let go as if nothing were the matter</source>
        <translation>Ein Zug mit einem Luftsauger wird nicht freigegeben, als wäre nichts</translation>
    </message>
    <message>
        <source>A wheel that slides has a flat after a few lengths; it hammers for ever after.</source>
        <translation>Ein Rad, das rutscht, hat nach ein paar Längen eine Flachstelle; es hämmert für immer.</translation>
    </message>
    <message>
        <source>An engine with oil on its gauge not stopped</source>
        <translation>Ein Motor mit Öl an der Uhr nicht abgestellt</translation>
    </message>
    <message>
        <source>At tick-over it is lit on any unit.</source>
        <translation>Im Leerlauf leuchtet sie bei jedem Zug.</translation>
    </message>
    <message>
        <source>Blocks seen or told on, with 19 inHg or more in the pipe, before a cord is pulled and before the decision</source>
        <translation>Klötze anliegend gesehen oder gemeldet, bei 19 inHg oder mehr in der Leitung, bevor eine Schnur gezogen und bevor entschieden wird</translation>
    </message>
    <message>
        <source>Brake tried within the first 300 metres, and released again</source>
        <translation>Bremse auf den ersten 300 Metern versucht und wieder gelöst</translation>
    </message>
    <message>
        <source>Breakers, volts, and the belts of both engines judged before the decision</source>
        <translation>Automaten, Volt und die Riemen beider Motoren beurteilt, bevor entschieden wird</translation>
    </message>
    <message>
        <source>Charge lamp read above fast idle before the decision</source>
        <translation>Ladelampe über schnellem Leerlauf abgelesen, bevor entschieden wird</translation>
    </message>
    <message>
        <source>Dark under the test too: the bulb. Lit under the test: the oil, or its switch.</source>
        <translation>Auch unter der Probe dunkel: die Birne. Unter der Probe hell: das Öl, oder sein Schalter.</translation>
    </message>
    <message>
        <source>Down to engine 2: 10 psi and more on its gauge, then it is the lamp.</source>
        <translation>Zu Motor 2 hinunter: 10 psi und mehr an seiner Uhr, dann ist es die Lampe.</translation>
    </message>
    <message>
        <source>Engine 2 switched off and its final drive pinned before moving off without it</source>
        <translation>Motor 2 abgeschaltet und sein Achsgetriebe gesperrt, bevor ohne ihn weitergefahren wird</translation>
    </message>
    <message>
        <source>Habit says stop them: this time they stay on, one at least.</source>
        <translation>Die Gewohnheit sagt abstellen: diesmal bleiben sie an, wenigstens einer.</translation>
    </message>
    <message>
        <source>Half the unit for a bulb.</source>
        <translation>Der halbe Zug für eine Birne.</translation>
    </message>
    <message>
        <source>Iced blocks bite late: know it before you need it.</source>
        <translation>Vereiste Klötze beißen spät: wissen Sie es, bevor Sie sie brauchen.</translation>
    </message>
    <message>
        <source>If it does not go with two notches, it is held; and what holds it is not the throttle&apos;s business.</source>
        <translation>Geht es mit zwei Stufen nicht, wird er gehalten; und was ihn hält, geht den Fahrschalter nichts an.</translation>
    </message>
    <message>
        <source>If it is the oil switch that says nothing, the starter is let in, and its pinion meets a turning ring.</source>
        <translation>Ist es der Ölschalter, der nichts sagt, kommt der Anlasser hinein, und sein Ritzel trifft einen drehenden Kranz.</translation>
    </message>
    <message>
        <source>In frost five seconds and more between gear and throttle.</source>
        <translation>Bei Frost fünf Sekunden und mehr zwischen Gang und Fahrschalter.</translation>
    </message>
    <message>
        <source>It is found, told, in the book, and decided.</source>
        <translation>Es ist gefunden, gemeldet, im Buch und entschieden.</translation>
    </message>
    <message>
        <source>It is in the book, and the decision is told: the blocks are off at 21, or the unit is failed and stands on its handbrake.</source>
        <translation>Es steht im Buch, und die Entscheidung ist gesagt: die Klötze sind bei 21 los, oder der Zug ist stillgelegt und steht auf seiner Handbremse.</translation>
    </message>
    <message>
        <source>It is the bulb, it is in the book, and the unit goes on.</source>
        <translation>Es ist die Birne, es steht im Buch, und der Zug fährt weiter.</translation>
    </message>
    <message>
        <source>Lamps judged under the lamp test before the decision</source>
        <translation>Lampen unter der Lampenprobe beurteilt, bevor entschieden wird</translation>
    </message>
    <message>
        <source>Never both engines stopped</source>
        <translation>Nie beide Motoren abgestellt</translation>
    </message>
    <message>
        <source>No power held against a unit that does not move</source>
        <translation>Keine Kraft gegen einen Zug gehalten, der sich nicht bewegt</translation>
    </message>
    <message>
        <source>No start button pressed on the running engine</source>
        <translation>Kein Anlassknopf am laufenden Motor gedrückt</translation>
    </message>
    <message>
        <source>No wheel dragged with its blocks frozen on</source>
        <translation>Kein Rad mit angefrorenen Klötzen geschleift</translation>
    </message>
    <message>
        <source>Nothing moves in five seconds: shut off, look at handbrakes, gauges, blocks.</source>
        <translation>Nichts bewegt sich in fünf Sekunden: abschalten, nach Handbremsen, Uhren, Klötzen sehen.</translation>
    </message>
    <message>
        <source>Oil gauge of engine 2 read at the engine, with the engine running, before power is put on</source>
        <translation>Öluhr von Motor 2 am Motor abgelesen, bei laufendem Motor, bevor Kraft gegeben wird</translation>
    </message>
    <message>
        <source>Power shut off within eight seconds of one engine running away in first, each time</source>
        <translation>Kraft abgeschaltet binnen acht Sekunden, nachdem ein Motor im ersten davonläuft, jedes Mal</translation>
    </message>
    <message>
        <source>Released on the needle is not released at the wheel, in frost.</source>
        <translation>Am Zeiger gelöst ist bei Frost nicht am Rad gelöst.</translation>
    </message>
    <message>
        <source>Saloon lights, heater, cab light. Not the red lamps.</source>
        <translation>Abteillicht, Heizung, Führerstandslicht. Nicht die roten Lampen.</translation>
    </message>
    <message>
        <source>Spare loads off within five minutes of the lamp being read above fast idle</source>
        <translation>Entbehrliche Verbraucher aus binnen fünf Minuten, nachdem die Lampe über schnellem Leerlauf abgelesen ist</translation>
    </message>
    <message>
        <source>The blocks looked at and judged at all four places before moving</source>
        <translation>Die Klötze an allen vier Stellen angesehen und beurteilt, bevor gefahren wird</translation>
    </message>
    <message>
        <source>The red lamps at the rear left on</source>
        <translation>Die roten Lampen am Zugende an gelassen</translation>
    </message>
    <message>
        <source>The tachometer, the ear; not the button.</source>
        <translation>Der Drehzahlmesser, das Ohr; nicht der Knopf.</translation>
    </message>
    <message>
        <source>The unit is on its way on free wheels, and it is in the book.</source>
        <translation>Der Zug ist auf freien Rädern unterwegs, und es steht im Buch.</translation>
    </message>
    <message>
        <source>They are what the one behind sees.</source>
        <translation>Sie sind, was der Nachfolgende sieht.</translation>
    </message>
    <message>
        <source>What burns now burns the next start; the tail lamp is no spare load.</source>
        <translation>Was jetzt brennt, verbrennt den nächsten Start; das Schlusslicht ist kein entbehrlicher Verbraucher.</translation>
    </message>
    <message>
        <source>Who pulls cords on a feeling pulls them once too often; who lets go on a needle has not looked.</source>
        <translation>Wer Schnüre nach Gefühl zieht, zieht sie einmal zu oft; wer nach dem Zeiger losfährt, hat nicht hingesehen.</translation>
    </message>
    <message>
        <source>With nothing that charges, the next start may be the one the battery has not.</source>
        <translation>Wenn nichts lädt, ist der nächste Start vielleicht der, den die Batterie nicht hat.</translation>
    </message>
    <message>
        <source>an application on the way</source>
        <translation>ein Anlegen unterwegs</translation>
    </message>
    <message>
        <source>both engines standing</source>
        <translation>beide Motoren stehen</translation>
    </message>
    <message>
        <source>drawing up to the mark, inside the platform, still belongs to the stop</source>
        <translation>Vorziehen bis zur Tafel, am Bahnsteig, gehört noch zum Halt</translation>
    </message>
    <message>
        <source>five seconds, for an engine that is caught again</source>
        <translation>fünf Sekunden, für einen Motor, der wieder gefangen wird</translation>
    </message>
    <message>
        <source>loads are shed</source>
        <translation>Verbraucher sind abgeschaltet</translation>
    </message>
    <message>
        <source>moving off with engine 2 standing</source>
        <translation>die Weiterfahrt mit stehendem Motor 2</translation>
    </message>
    <message>
        <source>none: the gauge was read or it was not</source>
        <translation>keine: die Uhr wurde abgelesen oder nicht</translation>
    </message>
    <message>
        <source>released, and not moving</source>
        <translation>gelöst, und ohne Bewegung</translation>
    </message>
    <message>
        <source>saloon lights and heater off</source>
        <translation>Abteillicht und Heizung aus</translation>
    </message>
    <message>
        <source>stopping engine 2</source>
        <translation>das Abstellen von Motor 2</translation>
    </message>
    <message>
        <source>the battery is not full</source>
        <translation>die Batterie ist nicht voll</translation>
    </message>
    <message>
        <source>the blocks judged at all four places</source>
        <translation>die Klötze an allen vier Stellen beurteilt</translation>
    </message>
    <message>
        <source>the blocks of car 2 frozen on</source>
        <translation>die Klötze von Wagen 2 angefroren</translation>
    </message>
    <message>
        <source>the end of the siding</source>
        <translation>das Ende des Abstellgleises</translation>
    </message>
    <message>
        <source>the first cord, or the decision</source>
        <translation>die erste Schnur, oder die Entscheidung</translation>
    </message>
    <message>
        <source>the lamp lit above 650 rpm, seen from the cab</source>
        <translation>die Lampe an über 650 Umdrehungen, vom Führerstand gesehen</translation>
    </message>
    <message>
        <source>the lamp still lit above fast idle</source>
        <translation>die Lampe über schnellem Leerlauf noch an</translation>
    </message>
    <message>
        <source>the red lamps on</source>
        <translation>die roten Lampen an</translation>
    </message>
    <message>
        <source>three psi under the cut-out are enough; with the drain shut and 80 psi on the gauge it counts as serious</source>
        <translation>drei psi unter dem Abschaltdruck genügen; ist der Hahn zu und stehen 80 psi an der Uhr, gilt es als ernst</translation>
    </message>
    <message>
        <source>three seconds, for who feels it at once</source>
        <translation>drei Sekunden, für wen es sofort fühlt</translation>
    </message>
    <message>
        <source>two notches and more</source>
        <translation>zwei Stufen und mehr</translation>
    </message>
</context>
<context>
    <name>Signal</name>
    <message>
        <source>%1, %2</source>
        <translation>%1, %2</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <translation>%1: %2</translation>
    </message>
    <message>
        <source>no</source>
        <translation>nein</translation>
    </message>
    <message>
        <source>yes</source>
        <translation>ja</translation>
    </message>
    <message>
        <source>0 good</source>
        <translation>0 gut</translation>
    </message>
    <message>
        <source>0 once the machine left the range the model was checked in</source>
        <translation>0, sobald die Maschine den geprüften Bereich verließ</translation>
    </message>
    <message>
        <source>0 sound</source>
        <translation>0 gesund</translation>
    </message>
    <message>
        <source>a board</source>
        <translation>eine Tafel</translation>
    </message>
    <message>
        <source>a brake handle is in cab 1</source>
        <translation>ein Bremsgriff ist in Führerstand 1</translation>
    </message>
    <message>
        <source>a brake handle is in cab 2</source>
        <translation>ein Bremsgriff ist in Führerstand 2</translation>
    </message>
    <message>
        <source>a control key is in cab 1&apos;s switch</source>
        <translation>ein Steuerschlüssel steckt in Führerstand 1</translation>
    </message>
    <message>
        <source>a control key is in cab 2&apos;s switch</source>
        <translation>ein Steuerschlüssel steckt in Führerstand 2</translation>
    </message>
    <message>
        <source>a passenger door is open</source>
        <translation>eine Fahrgasttür ist offen</translation>
    </message>
    <message>
        <source>a reversing lever is in cab 1</source>
        <translation>ein Richtungshebel ist in Führerstand 1</translation>
    </message>
    <message>
        <source>a reversing lever is in cab 2</source>
        <translation>ein Richtungshebel ist in Führerstand 2</translation>
    </message>
    <message>
        <source>acceleration</source>
        <translation>Beschleunigung</translation>
    </message>
    <message>
        <source>acts on the unit while it was protected</source>
        <translation>Handlungen am Zug, während er gesichert war</translation>
    </message>
    <message>
        <source>air in the fuel system</source>
        <translation>Luft im Kraftstoff</translation>
    </message>
    <message>
        <source>air lamp</source>
        <translation>Luftlampe</translation>
    </message>
    <message>
        <source>air lamp: drives in mesh and air enough, cab 1</source>
        <translation>Luftlampe: Antriebe im Eingriff und Luft genug, Führerstand 1</translation>
    </message>
    <message>
        <source>air lamp: drives in mesh and air enough, cab 2</source>
        <translation>Luftlampe: Antriebe im Eingriff und Luft genug, Führerstand 2</translation>
    </message>
    <message>
        <source>an engine burns</source>
        <translation>ein Motor brennt</translation>
    </message>
    <message>
        <source>band cylinder of first gear</source>
        <translation>Bandzylinder des ersten Gangs</translation>
    </message>
    <message>
        <source>band cylinder of second gear</source>
        <translation>Bandzylinder des zweiten Gangs</translation>
    </message>
    <message>
        <source>band cylinder of third gear</source>
        <translation>Bandzylinder des dritten Gangs</translation>
    </message>
    <message>
        <source>battery</source>
        <translation>Batterie</translation>
    </message>
    <message>
        <source>battery current</source>
        <translation>Batteriestrom</translation>
    </message>
    <message>
        <source>battery volts at the cupboard</source>
        <translation>Batteriespannung am Schaltschrank</translation>
    </message>
    <message>
        <source>blocks 1</source>
        <translation>Klötze 1</translation>
    </message>
    <message>
        <source>blocks 2</source>
        <translation>Klötze 2</translation>
    </message>
    <message>
        <source>blocks as last told</source>
        <translation>Klötze, wie zuletzt gemeldet</translation>
    </message>
    <message>
        <source>blocks of car 1 seen on the wheels</source>
        <translation>Klötze von Wagen 1 an den Rädern gesehen</translation>
    </message>
    <message>
        <source>blocks of car 2 seen on the wheels</source>
        <translation>Klötze von Wagen 2 an den Rädern gesehen</translation>
    </message>
    <message>
        <source>booked</source>
        <translation>eingetragen</translation>
    </message>
    <message>
        <source>brake force at the rail</source>
        <translation>Bremskraft an der Schiene</translation>
    </message>
    <message>
        <source>bus voltage</source>
        <translation>Netzspannung</translation>
    </message>
    <message>
        <source>cab 1</source>
        <translation>Führerstand 1</translation>
    </message>
    <message>
        <source>cab 2</source>
        <translation>Führerstand 2</translation>
    </message>
    <message>
        <source>cab whose desk is alive</source>
        <translation>Führerstand, dessen Pult besetzt ist</translation>
    </message>
    <message>
        <source>carried</source>
        <translation>mitgenommen</translation>
    </message>
    <message>
        <source>chamber 1</source>
        <translation>Kammer 1</translation>
    </message>
    <message>
        <source>chamber 2</source>
        <translation>Kammer 2</translation>
    </message>
    <message>
        <source>charge lamp</source>
        <translation>Ladelampe</translation>
    </message>
    <message>
        <source>charge lamp: battery is not being charged, cab 1</source>
        <translation>Ladelampe: Batterie wird nicht geladen, Führerstand 1</translation>
    </message>
    <message>
        <source>charge lamp: battery is not being charged, cab 2</source>
        <translation>Ladelampe: Batterie wird nicht geladen, Führerstand 2</translation>
    </message>
    <message>
        <source>clutch cylinder of top gear</source>
        <translation>Kupplungszylinder des obersten Gangs</translation>
    </message>
    <message>
        <source>code of the guard&apos;s that still stands and that the driver has repeated</source>
        <translation>Zeichen des Schaffners, das noch gilt und das der Fahrer wiederholt hat</translation>
    </message>
    <message>
        <source>compressor delivers</source>
        <translation>Kompressor fördert</translation>
    </message>
    <message>
        <source>control air gauge</source>
        <translation>Steuerluftuhr</translation>
    </message>
    <message>
        <source>control relay is in</source>
        <translation>Steuerrelais ist angezogen</translation>
    </message>
    <message>
        <source>control reservoir</source>
        <translation>Steuerbehälter</translation>
    </message>
    <message>
        <source>control under the left hand (control table</source>
        <translation>Hebel unter der linken Hand (Tabelle der Hebel</translation>
    </message>
    <message>
        <source>control under the right hand</source>
        <translation>Hebel unter der rechten Hand</translation>
    </message>
    <message>
        <source>coolant</source>
        <translation>Kühlwasser</translation>
    </message>
    <message>
        <source>coolant gauge at engine 1</source>
        <translation>Kühlwasseranzeige an Motor 1</translation>
    </message>
    <message>
        <source>coolant gauge at engine 2</source>
        <translation>Kühlwasseranzeige an Motor 2</translation>
    </message>
    <message>
        <source>coolant temperature</source>
        <translation>Kühlwassertemperatur</translation>
    </message>
    <message>
        <source>coupling oil</source>
        <translation>Kupplungsöl</translation>
    </message>
    <message>
        <source>crank speed</source>
        <translation>Kurbelwellendrehzahl</translation>
    </message>
    <message>
        <source>critical defects judged good</source>
        <translation>kritische Mängel für gut befunden</translation>
    </message>
    <message>
        <source>critical defects that are not in the book</source>
        <translation>kritische Mängel, die nicht im Buch stehen</translation>
    </message>
    <message>
        <source>critical defects that the trainee has seen and that are not in the book</source>
        <translation>kritische Mängel, die gesehen wurden und nicht im Buch stehen</translation>
    </message>
    <message>
        <source>crossings without having looked both ways just before</source>
        <translation>Querungen, ohne unmittelbar davor nach beiden Seiten gesehen zu haben</translation>
    </message>
    <message>
        <source>decision told</source>
        <translation>gesagte Entscheidung</translation>
    </message>
    <message>
        <source>defects found but given another class</source>
        <translation>gefundene Mängel, aber anders eingestuft</translation>
    </message>
    <message>
        <source>defects judged defect</source>
        <translation>Mängel als Mangel beurteilt</translation>
    </message>
    <message>
        <source>defects judged good</source>
        <translation>Mängel für gut befunden</translation>
    </message>
    <message>
        <source>defects on the unit that are not in the book</source>
        <translation>Mängel am Zug, die nicht im Buch stehen</translation>
    </message>
    <message>
        <source>device 1</source>
        <translation>Totmann 1</translation>
    </message>
    <message>
        <source>device 2</source>
        <translation>Totmann 2</translation>
    </message>
    <message>
        <source>distance covered since the start</source>
        <translation>Weg seit Beginn</translation>
    </message>
    <message>
        <source>distance to that signal from the front</source>
        <translation>Abstand der Spitze bis zu diesem Signal</translation>
    </message>
    <message>
        <source>distance to the next stopping mark</source>
        <translation>Abstand bis zur nächsten Haltetafel</translation>
    </message>
    <message>
        <source>dog sleeve</source>
        <translation>Klauenmuffe</translation>
    </message>
    <message>
        <source>dogs in mesh</source>
        <translation>Klauen im Eingriff</translation>
    </message>
    <message>
        <source>drive 1</source>
        <translation>Antrieb 1</translation>
    </message>
    <message>
        <source>drive 2</source>
        <translation>Antrieb 2</translation>
    </message>
    <message>
        <source>driven wheels slip or slide</source>
        <translation>Treibräder schleudern oder gleiten</translation>
    </message>
    <message>
        <source>drum of first gear</source>
        <translation>Trommel des ersten Gangs</translation>
    </message>
    <message>
        <source>drum of second gear</source>
        <translation>Trommel des zweiten Gangs</translation>
    </message>
    <message>
        <source>drum of third gear</source>
        <translation>Trommel des dritten Gangs</translation>
    </message>
    <message>
        <source>end 1</source>
        <translation>Ende 1</translation>
    </message>
    <message>
        <source>end 2</source>
        <translation>Ende 2</translation>
    </message>
    <message>
        <source>engine 1</source>
        <translation>Motor 1</translation>
    </message>
    <message>
        <source>engine 2</source>
        <translation>Motor 2</translation>
    </message>
    <message>
        <source>exhauster 1 heard here</source>
        <translation>Luftsauger 1 hier zu hören</translation>
    </message>
    <message>
        <source>exhauster 2 heard here</source>
        <translation>Luftsauger 2 hier zu hören</translation>
    </message>
    <message>
        <source>fire bell heard here</source>
        <translation>Brandglocke hier zu hören</translation>
    </message>
    <message>
        <source>fire lamp</source>
        <translation>Brandlampe</translation>
    </message>
    <message>
        <source>fire lamp, cab 1</source>
        <translation>Brandlampe, Führerstand 1</translation>
    </message>
    <message>
        <source>fire lamp, cab 2</source>
        <translation>Brandlampe, Führerstand 2</translation>
    </message>
    <message>
        <source>fire to be seen at engine 1</source>
        <translation>Feuer an Motor 1 zu sehen</translation>
    </message>
    <message>
        <source>fire to be seen at engine 2</source>
        <translation>Feuer an Motor 2 zu sehen</translation>
    </message>
    <message>
        <source>freewheel drives</source>
        <translation>Freilauf treibt</translation>
    </message>
    <message>
        <source>front of the unit to the next stopping mark</source>
        <translation>Zugspitze bis zur nächsten Haltetafel</translation>
    </message>
    <message>
        <source>fuel gauge at engine 1</source>
        <translation>Kraftstoffanzeige an Motor 1</translation>
    </message>
    <message>
        <source>fuel gauge at engine 2</source>
        <translation>Kraftstoffanzeige an Motor 2</translation>
    </message>
    <message>
        <source>fuel in the tank</source>
        <translation>Kraftstoff im Tank</translation>
    </message>
    <message>
        <source>fuel latch tripped</source>
        <translation>Kraftstoffriegel ausgelöst</translation>
    </message>
    <message>
        <source>fuel rack</source>
        <translation>Füllung</translation>
    </message>
    <message>
        <source>full-rack work below 900 rpm</source>
        <translation>Arbeit bei voller Füllung unter 900 U/min</translation>
    </message>
    <message>
        <source>gear whose drum stands or clutch holds</source>
        <translation>Gang, dessen Trommel steht oder dessen Kupplung hält</translation>
    </message>
    <message>
        <source>gearbox input</source>
        <translation>Getriebeeingang</translation>
    </message>
    <message>
        <source>gearbox output and propeller shaft</source>
        <translation>Getriebeausgang und Gelenkwelle</translation>
    </message>
    <message>
        <source>generator current</source>
        <translation>Generatorstrom</translation>
    </message>
    <message>
        <source>gradient</source>
        <translation>Neigung</translation>
    </message>
    <message>
        <source>guard&apos;s vacuum gauge</source>
        <translation>Vakuumuhr des Schaffners</translation>
    </message>
    <message>
        <source>heat into bands and clutch</source>
        <translation>Wärme in Bänder und Kupplung</translation>
    </message>
    <message>
        <source>hiss of air heard here</source>
        <translation>Zischen von Luft hier zu hören</translation>
    </message>
    <message>
        <source>hiss of air in cab 1</source>
        <translation>Zischen von Luft in Führerstand 1</translation>
    </message>
    <message>
        <source>hiss of air in cab 2</source>
        <translation>Zischen von Luft in Führerstand 2</translation>
    </message>
    <message>
        <source>horn sounds</source>
        <translation>Horn ertönt</translation>
    </message>
    <message>
        <source>hottest drum or clutch</source>
        <translation>heißeste Trommel oder Kupplung</translation>
    </message>
    <message>
        <source>how brightly lit lamps burn</source>
        <translation>wie hell leuchtende Lampen brennen</translation>
    </message>
    <message>
        <source>how brightly lit lamps burn, 0..1, cab 1</source>
        <translation>wie hell leuchtende Lampen brennen, 0..1, Führerstand 1</translation>
    </message>
    <message>
        <source>how brightly lit lamps burn, 0..1, cab 2</source>
        <translation>wie hell leuchtende Lampen brennen, 0..1, Führerstand 2</translation>
    </message>
    <message>
        <source>how evenly engine 1 fires</source>
        <translation>wie gleichmäßig Motor 1 zündet</translation>
    </message>
    <message>
        <source>how evenly engine 2 fires</source>
        <translation>wie gleichmäßig Motor 2 zündet</translation>
    </message>
    <message>
        <source>how long</source>
        <translation>wie lange</translation>
    </message>
    <message>
        <source>how long that item has to be looked at for the look to count</source>
        <translation>wie lange dieses Ding anzusehen ist, damit der Blick zählt</translation>
    </message>
    <message>
        <source>how loud it sounds</source>
        <translation>wie laut es klingt</translation>
    </message>
    <message>
        <source>how often the trainee agrees a bell test with the guard</source>
        <translation>wie oft eine Klingelprobe mit dem Schaffner vereinbart wird</translation>
    </message>
    <message>
        <source>how often the trainee asks for a second person at the rear</source>
        <translation>wie oft um eine zweite Person hinten gebeten wird</translation>
    </message>
    <message>
        <source>how often the trainee asks the second person for the reading in the rear cab</source>
        <translation>wie oft die zweite Person nach der Ablesung hinten gefragt wird</translation>
    </message>
    <message>
        <source>how often the trainee asks the second person to open the guard&apos;s valve</source>
        <translation>wie oft die zweite Person gebeten wird, das Schaffnerventil zu öffnen</translation>
    </message>
    <message>
        <source>how often the trainee asks the second person to shut the guard&apos;s valve</source>
        <translation>wie oft die zweite Person gebeten wird, das Schaffnerventil zu schließen</translation>
    </message>
    <message>
        <source>how often the trainee asks the second person whether the blocks are on</source>
        <translation>wie oft die zweite Person gefragt wird, ob die Klötze anliegen</translation>
    </message>
    <message>
        <source>how often the trainee asks whether the line may be walked and the unit approached</source>
        <translation>wie oft gefragt wird, ob das Gleis betreten und der Zug aufgesucht werden darf</translation>
    </message>
    <message>
        <source>how often the trainee asks who is working on the unit</source>
        <translation>wie oft gefragt wird, wer am Zug arbeitet</translation>
    </message>
    <message>
        <source>how often the trainee asks why an isolating switch stands at off</source>
        <translation>wie oft gefragt wird, warum ein Trennschalter auf Aus steht</translation>
    </message>
    <message>
        <source>how often the trainee calls fire</source>
        <translation>wie oft Feuer gerufen wird</translation>
    </message>
    <message>
        <source>how often the trainee calls out that an engine will start</source>
        <translation>wie oft gerufen wird, dass ein Motor anläuft</translation>
    </message>
    <message>
        <source>how often the trainee counts the scotches</source>
        <translation>wie oft die Hemmschuhe gezählt werden</translation>
    </message>
    <message>
        <source>how often the trainee hands handles</source>
        <translation>wie oft Griffe übergeben werden</translation>
    </message>
    <message>
        <source>how often the trainee lets the second person go</source>
        <translation>wie oft die zweite Person entlassen wird</translation>
    </message>
    <message>
        <source>how often the trainee looks along both sides of the unit</source>
        <translation>wie oft an beiden Seiten des Zuges entlanggesehen wird</translation>
    </message>
    <message>
        <source>how often the trainee looks at the signal and the road ahead</source>
        <translation>wie oft nach Signal und Fahrweg gesehen wird</translation>
    </message>
    <message>
        <source>how often the trainee looks back along the train</source>
        <translation>wie oft am Zug zurückgesehen wird</translation>
    </message>
    <message>
        <source>how often the trainee looks both ways before stepping on the line</source>
        <translation>wie oft vor dem Betreten des Gleises nach beiden Seiten gesehen wird</translation>
    </message>
    <message>
        <source>how often the trainee says that the unit does not go</source>
        <translation>wie oft gesagt wird, dass der Zug nicht fährt</translation>
    </message>
    <message>
        <source>how often the trainee stands clear of the moving parts</source>
        <translation>wie oft von den bewegten Teilen zurückgetreten wird</translation>
    </message>
    <message>
        <source>how often the trainee tells the guard what is the matter</source>
        <translation>wie oft dem Schaffner gesagt wird, was los ist</translation>
    </message>
    <message>
        <source>how often the trainee tells the shed of a defect by word</source>
        <translation>wie oft der Werkstatt ein Mangel gesagt wird</translation>
    </message>
    <message>
        <source>how often the trainee tells the signaller what is the matter</source>
        <translation>wie oft dem Fahrdienstleiter gesagt wird, was los ist</translation>
    </message>
    <message>
        <source>hum 1</source>
        <translation>Summen 1</translation>
    </message>
    <message>
        <source>hum 2</source>
        <translation>Summen 2</translation>
    </message>
    <message>
        <source>hum of exhauster 1</source>
        <translation>Summen von Luftsauger 1</translation>
    </message>
    <message>
        <source>hum of exhauster 2</source>
        <translation>Summen von Luftsauger 2</translation>
    </message>
    <message>
        <source>item being looked at (item table</source>
        <translation>angesehenes Ding (Tabelle der Dinge</translation>
    </message>
    <message>
        <source>items judged after having been looked at</source>
        <translation>nach dem Ansehen beurteilte Dinge</translation>
    </message>
    <message>
        <source>items judged defect that are not in the book</source>
        <translation>als Mangel beurteilte Dinge, die nicht im Buch stehen</translation>
    </message>
    <message>
        <source>items judged not sure</source>
        <translation>unsicher beurteilte Dinge</translation>
    </message>
    <message>
        <source>items judged not sure and not resolved</source>
        <translation>unsicher beurteilte und nicht geklärte Dinge</translation>
    </message>
    <message>
        <source>judged</source>
        <translation>beurteilt</translation>
    </message>
    <message>
        <source>judgements of things not looked at</source>
        <translation>Urteile über nicht angesehene Dinge</translation>
    </message>
    <message>
        <source>lamp</source>
        <translation>Lampe</translation>
    </message>
    <message>
        <source>lamp engine 1</source>
        <translation>Lampe Motor 1</translation>
    </message>
    <message>
        <source>lamp engine 2</source>
        <translation>Lampe Motor 2</translation>
    </message>
    <message>
        <source>lamp of the safety device</source>
        <translation>Lampe des Totmanns</translation>
    </message>
    <message>
        <source>lamp of the safety device: held, cab 1</source>
        <translation>Lampe des Totmanns: gehalten, Führerstand 1</translation>
    </message>
    <message>
        <source>lamp of the safety device: held, cab 2</source>
        <translation>Lampe des Totmanns: gehalten, Führerstand 2</translation>
    </message>
    <message>
        <source>lamp test</source>
        <translation>Lampenprobe</translation>
    </message>
    <message>
        <source>lamp: engine 1 runs with oil pressure, cab 1</source>
        <translation>Lampe: Motor 1 läuft mit Öldruck, Führerstand 1</translation>
    </message>
    <message>
        <source>lamp: engine 1 runs with oil pressure, cab 2</source>
        <translation>Lampe: Motor 1 läuft mit Öldruck, Führerstand 2</translation>
    </message>
    <message>
        <source>lamp: engine 2 runs with oil pressure, cab 1</source>
        <translation>Lampe: Motor 2 läuft mit Öldruck, Führerstand 1</translation>
    </message>
    <message>
        <source>lamp: engine 2 runs with oil pressure, cab 2</source>
        <translation>Lampe: Motor 2 läuft mit Öldruck, Führerstand 2</translation>
    </message>
    <message>
        <source>last code the guard gave back to the driver</source>
        <translation>letztes Zeichen, das der Schaffner dem Fahrer zurückgab</translation>
    </message>
    <message>
        <source>last complete bell code heard here</source>
        <translation>letztes vollständiges Klingelzeichen hier</translation>
    </message>
    <message>
        <source>last complete code the driver gave</source>
        <translation>letztes vollständiges Zeichen des Fahrers</translation>
    </message>
    <message>
        <source>last complete code the guard gave</source>
        <translation>letztes vollständiges Zeichen des Schaffners</translation>
    </message>
    <message>
        <source>least chamber vacuum less train pipe</source>
        <translation>kleinstes Kammervakuum weniger Zugleitung</translation>
    </message>
    <message>
        <source>located changes of mode in the machine</source>
        <translation>verortete Wechsel der Betriebsart in der Maschine</translation>
    </message>
    <message>
        <source>longest look at the item judged last</source>
        <translation>längster Blick auf das zuletzt beurteilte Ding</translation>
    </message>
    <message>
        <source>looked</source>
        <translation>angesehen</translation>
    </message>
    <message>
        <source>loose objects carried</source>
        <translation>mitgenommene lose Dinge</translation>
    </message>
    <message>
        <source>lost in rattle and meshing shocks</source>
        <translation>verloren in Rattern und Schlägen beim Eingriff</translation>
    </message>
    <message>
        <source>lowest speed limit under the unit</source>
        <translation>niedrigste Geschwindigkeitsgrenze unter dem Zug</translation>
    </message>
    <message>
        <source>main reservoir</source>
        <translation>Hauptbehälter</translation>
    </message>
    <message>
        <source>middle of the unit along the line</source>
        <translation>Mitte des Zuges auf der Strecke</translation>
    </message>
    <message>
        <source>note of engine 1 as far as it is heard here</source>
        <translation>Ton von Motor 1, soweit er hier zu hören ist</translation>
    </message>
    <message>
        <source>note of engine 1 heard at its side</source>
        <translation>Ton von Motor 1 an seiner Seite</translation>
    </message>
    <message>
        <source>note of engine 2 as far as it is heard here</source>
        <translation>Ton von Motor 2, soweit er hier zu hören ist</translation>
    </message>
    <message>
        <source>note of engine 2 heard at its side</source>
        <translation>Ton von Motor 2 an seiner Seite</translation>
    </message>
    <message>
        <source>number of the answer got (reply table)</source>
        <translation>Nummer der erhaltenen Antwort (Tabelle der Antworten)</translation>
    </message>
    <message>
        <source>number of the last answer heard (reply table)</source>
        <translation>Nummer der zuletzt gehörten Antwort (Tabelle der Antworten)</translation>
    </message>
    <message>
        <source>number of the place (place table</source>
        <translation>Nummer des Ortes (Tabelle der Orte</translation>
    </message>
    <message>
        <source>number readable on the display at end 1</source>
        <translation>lesbare Nummer der Anzeige an Ende 1</translation>
    </message>
    <message>
        <source>number readable on the display at end 2</source>
        <translation>lesbare Nummer der Anzeige an Ende 2</translation>
    </message>
    <message>
        <source>oil pressure</source>
        <translation>Öldruck</translation>
    </message>
    <message>
        <source>oil pressure gauge at engine 1</source>
        <translation>Öldruckuhr an Motor 1</translation>
    </message>
    <message>
        <source>oil pressure gauge at engine 2</source>
        <translation>Öldruckuhr an Motor 2</translation>
    </message>
    <message>
        <source>oil temperature</source>
        <translation>Öltemperatur</translation>
    </message>
    <message>
        <source>on the way to another place</source>
        <translation>unterwegs zu einem anderen Ort</translation>
    </message>
    <message>
        <source>opening of a tripped safety device</source>
        <translation>Öffnung eines ausgelösten Totmanns</translation>
    </message>
    <message>
        <source>person engine 1</source>
        <translation>Person Motor 1</translation>
    </message>
    <message>
        <source>person engine 2</source>
        <translation>Person Motor 2</translation>
    </message>
    <message>
        <source>pinion of the starter of engine 1 heard in the ring</source>
        <translation>Ritzel des Anlassers von Motor 1 im Kranz zu hören</translation>
    </message>
    <message>
        <source>pinion of the starter of engine 2 heard in the ring</source>
        <translation>Ritzel des Anlassers von Motor 2 im Kranz zu hören</translation>
    </message>
    <message>
        <source>pressing force of brake cylinder 1 and handbrake share</source>
        <translation>Anpresskraft von Bremszylinder 1 und Anteil der Handbremse</translation>
    </message>
    <message>
        <source>pressing force of brake cylinder 2</source>
        <translation>Anpresskraft von Bremszylinder 2</translation>
    </message>
    <message>
        <source>pressing force of brake cylinder 3</source>
        <translation>Anpresskraft von Bremszylinder 3</translation>
    </message>
    <message>
        <source>pressing force of brake cylinder 4</source>
        <translation>Anpresskraft von Bremszylinder 4</translation>
    </message>
    <message>
        <source>protection has tripped</source>
        <translation>Schutz hat ausgelöst</translation>
    </message>
    <message>
        <source>pull or push felt by whoever is in the unit</source>
        <translation>Zug oder Stoß, im Zug zu spüren</translation>
    </message>
    <message>
        <source>rattle of dog teeth heard here</source>
        <translation>Rattern von Klauen hier zu hören</translation>
    </message>
    <message>
        <source>rattle of dog teeth passing each other</source>
        <translation>Rattern von Klauen, die vorbeilaufen</translation>
    </message>
    <message>
        <source>readings entered in the notebook</source>
        <translation>Ablesungen im Notizbuch</translation>
    </message>
    <message>
        <source>rear gauge as last told by the second person</source>
        <translation>hintere Uhr, wie zuletzt von der zweiten Person gemeldet</translation>
    </message>
    <message>
        <source>red lamps lit at end 1</source>
        <translation>rote Lampen leuchten an Ende 1</translation>
    </message>
    <message>
        <source>red lamps lit at end 2</source>
        <translation>rote Lampen leuchten an Ende 2</translation>
    </message>
    <message>
        <source>relays click</source>
        <translation>Relais klicken</translation>
    </message>
    <message>
        <source>release cords pulled with a handbrake off</source>
        <translation>Löseschnüre gezogen bei gelöster Handbremse</translation>
    </message>
    <message>
        <source>rest before the last attempt</source>
        <translation>Ruhe vor dem letzten Versuch</translation>
    </message>
    <message>
        <source>rolled against the direction wanted since the last stand</source>
        <translation>Rollen gegen die gewünschte Richtung seit dem letzten Stand</translation>
    </message>
    <message>
        <source>rpm 1</source>
        <translation>Drehzahl 1</translation>
    </message>
    <message>
        <source>rpm 2</source>
        <translation>Drehzahl 2</translation>
    </message>
    <message>
        <source>shaft angle above the box&apos;s safe speed</source>
        <translation>Wellenwinkel über der sicheren Drehzahl des Getriebes</translation>
    </message>
    <message>
        <source>share of cycles that fire</source>
        <translation>Anteil zündender Takte</translation>
    </message>
    <message>
        <source>side 1</source>
        <translation>Seite 1</translation>
    </message>
    <message>
        <source>side 2</source>
        <translation>Seite 2</translation>
    </message>
    <message>
        <source>signal ahead of cab 1</source>
        <translation>Signal vor Führerstand 1</translation>
    </message>
    <message>
        <source>signal ahead of cab 2</source>
        <translation>Signal vor Führerstand 2</translation>
    </message>
    <message>
        <source>signals passed at danger by the end that leads</source>
        <translation>vom vorderen Ende bei Halt überfahrene Signale</translation>
    </message>
    <message>
        <source>smell of hot lining at side 1</source>
        <translation>Geruch von heißem Belag an Seite 1</translation>
    </message>
    <message>
        <source>smell of hot lining at side 2</source>
        <translation>Geruch von heißem Belag an Seite 2</translation>
    </message>
    <message>
        <source>smell of hot lining here</source>
        <translation>Geruch von heißem Belag hier</translation>
    </message>
    <message>
        <source>smell of unburnt fuel here</source>
        <translation>Geruch von unverbranntem Kraftstoff hier</translation>
    </message>
    <message>
        <source>somebody is at engine 1</source>
        <translation>jemand ist an Motor 1</translation>
    </message>
    <message>
        <source>somebody is at engine 2</source>
        <translation>jemand ist an Motor 2</translation>
    </message>
    <message>
        <source>somebody is at the unit</source>
        <translation>jemand ist am Zug</translation>
    </message>
    <message>
        <source>sound things judged defect</source>
        <translation>gute Dinge als Mangel beurteilt</translation>
    </message>
    <message>
        <source>speed limit in force</source>
        <translation>geltende Geschwindigkeitsgrenze</translation>
    </message>
    <message>
        <source>speed of the unit</source>
        <translation>Geschwindigkeit des Zuges</translation>
    </message>
    <message>
        <source>speed without its sign</source>
        <translation>Geschwindigkeit ohne Vorzeichen</translation>
    </message>
    <message>
        <source>speedometer</source>
        <translation>Fahrtmesser</translation>
    </message>
    <message>
        <source>starter current</source>
        <translation>Anlasserstrom</translation>
    </message>
    <message>
        <source>starter fed</source>
        <translation>Anlasser unter Strom</translation>
    </message>
    <message>
        <source>starter fed without a break</source>
        <translation>Anlasser ununterbrochen unter Strom</translation>
    </message>
    <message>
        <source>starter winding</source>
        <translation>Anlasserwicklung</translation>
    </message>
    <message>
        <source>starter winding above its limit</source>
        <translation>Anlasserwicklung über ihrer Grenze</translation>
    </message>
    <message>
        <source>tachometer of engine 1</source>
        <translation>Drehzahlmesser von Motor 1</translation>
    </message>
    <message>
        <source>tachometer of engine 2</source>
        <translation>Drehzahlmesser von Motor 2</translation>
    </message>
    <message>
        <source>that code sounded at the guard&apos;s end</source>
        <translation>dieses Zeichen kam beim Schaffner an</translation>
    </message>
    <message>
        <source>that code still stands</source>
        <translation>dieses Zeichen gilt noch</translation>
    </message>
    <message>
        <source>the bell in cab 1 sounds</source>
        <translation>die Klingel in Führerstand 1 ertönt</translation>
    </message>
    <message>
        <source>the bell in cab 2 sounds</source>
        <translation>die Klingel in Führerstand 2 ertönt</translation>
    </message>
    <message>
        <source>the driver has repeated that code</source>
        <translation>der Fahrer hat dieses Zeichen wiederholt</translation>
    </message>
    <message>
        <source>the fire bell in cab 1 sounds</source>
        <translation>die Brandglocke in Führerstand 1 läutet</translation>
    </message>
    <message>
        <source>the fire bell in cab 2 sounds</source>
        <translation>die Brandglocke in Führerstand 2 läutet</translation>
    </message>
    <message>
        <source>the last reading entered</source>
        <translation>die letzte eingetragene Ablesung</translation>
    </message>
    <message>
        <source>the second person has said to be at the rear</source>
        <translation>die zweite Person hat gesagt, sie sei hinten</translation>
    </message>
    <message>
        <source>the trainee is at engine 1</source>
        <translation>der Anwärter ist an Motor 1</translation>
    </message>
    <message>
        <source>the trainee is at engine 2</source>
        <translation>der Anwärter ist an Motor 2</translation>
    </message>
    <message>
        <source>the trainee is at the electric cupboard behind cab 1</source>
        <translation>der Anwärter ist am Schaltschrank hinter Führerstand 1</translation>
    </message>
    <message>
        <source>the trainee is between the cars</source>
        <translation>der Anwärter ist zwischen den Wagen</translation>
    </message>
    <message>
        <source>the trainee is in cab 1</source>
        <translation>der Anwärter ist in Führerstand 1</translation>
    </message>
    <message>
        <source>the trainee is in cab 2</source>
        <translation>der Anwärter ist in Führerstand 2</translation>
    </message>
    <message>
        <source>the trainee is in the saloon</source>
        <translation>der Anwärter ist im Abteil</translation>
    </message>
    <message>
        <source>the trainee is on the ground along car 1</source>
        <translation>der Anwärter ist am Boden entlang Wagen 1</translation>
    </message>
    <message>
        <source>the trainee is on the ground along car 2</source>
        <translation>der Anwärter ist am Boden entlang Wagen 2</translation>
    </message>
    <message>
        <source>the trainee is on the ground before end 1</source>
        <translation>der Anwärter ist am Boden vor Ende 1</translation>
    </message>
    <message>
        <source>the trainee is on the ground before end 2</source>
        <translation>der Anwärter ist am Boden vor Ende 2</translation>
    </message>
    <message>
        <source>the trainee is the booking-on point</source>
        <translation>der Anwärter ist an der Meldestelle</translation>
    </message>
    <message>
        <source>the trainee is the walkway&apos;s end by the line</source>
        <translation>der Anwärter ist am Ende des Randwegs am Gleis</translation>
    </message>
    <message>
        <source>the unit is seen to move against the ground</source>
        <translation>der Zug bewegt sich sichtbar gegen den Boden</translation>
    </message>
    <message>
        <source>the unit stands</source>
        <translation>der Zug steht</translation>
    </message>
    <message>
        <source>the whole unit stands in a platform</source>
        <translation>der ganze Zug steht an einem Bahnsteig</translation>
    </message>
    <message>
        <source>the wiper of cab 1 sweeps</source>
        <translation>der Wischer von Führerstand 1 wischt</translation>
    </message>
    <message>
        <source>the wiper of cab 2 sweeps</source>
        <translation>der Wischer von Führerstand 2 wischt</translation>
    </message>
    <message>
        <source>there is light enough to see things closely where the trainee is</source>
        <translation>es ist hell genug, um beim Anwärter genau zu sehen</translation>
    </message>
    <message>
        <source>throttle opening at the engine</source>
        <translation>Gasstellung am Motor</translation>
    </message>
    <message>
        <source>thump of a final drive heard here</source>
        <translation>Schlag eines Achsgetriebes hier zu hören</translation>
    </message>
    <message>
        <source>thump of final drive 1 going into mesh</source>
        <translation>Schlag von Achsgetriebe 1 beim Eingriff</translation>
    </message>
    <message>
        <source>thump of final drive 2 going into mesh</source>
        <translation>Schlag von Achsgetriebe 2 beim Eingriff</translation>
    </message>
    <message>
        <source>time it has run without a break</source>
        <translation>Zeit, die er ununterbrochen gelaufen ist</translation>
    </message>
    <message>
        <source>time since it was complete</source>
        <translation>Zeit, seit es vollständig war</translation>
    </message>
    <message>
        <source>time since that answer</source>
        <translation>Zeit seit dieser Antwort</translation>
    </message>
    <message>
        <source>time since that code was complete</source>
        <translation>Zeit, seit dieses Zeichen vollständig war</translation>
    </message>
    <message>
        <source>time since that was told</source>
        <translation>Zeit, seit das gesagt wurde</translation>
    </message>
    <message>
        <source>time since the last warning by horn or call</source>
        <translation>Zeit seit der letzten Warnung durch Horn oder Ruf</translation>
    </message>
    <message>
        <source>time until arrival</source>
        <translation>Zeit bis zur Ankunft</translation>
    </message>
    <message>
        <source>times a board</source>
        <translation>wie oft eine Tafel</translation>
    </message>
    <message>
        <source>times a door was open while the unit moved</source>
        <translation>wie oft eine Tür offen war, während der Zug fuhr</translation>
    </message>
    <message>
        <source>times a hand was in the drive of an engine that turned</source>
        <translation>wie oft eine Hand im Antrieb eines drehenden Motors war</translation>
    </message>
    <message>
        <source>times a reverser was moved while the unit was moving</source>
        <translation>wie oft ein Richtungshebel in Fahrt bewegt wurde</translation>
    </message>
    <message>
        <source>times a reverser was put to off while the unit was moving</source>
        <translation>wie oft ein Richtungshebel in Fahrt auf Aus gestellt wurde</translation>
    </message>
    <message>
        <source>times a third thing made a hand let go</source>
        <translation>wie oft ein drittes Ding eine Hand loslassen ließ</translation>
    </message>
    <message>
        <source>times an engine was turned with somebody at it</source>
        <translation>wie oft ein Motor gedreht wurde, an dem jemand war</translation>
    </message>
    <message>
        <source>times between the cars</source>
        <translation>wie oft zwischen den Wagen</translation>
    </message>
    <message>
        <source>times ducked under the unit</source>
        <translation>wie oft unter dem Zug hindurch</translation>
    </message>
    <message>
        <source>times somebody was at the unit while it moved</source>
        <translation>wie oft jemand am Zug war, während er sich bewegte</translation>
    </message>
    <message>
        <source>times the line was crossed before an end</source>
        <translation>wie oft das Gleis vor einem Ende gequert wurde</translation>
    </message>
    <message>
        <source>times the starter was fed since the engine last ran</source>
        <translation>wie oft der Anlasser Strom bekam, seit der Motor zuletzt lief</translation>
    </message>
    <message>
        <source>times the trainee was between or under with no handbrake on</source>
        <translation>wie oft der Anwärter ohne feste Handbremse dazwischen oder darunter war</translation>
    </message>
    <message>
        <source>times the unit was pulled against a scotch</source>
        <translation>wie oft der Zug gegen einen Hemmschuh gezogen wurde</translation>
    </message>
    <message>
        <source>timing volume of the safety device</source>
        <translation>Zeitvolumen des Totmanns</translation>
    </message>
    <message>
        <source>torque through the coupling</source>
        <translation>Drehmoment durch die Kupplung</translation>
    </message>
    <message>
        <source>tractive effort</source>
        <translation>Zugkraft</translation>
    </message>
    <message>
        <source>trailer 1</source>
        <translation>Steuerwagen 1</translation>
    </message>
    <message>
        <source>trailer 2</source>
        <translation>Steuerwagen 2</translation>
    </message>
    <message>
        <source>turns above fast idle while cold</source>
        <translation>Umdrehungen über schnellem Leerlauf im kalten Zustand</translation>
    </message>
    <message>
        <source>turns by its own firing</source>
        <translation>dreht durch eigenes Zünden</translation>
    </message>
    <message>
        <source>vacuum above brake piston 1</source>
        <translation>Vakuum über Bremskolben 1</translation>
    </message>
    <message>
        <source>vacuum above brake piston 2</source>
        <translation>Vakuum über Bremskolben 2</translation>
    </message>
    <message>
        <source>vacuum above brake piston 3</source>
        <translation>Vakuum über Bremskolben 3</translation>
    </message>
    <message>
        <source>vacuum above brake piston 4</source>
        <translation>Vakuum über Bremskolben 4</translation>
    </message>
    <message>
        <source>vacuum gauge</source>
        <translation>Vakuumuhr</translation>
    </message>
    <message>
        <source>vacuum in the release pipe</source>
        <translation>Vakuum in der Löseleitung</translation>
    </message>
    <message>
        <source>vacuum in the train pipe</source>
        <translation>Vakuum in der Zugleitung</translation>
    </message>
    <message>
        <source>what it shows</source>
        <translation>was es zeigt</translation>
    </message>
    <message>
        <source>what the trainee has done in all</source>
        <translation>was der Anwärter im Ganzen getan hat</translation>
    </message>
    <message>
        <source>what would not go</source>
        <translation>was nicht ging</translation>
    </message>
    <message>
        <source>white lamps lit at end 1</source>
        <translation>weiße Lampen leuchten an Ende 1</translation>
    </message>
    <message>
        <source>white lamps lit at end 2</source>
        <translation>weiße Lampen leuchten an Ende 2</translation>
    </message>
    <message>
        <source>white smoke of engine 1</source>
        <translation>weißer Rauch von Motor 1</translation>
    </message>
    <message>
        <source>white smoke of engine 2</source>
        <translation>weißer Rauch von Motor 2</translation>
    </message>
    <message>
        <source>how often the trainee asks the shed whether a jumper may be put home</source>
        <translation>wie oft der Lernende die Werkstatt fragt, ob ein Steuerkabel eingesteckt werden darf</translation>
    </message>
    <message>
        <source>how often the trainee asks the signaller whether the unit may go on restricted</source>
        <translation>wie oft der Lernende den Fahrdienstleiter fragt, ob der Zug beschränkt weiterfahren darf</translation>
    </message>
    <message>
        <source>%1: what it shows</source>
        <translation>%1: was es zeigt</translation>
    </message>
    <message>
        <source>%1: defect</source>
        <translation>%1: Mangel</translation>
    </message>
    <message>
        <source>a board, flag or lamp hangs on the unit</source>
        <translation>eine Tafel, Flagge oder Lampe hängt am Zug</translation>
    </message>
    <message>
        <source>battery current, positive: discharging</source>
        <translation>Batteriestrom, positiv: Entladung</translation>
    </message>
    <message>
        <source>battery, share of full</source>
        <translation>Batterie, Anteil von voll</translation>
    </message>
    <message>
        <source>blocks as last told: 1 on, 0 off, 0.5 not the same, -1 never</source>
        <translation>Klötze wie zuletzt gemeldet: 1 an, 0 los, 0,5 verschieden, -1 nie</translation>
    </message>
    <message>
        <source>blocks of car 1 seen on the wheels, share, side 1</source>
        <translation>Klötze von Wagen 1 an den Rädern gesehen, Anteil, Seite 1</translation>
    </message>
    <message>
        <source>blocks of car 1 seen on the wheels, share, side 2</source>
        <translation>Klötze von Wagen 1 an den Rädern gesehen, Anteil, Seite 2</translation>
    </message>
    <message>
        <source>blocks of car 2 seen on the wheels, share, side 1</source>
        <translation>Klötze von Wagen 2 an den Rädern gesehen, Anteil, Seite 1</translation>
    </message>
    <message>
        <source>blocks of car 2 seen on the wheels, share, side 2</source>
        <translation>Klötze von Wagen 2 an den Rädern gesehen, Anteil, Seite 2</translation>
    </message>
    <message>
        <source>cab whose desk is alive: 1, 2, or 0</source>
        <translation>Führerstand, dessen Pult lebt: 1, 2 oder 0</translation>
    </message>
    <message>
        <source>carried: another control key, which should not be on the unit</source>
        <translation>dabei: ein anderer Steuerschlüssel, der nicht auf den Zug gehört</translation>
    </message>
    <message>
        <source>carried: hand lamp</source>
        <translation>dabei: Handlampe</translation>
    </message>
    <message>
        <source>carried: handle of the driver&apos;s brake valve, one to a unit</source>
        <translation>dabei: Griff des Führerbremsventils, einer je Zug</translation>
    </message>
    <message>
        <source>carried: high-visibility vest</source>
        <translation>dabei: Warnweste</translation>
    </message>
    <message>
        <source>carried: key of the cab doors</source>
        <translation>dabei: Schlüssel der Führerstandstüren</translation>
    </message>
    <message>
        <source>carried: key of the control switch</source>
        <translation>dabei: Schlüssel des Steuerschalters</translation>
    </message>
    <message>
        <source>carried: notebook and pencil</source>
        <translation>dabei: Merkheft und Stift</translation>
    </message>
    <message>
        <source>carried: padlock for an isolating switch</source>
        <translation>dabei: Vorhängeschloss für einen Trennschalter</translation>
    </message>
    <message>
        <source>carried: reversing lever</source>
        <translation>dabei: Richtungshebel</translation>
    </message>
    <message>
        <source>carried: rule book and traction manual</source>
        <translation>dabei: Regelbuch und Bedienungsbuch</translation>
    </message>
    <message>
        <source>code of the guard&apos;s that still stands and that the driver has repeated: groups as digits; 0 none. A code the driver gave first, as in a bell test, is not one</source>
        <translation>Zeichen des Schaffners, das noch gilt und das der Führer wiederholt hat: Gruppen als Ziffern; 0 keines. Ein Zeichen, das der Führer zuerst gab, wie bei einer Klingelprobe, ist keines</translation>
    </message>
    <message>
        <source>control air gauge, cab 1</source>
        <translation>Uhr der Steuerluft, Führerstand 1</translation>
    </message>
    <message>
        <source>control air gauge, cab 2</source>
        <translation>Uhr der Steuerluft, Führerstand 2</translation>
    </message>
    <message>
        <source>control under the left hand (control table, from 1); 0 free</source>
        <translation>Hebel unter der linken Hand (Tabelle, ab 1); 0 frei</translation>
    </message>
    <message>
        <source>control under the right hand; 0 free</source>
        <translation>Hebel unter der rechten Hand; 0 frei</translation>
    </message>
    <message>
        <source>coolant, share of full</source>
        <translation>Kühlwasser, Anteil von voll</translation>
    </message>
    <message>
        <source>decision told: 0 none, 1 go on, 2 go on restricted, 3 fail the unit</source>
        <translation>gesagte Entscheidung: 0 keine, 1 weiter, 2 beschränkt weiter, 3 stilllegen</translation>
    </message>
    <message>
        <source>distance covered since the start, either way</source>
        <translation>seit Beginn zurückgelegter Weg, in beiden Richtungen</translation>
    </message>
    <message>
        <source>distance to the next stopping mark; 9999: none</source>
        <translation>Abstand zur nächsten Haltetafel; 9999: keine</translation>
    </message>
    <message>
        <source>dog sleeve: 0 middle, 1 moving, 2 on tooth, 3 entering, 4 meshed, 5 rattling, 6 pinned</source>
        <translation>Klauenmuffe: 0 Mitte, 1 in Bewegung, 2 auf Zahn, 3 eintretend, 4 im Eingriff, 5 ratternd, 6 gesperrt</translation>
    </message>
    <message>
        <source>dogs in mesh: 1 forward, -1 reverse, 0 not</source>
        <translation>Klauen im Eingriff: 1 vorwärts, -1 rückwärts, 0 nicht</translation>
    </message>
    <message>
        <source>exhauster 1 heard here, 0..1</source>
        <translation>Luftsauger 1 hier zu hören, 0..1</translation>
    </message>
    <message>
        <source>exhauster 2 heard here, 0..1</source>
        <translation>Luftsauger 2 hier zu hören, 0..1</translation>
    </message>
    <message>
        <source>front of the unit to the next stopping mark, negative: past it; 9999 none</source>
        <translation>Zugspitze bis zur nächsten Haltetafel, negativ: darüber hinaus; 9999 keine</translation>
    </message>
    <message>
        <source>fuel rack, 0..1</source>
        <translation>Regelstange, 0..1</translation>
    </message>
    <message>
        <source>gear whose drum stands or clutch holds, 0 none</source>
        <translation>Gang, dessen Trommel steht oder dessen Kupplung hält, 0 keiner</translation>
    </message>
    <message>
        <source>gradient, positive: rises towards growing position</source>
        <translation>Neigung, positiv: steigt mit wachsendem Ort</translation>
    </message>
    <message>
        <source>guard&apos;s vacuum gauge, train pipe, cab 1</source>
        <translation>Vakuumuhr des Schaffners, Zugleitung, Führerstand 1</translation>
    </message>
    <message>
        <source>guard&apos;s vacuum gauge, train pipe, cab 2</source>
        <translation>Vakuumuhr des Schaffners, Zugleitung, Führerstand 2</translation>
    </message>
    <message>
        <source>hiss of air heard here, 0..1</source>
        <translation>Zischen von Luft, hier zu hören, 0..1</translation>
    </message>
    <message>
        <source>hiss of air in cab 1, 0..1</source>
        <translation>Zischen von Luft in Führerstand 1, 0..1</translation>
    </message>
    <message>
        <source>hiss of air in cab 2, 0..1</source>
        <translation>Zischen von Luft in Führerstand 2, 0..1</translation>
    </message>
    <message>
        <source>horn sounds: 1 low, 2 high</source>
        <translation>Horn tönt: 1 tief, 2 hoch</translation>
    </message>
    <message>
        <source>how evenly engine 1 fires, 0..1</source>
        <translation>wie gleichmäßig Motor 1 zündet, 0..1</translation>
    </message>
    <message>
        <source>how evenly engine 2 fires, 0..1</source>
        <translation>wie gleichmäßig Motor 2 zündet, 0..1</translation>
    </message>
    <message>
        <source>how long that item has to be looked at for the look to count; 0 none</source>
        <translation>wie lange dieses Ding angesehen werden muss, damit es zählt; 0 keines</translation>
    </message>
    <message>
        <source>how long, without a break</source>
        <translation>wie lange, ohne Unterbrechung</translation>
    </message>
    <message>
        <source>how loud it sounds, 0..1</source>
        <translation>wie laut es klingt, 0..1</translation>
    </message>
    <message>
        <source>how often the trainee asks the second person whether the blocks are on, each side</source>
        <translation>wie oft der Lernende die zweite Person fragt, ob die Klötze anliegen, auf jeder Seite</translation>
    </message>
    <message>
        <source>how often the trainee asks who is working on the unit, and whether it may be touched</source>
        <translation>wie oft der Lernende fragt, wer am Zug arbeitet und ob er berührt werden darf</translation>
    </message>
    <message>
        <source>how often the trainee calls fire, people away, help</source>
        <translation>wie oft der Lernende Feuer, alle weg, Hilfe ruft</translation>
    </message>
    <message>
        <source>how often the trainee calls out that an engine will start: stand clear</source>
        <translation>wie oft der Lernende ruft, dass ein Motor anläuft: zurücktreten</translation>
    </message>
    <message>
        <source>how often the trainee hands handles, keys and the unit over by name</source>
        <translation>wie oft der Lernende Griffe, Schlüssel und Zug mit Namen übergibt</translation>
    </message>
    <message>
        <source>hum of exhauster 1, 0..1</source>
        <translation>Summen von Luftsauger 1, 0..1</translation>
    </message>
    <message>
        <source>hum of exhauster 2, 0..1</source>
        <translation>Summen von Luftsauger 2, 0..1</translation>
    </message>
    <message>
        <source>item being looked at (item table, from 1); 0 none</source>
        <translation>gerade angesehenes Ding (Tabelle, ab 1); 0 keines</translation>
    </message>
    <message>
        <source>items judged not sure, neither judged anew nor entered in the book</source>
        <translation>nicht sicher beurteilte Dinge, weder neu beurteilt noch eingetragen</translation>
    </message>
    <message>
        <source>judgements of things not looked at, or not for long enough</source>
        <translation>Urteile über Dinge, die nicht oder nicht lange genug angesehen wurden</translation>
    </message>
    <message>
        <source>last code the guard gave back to the driver: orders nothing</source>
        <translation>letztes Zeichen, das der Schaffner dem Führer zurückgab: befiehlt nichts</translation>
    </message>
    <message>
        <source>last complete bell code heard here: strokes, groups as digits (3-3 is 33)</source>
        <translation>letztes vollständiges Klingelzeichen, hier gehört: Schläge, Gruppen als Ziffern (3-3 ist 33)</translation>
    </message>
    <message>
        <source>last complete code the guard gave: strokes, groups as digits</source>
        <translation>letztes vollständiges Zeichen des Schaffners: Schläge, Gruppen als Ziffern</translation>
    </message>
    <message>
        <source>least chamber vacuum less train pipe: what brakes</source>
        <translation>kleinstes Kammervakuum weniger Zugleitung: was bremst</translation>
    </message>
    <message>
        <source>longest look at the item judged last, at that moment; 0: not looked at</source>
        <translation>längster Blick auf das zuletzt beurteilte Ding, in diesem Augenblick; 0: nicht angesehen</translation>
    </message>
    <message>
        <source>note of engine 1 as far as it is heard here, 0: not</source>
        <translation>Ton von Motor 1, soweit er hier zu hören ist, 0: nicht</translation>
    </message>
    <message>
        <source>note of engine 2 as far as it is heard here, 0: not</source>
        <translation>Ton von Motor 2, soweit er hier zu hören ist, 0: nicht</translation>
    </message>
    <message>
        <source>number of the answer got (reply table), 0 none since last said: agrees a bell test with the guard</source>
        <translation>Nummer der erhaltenen Antwort (Tabelle), 0 keine, seit zuletzt: vereinbart mit dem Schaffner eine Klingelprobe</translation>
    </message>
    <message>
        <source>number of the answer got (reply table), 0 none since last said: asks for a second person at the rear</source>
        <translation>Nummer der erhaltenen Antwort (Tabelle), 0 keine, seit zuletzt: bittet um eine zweite Person am hinteren Ende</translation>
    </message>
    <message>
        <source>number of the answer got (reply table), 0 none since last said: asks the second person for the reading in the rear cab</source>
        <translation>Nummer der erhaltenen Antwort (Tabelle), 0 keine, seit zuletzt: fragt die zweite Person nach der Ablesung im hinteren Führerstand</translation>
    </message>
    <message>
        <source>number of the answer got (reply table), 0 none since last said: asks the second person to open the guard&apos;s valve</source>
        <translation>Nummer der erhaltenen Antwort (Tabelle), 0 keine, seit zuletzt: bittet die zweite Person, das Schaffnerventil zu öffnen</translation>
    </message>
    <message>
        <source>number of the answer got (reply table), 0 none since last said: asks the second person to shut the guard&apos;s valve</source>
        <translation>Nummer der erhaltenen Antwort (Tabelle), 0 keine, seit zuletzt: bittet die zweite Person, das Schaffnerventil zu schließen</translation>
    </message>
    <message>
        <source>number of the answer got (reply table), 0 none since last said: asks the second person whether the blocks are on, each side</source>
        <translation>Nummer der erhaltenen Antwort (Tabelle), 0 keine, seit zuletzt: fragt die zweite Person, ob die Klötze anliegen, auf jeder Seite</translation>
    </message>
    <message>
        <source>number of the answer got (reply table), 0 none since last said: asks the shed whether a jumper may be put home</source>
        <translation>Nummer der erhaltenen Antwort (Tabelle), 0 keine, seit zuletzt: fragt die Werkstatt, ob ein Steuerkabel wieder eingesteckt werden darf</translation>
    </message>
    <message>
        <source>number of the answer got (reply table), 0 none since last said: asks the signaller whether the unit may go on restricted</source>
        <translation>Nummer der erhaltenen Antwort (Tabelle), 0 keine, seit zuletzt: fragt den Fahrdienstleiter, ob der Zug beschränkt weiterfahren darf</translation>
    </message>
    <message>
        <source>number of the answer got (reply table), 0 none since last said: asks whether the line may be walked and the unit approached</source>
        <translation>Nummer der erhaltenen Antwort (Tabelle), 0 keine, seit zuletzt: fragt, ob das Gleis betreten und der Zug aufgesucht werden darf</translation>
    </message>
    <message>
        <source>number of the answer got (reply table), 0 none since last said: asks who is working on the unit, and whether it may be touched</source>
        <translation>Nummer der erhaltenen Antwort (Tabelle), 0 keine, seit zuletzt: fragt, wer am Zug arbeitet und ob er berührt werden darf</translation>
    </message>
    <message>
        <source>number of the answer got (reply table), 0 none since last said: asks why an isolating switch stands at off</source>
        <translation>Nummer der erhaltenen Antwort (Tabelle), 0 keine, seit zuletzt: fragt, warum ein Trennschalter auf Aus steht</translation>
    </message>
    <message>
        <source>number of the answer got (reply table), 0 none since last said: calls fire, people away, help</source>
        <translation>Nummer der erhaltenen Antwort (Tabelle), 0 keine, seit zuletzt: ruft Feuer, alle weg, Hilfe</translation>
    </message>
    <message>
        <source>number of the answer got (reply table), 0 none since last said: calls out that an engine will start: stand clear</source>
        <translation>Nummer der erhaltenen Antwort (Tabelle), 0 keine, seit zuletzt: ruft, dass ein Motor anläuft: zurücktreten</translation>
    </message>
    <message>
        <source>number of the answer got (reply table), 0 none since last said: counts the scotches</source>
        <translation>Nummer der erhaltenen Antwort (Tabelle), 0 keine, seit zuletzt: zählt die Hemmschuhe</translation>
    </message>
    <message>
        <source>number of the answer got (reply table), 0 none since last said: hands handles, keys and the unit over by name</source>
        <translation>Nummer der erhaltenen Antwort (Tabelle), 0 keine, seit zuletzt: übergibt Griffe, Schlüssel und Zug mit Namen</translation>
    </message>
    <message>
        <source>number of the answer got (reply table), 0 none since last said: lets the second person go</source>
        <translation>Nummer der erhaltenen Antwort (Tabelle), 0 keine, seit zuletzt: entlässt die zweite Person</translation>
    </message>
    <message>
        <source>number of the answer got (reply table), 0 none since last said: looks along both sides of the unit</source>
        <translation>Nummer der erhaltenen Antwort (Tabelle), 0 keine, seit zuletzt: sieht an beiden Seiten des Zuges entlang</translation>
    </message>
    <message>
        <source>number of the answer got (reply table), 0 none since last said: looks at the signal and the road ahead</source>
        <translation>Nummer der erhaltenen Antwort (Tabelle), 0 keine, seit zuletzt: sieht nach Signal und Fahrweg</translation>
    </message>
    <message>
        <source>number of the answer got (reply table), 0 none since last said: looks back along the train</source>
        <translation>Nummer der erhaltenen Antwort (Tabelle), 0 keine, seit zuletzt: sieht am Zug zurück</translation>
    </message>
    <message>
        <source>number of the answer got (reply table), 0 none since last said: looks both ways before stepping on the line</source>
        <translation>Nummer der erhaltenen Antwort (Tabelle), 0 keine, seit zuletzt: sieht nach beiden Seiten, bevor das Gleis betreten wird</translation>
    </message>
    <message>
        <source>number of the answer got (reply table), 0 none since last said: says that the unit does not go</source>
        <translation>Nummer der erhaltenen Antwort (Tabelle), 0 keine, seit zuletzt: sagt, dass der Zug nicht fährt</translation>
    </message>
    <message>
        <source>number of the answer got (reply table), 0 none since last said: stands clear of the moving parts</source>
        <translation>Nummer der erhaltenen Antwort (Tabelle), 0 keine, seit zuletzt: tritt von den bewegten Teilen zurück</translation>
    </message>
    <message>
        <source>number of the answer got (reply table), 0 none since last said: tells the guard what is the matter</source>
        <translation>Nummer der erhaltenen Antwort (Tabelle), 0 keine, seit zuletzt: sagt dem Schaffner, was los ist</translation>
    </message>
    <message>
        <source>number of the answer got (reply table), 0 none since last said: tells the shed of a defect by word</source>
        <translation>Nummer der erhaltenen Antwort (Tabelle), 0 keine, seit zuletzt: sagt der Werkstatt einen Mangel mündlich</translation>
    </message>
    <message>
        <source>number of the answer got (reply table), 0 none since last said: tells the signaller what is the matter</source>
        <translation>Nummer der erhaltenen Antwort (Tabelle), 0 keine, seit zuletzt: sagt dem Fahrdienstleiter, was los ist</translation>
    </message>
    <message>
        <source>number of the place (place table, from 1); 0 on the way</source>
        <translation>Nummer des Platzes (Tabelle, ab 1); 0 unterwegs</translation>
    </message>
    <message>
        <source>number readable on the display at end 1, 0 none</source>
        <translation>an der Zielanzeige von Ende 1 lesbare Nummer, 0 keine</translation>
    </message>
    <message>
        <source>number readable on the display at end 2, 0 none</source>
        <translation>an der Zielanzeige von Ende 2 lesbare Nummer, 0 keine</translation>
    </message>
    <message>
        <source>opening of a tripped safety device, 0..1</source>
        <translation>Öffnung eines ausgelösten Totmanns, 0..1</translation>
    </message>
    <message>
        <source>pinion of the starter of engine 1 heard in the ring: it turns the engine, or howls with it</source>
        <translation>Ritzel des Anlassers von Motor 1 im Kranz zu hören: es dreht den Motor oder heult mit ihm</translation>
    </message>
    <message>
        <source>pinion of the starter of engine 2 heard in the ring: it turns the engine, or howls with it</source>
        <translation>Ritzel des Anlassers von Motor 2 im Kranz zu hören: es dreht den Motor oder heult mit ihm</translation>
    </message>
    <message>
        <source>rattle of dog teeth passing each other, drive 1</source>
        <translation>Rattern aneinander vorbeilaufender Klauenzähne, Antrieb 1</translation>
    </message>
    <message>
        <source>rattle of dog teeth passing each other, drive 2</source>
        <translation>Rattern aneinander vorbeilaufender Klauenzähne, Antrieb 2</translation>
    </message>
    <message>
        <source>relays click, heard here</source>
        <translation>Relais klicken, hier zu hören</translation>
    </message>
    <message>
        <source>rest before the last attempt; 9999 before the first</source>
        <translation>Pause vor dem letzten Versuch; 9999 vor dem ersten</translation>
    </message>
    <message>
        <source>signal ahead of cab 1: 1 clear, 0 danger, -1 none in sight</source>
        <translation>Signal vor Führerstand 1: 1 frei, 0 Halt, -1 keines in Sicht</translation>
    </message>
    <message>
        <source>signal ahead of cab 2: 1 clear, 0 danger, -1 none in sight</source>
        <translation>Signal vor Führerstand 2: 1 frei, 0 Halt, -1 keines in Sicht</translation>
    </message>
    <message>
        <source>signals passed at danger by the end that leads; a signal goes back to danger behind it</source>
        <translation>vom führenden Ende überfahrene Haltsignale; ein Signal fällt dahinter auf Halt</translation>
    </message>
    <message>
        <source>smell of hot lining at side 1, 0..1</source>
        <translation>Geruch heißen Belags auf Seite 1, 0..1</translation>
    </message>
    <message>
        <source>smell of hot lining at side 2, 0..1</source>
        <translation>Geruch heißen Belags auf Seite 2, 0..1</translation>
    </message>
    <message>
        <source>smell of hot lining here, 0..1</source>
        <translation>Geruch heißen Belags hier, 0..1</translation>
    </message>
    <message>
        <source>smell of unburnt fuel here, 0..1</source>
        <translation>Geruch unverbrannten Kraftstoffs hier, 0..1</translation>
    </message>
    <message>
        <source>speed of the unit, positive: car 1 leads</source>
        <translation>Geschwindigkeit des Zuges, positiv: Wagen 1 voran</translation>
    </message>
    <message>
        <source>speedometer, cab 1</source>
        <translation>Geschwindigkeitsmesser, Führerstand 1</translation>
    </message>
    <message>
        <source>speedometer, cab 2</source>
        <translation>Geschwindigkeitsmesser, Führerstand 2</translation>
    </message>
    <message>
        <source>tachometer of engine 1, cab 1</source>
        <translation>Drehzahlmesser von Motor 1, Führerstand 1</translation>
    </message>
    <message>
        <source>tachometer of engine 1, cab 2</source>
        <translation>Drehzahlmesser von Motor 1, Führerstand 2</translation>
    </message>
    <message>
        <source>tachometer of engine 2, cab 1</source>
        <translation>Drehzahlmesser von Motor 2, Führerstand 1</translation>
    </message>
    <message>
        <source>tachometer of engine 2, cab 2</source>
        <translation>Drehzahlmesser von Motor 2, Führerstand 2</translation>
    </message>
    <message>
        <source>the trainee is at engine 1, from side 1</source>
        <translation>der Lernende ist an Motor 1, von Seite 1</translation>
    </message>
    <message>
        <source>the trainee is at engine 2, from side 2</source>
        <translation>der Lernende ist an Motor 2, von Seite 2</translation>
    </message>
    <message>
        <source>the trainee is on the ground along car 1, on side 1 (the cess)</source>
        <translation>der Lernende ist am Boden neben Wagen 1, auf Seite 1 (Randweg)</translation>
    </message>
    <message>
        <source>the trainee is on the ground along car 1, on side 2 (towards the other line)</source>
        <translation>der Lernende ist am Boden neben Wagen 1, auf Seite 2 (zum Nachbargleis)</translation>
    </message>
    <message>
        <source>the trainee is on the ground along car 2, on side 1</source>
        <translation>der Lernende ist am Boden neben Wagen 2, auf Seite 1</translation>
    </message>
    <message>
        <source>the trainee is on the ground along car 2, on side 2</source>
        <translation>der Lernende ist am Boden neben Wagen 2, auf Seite 2</translation>
    </message>
    <message>
        <source>the trainee is on the ground before end 1, the end of cab 1</source>
        <translation>der Lernende ist am Boden vor Ende 1, dem Ende von Führerstand 1</translation>
    </message>
    <message>
        <source>the trainee is on the ground before end 2, the end of cab 2</source>
        <translation>der Lernende ist am Boden vor Ende 2, dem Ende von Führerstand 2</translation>
    </message>
    <message>
        <source>the trainee is the walkway&apos;s end by the line, before the unit is reached</source>
        <translation>der Lernende ist am Ende des Randwegs am Gleis, bevor der Zug erreicht ist</translation>
    </message>
    <message>
        <source>the unit is seen to move against the ground: from 0.5 mph</source>
        <translation>der Zug bewegt sich sichtbar gegen den Boden: ab 0,5 mph</translation>
    </message>
    <message>
        <source>throttle opening at the engine, 0..1</source>
        <translation>Öffnung des Fahrschalters am Motor, 0..1</translation>
    </message>
    <message>
        <source>time since it was complete; 9999: never</source>
        <translation>Zeit, seit es vollständig war; 9999: nie</translation>
    </message>
    <message>
        <source>time since that was told; 9999: never</source>
        <translation>Zeit, seit das gesagt wurde; 9999: nie</translation>
    </message>
    <message>
        <source>time since the last warning by horn or call; 9999: never</source>
        <translation>Zeit seit der letzten Warnung mit Horn oder Ruf; 9999: nie</translation>
    </message>
    <message>
        <source>times a board, flag or lamp hung on the unit while it moved</source>
        <translation>wie oft eine Tafel, Flagge oder Lampe am Zug hing, während er fuhr</translation>
    </message>
    <message>
        <source>times the trainee was between or under with no handbrake on, an engine turning or the unit moving</source>
        <translation>wie oft der Lernende dazwischen oder darunter war ohne angezogene Handbremse, bei drehendem Motor oder fahrendem Zug</translation>
    </message>
    <message>
        <source>timing volume of the safety device, cab 1</source>
        <translation>Zeitvolumen des Totmanns, Führerstand 1</translation>
    </message>
    <message>
        <source>timing volume of the safety device, cab 2</source>
        <translation>Zeitvolumen des Totmanns, Führerstand 2</translation>
    </message>
    <message>
        <source>vacuum gauge, release pipe needle, cab 1</source>
        <translation>Vakuumuhr, Zeiger der Löseleitung, Führerstand 1</translation>
    </message>
    <message>
        <source>vacuum gauge, release pipe needle, cab 2</source>
        <translation>Vakuumuhr, Zeiger der Löseleitung, Führerstand 2</translation>
    </message>
    <message>
        <source>vacuum gauge, train pipe needle, cab 1</source>
        <translation>Vakuumuhr, Zeiger der Zugleitung, Führerstand 1</translation>
    </message>
    <message>
        <source>vacuum gauge, train pipe needle, cab 2</source>
        <translation>Vakuumuhr, Zeiger der Zugleitung, Führerstand 2</translation>
    </message>
    <message>
        <source>what it shows: 0 good, n the nth condition of its list, -1 nothing to be made out</source>
        <translation>was es zeigt: 0 gut, n der n-te Zustand seiner Liste, -1 nichts zu erkennen</translation>
    </message>
    <message>
        <source>white smoke of engine 1, 0..1</source>
        <translation>weißer Rauch von Motor 1, 0..1</translation>
    </message>
    <message>
        <source>white smoke of engine 2, 0..1</source>
        <translation>weißer Rauch von Motor 2, 0..1</translation>
    </message>
</context>
<context>
    <name>Spot</name>
    <message>
        <source>Coupling and freewheel %1</source>
        <translation>Kupplung und Freilauf %1</translation>
    </message>
    <message>
        <source>Gearbox %1</source>
        <translation>Getriebe %1</translation>
    </message>
    <message>
        <source>Engine %1</source>
        <translation>Motor %1</translation>
    </message>
    <message>
        <source>Compressor %1</source>
        <translation>Kompressor %1</translation>
    </message>
    <message>
        <source>Exhauster %1</source>
        <translation>Luftsauger %1</translation>
    </message>
    <message>
        <source>Generator %1</source>
        <translation>Lichtmaschine %1</translation>
    </message>
    <message>
        <source>Fuel of engine %1</source>
        <translation>Kraftstoff von Motor %1</translation>
    </message>
    <message>
        <source>Throttle motor %1</source>
        <translation>Stellmotor %1</translation>
    </message>
    <message>
        <source>Starter %1</source>
        <translation>Anlasser %1</translation>
    </message>
    <message>
        <source>Panel of engine %1</source>
        <translation>Tafel von Motor %1</translation>
    </message>
    <message>
        <source>Cooling of engine %1</source>
        <translation>Kühlung von Motor %1</translation>
    </message>
    <message>
        <source>Brake cylinder %1</source>
        <translation>Bremszylinder %1</translation>
    </message>
    <message>
        <source>Doors, side %1</source>
        <translation>Türen, Seite %1</translation>
    </message>
    <message>
        <source>Beside car 1, side %1</source>
        <translation>Neben Wagen 1, Seite %1</translation>
    </message>
    <message>
        <source>Gauges of cab %1</source>
        <translation>Uhren von Führerstand %1</translation>
    </message>
    <message>
        <source>Lamps of cab %1</source>
        <translation>Lampen von Führerstand %1</translation>
    </message>
    <message>
        <source>Controls of cab %1</source>
        <translation>Hebel von Führerstand %1</translation>
    </message>
    <message>
        <source>Brake valves of cab %1</source>
        <translation>Bremsventile von Führerstand %1</translation>
    </message>
    <message>
        <source>Safety device of cab %1</source>
        <translation>Totmann von Führerstand %1</translation>
    </message>
    <message>
        <source>Equipment of cab %1</source>
        <translation>Ausrüstung von Führerstand %1</translation>
    </message>
    <message>
        <source>Handbrake of car %1</source>
        <translation>Handbremse von Wagen %1</translation>
    </message>
    <message>
        <source>End %1</source>
        <translation>Ende %1</translation>
    </message>
    <message>
        <source>Final drive %1</source>
        <translation>Achsgetriebe %1</translation>
    </message>
    <message>
        <source>Main reservoir</source>
        <translation>Hauptbehälter</translation>
    </message>
    <message>
        <source>Control reservoir</source>
        <translation>Steuerbehälter</translation>
    </message>
    <message>
        <source>Train pipe</source>
        <translation>Zugleitung</translation>
    </message>
    <message>
        <source>Electric cupboard</source>
        <translation>Schaltschrank</translation>
    </message>
    <message>
        <source>Horn valve</source>
        <translation>Hornventil</translation>
    </message>
    <message>
        <source>Hoses between the cars</source>
        <translation>Schläuche zwischen den Wagen</translation>
    </message>
    <message>
        <source>Jumper between the cars</source>
        <translation>Steuerkabel zwischen den Wagen</translation>
    </message>
    <message>
        <source>Battery</source>
        <translation>Batterie</translation>
    </message>
    <message>
        <source>Release reservoir</source>
        <translation>Lösebehälter</translation>
    </message>
    <message>
        <source>Passenger alarm</source>
        <translation>Notbremse</translation>
    </message>
    <message>
        <source>Blocks and tyres</source>
        <translation>Klötze und Reifen</translation>
    </message>
    <message>
        <source>%1 %2, %3</source>
        <translation>%1 %2, %3</translation>
    </message>
    <message>
        <source>%1, %2</source>
        <translation>%1, %2</translation>
    </message>
</context>
<context>
    <name>StripChart</name>
    <message>
        <source>lit</source>
        <translation>leuchtet</translation>
    </message>
    <message>
        <source>dark</source>
        <translation>dunkel</translation>
    </message>
    <message>
        <source>release</source>
        <translation>Lösen</translation>
    </message>
    <message>
        <source>apply</source>
        <translation>Bremsen</translation>
    </message>
    <message>
        <source>lap</source>
        <translation>Abschluss</translation>
    </message>
    <message>
        <source>Place</source>
        <translation>Ort</translation>
    </message>
    <message>
        <source>Left hand</source>
        <translation>Linke Hand</translation>
    </message>
    <message>
        <source>Right hand</source>
        <translation>Rechte Hand</translation>
    </message>
    <message>
        <source>AIR lamp</source>
        <translation>Lampe LUFT</translation>
    </message>
    <message>
        <source>Brake</source>
        <translation>Bremse</translation>
    </message>
    <message>
        <source>Control air</source>
        <translation>Steuerluft</translation>
    </message>
    <message>
        <source>psi</source>
        <translation>psi</translation>
    </message>
    <message>
        <source>Vacuum</source>
        <translation>Vakuum</translation>
    </message>
    <message>
        <source>inHg</source>
        <translation>inHg</translation>
    </message>
    <message>
        <source>train pipe</source>
        <translation>Zugleitung</translation>
    </message>
    <message>
        <source>release pipe</source>
        <translation>Löseleitung</translation>
    </message>
    <message>
        <source>Engines</source>
        <translation>Motoren</translation>
    </message>
    <message>
        <source>rev/min</source>
        <translation>U/min</translation>
    </message>
    <message>
        <source>engine 1</source>
        <translation>Motor 1</translation>
    </message>
    <message>
        <source>engine 2</source>
        <translation>Motor 2</translation>
    </message>
    <message>
        <source>Speed</source>
        <translation>Geschwindigkeit</translation>
    </message>
    <message>
        <source>mph</source>
        <translation>mph</translation>
    </message>
    <message>
        <source>Levers</source>
        <translation>Hebel</translation>
    </message>
    <message>
        <source>notch</source>
        <translation>Stufe</translation>
    </message>
    <message>
        <source>throttle</source>
        <translation>Fahrschalter</translation>
    </message>
    <message>
        <source>gear</source>
        <translation>Gang</translation>
    </message>
</context>
<context>
    <name>Thing</name>
    <message>
        <source>Brake handle</source>
        <translation>Bremsgriff</translation>
    </message>
    <message>
        <source>Control key</source>
        <translation>Steuer­schlüssel</translation>
    </message>
    <message>
        <source>Door key</source>
        <translation>Tür­schlüssel</translation>
    </message>
    <message>
        <source>Hand lamp</source>
        <translation>Handlampe</translation>
    </message>
    <message>
        <source>Notebook</source>
        <translation>Notizbuch</translation>
    </message>
    <message>
        <source>Padlock</source>
        <translation>Vorhänge­schloss</translation>
    </message>
    <message>
        <source>Reversing lever</source>
        <translation>Richtungs­hebel</translation>
    </message>
    <message>
        <source>Rule book</source>
        <translation>Regelbuch</translation>
    </message>
    <message>
        <source>Spare key</source>
        <translation>Zweit­schlüssel</translation>
    </message>
    <message>
        <source>Vest</source>
        <translation>Weste</translation>
    </message>
    <message>
        <source>another control key, which should not be on the unit</source>
        <translation>Ein zweiter Steuerschlüssel, der nicht am Zug sein sollte</translation>
    </message>
    <message>
        <source>hand lamp</source>
        <translation>Handlampe</translation>
    </message>
    <message>
        <source>handle of the driver&apos;s brake valve, one to a unit</source>
        <translation>Griff des Führerbremsventils, einer je Zug</translation>
    </message>
    <message>
        <source>high-visibility vest</source>
        <translation>Warnweste</translation>
    </message>
    <message>
        <source>key of the cab doors</source>
        <translation>Schlüssel der Führerstandstüren</translation>
    </message>
    <message>
        <source>key of the control switch</source>
        <translation>Schlüssel des Steuerschalters</translation>
    </message>
    <message>
        <source>notebook and pencil</source>
        <translation>Notizbuch und Bleistift</translation>
    </message>
    <message>
        <source>padlock for an isolating switch</source>
        <translation>Vorhängeschloss für einen Trennschalter</translation>
    </message>
    <message>
        <source>reversing lever</source>
        <translation>Richtungs­hebel</translation>
    </message>
    <message>
        <source>rule book and traction manual</source>
        <translation>Regelbuch und Fahrzeughandbuch</translation>
    </message>
    <message>
        <source>brake handle</source>
        <translation>Bremsgriff</translation>
    </message>
    <message>
        <source>control key</source>
        <translation>Steuer­schlüssel</translation>
    </message>
    <message>
        <source>door key</source>
        <translation>Tür­schlüssel</translation>
    </message>
    <message>
        <source>notebook</source>
        <translation>Notizbuch</translation>
    </message>
    <message>
        <source>padlock</source>
        <translation>Vorhänge­schloss</translation>
    </message>
    <message>
        <source>rule book</source>
        <translation>Regelbuch</translation>
    </message>
    <message>
        <source>spare key</source>
        <translation>Zweit­schlüssel</translation>
    </message>
    <message>
        <source>vest</source>
        <translation>Weste</translation>
    </message>
</context>
<context>
    <name>TruthView</name>
    <message>
        <source>stuck</source>
        <translation>steht fest</translation>
    </message>
    <message>
        <source>offset</source>
        <translation>verstellt</translation>
    </message>
    <message>
        <source>slow</source>
        <translation>träge</translation>
    </message>
    <message>
        <source>dead</source>
        <translation>tot</translation>
    </message>
    <message>
        <source>blown</source>
        <translation>durchgebrannt</translation>
    </message>
    <message>
        <source>always lit</source>
        <translation>immer an</translation>
    </message>
    <message>
        <source>cab 1</source>
        <translation>Führerstand 1</translation>
    </message>
    <message>
        <source>cab 2</source>
        <translation>Führerstand 2</translation>
    </message>
    <message>
        <source>on the spot</source>
        <translation>am Ort</translation>
    </message>
    <message>
        <source>lit</source>
        <translation>an</translation>
    </message>
    <message>
        <source>dark</source>
        <translation>dunkel</translation>
    </message>
    <message>
        <source>Air</source>
        <translation>Luft</translation>
    </message>
    <message>
        <source>Vacuum</source>
        <translation>Vakuum</translation>
    </message>
    <message>
        <source>Engines</source>
        <translation>Motoren</translation>
    </message>
    <message>
        <source>Gearbox and drive</source>
        <translation>Getriebe und Antrieb</translation>
    </message>
    <message>
        <source>Brake</source>
        <translation>Bremse</translation>
    </message>
    <message>
        <source>Electrics</source>
        <translation>Elektrik</translation>
    </message>
    <message>
        <source>Cab</source>
        <translation>Führerstand</translation>
    </message>
    <message>
        <source>Train</source>
        <translation>Zug</translation>
    </message>
    <message>
        <source>%1 agrees now, but is %2</source>
        <translation>%1 stimmt jetzt, ist aber %2</translation>
    </message>
    <message>
        <source>%1 is %2</source>
        <translation>%1 ist %2</translation>
    </message>
    <message>
        <source>%1 reads %2 high</source>
        <translation>%1 zeigt %2 zu viel</translation>
    </message>
    <message>
        <source>%1 reads %2 low</source>
        <translation>%1 zeigt %2 zu wenig</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <translation>%1: %2</translation>
    </message>
    <message>
        <source>Vacuum in the train pipe, guard&apos;s gauges</source>
        <translation>Vakuum in der Zugleitung, Schaffneruhren</translation>
    </message>
    <message>
        <source>Fuel in the tank, engine 1</source>
        <translation>Kraftstoff im Tank, Motor 1</translation>
    </message>
    <message>
        <source>Fuel in the tank, engine 2</source>
        <translation>Kraftstoff im Tank, Motor 2</translation>
    </message>
    <message>
        <source>Lamp of engine 1, cab 1</source>
        <translation>Lampe von Motor 1, Führerstand 1</translation>
    </message>
    <message>
        <source>Lamp of engine 1, cab 2</source>
        <translation>Lampe von Motor 1, Führerstand 2</translation>
    </message>
    <message>
        <source>Lamp of engine 2, cab 1</source>
        <translation>Lampe von Motor 2, Führerstand 1</translation>
    </message>
    <message>
        <source>Lamp of engine 2, cab 2</source>
        <translation>Lampe von Motor 2, Führerstand 2</translation>
    </message>
    <message>
        <source>Air lamp, cab 1</source>
        <translation>Luftlampe, Führerstand 1</translation>
    </message>
    <message>
        <source>Air lamp, cab 2</source>
        <translation>Luftlampe, Führerstand 2</translation>
    </message>
    <message>
        <source>Lamp of the safety device, cab 1</source>
        <translation>Lampe des Totmanns, Führerstand 1</translation>
    </message>
    <message>
        <source>Lamp of the safety device, cab 2</source>
        <translation>Lampe des Totmanns, Führerstand 2</translation>
    </message>
    <message>
        <source>Charge lamp, cab 1</source>
        <translation>Ladelampe, Führerstand 1</translation>
    </message>
    <message>
        <source>Charge lamp, cab 2</source>
        <translation>Ladelampe, Führerstand 2</translation>
    </message>
    <message>
        <source>Fire lamp, cab 1</source>
        <translation>Brandlampe, Führerstand 1</translation>
    </message>
    <message>
        <source>Fire lamp, cab 2</source>
        <translation>Brandlampe, Führerstand 2</translation>
    </message>
</context>
<context>
    <name>Verb</name>
    <message>
        <source>%1: %2</source>
        <translation>%1: %2</translation>
    </message>
    <message>
        <source>book</source>
        <translation>eintragen</translation>
    </message>
    <message>
        <source>decide</source>
        <translation>entscheiden</translation>
    </message>
    <message>
        <source>do</source>
        <translation>tun</translation>
    </message>
    <message>
        <source>go</source>
        <translation>gehen</translation>
    </message>
    <message>
        <source>hold</source>
        <translation>halten</translation>
    </message>
    <message>
        <source>insert</source>
        <translation>einstecken</translation>
    </message>
    <message>
        <source>judge</source>
        <translation>beurteilen</translation>
    </message>
    <message>
        <source>look</source>
        <translation>ansehen</translation>
    </message>
    <message>
        <source>note</source>
        <translation>notieren</translation>
    </message>
    <message>
        <source>press</source>
        <translation>drücken</translation>
    </message>
    <message>
        <source>put</source>
        <translation>ablegen</translation>
    </message>
    <message>
        <source>release</source>
        <translation>loslassen</translation>
    </message>
    <message>
        <source>ring</source>
        <translation>klingeln</translation>
    </message>
    <message>
        <source>say</source>
        <translation>sagen</translation>
    </message>
    <message>
        <source>set</source>
        <translation>stellen</translation>
    </message>
    <message>
        <source>take</source>
        <translation>nehmen</translation>
    </message>
</context>
<context>
    <name>VerdictView</name>
    <message>
        <source>margin %1</source>
        <translation>Spielraum %1</translation>
    </message>
    <message>
        <source>missed by %1</source>
        <translation>verfehlt um %1</translation>
    </message>
    <message>
        <source>broken, inside the tolerance</source>
        <translation>gebrochen, innerhalb der Toleranz</translation>
    </message>
    <message>
        <source>kept, inside the tolerance</source>
        <translation>eingehalten, innerhalb der Toleranz</translation>
    </message>
    <message>
        <source>broken</source>
        <translation>gebrochen</translation>
    </message>
    <message>
        <source>kept, %1 times</source>
        <translation>eingehalten, %1-mal</translation>
    </message>
    <message>
        <source>kept</source>
        <translation>eingehalten</translation>
    </message>
    <message>
        <source>Critical: each fails the run</source>
        <translation>Kritisch: jede lässt die Fahrt durchfallen</translation>
    </message>
    <message>
        <source>As they fell, the latest first</source>
        <translation>Wie sie fielen, die letzte zuerst</translation>
    </message>
    <message>
        <source>Has to end: %1</source>
        <translation>Muss enden: %1</translation>
    </message>
    <message>
        <source>Has to come: %1</source>
        <translation>Muss kommen: %1</translation>
    </message>
    <message>
        <source>Has to be kept: %1</source>
        <translation>Muss bleiben: %1</translation>
    </message>
    <message>
        <source>Has to be kept until %1: %2</source>
        <translation>Muss bleiben bis %1: %2</translation>
    </message>
    <message>
        <source>Missing before %1: %2</source>
        <translation>Fehlt vor %1: %2</translation>
    </message>
    <message>
        <source>Must not come: %1</source>
        <translation>Darf nicht kommen: %1</translation>
    </message>
    <message>
        <source>Nothing is missing for %1</source>
        <translation>Nichts fehlt für %1</translation>
    </message>
    <message>
        <source>Nothing is asked until %1</source>
        <translation>Nichts verlangt bis %1</translation>
    </message>
    <message>
        <source>breached now</source>
        <translation>jetzt verletzt</translation>
    </message>
    <message>
        <source>waits</source>
        <translation>wartet</translation>
    </message>
    <message>
        <source>to be kept</source>
        <translation>einzuhalten</translation>
    </message>
    <message>
        <source>would break</source>
        <translation>würde brechen</translation>
    </message>
    <message>
        <source>to be avoided</source>
        <translation>zu vermeiden</translation>
    </message>
    <message>
        <source>ready</source>
        <translation>bereit</translation>
    </message>
    <message>
        <source>rests</source>
        <translation>ruht</translation>
    </message>
    <message>
        <source>overdue</source>
        <translation>überfällig</translation>
    </message>
    <message>
        <source>in %1 s</source>
        <translation>in %1 s</translation>
    </message>
    <message>
        <source>in %1 min</source>
        <translation>in %1 min</translation>
    </message>
</context>
<context>
    <name>Weather</name>
    <message>
        <source>clear</source>
        <translation>klar</translation>
    </message>
    <message>
        <source>overcast</source>
        <translation>bedeckt</translation>
    </message>
    <message>
        <source>rain</source>
        <translation>Regen</translation>
    </message>
    <message>
        <source>snow</source>
        <translation>Schnee</translation>
    </message>
    <message>
        <source>frost</source>
        <translation>Frost</translation>
    </message>
    <message>
        <source>fog</source>
        <translation>Nebel</translation>
    </message>
    <message>
        <source>wind</source>
        <translation>Wind</translation>
    </message>
    <message>
        <source>hot</source>
        <translation>heiß</translation>
    </message>
</context>
<context>
    <name>WritingPages</name>
    <message>
        <source>not said</source>
        <translation>nicht gesagt</translation>
    </message>
    <message>
        <source>Vehicle</source>
        <translation>Fahrzeug</translation>
    </message>
    <message>
        <source>Route</source>
        <translation>Strecke</translation>
    </message>
    <message>
        <source>How it is taken</source>
        <translation>Wie sie gefahren wird</translation>
    </message>
    <message>
        <source>Time allowed</source>
        <translation>Erlaubte Zeit</translation>
    </message>
    <message>
        <source>as 20 min; none if left empty</source>
        <translation>etwa 20 min; leer: keine</translation>
    </message>
    <message>
        <source>Seed of what is drawn</source>
        <translation>Startzahl der Auslosung</translation>
    </message>
    <message>
        <source>The trainee stands</source>
        <translation>Der Lernende steht</translation>
    </message>
    <message>
        <source>The unit stands at</source>
        <translation>Der Zug steht in</translation>
    </message>
    <message>
        <source>or at metre</source>
        <translation>oder bei Meter</translation>
    </message>
    <message>
        <source>It moves with</source>
        <translation>Er fährt mit</translation>
    </message>
    <message>
        <source>Teeth of the dogs</source>
        <translation>Zähne der Klauen</translation>
    </message>
    <message>
        <source>as said by angle</source>
        <translation>wie der Winkel sagt</translation>
    </message>
    <message>
        <source>drawn by the seed</source>
        <translation>ausgelost</translation>
    </message>
    <message>
        <source>There is a guard</source>
        <translation>Es gibt einen Schaffner</translation>
    </message>
    <message>
        <source>Somebody comes when asked</source>
        <translation>Jemand kommt, wenn er gerufen wird</translation>
    </message>
    <message>
        <source>Weather</source>
        <translation>Wetter</translation>
    </message>
    <message>
        <source>Temperature</source>
        <translation>Temperatur</translation>
    </message>
    <message>
        <source>Rail</source>
        <translation>Schiene</translation>
    </message>
    <message>
        <source>It is dark</source>
        <translation>Es ist dunkel</translation>
    </message>
    <message>
        <source>It has stood</source>
        <translation>Er hat gestanden</translation>
    </message>
    <message>
        <source>Air, vacuum, heat and battery are what so many hours have left, unless the start says otherwise.</source>
        <translation>Luft, Vakuum, Wärme und Batterie sind, was so viele Stunden übrig lassen, wenn der Start nichts anderes sagt.</translation>
    </message>
    <message>
        <source>Controls out of their usual place</source>
        <translation>Hebel, die anders stehen als sonst</translation>
    </message>
    <message>
        <source>Loose things</source>
        <translation>Lose Dinge</translation>
    </message>
    <message>
        <source>Numbers of the machine at the start</source>
        <translation>Zahlen der Maschine beim Start</translation>
    </message>
    <message>
        <source>Numbers of the vehicle, for this scenario only</source>
        <translation>Zahlen des Fahrzeugs, nur für diese Übung</translation>
    </message>
    <message>
        <source>Title</source>
        <translation>Titel</translation>
    </message>
    <message>
        <source>What it is for</source>
        <translation>Wozu sie dient</translation>
    </message>
    <message>
        <source>for instructor and sheet</source>
        <translation>für Ausbilder und Bogen</translation>
    </message>
    <message>
        <source>What the trainee is told</source>
        <translation>Was dem Lernenden gesagt wird</translation>
    </message>
    <message>
        <source>What it teaches, a line each</source>
        <translation>Was sie lehrt, je eine Zeile</translation>
    </message>
    <message>
        <source>How hard, 1 to 5</source>
        <translation>Wie schwer, 1 bis 5</translation>
    </message>
    <message>
        <source>when %1</source>
        <translation>wenn %1</translation>
    </message>
    <message>
        <source>at %1</source>
        <translation>bei %1</translation>
    </message>
    <message>
        <source>from the start</source>
        <translation>von Anfang an</translation>
    </message>
    <message>
        <source>At</source>
        <translation>Bei</translation>
    </message>
    <message>
        <source>as 3 min; from the start if nothing is said</source>
        <translation>etwa 3 min; von Anfang an, wenn nichts gesagt ist</translation>
    </message>
    <message>
        <source>or when</source>
        <translation>oder wenn</translation>
    </message>
    <message>
        <source>a condition, as cab1.air &gt;= 75 psi</source>
        <translation>eine Bedingung, etwa cab1.air &gt;= 75 psi</translation>
    </message>
    <message>
        <source>and so long after</source>
        <translation>und so lange danach</translation>
    </message>
    <message>
        <source>as 5 s</source>
        <translation>etwa 5 s</translation>
    </message>
    <message>
        <source>What the trainee has to find</source>
        <translation>Was der Lernende finden muss</translation>
    </message>
    <message>
        <source>Hide a gauge&apos;s fault</source>
        <translation>Den Fehler einer Uhr verstecken</translation>
    </message>
    <message>
        <source>Hide a defect</source>
        <translation>Einen Mangel verstecken</translation>
    </message>
    <message>
        <source>Thing</source>
        <translation>Ding</translation>
    </message>
    <message>
        <source>or gauge or lamp</source>
        <translation>oder Uhr oder Lampe</translation>
    </message>
    <message>
        <source>What is wrong with it</source>
        <translation>Was damit nicht stimmt</translation>
    </message>
    <message>
        <source>What guard, signaller and the world do</source>
        <translation>Was Schaffner, Fahrdienstleiter und die Welt tun</translation>
    </message>
    <message>
        <source>Let something happen</source>
        <translation>Etwas geschehen lassen</translation>
    </message>
    <message>
        <source>Who</source>
        <translation>Wer</translation>
    </message>
    <message>
        <source>the guard</source>
        <translation>der Schaffner</translation>
    </message>
    <message>
        <source>the signaller</source>
        <translation>der Fahrdienstleiter</translation>
    </message>
    <message>
        <source>the instructor</source>
        <translation>der Ausbilder</translation>
    </message>
    <message>
        <source>it happens by itself</source>
        <translation>es geschieht von selbst</translation>
    </message>
    <message>
        <source>Does, a line each</source>
        <translation>Tut, je eine Zeile</translation>
    </message>
    <message>
        <source>Pass mark</source>
        <translation>Zum Bestehen nötig</translation>
    </message>
    <message>
        <source>It is done when</source>
        <translation>Geschafft ist sie, wenn</translation>
    </message>
    <message>
        <source>a condition over what is shown and done</source>
        <translation>eine Bedingung über Gezeigtes und Getanes</translation>
    </message>
    <message>
        <source>in plain words</source>
        <translation>in einfachen Worten</translation>
    </message>
    <message>
        <source>Headings of the sheet, a line each</source>
        <translation>Überschriften des Bogens, je eine Zeile</translation>
    </message>
    <message>
        <source>Guides, a line each</source>
        <translation>Anleitungen, je eine Zeile</translation>
    </message>
    <message>
        <source>without these steps</source>
        <translation>ohne diese Schritte</translation>
    </message>
</context>
<context>
    <name>cabwright::after::AfterView</name>
    <message>
        <source>A training aid only: the rule book and a licensed instructor decide.</source>
        <translation>Nur eine Ausbildungshilfe: Regelbuch und zugelassener Ausbilder entscheiden.</translation>
    </message>
    <message>
        <source>After the run</source>
        <translation>Nach der Fahrt</translation>
    </message>
    <message>
        <source>none</source>
        <translation>keine</translation>
    </message>
    <message>
        <source>%1, criticals first</source>
        <translation>%1, Kritisches zuerst</translation>
    </message>
    <message>
        <source>Not kept</source>
        <translation>Nicht eingehalten</translation>
    </message>
    <message>
        <source>The mark sheet</source>
        <translation>Der Bewertungsbogen</translation>
    </message>
    <message>
        <source>Copy the sheet</source>
        <translation>Bogen kopieren</translation>
    </message>
    <message>
        <source>Save the sheet</source>
        <translation>Bogen speichern</translation>
    </message>
    <message>
        <source>Take it again from the start</source>
        <translation>Noch einmal von vorn</translation>
    </message>
    <message>
        <source>Back to choosing</source>
        <translation>Zurück zur Auswahl</translation>
    </message>
    <message>
        <source>Saved as %1.</source>
        <translation>Gespeichert als %1.</translation>
    </message>
    <message>
        <source>%1 could not be written: %2.</source>
        <translation>%1 konnte nicht geschrieben werden: %2.</translation>
    </message>
    <message>
        <source>Text (*.txt)</source>
        <translation>Text (*.txt)</translation>
    </message>
    <message>
        <source>mark sheet</source>
        <translation>Bewertungsbogen</translation>
    </message>
    <message>
        <source>The sheet is on the clipboard.</source>
        <translation>Der Bogen ist in der Zwischenablage.</translation>
    </message>
</context>
<context>
    <name>cabwright::after::FindingHead</name>
    <message>
        <source>Told beforehand: %1</source>
        <translation>Vorher gesagt: %1</translation>
    </message>
</context>
<context>
    <name>cabwright::after::LineCard</name>
    <message>
        <source>Line %1, %2: %3</source>
        <translation>Zeile %1, %2: %3</translation>
    </message>
    <message>
        <source>On the strip</source>
        <translation>Im Streifen zeigen</translation>
    </message>
    <message>
        <source>Take it again from here</source>
        <translation>Noch einmal von hier</translation>
    </message>
    <message>
        <source>From %1, ten seconds before</source>
        <translation>Ab %1, zehn Sekunden davor</translation>
    </message>
    <message>
        <source>not once in this run</source>
        <translation>in dieser Fahrt kein einziges Mal</translation>
    </message>
    <message>
        <source>%1, at the end</source>
        <translation>%1, am Ende</translation>
    </message>
    <message>
        <source>%1, %2</source>
        <translation>%1, %2</translation>
    </message>
    <message>
        <source>Done: %1</source>
        <translation>Getan: %1</translation>
    </message>
    <message>
        <source>It lasted %1 s and was put right.</source>
        <translation>Es dauerte %1 s und wurde behoben.</translation>
    </message>
    <message>
        <source>%1 times in all.</source>
        <translation>%1-mal im Ganzen.</translation>
    </message>
    <message>
        <source>Decided by %1: %2</source>
        <translation>Entschieden von %1: %2</translation>
    </message>
    <message>
        <source>Why it matters</source>
        <translation>Warum es wichtig ist</translation>
    </message>
    <message>
        <source>Next time</source>
        <translation>Nächstes Mal</translation>
    </message>
    <message>
        <source>Line %1 follows from this: %2</source>
        <translation>Zeile %1 folgt daraus: %2</translation>
    </message>
    <message>
        <source>%1, decides the run</source>
        <translation>%1, entscheidet die Fahrt</translation>
    </message>
    <message>
        <source>%1 of %2</source>
        <translation>%1 von %2</translation>
    </message>
    <message>
        <source>Follows from this line, and is not counted again</source>
        <translation>Folgt aus dieser Zeile und zählt nicht noch einmal</translation>
    </message>
    <message>
        <source>What the gauges of cab %1 showed at the end</source>
        <translation>Was die Uhren von Führerstand %1 am Ende zeigten</translation>
    </message>
    <message>
        <source>What the gauges of cab %1 showed then</source>
        <translation>Was die Uhren von Führerstand %1 da zeigten</translation>
    </message>
</context>
<context>
    <name>cabwright::after::SectionBlock</name>
    <message>
        <source>Show</source>
        <translation>Zeigen</translation>
    </message>
    <message>
        <source>Hide</source>
        <translation>Verbergen</translation>
    </message>
    <message>
        <source>Show: %1</source>
        <translation>Zeigen: %1</translation>
    </message>
    <message>
        <source>Hide: %1</source>
        <translation>Verbergen: %1</translation>
    </message>
</context>
<context>
    <name>cabwright::after::StripChart</name>
    <message>
        <source>Strip chart of the run</source>
        <translation>Streifenschrieb der Fahrt</translation>
    </message>
    <message>
        <source>At %1</source>
        <translation>Bei %1</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <translation>%1: %2</translation>
    </message>
    <message>
        <source>free</source>
        <translation>frei</translation>
    </message>
    <message>
        <source>From the start to %1.</source>
        <translation>Von Beginn bis %1.</translation>
    </message>
    <message>
        <source>Line %1, %2, at %3: %4.</source>
        <translation>Zeile %1, %2, bei %3: %4.</translation>
    </message>
    <message>
        <source>No line was broken.</source>
        <translation>Keine Zeile wurde gebrochen.</translation>
    </message>
    <message>
        <source>Marks</source>
        <translation>Marken</translation>
    </message>
    <message>
        <source>Actions</source>
        <translation>Handlungen</translation>
    </message>
    <message>
        <source>Time</source>
        <translation>Zeit</translation>
    </message>
</context>
<context>
    <name>cabwright::cab::BalloonPart</name>
    <message>
        <source>Walk to %1</source>
        <translation>Gehen: %1</translation>
    </message>
    <message>
        <source>you are here</source>
        <translation>Sie sind hier</translation>
    </message>
    <message>
        <source>. Key: %1</source>
        <translation>. Taste: %1</translation>
    </message>
</context>
<context>
    <name>cabwright::cab::BookPanel</name>
    <message>
        <source>Repair book</source>
        <translation>Übergabebuch</translation>
    </message>
    <message>
        <source>About what</source>
        <translation>Worüber</translation>
    </message>
    <message>
        <source>What, where, what was done, who was told</source>
        <translation>Was, wo, was getan wurde, wem gesagt</translation>
    </message>
    <message>
        <source>Something else</source>
        <translation>Etwas anderes</translation>
    </message>
    <message>
        <source>Write it down</source>
        <translation>Eintragen</translation>
    </message>
</context>
<context>
    <name>cabwright::cab::BookingPlate</name>
    <message>
        <source>Train working</source>
        <translation>Zuglauf</translation>
    </message>
    <message>
        <source>display %1</source>
        <translation>Anzeige %1</translation>
    </message>
    <message>
        <source>display as told</source>
        <translation>Anzeige wie gesagt</translation>
    </message>
    <message>
        <source>Notice board</source>
        <translation>Aushang</translation>
    </message>
    <message>
        <source>Today</source>
        <translation>Heute</translation>
    </message>
    <message>
        <source>Key cupboard</source>
        <translation>Schlüsselkasten</translation>
    </message>
</context>
<context>
    <name>cabwright::cab::CabPlate</name>
    <message>
        <source>inHg VAC</source>
        <translation>inHg VAK</translation>
    </message>
    <message>
        <source>train pipe</source>
        <translation>Zugleitung</translation>
    </message>
    <message>
        <source>release pipe</source>
        <translation>Löseleitung</translation>
    </message>
    <message>
        <source>Vacuum</source>
        <translation>Vakuum</translation>
    </message>
    <message>
        <source>psi</source>
        <translation>psi</translation>
    </message>
    <message>
        <source>Control air</source>
        <translation>Steuerluft</translation>
    </message>
    <message>
        <source>Engine %1</source>
        <translation>Motor %1</translation>
    </message>
    <message>
        <source>×100 rev/min</source>
        <translation>×100 U/min</translation>
    </message>
    <message>
        <source>mph</source>
        <translation>mph</translation>
    </message>
    <message>
        <source>Speed</source>
        <translation>Fahrt</translation>
    </message>
    <message>
        <source>FIRE</source>
        <translation>BRAND</translation>
    </message>
    <message>
        <source>AIR</source>
        <translation>LUFT</translation>
    </message>
    <message>
        <source>CHARGE</source>
        <translation>LADUNG</translation>
    </message>
    <message>
        <source>ENGINE 1</source>
        <translation>MOTOR 1</translation>
    </message>
    <message>
        <source>SAFETY</source>
        <translation>TOTMANN</translation>
    </message>
    <message>
        <source>ENGINE 2</source>
        <translation>MOTOR 2</translation>
    </message>
    <message>
        <source>Horn, low</source>
        <translation>Horn, tief</translation>
    </message>
    <message>
        <source>Horn, high</source>
        <translation>Horn, hoch</translation>
    </message>
    <message>
        <source>Look at</source>
        <translation>Ansehen</translation>
    </message>
    <message>
        <source>Start</source>
        <translation>Start</translation>
    </message>
    <message>
        <source>Stop</source>
        <translation>Stopp</translation>
    </message>
    <message>
        <source>Turn round</source>
        <translation>Umdrehen</translation>
    </message>
    <message>
        <source>low</source>
        <translation>tief</translation>
    </message>
    <message>
        <source>high</source>
        <translation>hoch</translation>
    </message>
    <message>
        <source>bell</source>
        <translation>Klingel</translation>
    </message>
    <message>
        <source>Test</source>
        <translation>Probe</translation>
    </message>
</context>
<context>
    <name>cabwright::cab::CabRoundPlate</name>
    <message>
        <source>Turn to the desk</source>
        <translation>Zum Pult umdrehen</translation>
    </message>
    <message>
        <source>inHg</source>
        <translation>inHg</translation>
    </message>
    <message>
        <source>Back wall of cab %1</source>
        <translation>Rückwand von Führerstand %1</translation>
    </message>
    <message>
        <source>Door side</source>
        <translation>Türseite</translation>
    </message>
</context>
<context>
    <name>cabwright::cab::CarriedPart</name>
    <message>
        <source>with you</source>
        <translation>bei Ihnen</translation>
    </message>
    <message>
        <source>in its place here</source>
        <translation>hier an seinem Platz</translation>
    </message>
    <message>
        <source>lies here</source>
        <translation>liegt hier</translation>
    </message>
    <message>
        <source>not here</source>
        <translation>nicht hier</translation>
    </message>
</context>
<context>
    <name>cabwright::cab::ControlPart</name>
    <message>
        <source>, left hand on it</source>
        <translation>, linke Hand daran</translation>
    </message>
    <message>
        <source>, right hand on it</source>
        <translation>, rechte Hand daran</translation>
    </message>
    <message>
        <source>. Key: %1</source>
        <translation>. Taste: %1</translation>
    </message>
    <message>
        <source>. Right click: a hand stays on it</source>
        <translation>. Rechtsklick: eine Hand bleibt daran</translation>
    </message>
    <message>
        <source>%1. Right button: a hand stays on it</source>
        <translation>%1. Rechte Taste: eine Hand bleibt darauf</translation>
    </message>
</context>
<context>
    <name>cabwright::cab::CupboardPlate</name>
    <message>
        <source>V</source>
        <translation>V</translation>
    </message>
    <message>
        <source>Control</source>
        <translation>Steuerung</translation>
    </message>
    <message>
        <source>Start</source>
        <translation>Anlassen</translation>
    </message>
    <message>
        <source>Lamps</source>
        <translation>Lampen</translation>
    </message>
    <message>
        <source>Lights</source>
        <translation>Licht</translation>
    </message>
    <message>
        <source>Heater</source>
        <translation>Heizung</translation>
    </message>
    <message>
        <source>Electric cupboard, wiring as single lines</source>
        <translation>Schaltschrank, Leitungen einpolig gezeichnet</translation>
    </message>
    <message>
        <source>heavy: live, dashed: dead</source>
        <translation>dick: unter Strom, gestrichelt: tot</translation>
    </message>
    <message>
        <source>battery</source>
        <translation>Batterie</translation>
    </message>
    <message>
        <source>desks and control circuits</source>
        <translation>Pulte und Steuerkreise</translation>
    </message>
    <message>
        <source>starters and their relays</source>
        <translation>Anlasser und ihre Relais</translation>
    </message>
    <message>
        <source>indication lamps and bell</source>
        <translation>Meldelampen und Klingel</translation>
    </message>
    <message>
        <source>lights, displays, wipers</source>
        <translation>Licht, Anzeigen, Wischer</translation>
    </message>
    <message>
        <source>fan of the saloon heater</source>
        <translation>Lüfter der Innenheizung</translation>
    </message>
</context>
<context>
    <name>cabwright::cab::DecisionPanel</name>
    <message>
        <source>What you decide</source>
        <translation>Was Sie entscheiden</translation>
    </message>
    <message>
        <source>Decision</source>
        <translation>Entscheidung</translation>
    </message>
    <message>
        <source>The unit goes on</source>
        <translation>Der Zug fährt weiter</translation>
    </message>
    <message>
        <source>It goes on, restricted</source>
        <translation>Er fährt beschränkt weiter</translation>
    </message>
    <message>
        <source>It fails: it does not go</source>
        <translation>Er ist untauglich: er fährt nicht</translation>
    </message>
    <message>
        <source>Your reason</source>
        <translation>Ihr Grund</translation>
    </message>
    <message>
        <source>Your reason, in your own words</source>
        <translation>Ihr Grund, in eigenen Worten</translation>
    </message>
    <message>
        <source>Decide</source>
        <translation>Entscheiden</translation>
    </message>
</context>
<context>
    <name>cabwright::cab::DevicePart</name>
    <message>
        <source>held</source>
        <translation>gehalten</translation>
    </message>
    <message>
        <source>up</source>
        <translation>oben</translation>
    </message>
</context>
<context>
    <name>cabwright::cab::DialPart</name>
    <message>
        <source>cannot be read</source>
        <translation>nicht ablesbar</translation>
    </message>
    <message>
        <source>%1 %2</source>
        <translation>%1 %2</translation>
    </message>
</context>
<context>
    <name>cabwright::cab::EndPlate</name>
    <message>
        <source>WHITE</source>
        <translation>WEISS</translation>
    </message>
    <message>
        <source>RED</source>
        <translation>ROT</translation>
    </message>
</context>
<context>
    <name>cabwright::cab::EnginePlate</name>
    <message>
        <source>psi</source>
        <translation>psi</translation>
    </message>
    <message>
        <source>Oil pressure</source>
        <translation>Öldruck</translation>
    </message>
    <message>
        <source>°C</source>
        <translation>°C</translation>
    </message>
    <message>
        <source>Coolant</source>
        <translation>Kühlwasser</translation>
    </message>
    <message>
        <source>%</source>
        <translation>%</translation>
    </message>
    <message>
        <source>Tank</source>
        <translation>Tank</translation>
    </message>
    <message>
        <source>Start</source>
        <translation>Start</translation>
    </message>
    <message>
        <source>Stop</source>
        <translation>Stopp</translation>
    </message>
    <message>
        <source>Section on the crank centre line</source>
        <translation>Schnitt in der Kurbelwellenmitte</translation>
    </message>
    <message>
        <source>View on the free end</source>
        <translation>Blick auf das freie Ende</translation>
    </message>
    <message>
        <source>Compressor</source>
        <translation>Kompressor</translation>
    </message>
    <message>
        <source>Exhauster</source>
        <translation>Luftsauger</translation>
    </message>
    <message>
        <source>Generator</source>
        <translation>Generator</translation>
    </message>
    <message>
        <source>MIN</source>
        <translation>MIN</translation>
    </message>
    <message>
        <source>MAX</source>
        <translation>MAX</translation>
    </message>
    <message>
        <source>too dark to see closely</source>
        <translation>zu dunkel, um genau zu sehen</translation>
    </message>
</context>
<context>
    <name>cabwright::cab::GroundPlate</name>
    <message>
        <source>too dark to see closely</source>
        <translation>zu dunkel, um genau zu sehen</translation>
    </message>
</context>
<context>
    <name>cabwright::cab::HandPart</name>
    <message>
        <source>Left hand</source>
        <translation>Linke Hand</translation>
    </message>
    <message>
        <source>Right hand</source>
        <translation>Rechte Hand</translation>
    </message>
    <message>
        <source>, handle pressed down</source>
        <translation>, Griff niedergedrückt</translation>
    </message>
    <message>
        <source>free</source>
        <translation>frei</translation>
    </message>
    <message>
        <source>Enter lets go</source>
        <translation>Enter lässt los</translation>
    </message>
    <message>
        <source>Left hand on</source>
        <translation>Linke Hand an</translation>
    </message>
    <message>
        <source>Right hand on</source>
        <translation>Rechte Hand an</translation>
    </message>
</context>
<context>
    <name>cabwright::cab::HandbrakePart</name>
    <message>
        <source>hard on</source>
        <translation>fest</translation>
    </message>
    <message>
        <source>off</source>
        <translation>los</translation>
    </message>
    <message>
        <source>%1, pawl in</source>
        <translation>%1, Klinke drin</translation>
    </message>
    <message>
        <source>%1, pawl out</source>
        <translation>%1, Klinke heraus</translation>
    </message>
</context>
<context>
    <name>cabwright::cab::HeardPart</name>
    <message>
        <source>What is heard</source>
        <translation>Was zu hören ist</translation>
    </message>
</context>
<context>
    <name>cabwright::cab::ItemPart</name>
    <message>
        <source>judged good</source>
        <translation>als gut beurteilt</translation>
    </message>
    <message>
        <source>judged defect</source>
        <translation>als Mangel beurteilt</translation>
    </message>
    <message>
        <source>judged not sure</source>
        <translation>als unsicher beurteilt</translation>
    </message>
    <message>
        <source>not judged</source>
        <translation>nicht beurteilt</translation>
    </message>
    <message>
        <source>, being looked at</source>
        <translation>, wird angesehen</translation>
    </message>
    <message>
        <source>Enter looks at it; then G good, D defect, U not sure; after D the class: C critical, S serious, T technical</source>
        <translation>Enter sieht hin; dann G gut, D Mangel, U nicht sicher; nach D die Klasse: C kritisch, S ernst, T technisch</translation>
    </message>
</context>
<context>
    <name>cabwright::cab::JudgeRow</name>
    <message>
        <source>Good</source>
        <translation>Gut</translation>
    </message>
    <message>
        <source>Defect</source>
        <translation>Mangel</translation>
    </message>
    <message>
        <source>Not sure</source>
        <translation>Unklar</translation>
    </message>
    <message>
        <source>Judges what is being looked at</source>
        <translation>Beurteilt, was gerade angesehen wird</translation>
    </message>
    <message>
        <source>How grave the defect is. Key: %1</source>
        <translation>Wie schwer der Mangel wiegt. Taste: %1</translation>
    </message>
</context>
<context>
    <name>cabwright::cab::LampPart</name>
    <message>
        <source>cannot be seen</source>
        <translation>nicht zu sehen</translation>
    </message>
    <message>
        <source>lit</source>
        <translation>leuchtet</translation>
    </message>
    <message>
        <source>dark</source>
        <translation>dunkel</translation>
    </message>
</context>
<context>
    <name>cabwright::cab::LeverPart</name>
    <message>
        <source>empty socket</source>
        <translation>leere Aufnahme</translation>
    </message>
</context>
<context>
    <name>cabwright::cab::LinesidePlate</name>
    <message>
        <source>The walkway&apos;s end: the unit in its siding</source>
        <translation>Das Ende des Randwegs: der Zug in seinem Abstellgleis</translation>
    </message>
    <message>
        <source>Ways on foot</source>
        <translation>Fußwege</translation>
    </message>
</context>
<context>
    <name>cabwright::cab::NotebookPart</name>
    <message>
        <source>nothing is being looked at</source>
        <translation>nichts wird angesehen</translation>
    </message>
    <message>
        <source>good</source>
        <translation>gut</translation>
    </message>
    <message>
        <source>defect</source>
        <translation>Mangel</translation>
    </message>
    <message>
        <source>not sure</source>
        <translation>unsicher</translation>
    </message>
    <message>
        <source>Notebook</source>
        <translation>Notizbuch</translation>
    </message>
    <message>
        <source>Next: %1 %2</source>
        <translation>Als Nächstes: %1 %2</translation>
    </message>
    <message>
        <source>not looked at long enough</source>
        <translation>nicht lange genug angesehen</translation>
    </message>
    <message>
        <source>Reading: %1</source>
        <translation>Ablesung: %1</translation>
    </message>
    <message>
        <source>Booked: %1</source>
        <translation>Eingetragen: %1</translation>
    </message>
    <message>
        <source>Booked</source>
        <translation>Eingetragen</translation>
    </message>
    <message>
        <source>Nothing is being looked at.</source>
        <translation>Nichts wird angesehen.</translation>
    </message>
    <message>
        <source>Click a thing on the sheet, look as long as it takes, then judge.</source>
        <translation>Ein Ding auf dem Blatt anklicken, lange genug hinsehen, dann urteilen.</translation>
    </message>
    <message>
        <source>looking …</source>
        <translation>hinsehen …</translation>
    </message>
    <message>
        <source>All steps are done.</source>
        <translation>Alle Schritte sind getan.</translation>
    </message>
    <message>
        <source>Next</source>
        <translation>Als Nächstes</translation>
    </message>
    <message>
        <source>Next: %1</source>
        <translation>Nun: %1</translation>
    </message>
    <message>
        <source>%1 of %2</source>
        <translation>%1 von %2</translation>
    </message>
    <message>
        <source>%1, %2</source>
        <translation>%1, %2</translation>
    </message>
    <message>
        <source>How grave?</source>
        <translation>Wie schwer?</translation>
    </message>
</context>
<context>
    <name>cabwright::cab::OutsidePart</name>
    <message>
        <source>Outside</source>
        <translation>Draußen</translation>
    </message>
    <message>
        <source>left: %1</source>
        <translation>links: %1</translation>
    </message>
    <message>
        <source>right: %1</source>
        <translation>rechts: %1</translation>
    </message>
    <message>
        <source>guard: %1</source>
        <translation>Schaffner: %1</translation>
    </message>
    <message>
        <source>left</source>
        <translation>links</translation>
    </message>
    <message>
        <source>right</source>
        <translation>rechts</translation>
    </message>
</context>
<context>
    <name>cabwright::cab::Panel</name>
    <message>
        <source>Close</source>
        <translation>Schließen</translation>
    </message>
</context>
<context>
    <name>cabwright::cab::PlanPart</name>
    <message>
        <source>guided</source>
        <translation>geführt</translation>
    </message>
    <message>
        <source>practice</source>
        <translation>Übung</translation>
    </message>
    <message>
        <source>assessment</source>
        <translation>Prüfung</translation>
    </message>
    <message>
        <source>walking to %1, %2 s</source>
        <translation>geht: %1, %2 s</translation>
    </message>
    <message>
        <source>moving</source>
        <translation>fährt</translation>
    </message>
    <message>
        <source>standing</source>
        <translation>steht</translation>
    </message>
    <message>
        <source>On the way</source>
        <translation>Unterwegs</translation>
    </message>
</context>
<context>
    <name>cabwright::cab::ReadingPanel</name>
    <message>
        <source>Enter a reading</source>
        <translation>Ablesung eintragen</translation>
    </message>
    <message>
        <source>What was read</source>
        <translation>Was abgelesen wurde</translation>
    </message>
    <message>
        <source>Leakage in lap, inHg a minute</source>
        <translation>Undichtheit im Abschluss, inHg je Minute</translation>
    </message>
    <message>
        <source>Train pipe, inHg</source>
        <translation>Zugleitung, inHg</translation>
    </message>
    <message>
        <source>Release pipe, inHg</source>
        <translation>Löseleitung, inHg</translation>
    </message>
    <message>
        <source>Control air, psi</source>
        <translation>Steuerluft, psi</translation>
    </message>
    <message>
        <source>Safety device, s to the brake</source>
        <translation>Totmann, s bis zur Bremsung</translation>
    </message>
    <message>
        <source>Battery, V</source>
        <translation>Batterie, V</translation>
    </message>
    <message>
        <source>Reading</source>
        <translation>Ablesung</translation>
    </message>
    <message>
        <source>Enter</source>
        <translation>Eintragen</translation>
    </message>
</context>
<context>
    <name>cabwright::cab::RoomPlate</name>
    <message>
        <source>too dark to see closely</source>
        <translation>zu dunkel, um genau zu sehen</translation>
    </message>
</context>
<context>
    <name>cabwright::cab::SaloonPlate</name>
    <message>
        <source>Saloon, looking towards cab 1</source>
        <translation>Abteil, Blick zu Führerstand 1</translation>
    </message>
    <message>
        <source>side 2, other line</source>
        <translation>Seite 2, Nachbargleis</translation>
    </message>
    <message>
        <source>side 1, path</source>
        <translation>Seite 1, Weg</translation>
    </message>
</context>
<context>
    <name>cabwright::cab::SayPanel</name>
    <message>
        <source>Say or do</source>
        <translation>Sagen, tun</translation>
    </message>
    <message>
        <source>What can be said or done</source>
        <translation>Was gesagt oder getan werden kann</translation>
    </message>
    <message>
        <source>Say</source>
        <translation>Sagen</translation>
    </message>
    <message>
        <source>Do</source>
        <translation>Tun</translation>
    </message>
    <message>
        <source>Ring to the guard: %1</source>
        <translation>Zum Schaffner klingeln: %1</translation>
    </message>
    <message>
        <source>Say it</source>
        <translation>Sagen</translation>
    </message>
</context>
<context>
    <name>cabwright::cab::Seat</name>
    <message>
        <source>Guard</source>
        <translation>Schaffner</translation>
    </message>
    <message>
        <source>Signaller</source>
        <translation>Fahrdienstleiter</translation>
    </message>
    <message>
        <source>Second person</source>
        <translation>Zweite Person</translation>
    </message>
    <message>
        <source>Instructor</source>
        <translation>Ausbilder</translation>
    </message>
    <message>
        <source>Somebody</source>
        <translation>Jemand</translation>
    </message>
    <message>
        <source>the run has ended</source>
        <translation>die Fahrt ist zu Ende</translation>
    </message>
    <message>
        <source>%1: %2 inHg</source>
        <translation>%1: %2 inHg</translation>
    </message>
    <message>
        <source>Twenty minutes have passed and nothing changed.</source>
        <translation>Zwanzig Minuten sind vergangen, und nichts hat sich geändert.</translation>
    </message>
    <message>
        <source>You see</source>
        <translation>Sie sehen</translation>
    </message>
</context>
<context>
    <name>cabwright::cab::SeatView</name>
    <message>
        <source>The trainee&apos;s sheet</source>
        <translation>Das Blatt des Anwärters</translation>
    </message>
    <message>
        <source>%1: “%2”</source>
        <translation>%1: „%2“</translation>
    </message>
    <message>
        <source>Book</source>
        <translation>Buch</translation>
    </message>
    <message>
        <source>Decide</source>
        <translation>Befund</translation>
    </message>
    <message>
        <source>Say or do</source>
        <translation>Sagen, tun</translation>
    </message>
    <message>
        <source>Things</source>
        <translation>Dinge</translation>
    </message>
    <message>
        <source>What next?</source>
        <translation>Was nun?</translation>
    </message>
    <message>
        <source>Stop</source>
        <translation>Halt</translation>
    </message>
    <message>
        <source>What comes in</source>
        <translation>Was hereinkommt</translation>
    </message>
    <message>
        <source>With you</source>
        <translation>Bei Ihnen</translation>
    </message>
    <message>
        <source>Your hands</source>
        <translation>Ihre Hände</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <translation>%1: %2</translation>
    </message>
    <message>
        <source>Note</source>
        <translation>Wert</translation>
    </message>
    <message>
        <source>Pass time</source>
        <translation>Abwarten</translation>
    </message>
    <message>
        <source>Held while you press; the right button leaves a hand on it</source>
        <translation>Gehalten, solange Sie drücken; mit der rechten Taste bleibt eine Hand darauf</translation>
    </message>
</context>
<context>
    <name>cabwright::cab::ThingPanel</name>
    <message>
        <source>Loose things</source>
        <translation>Lose Dinge</translation>
    </message>
    <message>
        <source>What can be done with it here</source>
        <translation>Was hier damit getan werden kann</translation>
    </message>
    <message>
        <source>Nothing can be done with it here.</source>
        <translation>Hier kann nichts damit getan werden.</translation>
    </message>
    <message>
        <source>Do it</source>
        <translation>Tun</translation>
    </message>
    <message>
        <source>Take: %1</source>
        <translation>Nehmen: %1</translation>
    </message>
    <message>
        <source>Put in: %1</source>
        <translation>Einstecken: %1</translation>
    </message>
    <message>
        <source>Lay down here: %1</source>
        <translation>Hier ablegen: %1</translation>
    </message>
    <message>
        <source>Switch off: %1</source>
        <translation>Ausschalten: %1</translation>
    </message>
    <message>
        <source>Switch on: %1</source>
        <translation>Einschalten: %1</translation>
    </message>
</context>
<context>
    <name>cabwright::cab::ThingPart</name>
    <message>
        <source>hangs here</source>
        <translation>hängt hier</translation>
    </message>
    <message>
        <source>with you</source>
        <translation>bei Ihnen</translation>
    </message>
    <message>
        <source>not here</source>
        <translation>nicht hier</translation>
    </message>
    <message>
        <source>Enter hangs it back</source>
        <translation>Enter hängt es zurück</translation>
    </message>
    <message>
        <source>Enter takes it</source>
        <translation>Enter nimmt es</translation>
    </message>
</context>
<context>
    <name>cabwright::cab::ThingRow</name>
    <message>
        <source>nothing</source>
        <translation>nichts</translation>
    </message>
    <message>
        <source>Lying here</source>
        <translation>Hier liegt</translation>
    </message>
    <message>
        <source>; chosen: %1</source>
        <translation>; gewählt: %1</translation>
    </message>
    <message>
        <source>Arrows choose, Enter takes it</source>
        <translation>Pfeile wählen, Enter nimmt es</translation>
    </message>
</context>
<context>
    <name>cabwright::cab::TitlePart</name>
    <message>
        <source>ended</source>
        <translation>beendet</translation>
    </message>
    <message>
        <source>passing, %1</source>
        <translation>vergeht, %1</translation>
    </message>
    <message>
        <source>stopped</source>
        <translation>angehalten</translation>
    </message>
    <message>
        <source>real time</source>
        <translation>Echtzeit</translation>
    </message>
    <message>
        <source>Run</source>
        <translation>Fahrt</translation>
    </message>
    <message>
        <source>time runs %1 times</source>
        <translation>die Zeit läuft %1-fach</translation>
    </message>
</context>
<context>
    <name>cabwright::cab::TurnPart</name>
    <message>
        <source>Key: %1</source>
        <translation>Taste: %1</translation>
    </message>
</context>
<context>
    <name>cabwright::cab::WhyPanel</name>
    <message>
        <source>Why is it lit?</source>
        <translation>Warum leuchtet sie?</translation>
    </message>
    <message>
        <source>Why is it dark?</source>
        <translation>Warum ist sie dunkel?</translation>
    </message>
    <message>
        <source>%1: what is missing?</source>
        <translation>%1: was fehlt?</translation>
    </message>
    <message>
        <source>%1: nothing is missing</source>
        <translation>%1: nichts fehlt</translation>
    </message>
</context>
<context>
    <name>cabwright::cab::WordButton</name>
    <message>
        <source>not now</source>
        <translation>jetzt nicht</translation>
    </message>
    <message>
        <source>. Key: %1</source>
        <translation>. Taste: %1</translation>
    </message>
</context>
<context>
    <name>cabwright::desk::ControlBar</name>
    <message>
        <source>Freeze</source>
        <translation>Anhalten</translation>
    </message>
    <message>
        <source>Set mark</source>
        <translation>Marke setzen</translation>
    </message>
    <message>
        <source>Go back</source>
        <translation>Zurück</translation>
    </message>
    <message>
        <source>I stepped in</source>
        <translation>Ich griff ein</translation>
    </message>
    <message>
        <source>Ctrl+Space</source>
        <translation>Strg+Leertaste</translation>
    </message>
    <message>
        <source>Stops the time of the run, or lets it go on</source>
        <translation>Hält die Zeit der Fahrt an oder lässt sie weitergehen</translation>
    </message>
    <message>
        <source>Name of the mark</source>
        <translation>Name der Marke</translation>
    </message>
    <message>
        <source>Name of a mark (F4)</source>
        <translation>Name einer Marke (F4)</translation>
    </message>
    <message>
        <source>Marks of this run</source>
        <translation>Marken dieser Fahrt</translation>
    </message>
    <message>
        <source>Remark at this second</source>
        <translation>Bemerkung zu dieser Sekunde</translation>
    </message>
    <message>
        <source>Remark at this second: F2, write, Enter</source>
        <translation>Bemerkung zu dieser Sekunde: F2, schreiben, Enter</translation>
    </message>
    <message>
        <source>Ends the unaided part of the run; what stands in the remark says why</source>
        <translation>Beendet den unbegleiteten Teil der Fahrt; die Bemerkung sagt, warum</translation>
    </message>
    <message>
        <source>Time runs %1 times</source>
        <translation>Die Zeit läuft %1-fach</translation>
    </message>
    <message>
        <source>mark %1</source>
        <translation>Marke %1</translation>
    </message>
    <message>
        <source>without a word</source>
        <translation>ohne ein Wort</translation>
    </message>
    <message>
        <source>Go on</source>
        <translation>Weiter</translation>
    </message>
    <message>
        <source>no marks yet</source>
        <translation>noch keine Marken</translation>
    </message>
</context>
<context>
    <name>cabwright::desk::Desk</name>
    <message>
        <source>No run goes on.</source>
        <translation>Keine Fahrt läuft.</translation>
    </message>
</context>
<context>
    <name>cabwright::desk::DeskWindow</name>
    <message>
        <source>ended</source>
        <translation>beendet</translation>
    </message>
    <message>
        <source>frozen</source>
        <translation>angehalten</translation>
    </message>
    <message>
        <source>Instructor&apos;s desk</source>
        <translation>Pult des Ausbilders</translation>
    </message>
    <message>
        <source>Cabwright: instructor&apos;s desk</source>
        <translation>Cabwright: Pult des Ausbilders</translation>
    </message>
    <message>
        <source>Time of the run</source>
        <translation>Zeit der Fahrt</translation>
    </message>
    <message>
        <source>Pages of the desk</source>
        <translation>Seiten des Pults</translation>
    </message>
    <message>
        <source>Faults</source>
        <translation>Fehler</translation>
    </message>
    <message>
        <source>Strips</source>
        <translation>Streifen</translation>
    </message>
    <message>
        <source>True values</source>
        <translation>Wahre Werte</translation>
    </message>
    <message>
        <source>Trainee</source>
        <translation>Lernender</translation>
    </message>
    <message>
        <source>Verdicts</source>
        <translation>Urteile</translation>
    </message>
    <message>
        <source>People</source>
        <translation>Leute</translation>
    </message>
    <message>
        <source>Situation</source>
        <translation>Lage</translation>
    </message>
    <message>
        <source>Ctrl+%1</source>
        <translation>Strg+%1</translation>
    </message>
    <message>
        <source>no run goes on</source>
        <translation>keine Fahrt läuft</translation>
    </message>
    <message>
        <source>trainee %1</source>
        <translation>Lernender %1</translation>
    </message>
    <message>
        <source>aided since %1</source>
        <translation>begleitet seit %1</translation>
    </message>
    <message>
        <source>Refused: %1</source>
        <translation>Abgelehnt: %1</translation>
    </message>
</context>
<context>
    <name>cabwright::desk::FaultForm</name>
    <message>
        <source>Size</source>
        <translation>Größe</translation>
    </message>
    <message>
        <source>Comes</source>
        <translation>Kommt</translation>
    </message>
    <message>
        <source>Grows in</source>
        <translation>Wächst in</translation>
    </message>
    <message>
        <source>Put in</source>
        <translation>Einbauen</translation>
    </message>
    <message>
        <source>Size of the fault</source>
        <translation>Größe des Fehlers</translation>
    </message>
    <message>
        <source>Seconds in which it grows</source>
        <translation>Sekunden, in denen er wächst</translation>
    </message>
    <message>
        <source> s</source>
        <translation> s</translation>
    </message>
    <message>
        <source>at once</source>
        <translation>sofort</translation>
    </message>
    <message>
        <source>No fault is chosen</source>
        <translation>Kein Fehler ist gewählt</translation>
    </message>
    <message>
        <source>Press a spot of the unit, or search. What a fault does and what is right to do stands here before it is put in.</source>
        <translation>Einen Punkt am Zug drücken oder suchen. Was ein Fehler tut und was dann richtig ist, steht hier, bevor er eingebaut wird.</translation>
    </message>
    <message>
        <source>Shows as: %1</source>
        <translation>Zeigt sich als: %1</translation>
    </message>
    <message>
        <source>Right to do: %1</source>
        <translation>Richtig ist dann: %1</translation>
    </message>
    <message>
        <source>%1 to %2, usually %3</source>
        <translation>%1 bis %2, gewöhnlich %3</translation>
    </message>
</context>
<context>
    <name>cabwright::desk::FaultMoment</name>
    <message>
        <source>When it comes</source>
        <translation>Wann er kommt</translation>
    </message>
    <message>
        <source>Now</source>
        <translation>Jetzt</translation>
    </message>
    <message>
        <source>After some seconds</source>
        <translation>Nach einigen Sekunden</translation>
    </message>
    <message>
        <source>When, in my own words</source>
        <translation>Wenn, in eigenen Worten</translation>
    </message>
    <message>
        <source>Seconds until it comes</source>
        <translation>Sekunden, bis er kommt</translation>
    </message>
    <message>
        <source> s</source>
        <translation> s</translation>
    </message>
    <message>
        <source>Condition</source>
        <translation>Bedingung</translation>
    </message>
    <message>
        <source>and then </source>
        <translation>und dann </translation>
    </message>
    <message>
        <source>A condition is missing.</source>
        <translation>Eine Bedingung fehlt.</translation>
    </message>
    <message>
        <source>At letter %1: %2</source>
        <translation>Bei Zeichen %1: %2</translation>
    </message>
</context>
<context>
    <name>cabwright::desk::FaultPicker</name>
    <message>
        <source>Search all faults (F3)</source>
        <translation>Alle Fehler durchsuchen (F3)</translation>
    </message>
    <message>
        <source>Search all faults</source>
        <translation>Alle Fehler durchsuchen</translation>
    </message>
    <message>
        <source>Faults that can be put in</source>
        <translation>Fehler, die eingebaut werden können</translation>
    </message>
    <message>
        <source>Choose a spot of the unit</source>
        <translation>Einen Punkt am Zug wählen</translation>
    </message>
    <message numerus="yes">
        <source>%n fault(s) found</source>
        <translation>
            <numerusform>%n Fehler gefunden</numerusform>
            <numerusform>%n Fehler gefunden</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>cabwright::desk::LiveStrips</name>
    <message>
        <source>Strips</source>
        <translation>Streifen</translation>
    </message>
    <message>
        <source>Search: a word, a unit, true</source>
        <translation>Suchen: ein Wort, eine Einheit, wahr</translation>
    </message>
    <message>
        <source>Search the signals</source>
        <translation>Die Größen durchsuchen</translation>
    </message>
    <message>
        <source>Signals</source>
        <translation>Größen</translation>
    </message>
    <message>
        <source>%1 min</source>
        <translation>%1 min</translation>
    </message>
    <message>
        <source>Hold</source>
        <translation>Halten</translation>
    </message>
    <message>
        <source>The strip stands while the run goes on. Key: Space.</source>
        <translation>Der Streifen steht, während die Fahrt weitergeht. Taste: Leertaste.</translation>
    </message>
    <message>
        <source>Chosen</source>
        <translation>Gewählte</translation>
    </message>
    <message>
        <source>Lists only what is on the strip.</source>
        <translation>Führt nur auf, was auf dem Streifen ist.</translation>
    </message>
    <message>
        <source>Twelve are on the strip: take one off first.</source>
        <translation>Zwölf sind auf dem Streifen: erst eine herunternehmen.</translation>
    </message>
</context>
<context>
    <name>cabwright::desk::NamedValues</name>
    <message>
        <source>carried</source>
        <translation>dabei</translation>
    </message>
    <message>
        <source>in its place: %1</source>
        <translation>an seinem Platz: %1</translation>
    </message>
    <message>
        <source>lies: %1</source>
        <translation>liegt: %1</translation>
    </message>
    <message>
        <source>is nowhere</source>
        <translation>ist nirgends</translation>
    </message>
    <message>
        <source>Say it</source>
        <translation>Sagen</translation>
    </message>
    <message>
        <source>%1: find</source>
        <translation>%1: suchen</translation>
    </message>
    <message>
        <source>Find by name or words</source>
        <translation>Nach Name oder Worten suchen</translation>
    </message>
    <message>
        <source>%1: say it</source>
        <translation>%1: sagen</translation>
    </message>
    <message>
        <source>%1 to %2</source>
        <translation>%1 bis %2</translation>
    </message>
    <message>
        <source>Leave out</source>
        <translation>Weglassen</translation>
    </message>
    <message>
        <source>Leave out %1</source>
        <translation>%1 weglassen</translation>
    </message>
</context>
<context>
    <name>cabwright::desk::PeoplePage</name>
    <message>
        <source>Guard</source>
        <translation>Schaffner</translation>
    </message>
    <message>
        <source>Rings to the cab:</source>
        <translation>Klingelt zum Führerstand:</translation>
    </message>
    <message>
        <source>open</source>
        <translation>auf</translation>
    </message>
    <message>
        <source>shut</source>
        <translation>zu</translation>
    </message>
    <message>
        <source>Guard&apos;s valve, cab 1</source>
        <translation>Schaffnerventil, Führerstand 1</translation>
    </message>
    <message>
        <source>Guard&apos;s valve, cab 2</source>
        <translation>Schaffnerventil, Führerstand 2</translation>
    </message>
    <message>
        <source>Doors, side 1</source>
        <translation>Türen, Seite 1</translation>
    </message>
    <message>
        <source>Doors, side 2</source>
        <translation>Türen, Seite 2</translation>
    </message>
    <message>
        <source>Passenger alarm</source>
        <translation>Notbremse</translation>
    </message>
    <message>
        <source>pull</source>
        <translation>ziehen</translation>
    </message>
    <message>
        <source>put back</source>
        <translation>zurückstellen</translation>
    </message>
    <message>
        <source>Signaller</source>
        <translation>Fahrdienstleiter</translation>
    </message>
    <message>
        <source>Signals of the line:</source>
        <translation>Signale der Strecke:</translation>
    </message>
    <message>
        <source>clear</source>
        <translation>frei</translation>
    </message>
    <message>
        <source>danger</source>
        <translation>Halt</translation>
    </message>
    <message>
        <source>Signal %1: %2</source>
        <translation>Signal %1: %2</translation>
    </message>
    <message>
        <source>People and flags at the unit</source>
        <translation>Leute und Flaggen am Zug</translation>
    </message>
    <message>
        <source>Where somebody is, or something hangs</source>
        <translation>Wo jemand ist oder etwas hängt</translation>
    </message>
    <message>
        <source>Who or what</source>
        <translation>Wer oder was</translation>
    </message>
    <message>
        <source>Put there</source>
        <translation>Hinstellen</translation>
    </message>
    <message>
        <source>Take away</source>
        <translation>Wegnehmen</translation>
    </message>
    <message>
        <source>There now:</source>
        <translation>Jetzt da:</translation>
    </message>
    <message>
        <source>Somebody moves a control</source>
        <translation>Jemand bewegt einen Hebel</translation>
    </message>
    <message>
        <source>Search for a control</source>
        <translation>Einen Hebel suchen</translation>
    </message>
    <message>
        <source>Search: drain, cab 2, cock ...</source>
        <translation>Suchen: Ablass, Führerstand 2, Hahn ...</translation>
    </message>
    <message>
        <source>Controls</source>
        <translation>Hebel</translation>
    </message>
    <message>
        <source>Where it is put</source>
        <translation>Wohin er gestellt wird</translation>
    </message>
    <message>
        <source>Put it there</source>
        <translation>Hinstellen</translation>
    </message>
    <message>
        <source>nothing</source>
        <translation>nichts</translation>
    </message>
    <message>
        <source>at clear</source>
        <translation>auf frei</translation>
    </message>
    <message>
        <source>at danger</source>
        <translation>auf Halt</translation>
    </message>
    <message>
        <source>nobody, and nothing hangs on the unit</source>
        <translation>niemand, und nichts hängt am Zug</translation>
    </message>
    <message>
        <source>Stands at %1</source>
        <translation>Steht auf %1</translation>
    </message>
</context>
<context>
    <name>cabwright::desk::PersonView</name>
    <message>
        <source>%1 s ago</source>
        <translation>vor %1 s</translation>
    </message>
    <message>
        <source>%1 min ago</source>
        <translation>vor %1 min</translation>
    </message>
    <message>
        <source>No run goes on.</source>
        <translation>Keine Fahrt läuft.</translation>
    </message>
    <message>
        <source>Notebook and what was so</source>
        <translation>Merkheft und was so war</translation>
    </message>
    <message>
        <source>found %1, missed %2, false alarms %3</source>
        <translation>gefunden %1, übersehen %2, Fehlalarme %3</translation>
    </message>
    <message>
        <source>Defects not found yet</source>
        <translation>Noch nicht gefundene Mängel</translation>
    </message>
    <message>
        <source>A figure counts the defects at a place that are not found yet.</source>
        <translation>Eine Zahl zählt die Mängel an einem Platz, die noch nicht gefunden sind.</translation>
    </message>
    <message>
        <source>Left hand</source>
        <translation>Linke Hand</translation>
    </message>
    <message>
        <source>Right hand</source>
        <translation>Rechte Hand</translation>
    </message>
    <message>
        <source>free</source>
        <translation>frei</translation>
    </message>
    <message>
        <source>Looks</source>
        <translation>Sieht an</translation>
    </message>
    <message>
        <source>%1 of %2 s</source>
        <translation>%1 von %2 s</translation>
    </message>
    <message>
        <source>seen</source>
        <translation>gesehen</translation>
    </message>
    <message>
        <source>Carries</source>
        <translation>Trägt</translation>
    </message>
    <message>
        <source>nothing</source>
        <translation>nichts</translation>
    </message>
    <message>
        <source>Heard</source>
        <translation>Gehört</translation>
    </message>
    <message>
        <source>%1 (%2)</source>
        <translation>%1 (%2)</translation>
    </message>
    <message>
        <source>Bell</source>
        <translation>Klingel</translation>
    </message>
    <message>
        <source>Sounds</source>
        <translation>Geräusche</translation>
    </message>
    <message>
        <source>sound</source>
        <translation>heil</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <translation>%1: %2</translation>
    </message>
    <message>
        <source>Time</source>
        <translation>Zeit</translation>
    </message>
    <message>
        <source>Thing</source>
        <translation>Ding</translation>
    </message>
    <message>
        <source>Judged</source>
        <translation>Beurteilt</translation>
    </message>
    <message>
        <source>What was so</source>
        <translation>Was so war</translation>
    </message>
    <message>
        <source>Result</source>
        <translation>Ergebnis</translation>
    </message>
    <message>
        <source>Notebook of the trainee</source>
        <translation>Merkheft des Lernenden</translation>
    </message>
    <message>
        <source>Class</source>
        <translation>Klasse</translation>
    </message>
    <message>
        <source>What is so</source>
        <translation>Was so ist</translation>
    </message>
    <message>
        <source>The trainee</source>
        <translation>Der Lernende</translation>
    </message>
    <message>
        <source>Walking to %1, %2 s</source>
        <translation>Geht zu %1, %2 s</translation>
    </message>
    <message>
        <source>at nothing</source>
        <translation>an nichts</translation>
    </message>
    <message>
        <source>left hand: %1</source>
        <translation>linke Hand: %1</translation>
    </message>
    <message>
        <source>right hand: %1</source>
        <translation>rechte Hand: %1</translation>
    </message>
    <message>
        <source>looks %1</source>
        <translation>sieht an: %1</translation>
    </message>
    <message>
        <source>last heard: %1</source>
        <translation>zuletzt gehört: %1</translation>
    </message>
</context>
<context>
    <name>cabwright::desk::PresentFaults</name>
    <message>
        <source>armed by the exercise</source>
        <translation>von der Übung vorgesehen</translation>
    </message>
    <message>
        <source>armed at %1</source>
        <translation>vorgesehen bei %1</translation>
    </message>
    <message>
        <source>growing since %1, %2 %</source>
        <translation>wächst seit %1, %2 %</translation>
    </message>
    <message>
        <source>there since %1</source>
        <translation>da seit %1</translation>
    </message>
    <message>
        <source>put right at %1</source>
        <translation>behoben bei %1</translation>
    </message>
    <message>
        <source>Faults of this run</source>
        <translation>Fehler dieser Fahrt</translation>
    </message>
    <message>
        <source>Put right</source>
        <translation>Beheben</translation>
    </message>
    <message>
        <source>Put right: %1</source>
        <translation>Beheben: %1</translation>
    </message>
    <message>
        <source>No fault is in</source>
        <translation>Kein Fehler ist eingebaut</translation>
    </message>
    <message>
        <source>In this run: %1 in, %2 put right</source>
        <translation>In dieser Fahrt: %1 eingebaut, %2 behoben</translation>
    </message>
</context>
<context>
    <name>cabwright::desk::SituationPage</name>
    <message>
        <source> °C</source>
        <translation> °C</translation>
    </message>
    <message>
        <source>Temperature</source>
        <translation>Temperatur</translation>
    </message>
    <message>
        <source> h</source>
        <translation> h</translation>
    </message>
    <message>
        <source>Hours it has stood</source>
        <translation>Stunden, die er gestanden hat</translation>
    </message>
    <message>
        <source>Seed</source>
        <translation>Startzahl</translation>
    </message>
    <message>
        <source>in the dark</source>
        <translation>im Dunkeln</translation>
    </message>
    <message>
        <source>Begin</source>
        <translation>Beginnen</translation>
    </message>
    <message>
        <source>Exercise</source>
        <translation>Übung</translation>
    </message>
    <message>
        <source>How it is taken</source>
        <translation>Wie sie gefahren wird</translation>
    </message>
    <message>
        <source>Weather</source>
        <translation>Wetter</translation>
    </message>
    <message>
        <source>Trainee</source>
        <translation>Lernender</translation>
    </message>
    <message>
        <source>may be empty</source>
        <translation>kann leer bleiben</translation>
    </message>
    <message>
        <source>Taken as</source>
        <translation>Gefahren als</translation>
    </message>
    <message>
        <source>By</source>
        <translation>Von</translation>
    </message>
    <message>
        <source>Has stood</source>
        <translation>Hat gestanden</translation>
    </message>
    <message>
        <source>What begins</source>
        <translation>Was beginnt</translation>
    </message>
    <message>
        <source>This exercise says itself how the unit stands.</source>
        <translation>Diese Übung sagt selbst, wie der Zug steht.</translation>
    </message>
</context>
<context>
    <name>cabwright::desk::SpotButton</name>
    <message numerus="yes">
        <source>%n fault(s) can be put in here</source>
        <translation>
            <numerusform>%n Fehler kann hier eingebaut werden</numerusform>
            <numerusform>%n Fehler können hier eingebaut werden</numerusform>
        </translation>
    </message>
    <message>
        <source>; %1: %2</source>
        <translation>; %1: %2</translation>
    </message>
</context>
<context>
    <name>cabwright::desk::StripPane</name>
    <message>
        <source>Live strips</source>
        <translation>Laufende Streifen</translation>
    </message>
    <message>
        <source>At %1</source>
        <translation>Bei %1</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <translation>%1: %2</translation>
    </message>
    <message>
        <source>Actions</source>
        <translation>Handlungen</translation>
    </message>
    <message>
        <source>Faults</source>
        <translation>Fehler</translation>
    </message>
    <message>
        <source>Verdicts</source>
        <translation>Urteile</translation>
    </message>
    <message>
        <source>Marks</source>
        <translation>Marken</translation>
    </message>
    <message>
        <source>Time</source>
        <translation>Zeit</translation>
    </message>
    <message>
        <source>Choose what is to be shown from the list.</source>
        <translation>In der Liste wählen, was gezeigt werden soll.</translation>
    </message>
    <message>
        <source>not known</source>
        <translation>nicht bekannt</translation>
    </message>
    <message>
        <source>held, %1 ago</source>
        <translation>gehalten, vor %1</translation>
    </message>
    <message>
        <source>now</source>
        <translation>jetzt</translation>
    </message>
</context>
<context>
    <name>cabwright::desk::TruthModel</name>
    <message>
        <source>%1 shows %2</source>
        <translation>%1 zeigt %2</translation>
    </message>
    <message>
        <source>Value</source>
        <translation>Wert</translation>
    </message>
    <message>
        <source>True</source>
        <translation>Wahr</translation>
    </message>
    <message>
        <source>Cab 1</source>
        <translation>Führerstand 1</translation>
    </message>
    <message>
        <source>Cab 2</source>
        <translation>Führerstand 2</translation>
    </message>
    <message>
        <source>On the spot</source>
        <translation>Am Ort</translation>
    </message>
    <message>
        <source>Gauges that differ</source>
        <translation>Uhren, die abweichen</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <translation>%1: %2</translation>
    </message>
</context>
<context>
    <name>cabwright::desk::TruthView</name>
    <message>
        <source>True values</source>
        <translation>Wahre Werte</translation>
    </message>
    <message>
        <source>Search: a word, a unit</source>
        <translation>Suchen: ein Wort, eine Einheit</translation>
    </message>
    <message>
        <source>Search the values</source>
        <translation>Die Werte durchsuchen</translation>
    </message>
    <message>
        <source>True values and gauges</source>
        <translation>Wahre Werte und Uhren</translation>
    </message>
    <message>
        <source>All</source>
        <translation>Alle</translation>
    </message>
    <message>
        <source>Only what differs</source>
        <translation>Nur Abweichungen</translation>
    </message>
    <message>
        <source>All gauges and lamps show what is so.</source>
        <translation>Alle Uhren und Lampen zeigen, was ist.</translation>
    </message>
    <message>
        <source>All gauges and lamps agree; broken: %1.</source>
        <translation>Alle Uhren und Lampen stimmen; defekt: %1.</translation>
    </message>
    <message>
        <source>One row differs.</source>
        <translation>Eine Zeile weicht ab.</translation>
    </message>
    <message numerus="yes">
        <source>%n rows differ.</source>
        <translation>
            <numerusform>%n Zeile weicht ab.</numerusform>
            <numerusform>%n Zeilen weichen ab.</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>cabwright::desk::UnitView</name>
    <message>
        <source>armed</source>
        <translation>vorgesehen</translation>
    </message>
    <message>
        <source>growing</source>
        <translation>wächst</translation>
    </message>
    <message>
        <source>there</source>
        <translation>da</translation>
    </message>
    <message>
        <source>The unit, seen from above; cab 1 on the right, side 1 below</source>
        <translation>Der Zug von oben; Führerstand 1 rechts, Seite 1 unten</translation>
    </message>
</context>
<context>
    <name>cabwright::desk::VerdictView</name>
    <message>
        <source>Verdicts</source>
        <translation>Urteile</translation>
    </message>
    <message>
        <source>What would break next</source>
        <translation>Was als Nächstes brechen würde</translation>
    </message>
    <message>
        <source>%1 kept, %2 broken, of these critical %3; %4 open, %5 not yet</source>
        <translation>%1 eingehalten, %2 gebrochen, davon kritisch %3; %4 offen, %5 noch nicht</translation>
    </message>
    <message>
        <source>%1 kept</source>
        <translation>%1 eingehalten</translation>
    </message>
    <message>
        <source>%1 broken</source>
        <translation>%1 gebrochen</translation>
    </message>
    <message>
        <source>%1 open</source>
        <translation>%1 offen</translation>
    </message>
    <message>
        <source>critical: %1</source>
        <translation>kritisch: %1</translation>
    </message>
    <message>
        <source>not yet: %1</source>
        <translation>noch nicht: %1</translation>
    </message>
</context>
<context>
    <name>cabwright::desk::Writing</name>
    <message>
        <source>New scenario</source>
        <translation>Neue Übung</translation>
    </message>
    <message>
        <source>What is to be learnt</source>
        <translation>Was zu lernen ist</translation>
    </message>
    <message>
        <source>What the trainee is told</source>
        <translation>Was dem Lernenden gesagt wird</translation>
    </message>
</context>
<context>
    <name>cabwright::desk::WritingFaults</name>
    <message>
        <source>What goes wrong</source>
        <translation>Was schiefgeht</translation>
    </message>
    <message>
        <source>when %1</source>
        <translation>wenn %1</translation>
    </message>
    <message>
        <source>at %1</source>
        <translation>bei %1</translation>
    </message>
    <message>
        <source>from the start</source>
        <translation>von Anfang an</translation>
    </message>
    <message>
        <source>Find a fault of the catalogue</source>
        <translation>Einen Fehler der Liste suchen</translation>
    </message>
    <message>
        <source>Find a fault: leak, gearbox 2, belt ...</source>
        <translation>Einen Fehler suchen: Leck, Getriebe 2, Riemen ...</translation>
    </message>
    <message>
        <source>Faults of the catalogue; Enter puts one in</source>
        <translation>Fehler der Liste; Enter baut einen ein</translation>
    </message>
    <message>
        <source>Size</source>
        <translation>Größe</translation>
    </message>
    <message>
        <source>At</source>
        <translation>Bei</translation>
    </message>
    <message>
        <source>as 3 min; from the start if nothing is said</source>
        <translation>etwa 3 min; von Anfang an, wenn nichts gesagt ist</translation>
    </message>
    <message>
        <source>or when</source>
        <translation>oder wenn</translation>
    </message>
    <message>
        <source>a condition, as cab1.air &gt;= 75 psi</source>
        <translation>eine Bedingung, etwa cab1.air &gt;= 75 psi</translation>
    </message>
    <message>
        <source>and so long after</source>
        <translation>und so lange danach</translation>
    </message>
    <message>
        <source>as 5 s</source>
        <translation>etwa 5 s</translation>
    </message>
    <message>
        <source>It grows for</source>
        <translation>Er wächst in</translation>
    </message>
    <message>
        <source>as 20 s</source>
        <translation>etwa 20 s</translation>
    </message>
    <message>
        <source>It goes again at</source>
        <translation>Er geht wieder bei</translation>
    </message>
    <message>
        <source>as 10 min</source>
        <translation>etwa 10 min</translation>
    </message>
    <message>
        <source>a condition</source>
        <translation>eine Bedingung</translation>
    </message>
    <message>
        <source>%1 to %2</source>
        <translation>%1 bis %2</translation>
    </message>
</context>
<context>
    <name>cabwright::desk::WritingForm</name>
    <message>
        <source>%1: say it</source>
        <translation>%1: sagen</translation>
    </message>
</context>
<context>
    <name>cabwright::desk::WritingList</name>
    <message>
        <source>Take out</source>
        <translation>Herausnehmen</translation>
    </message>
    <message>
        <source>Up</source>
        <translation>Hinauf</translation>
    </message>
    <message>
        <source>Down</source>
        <translation>Hinunter</translation>
    </message>
</context>
<context>
    <name>cabwright::desk::WritingRules</name>
    <message>
        <source>Find a rule</source>
        <translation>Eine Regel suchen</translation>
    </message>
    <message>
        <source>Find a rule by its words</source>
        <translation>Eine Regel nach ihren Worten suchen</translation>
    </message>
    <message>
        <source>Rules of this exercise&apos;s own, kept as they are: %1</source>
        <translation>Eigene Regeln dieser Übung, unverändert behalten: %1</translation>
    </message>
</context>
<context>
    <name>cabwright::desk::WritingText</name>
    <message>
        <source>The file as it would be saved</source>
        <translation>Die Datei, wie sie gespeichert würde</translation>
    </message>
    <message>
        <source>What is wrong, with line and column</source>
        <translation>Was nicht stimmt, mit Zeile und Spalte</translation>
    </message>
</context>
<context>
    <name>cabwright::desk::WritingView</name>
    <message>
        <source>Write a scenario</source>
        <translation>Eine Übung schreiben</translation>
    </message>
    <message>
        <source>&amp;New</source>
        <translation>&amp;Neu</translation>
    </message>
    <message>
        <source>&amp;Open...</source>
        <translation>Ö&amp;ffnen...</translation>
    </message>
    <message>
        <source>Take the present &amp;moment</source>
        <translation>Den &amp;Augenblick nehmen</translation>
    </message>
    <message>
        <source>&amp;Undo</source>
        <translation>&amp;Zurücknehmen</translation>
    </message>
    <message>
        <source>There is nothing to take back.</source>
        <translation>Es gibt nichts zurückzunehmen.</translation>
    </message>
    <message>
        <source>&amp;Check</source>
        <translation>&amp;Prüfen</translation>
    </message>
    <message>
        <source>&amp;Save</source>
        <translation>&amp;Speichern</translation>
    </message>
    <message>
        <source>Save &amp;as...</source>
        <translation>Speichern &amp;als...</translation>
    </message>
    <message>
        <source>&amp;Try it at once</source>
        <translation>Gleich &amp;versuchen</translation>
    </message>
    <message>
        <source>Your own scenarios</source>
        <translation>Ihre eigenen Übungen</translation>
    </message>
    <message>
        <source>Do it</source>
        <translation>Tun</translation>
    </message>
    <message>
        <source>Leave it</source>
        <translation>Lassen</translation>
    </message>
    <message>
        <source>Sections</source>
        <translation>Abschnitte</translation>
    </message>
    <message>
        <source>Situation</source>
        <translation>Lage</translation>
    </message>
    <message>
        <source>Conditions</source>
        <translation>Bedingungen</translation>
    </message>
    <message>
        <source>Controls and things</source>
        <translation>Hebel und Dinge</translation>
    </message>
    <message>
        <source>People and events</source>
        <translation>Leute und Ereignisse</translation>
    </message>
    <message>
        <source>Hidden and faults</source>
        <translation>Verstecktes und Fehler</translation>
    </message>
    <message>
        <source>Marking</source>
        <translation>Bewertung</translation>
    </message>
    <message>
        <source>Words</source>
        <translation>Worte</translation>
    </message>
    <message>
        <source>not saved yet</source>
        <translation>noch nicht gespeichert</translation>
    </message>
    <message>
        <source>Nothing is wrong with it.</source>
        <translation>Alles stimmt.</translation>
    </message>
    <message numerus="yes">
        <source>%n fault(s), by line and column:</source>
        <translation>
            <numerusform>%n Fehler, mit Zeile und Spalte:</numerusform>
            <numerusform>%n Fehler, mit Zeile und Spalte:</numerusform>
        </translation>
    </message>
    <message>
        <source>What you have changed is not saved. Ask for it once more to leave it.</source>
        <translation>Was Sie geändert haben, ist nicht gespeichert. Noch einmal verlangen, um es zu verlassen.</translation>
    </message>
    <message>
        <source>A new scenario.</source>
        <translation>Eine neue Übung.</translation>
    </message>
    <message>
        <source>There is no run to take a moment of.</source>
        <translation>Es gibt keine Fahrt, deren Augenblick zu nehmen wäre.</translation>
    </message>
    <message>
        <source>Taken as it stands at %1 s.</source>
        <translation>Genommen, wie es bei %1 s steht.</translation>
    </message>
    <message>
        <source>Taken as it stands at %1 s. Not in it: %2.</source>
        <translation>Genommen, wie es bei %1 s steht. Nicht darin: %2.</translation>
    </message>
    <message>
        <source>Open the file</source>
        <translation>Die Datei öffnen</translation>
    </message>
    <message>
        <source>Save as</source>
        <translation>Speichern als</translation>
    </message>
    <message>
        <source>(broken: %1)</source>
        <translation>(defekt: %1)</translation>
    </message>
    <message>
        <source>That file is there already. Do it once more to write over it.</source>
        <translation>Diese Datei gibt es schon. Noch einmal tun, um sie zu überschreiben.</translation>
    </message>
    <message>
        <source>Opened.</source>
        <translation>Geöffnet.</translation>
    </message>
    <message>
        <source>Refused, nothing was taken over: %1</source>
        <translation>Abgelehnt, nichts wurde übernommen: %1</translation>
    </message>
    <message numerus="yes">
        <source>%n fault(s) of the file that was refused:</source>
        <translation>
            <numerusform>%n Fehler der abgelehnten Datei:</numerusform>
            <numerusform>%n Fehler der abgelehnten Datei:</numerusform>
        </translation>
    </message>
    <message>
        <source>Not saved: %1</source>
        <translation>Nicht gespeichert: %1</translation>
    </message>
    <message>
        <source>Saved.</source>
        <translation>Gespeichert.</translation>
    </message>
    <message>
        <source>Saved. It cannot be run before its faults are mended.</source>
        <translation>Gespeichert. Sie kann nicht gefahren werden, bevor ihre Fehler behoben sind.</translation>
    </message>
    <message>
        <source>It cannot be tried before its faults are mended.</source>
        <translation>Sie kann nicht versucht werden, bevor ihre Fehler behoben sind.</translation>
    </message>
    <message>
        <source>Saved, and tried.</source>
        <translation>Gespeichert und versucht.</translation>
    </message>
</context>
<context>
    <name>cabwright::desktop::CautionView</name>
    <message>
        <source>I have read this</source>
        <translation>Gelesen</translation>
    </message>
    <message>
        <source>Cautions</source>
        <translation>Vorsicht</translation>
    </message>
    <message>
        <source>This is a training aid. It is generic, models no particular vehicle, and gives no authority to drive or to work on one.</source>
        <translation>Dies ist eine Ausbildungshilfe. Sie ist allgemein, bildet kein bestimmtes Fahrzeug nach und gibt keine Befugnis, eines zu fahren oder daran zu arbeiten.</translation>
    </message>
    <message>
        <source>The operator&apos;s rule book, the vehicle&apos;s own manual and local instructions come before anything that is shown here. A licensed instructor or assessor decides.</source>
        <translation>Das Regelbuch des Betreibers, das Handbuch des Fahrzeugs und örtliche Weisungen gehen allem vor, was hier gezeigt wird. Ein zugelassener Ausbilder oder Prüfer entscheidet.</translation>
    </message>
    <message>
        <source>Working around stabled trains, rotating shafts, compressed air and moving vehicles kills people. Nothing is to be tried on a real unit because it worked here.</source>
        <translation>Arbeit an abgestellten Zügen, drehenden Wellen, Druckluft und bewegten Fahrzeugen tötet Menschen. Nichts ist an einem wirklichen Zug zu versuchen, nur weil es hier ging.</translation>
    </message>
    <message>
        <source>Much of what is marked is common practice in the trade, without a published source; other railways do some of it otherwise.</source>
        <translation>Vieles, was bewertet wird, ist übliche Praxis des Fachs ohne veröffentlichte Quelle; andere Bahnen machen manches davon anders.</translation>
    </message>
    <message>
        <source>Before you begin</source>
        <translation>Bevor Sie beginnen</translation>
    </message>
</context>
<context>
    <name>cabwright::desktop::ChooseView</name>
    <message>
        <source>Begin</source>
        <translation>Beginnen</translation>
    </message>
    <message>
        <source>Choose an exercise</source>
        <translation>Eine Übung wählen</translation>
    </message>
    <message>
        <source>Exercises</source>
        <translation>Übungen</translation>
    </message>
    <message>
        <source>How to take it</source>
        <translation>Auf welche Weise</translation>
    </message>
    <message>
        <source>Your &amp;number</source>
        <translation>Ihre &amp;Nummer</translation>
    </message>
    <message>
        <source>may be left empty</source>
        <translation>kann leer bleiben</translation>
    </message>
    <message>
        <source>Your number</source>
        <translation>Ihre Nummer</translation>
    </message>
    <message>
        <source>A training aid, generic, modelling no particular vehicle: it gives no authority to drive. The operator&apos;s rule book, the vehicle&apos;s own manual and a licensed instructor decide.</source>
        <translation>Eine Ausbildungshilfe, allgemein, kein bestimmtes Fahrzeug: sie gibt keine Befugnis zu fahren. Das Regelbuch des Betreibers, das Handbuch des Fahrzeugs und ein zugelassener Ausbilder entscheiden.</translation>
    </message>
    <message>
        <source>Guided</source>
        <translation>Geführt</translation>
    </message>
    <message>
        <source>The next step and its reason are always there, and a pointer to it.</source>
        <translation>Der nächste Schritt und sein Grund stehen immer da, und ein Zeiger darauf.</translation>
    </message>
    <message>
        <source>Practice</source>
        <translation>Übung</translation>
    </message>
    <message>
        <source>On your own; a hint when you ask, time let pass when you wait.</source>
        <translation>Auf sich gestellt; ein Hinweis, wenn Sie fragen, Zeit vergeht, wenn Sie warten.</translation>
    </message>
    <message>
        <source>Assessment</source>
        <translation>Prüfung</translation>
    </message>
    <message>
        <source>Silent, in real time, no way back; recorded, and marked at the end.</source>
        <translation>Still, in Echtzeit, kein Zurück; aufgezeichnet und am Ende bewertet.</translation>
    </message>
    <message>
        <source>Cannot be taken: %1</source>
        <translation>Nicht möglich: %1</translation>
    </message>
    <message>
        <source>not taken yet</source>
        <translation>noch nie gemacht</translation>
    </message>
    <message numerus="yes">
        <source>passed, best %1 of 100 on %2; taken %n time(s)</source>
        <translation>
            <numerusform>bestanden, am besten %1 von 100 am %2; %n-mal gemacht</numerusform>
            <numerusform>bestanden, am besten %1 von 100 am %2; %n-mal gemacht</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>not passed yet, best %1 of 100 on %2; taken %n time(s)</source>
        <translation>
            <numerusform>noch nicht bestanden, am besten %1 von 100 am %2; %n-mal gemacht</numerusform>
            <numerusform>noch nicht bestanden, am besten %1 von 100 am %2; %n-mal gemacht</numerusform>
        </translation>
    </message>
    <message>
        <source>Time allowed: %1 minutes.</source>
        <translation>Erlaubte Zeit: %1 Minuten.</translation>
    </message>
    <message>
        <source>Teaches: %1.</source>
        <translation>Lehrt: %1.</translation>
    </message>
</context>
<context>
    <name>cabwright::desktop::DeskDoor</name>
    <message>
        <source>Write</source>
        <translation>Schreiben</translation>
    </message>
</context>
<context>
    <name>cabwright::desktop::MainWindow</name>
    <message>
        <source>Volume %1 of 10</source>
        <translation>Lautstärke %1 von 10</translation>
    </message>
    <message>
        <source>&amp;Run</source>
        <translation>&amp;Fahrt</translation>
    </message>
    <message>
        <source>&amp;Choose an exercise</source>
        <translation>&amp;Eine Übung wählen</translation>
    </message>
    <message>
        <source>Take it again from the &amp;start</source>
        <translation>Noch einmal &amp;von vorn</translation>
    </message>
    <message>
        <source>&amp;Stop the clock</source>
        <translation>Uhr an&amp;halten</translation>
    </message>
    <message>
        <source>&amp;Let time pass until something changes</source>
        <translation>&amp;Zeit vergehen lassen, bis sich etwas ändert</translation>
    </message>
    <message>
        <source>&amp;End the run and see the sheet</source>
        <translation>&amp;Fahrt beenden und den Bogen sehen</translation>
    </message>
    <message>
        <source>Se&amp;ttings</source>
        <translation>Ei&amp;nstellungen</translation>
    </message>
    <message>
        <source>&amp;Quit</source>
        <translation>&amp;Beenden</translation>
    </message>
    <message>
        <source>&amp;View</source>
        <translation>&amp;Ansicht</translation>
    </message>
    <message>
        <source>As the s&amp;ystem has it</source>
        <translation>Wie das S&amp;ystem</translation>
    </message>
    <message>
        <source>&amp;Day</source>
        <translation>&amp;Tag</translation>
    </message>
    <message>
        <source>&amp;Night</source>
        <translation>&amp;Nacht</translation>
    </message>
    <message>
        <source>&amp;Keys beside what they move</source>
        <translation>Ta&amp;sten neben dem, was sie bewegen</translation>
    </message>
    <message>
        <source>&amp;Full screen</source>
        <translation>&amp;Vollbild</translation>
    </message>
    <message>
        <source>&amp;Sound</source>
        <translation>&amp;Ton</translation>
    </message>
    <message>
        <source>&amp;Silent</source>
        <translation>&amp;Stumm</translation>
    </message>
    <message>
        <source>&amp;Louder</source>
        <translation>&amp;Lauter</translation>
    </message>
    <message>
        <source>S&amp;ofter</source>
        <translation>L&amp;eiser</translation>
    </message>
    <message>
        <source>&amp;Help</source>
        <translation>&amp;Hilfe</translation>
    </message>
    <message>
        <source>&amp;Keys and how to use them</source>
        <translation>&amp;Tasten und Bedienung</translation>
    </message>
    <message>
        <source>&amp;Cautions</source>
        <translation>&amp;Vorsicht</translation>
    </message>
    <message>
        <source>Not recorded: %1</source>
        <translation>Nicht aufgezeichnet: %1</translation>
    </message>
    <message>
        <source>Not recorded to its end: %1</source>
        <translation>Nicht bis zum Ende aufgezeichnet: %1</translation>
    </message>
    <message>
        <source>That moment cannot be taken again.</source>
        <translation>Dieser Augenblick lässt sich nicht wiederholen.</translation>
    </message>
    <message>
        <source>&amp;Mechanism: how it looks inside</source>
        <translation>&amp;Mechanik: wie es innen aussieht</translation>
    </message>
    <message>
        <source>Going back: %1 of %2</source>
        <translation>Zurück: %1 von %2</translation>
    </message>
    <message>
        <source>Back at the mark: %1</source>
        <translation>Zurück an der Marke: %1</translation>
    </message>
    <message>
        <source>&amp;Instructor&apos;s desk</source>
        <translation>&amp;Pult des Ausbilders</translation>
    </message>
</context>
<context>
    <name>cabwright::desktop::SettingsView</name>
    <message>
        <source>Less &amp;movement: needles and levers jump, nothing scrolls</source>
        <translation>Weniger &amp;Bewegung: Zeiger und Hebel springen, nichts rollt</translation>
    </message>
    <message>
        <source>&amp;Keys are shown beside what they move</source>
        <translation>Tas&amp;ten stehen neben dem, was sie bewegen</translation>
    </message>
    <message>
        <source>S&amp;ilent</source>
        <translation>St&amp;umm</translation>
    </message>
    <message>
        <source>Settings</source>
        <translation>Einstellungen</translation>
    </message>
    <message>
        <source>As the system has it</source>
        <translation>Wie das System</translation>
    </message>
    <message>
        <source>Day</source>
        <translation>Tag</translation>
    </message>
    <message>
        <source>Night</source>
        <translation>Nacht</translation>
    </message>
    <message>
        <source>&amp;Drawn by</source>
        <translation>&amp;Gezeichnet bei</translation>
    </message>
    <message>
        <source>The system&apos;s</source>
        <translation>Die des Systems</translation>
    </message>
    <message>
        <source>&amp;Language</source>
        <translation>&amp;Sprache</translation>
    </message>
    <message>
        <source>Volume</source>
        <translation>Lautstärke</translation>
    </message>
    <message>
        <source>&amp;Volume</source>
        <translation>&amp;Lautstärke</translation>
    </message>
    <message>
        <source>the standard folder for data</source>
        <translation>der übliche Ordner für Daten</translation>
    </message>
    <message>
        <source>&amp;Sessions go to</source>
        <translation>&amp;Aufzeichnungen nach</translation>
    </message>
    <message>
        <source>Another language is spoken from the next start on.</source>
        <translation>Eine andere Sprache gilt ab dem nächsten Start.</translation>
    </message>
    <message>
        <source>&amp;Close</source>
        <translation>S&amp;chließen</translation>
    </message>
    <message>
        <source>Keys</source>
        <translation>Tasten</translation>
    </message>
    <message>
        <source>What it does</source>
        <translation>Was sie tut</translation>
    </message>
    <message>
        <source>Key</source>
        <translation>Taste</translation>
    </message>
    <message>
        <source>&amp;As they were at first</source>
        <translation>&amp;Wie zu Beginn</translation>
    </message>
    <message>
        <source>That key is taken away from another command.</source>
        <translation>Diese Taste wird einem anderen Befehl genommen.</translation>
    </message>
    <message>
        <source>Tab goes from thing to thing; the arrow keys move a lever, Space or Enter presses, Escape takes the hand away. On a thing to look at: Enter looks, then G good, D defect (C, S or T: how grave), U not sure. With the mouse: the right button leaves a hand on what springs back, and takes it off again. A key below brings a hand straight to it; click one to choose another. Start, stop and letting go lie side by side, as the buttons do: their keys go by place, whatever letter your keyboard has there.</source>
        <translation>Tab geht von Ding zu Ding; die Pfeiltasten bewegen einen Hebel, Leertaste oder Enter drückt, Escape nimmt die Hand weg. An einem Ding zum Ansehen: Enter sieht hin, dann G gut, D Mangel (C, S oder T: wie schwer), U nicht sicher. Mit der Maus: die rechte Taste lässt eine Hand auf dem, was zurückfedert, und nimmt sie wieder weg. Eine Taste unten bringt eine Hand gleich dorthin; zum Ändern anklicken. Anlassen, Abstellen und Loslassen liegen nebeneinander wie die Knöpfe: ihre Tasten gehen nach dem Platz, welcher Buchstabe auf Ihrer Tastatur dort auch steht.</translation>
    </message>
</context>
<context>
    <name>cabwright::mechanism::MechanismView</name>
    <message>
        <source>Mechanism</source>
        <translation>Mechanik</translation>
    </message>
    <message>
        <source>Drive line 1</source>
        <translation>Antriebsstrang 1</translation>
    </message>
    <message>
        <source>Drive line 2</source>
        <translation>Antriebsstrang 2</translation>
    </message>
    <message>
        <source>Drive line</source>
        <translation>Antriebsstrang</translation>
    </message>
    <message>
        <source>Slowness: as it is, 1 to 5, 1 to 20, 1 to 100, still</source>
        <translation>Zeitlupe: wie es ist, 1 zu 5, 1 zu 20, 1 zu 100, stehend</translation>
    </message>
    <message>
        <source>The mechanism is not shown in assessment.</source>
        <translation>Die Mechanik wird in der Prüfung nicht gezeigt.</translation>
    </message>
</context>
<context>
    <name>main</name>
    <message>
        <source>Training simulator of a diesel multiple-unit cab</source>
        <translation>Ausbildungssimulator für den Führerstand eines Dieseltriebzugs</translation>
    </message>
    <message>
        <source>Folder that holds scenarios/</source>
        <translation>Ordner, in dem scenarios/ liegt</translation>
    </message>
</context>
</TS>

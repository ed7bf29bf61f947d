/** What else is said in the films of amplifiers, pedals, loose pickups and the rest, by job. */
export const electronicsTalk: Record<string, string> = {
  'amp-bias-24': `
    2:00 - adaptor sockets in, meters on, warm up ten minutes
    4:10 - forty one times four thirty two, seventeen odd watts, that's the wrong side of warm
    5:00 - where's the trimmer, ah, hidden under the cap
    6:30 - slowly, slowly, it lags
    8:10 - and they're within half a milliamp, so well matched`,
  'amp-bias-26': `
    0:40 - cherry red on the right one, look
    1:40 - drained, checked, zero
    3:20 - so it runs flat out with nothing holding it back
    6:10 - lifted one leg, eighteen volts where there should be none. leaks like a sieve
    9:40 - sixty three quid's worth of valve gone for a ten pence part
    13:00 - ten minutes and no blush`,
  'amp-filter-caps': `
    0:40 - volume down, still. so it isn't the guitar
    1:40 - two times the mains, full wave, reservoir
    3:20 - this can kill you unplugged. resistor across, count to sixty, MEASURE
    8:00 - stripe is minus, minus to ground, say it aloud
    17:00 - bring it up slow on the variable transformer`,
  'amp-microphonic': `
    0:40 - bring it up... there... eeee
    2:00 - not the phase splitter, first one
    3:20 - second hand one from the box, quiet`,
  'amp-no-reverb': `
    0:40 - kick the cabinet: no thunder at all
    2:30 - two hundred it should be, not open
    4:10 - finer than hair, tweezers and a prayer
    7:00 - hang it back on its springs`,
  'amp-fuse-blows': `
    0:30 - and here's a nail in the holder. a NAIL
    2:30 - valves out, still bright. so it's before them
    4:40 - two ohms both ways. dead
    7:40 - limiter in, lamp goes bright... and dims. ahh`,
  'amp-scratchy-pots': `
    0:40 - they always say dirty
    2:10 - one point eight volts where there should be nought
    5:00 - same value, higher voltage`,
  'amp-weak': `
    1:00 - not loud, not clean, sort of flat
    3:00 - swap the valves over, fault stays on that socket
    5:00 - open circuit, looked fine, they always look fine
    8:00 - dummy load, scope, fifteen volts, that's near thirty watts`,
  'amp-speaker-rub': `
    0:30 - play low... ffffrt
    1:30 - grit, hear that? warped
    5:30 - borrowed one from the shelf, eight ohm`,
  'amp-ground-lift': `
    0:50 - two-pin. on an amp this old. no
    3:10 - that cap has to go as well, the one to the chassis
    6:30 - crimp, bolt, star washer, its own bolt
    8:00 - and if you're not trained for this, don't`,
  'ss-one-channel': `
    0:40 - footswitch in, footswitch out, no
    3:10 - rails fine both of them
    5:20 - in, nothing. out, fourteen volts. that chip's gone
    8:20 - socket this time so the next one's easy`,
  'ss-thump': `
    0:30 - did you see it jump?
    2:40 - I'm pulling the speaker before it burns
    6:00 - all four out, two dead
    12:00 - lamp on, offset, twelve millivolts. nice`,
  'ss-fan': `
    0:40 - they play three sets, it does one
    2:00 - eighty eight, you could fry an egg
    5:40 - brush, vacuum, brush
    7:30 - an hour at full, forty seven`,
  'ss-input-jack': `
    0:40 - push it down... sound. let go... none
    2:20 - suck the old solder off first
    3:40 - a bit of strain relief so it doesn't come back`,
  'ss-hum-cable': `
    0:40 - guitar: quiet. laptop: mmmm
    2:20 - two earths, one signal, there's your ring
    3:30 - little transformer, ten quid`,
  'ss-pots': `
    0:40 - scratch. scratch. scratch. seven for seven
    2:40 - drop in each, cover the board
    4:40 - that shaft's been glued before`,
  'pedal-dead': `
    0:40 - smells a bit
    2:20 - it gave its life, the rest should be fine
    3:50 - new one in, stripe the right way
    5:00 - there's the light`,
  'pedal-switch': `
    0:40 - stamp. nothing. stamp. there
    2:40 - nine wires, photo, then one at a time
    4:50 - iron quick, they melt inside`,
  'pedal-fuzz-noise': `
    0:40 - that's the farming report, that is
    1:50 - long lead in, no filter, it's a crystal set
    3:20 - hundred puff to ground, gone`,
  'pedal-delay-clock': `
    0:40 - wind it long... there's the mosquito
    3:40 - trim pot, tiny, quarter of a hair
    6:10 - now it only whistles for dogs`,
  'pedal-wah-pot': `
    0:40 - heel, toe, krrrsh
    2:00 - cleaned twice, track's worn through
    4:20 - start it so the toe's not shut`,
  'pedal-power-daisy': `
    0:40 - pull the chain off that one... quiet. that one... quiet. oh THAT one
    2:00 - three hundred and ten altogether
    3:10 - one brick for the digital, done`,
  'pickup-rewind': `
    2:20 - bobbin's fine, flatwork's fine, magnets fine
    6:00 - forty two gauge, plain
    14:00 - don't talk to me
    20:00 - five thousand
    28:00 - eight one, eight two, stop
    33:00 - six point oh five and it left here in its day as six, I'd guess
    38:00 - double pot, never naked flame`,
  'pickup-microphonic': `
    0:40 - hello hello, one two, yes, you can hear me
    4:00 - lid on, thermometer in
    7:00 - out, hang it, wipe it`,
  'pickup-trace-mini': `
    0:50 - five strands, one bare
    2:40 - black and white. red and green. easy so far
    4:00 - cover to bare, short
    7:00 - now the starts. steel on the screws, needle goes... up
    9:00 - and the other row. down. so turn that one round
    11:00 - black hot then, white to red in the middle`,
  'pickup-trace-black-only': `
    0:40 - nothing to untangle, one core, one braid
    2:20 - seven six five, at eighteen degrees
    5:00 - extending it with the same old braid`,
  'pickup-trace-open-coil': `
    0:50 - half a humbucker
    2:40 - over limit, over limit
    5:20 - peel the tape, slowly, it's the start that's gone
    8:30 - got it. don't breathe`,
  'pickup-magnet-swap': `
    0:40 - icepick, he calls it
    3:20 - compass, felt pen, THEN pull
    4:40 - slides in, keeps its face`,
  'lap-steel': `
    0:40 - amp on ten, not a peep
    1:50 - over range at the socket. at the pickup itself it's fine, so it's the lead
    3:20 - broken clean where it folds`,
  'zither-strings': `
    0:50 - thirty two and I've got thirty one. of course
    12:00 - wind, up to pitch, next
    38:00 - pin's loose, veneer shim, tap`,
  'gurdy-wheel': `
    0:40 - once a turn, like a flat tyre
    3:00 - dial gauge, three tenths
    6:30 - feather cut, keep cranking
    11:00 - cotton on, not too much`,
  'gurdy-buzz-bridge': `
    0:40 - whip the crank, should go trrt. nothing
    3:00 - foot a shade off
    4:30 - trrt! there he is`,
  'harp-lever': `
    0:40 - lever up, should be a semitone, that's more like three quarters
    3:40 - loosen, slide, tighten
    7:00 - do it on all four`,
  'keys-stuck': `
    0:40 - press, stays. press, stays
    3:00 - screws are all different lengths, egg box
    4:40 - felt's like a rug in there`,
};

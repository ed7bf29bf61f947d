/** What is said on the film besides: rambling, clipped, half in thought, as people talk at the bench. */
export const thirdTalk: Record<string, string> = {
  'u-howl-wax': `
    0:50 - right so um Bram says it is fine at home and then at the gig it just screams at him
    5:40 - you see the little bubbles coming up, that is the air leaving, we wait till they stop
    7:30 - wipe it while it is warm otherwise you are scraping till Sunday`,
  'u-whammy-pivot': `
    3:10 - I don't like files here, too rough, a fine stone and patience
    9:20 - three springs, claw screws half a turn each side, level is level`,
  'u-high-seventh': `
    2:10 - could be the whole board but no it is the one, the neighbours are all fine
    7:10 - marker on, stroke, look, stroke, look`,
  'u-zing-third': `
    2:20 - I thought it was a fret first, everybody thinks so, but you press it and it's gone
    4:10 - angle matters more than depth on these`,
  'u-lever-three': `
    0:35 - aye well they all do that once they've been in a smoky pub for thirty year
    3:05 - no spray straight in there, it runs down into the pots and then you've two jobs`,
  'u-push-pull-split': `
    1:20 - five leads coming out and no paper with it so we find out for ourselves
    3:20 - the bare one goes to nothing, only to the base plate, that is the screen
    19:10 - red and white are the middle of the thing, that is where the split takes it
    22:10 - eight point two one, and the two coils add up to that, so I believe it`,
  'u-series-parallel': `
    1:00 - another one without a chart, different colours again, don't trust your memory
    4:20 - so these two are a pair and those two are a pair, as always with four
    30:00 - a quarter of the ohms, that is what parallel of two the same gives`,
  'u-copper-cavity': `
    2:30 - paint is only paint here, nothing conducts, I tried both ends of it
    9:00 - mind your fingers, foil cuts worse than paper`,
  'u-full-shim': `
    3:40 - in my opinion a full wedge is better than a strip of card, card leaves a hollow
    8:15 - bolts out in a cross, not all on one side`,
  'u-head-off': `
    2:20 - not the glue I worry about, it is whether he leaves it leaning on a chair again
    10:00 - go home now, do not touch it`,
  'u-bass-dead-spot': `
    2:10 - is not fault, is physics, every long thin wood has one
    5:10 - two frets down now, that I can live with, says Rufus`,
  'u-barrel-jack': `
    2:00 - these closed ones you can't bend the spring back, you can't even see it`,
  'u-rewind-open': `
    3:10 - the magnets go rusty and the rust eats the copper, that's how they die
    20:00 - not too tight, it stretches and then the ohms come out high`,
  'u-magnet-swap': `
    7:20 - he is stood there with his coat on so we do it the quick way
    9:45 - if it comes out of phase with the other one he can bring it back`,
  'u-pair-hum-cancel': `
    3:20 - steel on the pole, watch which way the needle jumps, and both jump the same way
    6:20 - so on this one I call the yellow the finish and black the start`,
  'u-dry-crack': `
    3:00 - no glue today. If you close it now it opens beside it in spring
    6:40 - in and out with the cup till it comes through on the other side`,
  'u-tall-saddle': `
    1:30 - well, Fergus, sandpaper only goes the one way
    7:20 - leave it a hair proud, you can always take off`,
  'u-nylon-action': `
    2:00 - halve of what you take away under here arrives at the twelfth, so double it
    4:30 - I do not touch the nut, that one is good`,
  'u-cello-post-down': `
    2:20 - somebody changed the four of them all at once and down it came
    6:40 - got it, lost it, got it`,
  'u-fiddle-seam': `
    1:30 - knuckle all round, dull, dull, dull, there
    4:20 - weak glue, we want it to come open again before the wood does`,
  'u-cherry-red': `
    1:20 - left one's lit up like a stove, right one's black, swap them and it stays left so it is the socket's fault not the bottle's
    4:10 - it lets the plate voltage of the stage before through, so the grid goes positive and she runs away
    13:20 - seventeen watts each, seventy per cent or thereabouts, that's where I leave it`,
  'u-frying': `
    1:40 - cold spray on one at a time, when it stops that's your man
    6:10 - old carbon ones drift up and then they spit`,
  'u-fuse-pops': `
    1:40 - never ever put a bigger one in, it is telling you something
    8:10 - mica, paste, bush, screw, then meter case to heat sink before any mains`,
  'u-delay-footswitch': `
    1:20 - two hundred ohms closed, that is no switch, that is a resistor
    4:00 - draw it first, six look all alike once they're off`,
  'u-concertina-drone': `
    2:20 - damp caravan, wood swells, hole gets smaller, simple as that
    5:10 - not oil, not ever, graphite if you have to`,
  'u-clarinet-cork': `
    2:00 - every crumb off or the new one sits crooked
    5:40 - grease, twist, grease, twist`,
};

/** Lines heard beside the work in the second blind set, by the job's key: some of it is the job, much is not. */
export const secondTalk: Record<string, string> = {
  's-jack-bent': `
    0:40 - it's always the socket or the lead, never anything clever
    2:20 - I don't change these if I can help it, they made them well then
    4:20 - tea's gone cold again`,
  's-jack-new': `
    1:10 - box type, moulded, can't be opened, can't be bent, so it's bin
    3:20 - hot on the tip, ground on the sleeve, tug both`,
  's-pot-spray': `
    0:50 - is it the volume or the tone, let me try each by itself
    1:40 - straw in the slot, one squirt, don't drown it
    2:20 - if it comes back inside a year we'll talk about changing it`,
  's-pot-swap': `
    0:30 - somebody has squirted half a can in here already
    2:10 - measure the new one before it goes in, they're all over the place
    5:00 - nut not too tight or the shaft binds`,
  's-hum4-spring': `
    1:20 - no label, no stamp, no chart, and I wouldn't trust a chart if I had one
    3:30 - nothing from either coil to the braid, that's what you want
    6:00 - now the screws, same game, blue goes up
    12:00 - write it down before you solder, not after
    15:10 - if it came out thin I'd flip one, but it's fat`,
  's-hum4-autumn': `
    0:40 - he says it's mud, it's a neck pickup, they're all mud
    6:20 - parallel, so about a quarter of what it was, roughly two k
    9:20 - the braid and the casing both go to ground whatever else you do`,
  's-hum3-split': `
    1:00 - three leads and the braid, so the halves are already linked inside
    6:40 - split leaves it humming like any single, I did tell her
    10:30 - up, thin. down, fat. up, thin`,
  's-phase': `
    0:40 - it's like listening through a letterbox
    2:20 - cover's tied to one lead, that's why you can't just swap them
    4:40 - snip that little bridge and run it separately`,
  's-frets-level': `
    2:20 - neck dead straight before you touch a thing
    8:40 - we are not refretting this, he's seen the price
    12:00 - crown, crown, crown, my thumb's gone numb`,
  's-nut-deep': `
    1:00 - you could cut a whole new one, but five out of six are perfect
    3:40 - dust, drop, dust, drop, wait`,
  's-nut-stick': `
    1:40 - pencil lead would do but it's not the cause
    3:10 - file follows the line to the post, not straight back`,
  's-head-wine': `
    1:20 - I'd have used hot glue on a fresh one, this isn't fresh
    9:00 - splines proud, plane them down when it's gone off
    18:00 - they've got a stand in the kitchen too, apparently`,
  's-head-clean': `
    0:40 - no splines, not needed when it's this clean
    4:00 - wipe the squeeze-out with warm water while you can`,
  's-lap-hum': `
    0:36 - touch anything metal and it stops, that tells you
    2:00 - shielding paint can wait, first things first`,
  's-bass-hiss': `
    0:40 - could be the op amp, could be the battery, try the cheap one
    2:50 - unplug when you stop playing, the plug is the switch`,
  's-bass-dead': `
    0:30 - he swears he changed it yesterday
    1:20 - strain relief would have saved us all this`,
  's-bass-bow': `
    1:20 - never all at once, let the wood think about it
    6:00 - van at minus five, then a heated hall, poor thing`,
  's-bass-half': `
    0:40 - one side of it is fine, I can hear it's fine
    2:30 - rewinding that half is a Thursday job`,
  's-ac-bridge-plate': `
    0:40 - top's pulled up like a hill behind it
    4:00 - you can glue it a fourth time or you can fix why
    18:00 - leave the clamps, go home`,
  's-ac-crack': `
    0:50 - I ask everyone, have you got a gauge in the case, nobody has
    4:00 - let it close on its own first, don't squeeze it`,
  's-amp-fuse': `
    0:56 - right rating, slow blow, and no silver paper ever again
    3:00 - never one valve, always the pair
    6:30 - lamp limiter first, watch it go bright then dim`,
  's-amp-bias-hot': `
    0:30 - new bottles are not plug and play in this one
    2:00 - about seventy per cent at idle is as far as I go
    4:30 - one hand in the pocket, it's four hundred and fifty volts`,
  's-amp-caps': `
    0:24 - not the valves, not a ground loop, the pitch tells you
    3:00 - date code says they're older than me`,
  's-ss-offset': `
    1:10 - fuse didn't even blink
    4:20 - mica, paste, bush, screw, and check to the heatsink before power`,
  's-fiddle-post-down': `
    0:50 - it's got the old mark on it so I know which end is up
    2:40 - glad there's no sound on the swearing`,
  's-cello-seam': `
    1:00 - seams are meant to open, better that than the belly
    4:00 - no more glue than that, it has to come apart for the next fellow`,
  's-squeeze-bellows': `
    0:40 - pads all sit, I checked, it's the folds
    5:00 - pins out, mind the order, they're all different lengths`,
  's-flute-pads': `
    2:20 - don't crank the key down, that just hides it
    8:00 - quarter shim, try, half shim, try`,
  's-drum-lug': `
    1:00 - you can tune it all night, that one just walks
    2:20 - rods get a drop of oil while I'm here`,
};

import { ask } from './ask';

/**
 * Questions to the second blind set, typed in a hurry and graded by meaning before any run; all asked on the
 * usual day, 2026-11-25. Not to be read by who writes rules.
 */
export const secondQuestions = [
  ask('no shared word', 'jack not gripping', ['s-jack-bent=3', 's-jack-new=2', 's-ss-input=1']),
  ask('no shared word', 'scratchy potentiometer fixed without replacing', ['s-pot-spray=3', 's-pot-swap=1']),
  ask('no shared word', 'opposite polarity, weedy combined', ['s-phase=3']),
  ask('no shared word', 'dried up electrolytics', ['s-amp-caps=3']),
  ask('no shared word', 'tube picking up vibration', ['s-amp-rattle=3']),
  ask('no shared word', 'excess upbow', ['s-bass-bow=3', 's-rod-nut=2']),
  ask('no shared word', 'reed blocked by dirt', ['s-squeeze-reed=3']),
  ask('no shared word', 'dropped horn, mechanism out of line', ['s-sax-bent=3']),
  ask('no shared word', 'woodwind not sealing', ['s-flute-pads=3', 's-sax-bent=1', 's-clarinet-cork=1']),
  ask('no shared word', 'detunes, groove too tight', ['s-nut-stick=3']),
  ask('no shared word', 'peghead cracked', ['s-head-wine=3', 's-head-clean=3']),
  ask('no shared word', 'bypass button bouncing', ['s-pedal-stomp=3']),
  ask('no shared word', 'detached brace', ['s-class-brace=3']),
  ask('no shared word', 'piercing treble, soundpost adjustment', ['s-fiddle-tone=3', 's-fiddle-post-down=1']),
  ask('no shared word', 'paraffin potting against feedback', ['s-pickup-wax=3']),

  // A time picks the one.
  ask('date decides', 'four wire humbucker last spring', ['s-hum4-spring=3', 's-pickup-braid=1']),
  ask('date decides', 'headstock just before christmas', ['s-head-wine=3']),
  ask('date decides', 'crackly pot two years ago', ['s-pot-spray=3']),
  ask('date decides', 'volume pot in march', ['s-pot-swap=3']),
  ask('date decides', 'banjo skin spring 2024', ['s-banjo-skin=3']),
  ask('date decides', 'bridge reglue in feb', ['s-ac-bridge-plate=3']),
  ask('date decides', 'amp bias set earlier this year', ['s-amp-bias-hot=3']),
  ask('date decides', 'what was it with the bow last week', ['s-bow-screw=3']),

  // The best words lie outside the time asked for.
  ask('date decides', 'output valves biased before 2024', ['s-amp-bias-cold=3']),
  ask('date decides', 'acoustic bridge lifting 2024', ['s-ac-bridge-first=3']),
  ask('date decides', 'pickup leads traced in autumn 2025', ['s-hum4-autumn=3']),
  ask('date decides', 'bass weak or no sound this autumn', ['s-bass-half=3']),
  ask('date decides', 'squeezebox last year', ['s-squeeze-reed=3']),

  ask('value', 'humidity down to 27', ['s-ac-crack@0:22=3']),
  ask('value', 'pickup about 8.3k', ['s-hum4-spring@16:00=3']),
  ask('value', 'relief nearly 1 mm', ['s-bass-bow@0:40=3']),
  ask('value', 'bias over 50 ma', ['s-amp-bias-hot@1:00=3']),
  ask('value', 'string height 3.6 at 12th', ['s-ac-neck-shim@0:30=3']),
  ask('value', 'dc on the output more than 30 volts', ['s-ss-offset@0:30=3']),
  ask('value', 'battery reading under 7v', ['s-bass-hiss@1:00=3']),
  ask('value', 'pickup 7 to 7.5 k', ['s-pickup-rewound@20:00=3']),

  // By wire colours, conductors and tracing.
  ask('plain', 'brown yellow blue white which is hot', ['s-hum4-spring@14:20=3']),
  ask('plain', 'orange and gray coil', ['s-hum4-autumn@1:44=3']),
  ask('plain', 'four conductor wired parallel', ['s-hum4-autumn@11:00=3', 's-hum4-spring=1']),
  ask('plain', 'grey lead to the push pull', ['s-hum3-split@9:00=3']),
  ask('plain', 'red black open on the split pickup', ['s-bass-half@1:50=3']),
  ask('plain', 'braid not connected to any coil', ['s-pickup-braid@1:20=3']),

  ask('no answer', 'output transformer replaced', []),
  ask('no answer', 'trumpet piston sticking', []),
  ask('no answer', 'fretless conversion', []),
  ask('no answer', 'wah pedal treadle squeaks', []),
  ask('no answer', 'clarinet barrel crack pinned', []),
  ask('no answer', 'refret in 2022', []),

  ask('slip', 'acordian belows leaking', ['s-squeeze-bellows=3']),
  ask('slip', 'cracked sauder joints', ['s-ss-input=3']),
  ask('half sentence', 'that one where the cat wrecked the', ['s-banjo-skin=3']),
  ask('client', 'what have we done for gideon', [
    's-bass-hiss=3',
    's-bass-bow=3',
    's-amp-rattle=3',
    's-drum-strainer=3',
  ]),
  ask('one word', 'fuse', ['s-amp-fuse=3']),
  ask('instrument type', 'buzz on the harp', ['s-harp-lever=3']),
  ask('basis', 'ground assumed not measured', ['s-hum4-autumn@11:00=3', 's-pickup-braid@6:00=3']),
  ask('quoted', '"it\'s a banana"', ['s-bass-bow@0:48=3']),
  ask('plain', 'customer said no to refret', ['s-frets-level#work: Refret=3']),
  ask('plain', 'snare throwoff worn', ['s-drum-strainer=3']),
  ask('plain', 'bridge pins creeping', ['s-ac-plate-only=3', 's-ac-bridge-plate=1']),
  ask('plain', 'fuzz transistor bad', ['s-pedal-fuzz=3']),
];

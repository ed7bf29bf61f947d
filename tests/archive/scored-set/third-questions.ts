import { ask } from './ask';

/**
 * Questions to the third blind set, typed in a hurry and graded by meaning before any run; all asked on the
 * usual day, 2026-11-25. Not to be read by who writes rules.
 */
export const thirdQuestions = [
  ask('no shared word', 'unpotted and microphonic', ['u-howl-wax=3', 'u-howl-cover=1']),
  ask('no shared word', 'worn knife edges', ['u-whammy-pivot=3']),
  ask('no shared word', 'sitar noise on open g', ['u-zing-third=3']),
  ask('no shared word', 'dehydrated top split', ['u-dry-crack=3']),
  ask('no shared word', 'tuners creeping on the little four stringer', ['u-uke-friction=3']),
  ask('no shared word', 'tubes overheating, anodes glowing', ['u-cherry-red=3']),
  ask('no shared word', 'intermittent stomp button', ['u-delay-footswitch=3']),
  ask('no shared word', 'snapped peghead mended', ['u-head-off=3']),
  ask('no shared word', 'blown transistors', ['u-fuse-pops=3']),
  ask('no shared word', 'squeezebox key stuck, note hangs', ['u-concertina-drone=3']),
  ask('no shared word', 'loose tenon', ['u-clarinet-cork=3']),
  ask('no shared word', 'no wet sound from the spring pan', ['u-tank-dead=3']),

  // Told by when it was.
  ask('date decides', 'the cello from last week', ['u-cello-post-down=3']),
  ask('date decides', 'valve amp july 2025', ['u-cherry-red=3']),
  ask('date decides', 'nut job this time last year', ['u-zing-third=3']),
  ask('date decides', 'banjo spring 2025', ['u-banjo-skin=3']),
  ask('date decides', 'what was in on 8 october', ['u-full-shim=3']),

  ask('value', 'which amp idled at 38 mA', ['u-cherry-red@12:00=3']),
  ask('value', 'coil that came out at 7.42k', ['u-rewind-open@31:00=3']),
  ask('value', 'humidity under 30', ['u-dry-crack@0:40=3']),
  ask('value', 'action over 4 mm at the twelfth', ['u-nylon-action@0:45=3']),
  ask('value', 'humbucker between 8 and 8.5k', ['u-push-pull-split@21:00=3']),
  ask('value', 'relief 0.3', ['u-high-seventh@0:55=3']),

  // Wire colours and tracing.
  ask('plain', 'what colour went hot when red and white were joined', ['u-push-pull-split@18:20=3']),
  ask('plain', 'brown and yellow soldered together', ['u-series-parallel@26:05=3']),
  ask('plain', 'yellow lead, start or finish?', ['u-pair-hum-cancel@6:45=3']),
  ask('basis', 'colours taken as given, never checked with the meter', ['u-magnet-swap=3']),

  // Another job fits as well or better but for its date.
  ask('date decides', '4 conductor humbucker traced in 2025', ['u-push-pull-split=3']),
  ask('date decides', 'squealing pickup before 2025', ['u-howl-wax=3']),
  ask('date decides', 'jack trouble since new year', ['u-barrel-jack=3']),
  ask('date decides', 'tremolo work more than two years ago', ['u-trem-block=3']),

  ask('no answer', 'speaker recone', []),
  ask('no answer', 'lefty conversion', []),
  ask('no answer', 'humbucker around 17k', []),
  ask('no answer', 'loose brace glued back inside', []),
  ask('no answer', 'harmonica reed retuned', []),

  ask('slip', 'stainles refrett', ['u-stainless-frets=3']),
  ask('slip', 'scrachy wah potentiometre', ['u-wah-scratch=3']),
  ask('slip', 'selctor switch cutting out', ['u-lever-three=3', 'u-lever-five=1']),
  ask('client', "moya's bow", ['u-bow-hair=3', 'u-fiddle-seam=1']),
];

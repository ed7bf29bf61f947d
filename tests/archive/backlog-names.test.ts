import { describe, expect, it } from 'vitest';
import { captionsBeside } from '@/lib/archive/backlog/captions-beside';
import { dateInName } from '@/lib/archive/backlog/name-dates';
import { ownWords, sharedTitle, titleFrom, typeSaid } from '@/lib/archive/backlog/names';

const today = '2026-11-25';

describe('a date in a name', () => {
  it.each([
    ['20190314_101502.mp4', '2019-03-14', '10:15:02'],
    ['VID_20190314_101502.mp4', '2019-03-14', '10:15:02'],
    ['VID-20190314-WA0007.mp4', '2019-03-14', null],
    ['2019-03-14 10.15.02.mov', '2019-03-14', '10:15:02'],
    ['2019-03-14T10-15.mkv', '2019-03-14', '10:15:00'],
    ['recording 2019-03-14 at 10.15.02.mov', '2019-03-14', '10:15:02'],
    ['2019_03_14 bass', '2019-03-14', null],
    ['2019.3.4 fret level', '2019-03-04', null],
    ['14 March 2019', '2019-03-14', null],
    ['3rd-mar-2019', '2019-03-03', null],
    ['March 14, 2019', '2019-03-14', null],
    ['２０１９-03-14.mp4', '2019-03-14', null],
    ['2024-02-29.mp4', '2024-02-29', null],
  ])('%s', (name, day, time) => {
    const wallMs = time === null ? null : Date.parse(`${day}T${time}Z`);
    expect(dateInName(name, today)).toEqual({ day, wallMs });
  });

  it.each([
    'IMG_0042.mov',
    '2023-02-29.mp4',
    '20191399.mp4',
    '03-04-2019 bass.mp4',
    '14.3.19.mp4',
    '1234567890123.mp4',
    '2019 bass',
    '1975-05-05 bass.mp4',
    '2031-01-01.mp4',
    'resistor 20190 314.mp4',
  ])('none in %s', (name) => {
    expect(dateInName(name, today)).toBeNull();
  });

  it('goes on to the next where the first is no day', () => {
    expect(dateInName('20191399 and 2019-03-14.mp4', today)?.day).toBe('2019-03-14');
  });
});

describe('words of its own', () => {
  it.each([
    '2019',
    '2019-03',
    'March 2019',
    '03_March',
    '100MEDIA',
    'DCIM',
    'Day 2',
    'Cam A',
    'Videos',
    '2019-03-14',
    'CL010042',
    'old recordings',
    'take2',
    '',
  ])('none in “%s”', (name) => {
    expect(ownWords(name)).toEqual([]);
    expect(titleFrom(name)).toBe('');
  });

  it.each([
    ['2019-03-14 bass rewire', 'Bass rewire'],
    ['bass_rewire_2019-03-14', 'Bass rewire'],
    ['2019-03-14 - hum at the jack', 'Hum at the jack'],
    ['E-12 rewind', 'E-12 rewind'],
    ['Übergabe Mandoline', 'Übergabe Mandoline'],
    ['修理 ベース', '修理 ベース'],
  ])('“%s” is titled “%s”', (name, title) => {
    expect(titleFrom(name)).toBe(title);
  });

  it('keeps what all file names share', () => {
    expect(sharedTitle(['fret level 01', 'fret level 02', 'Fret_level_last'])).toBe('Fret level');
    expect(sharedTitle(['MVI_0001', 'MVI_0002'])).toBe('');
    expect(sharedTitle(['bass', 'banjo'])).toBe('');
  });

  it('composes accents that a disk has parted', () => {
    expect(titleFrom('Geige für Ulla'.normalize('NFD'))).toBe('Geige für Ulla'.normalize('NFC'));
  });
});

describe('the instrument type that names say', () => {
  it.each([
    [['Bass rewire'], 'bass guitar'],
    [['clip', 'JazzBanjo_setup'], 'banjo'],
    [['double bass, new bridge'], 'violin family'],
    [['valve amp recap'], 'valve amplifier'],
    [['acoustic guitar brace'], 'acoustic guitar'],
    [['mandolin'], 'mandolin'],
    [['neck pickup of the bass'], 'bass guitar'],
  ])('%j: %s', (names, type) => {
    expect(typeSaid(names)?.type).toBe(type);
  });

  it.each([
    [['guitar']],
    [['amp hum']],
    [['bass and banjo']],
    [['fret level']],
    [['bass response too low']],
    [['embassy']],
    [[]],
  ])('%j says none plainly', (names) => {
    expect(typeSaid(names)).toBeNull();
  });

  it('asks the nearest name first', () => {
    expect(typeSaid(['banjo head', 'bass jobs'])).toEqual({ type: 'banjo', words: 'banjo' });
  });
});

describe('captions beside a recording', () => {
  const beside = [
    'clip.txt',
    'clip.SRT',
    'clip.en.vtt',
    'clip.vtt',
    'clip2.vtt',
    '.clip.vtt',
    'clip.mp4',
    'clip.mp4.srt',
  ];
  it('are those of its name, the best first', () => {
    expect(captionsBeside('clip.mp4', beside)).toEqual([
      'clip.vtt',
      'clip.en.vtt',
      'clip.SRT',
      'clip.mp4.srt',
      'clip.txt',
    ]);
  });
  it('take a language, and no other words', () => {
    expect(captionsBeside('a.mov', ['a.de-AT.srt', 'a.part two.srt', 'a.zh-Hant.vtt', 'a-en.vtt'])).toEqual([
      'a.zh-Hant.vtt',
      'a.de-AT.srt',
    ]);
  });
  it('are found whichever way accents are written', () => {
    const parted = 'Übung.srt'.normalize('NFD');
    expect(captionsBeside('Übung.mp4'.normalize('NFC'), [parted])).toEqual([parted]);
  });
});

const list = (text: string): ReadonlySet<string> => new Set(text.trim().split(/\s+/));

/** Words that carry nothing: neither kept in the index nor looked for, and passed over inside a phrase. */
export const smallWords = list(`
  a an the this that these those there here it its itself is are was were be been being am
  i me my we us our you your he him his she her hers they them their who whom whose which what when where why how
  of to in at as by for from with into onto and or but so if then than because while though although
  do does did doing done have has had having will would shall should can could may might must
  just very really quite rather some any also too only even ever yet still again such about keep keeps kept keeping
  s t ll ve oh um uh er erm ah well okay ok right yeah yes
`);

/** Words of a question that ask, and say nothing of what is asked for. */
export const fillerWords = list(`
  show find tell give remember recall know near think look see search need want wanted please hey hi hello thanks
  one ones thing things stuff bit bits something somewhere someone somebody anything anyone everything everyone
  video videos film films clip clips footage recording recordings moment moments bench
  job jobs time times guy bloke chap lady woman man fella fellow customer customers client clients person people
  kid anybody whoever myself yourself guess maybe perhaps again ever once actually basically exactly kind sort
  came come comes coming brought bring went go goes going gone say says said talk talked talking mention mentioned explain
  explained happened happen happens did got get gets getting let lets like much many lot lots long ago while
  ages usually always other another same all every each both thingy whatsit whatever
  not no off on up down out over under before after between until since through back next
  against within without towards toward upon via per around across along among beside besides during except instead unless
  whether either neither nor where's how's what's whats hows wheres mine yours ours nobody none nothing nowhere already
  able seem seems seemed become became simply properly somehow anyway also especially mostly probably possibly
  almost nearly completely totally absolutely entirely utterly suddenly constantly continually gradually badly slightly
  definitely honestly apparently supposedly literally obviously clearly certainly finally eventually recently lately
  whenever wherever whatever however anywhere everywhere elsewhere meanwhile otherwise hopefully sadly unfortunately
  wonder wondering thinking thought believe reckon figure suppose supposed pretend trying managed manage decide
  lad lass girl boy gent musician student teacher folks fellows mate pal friend dude neighbour
  sometime somewhat thingamajig thingummy doodah gizmo whatchamacallit
`);

/** Words that many jobs share: they count for less than what is peculiar to one. */
export const weakWords = list(`
  guitar guitars instrument instruments fix fixed repair repaired work worked working problem problems fault faults trouble
  issue issues new old good bad big little change changed replace replaced replacement remove removed fit fitted installed put take taken took
  make made try tried use used using set check checked test tested side two first last end part parts sound sounds
  play plays playing played left turn turned turns start started stop stopped more less most
  excess excessive amount place area certain various several few couple own full whole extra proper special usual
  simple easy nice great terrible awful horrible rotten strange odd weird funny horrid
  begin began ended leave move moved happen seem become turning getting making doing using
`);

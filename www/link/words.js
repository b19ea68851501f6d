/**
 * The ids of house files as links write them: one byte for each of the first, two for the rest. Their order is part of
 * every link that was ever made: it never changes, and nothing is taken out. New ids may be added at the end; a page
 * from before cannot read links with them and says so. An id that is not here is spelled out.
 * There is room for 1 216: the signs behind the fourth page say other things.
 */
export const WORDS = `
  area m2 supply-run extract-run m length width height sleepers supply-tubes extract-tubes supply-built extract-built
  count m3/h L/s cfm ft ft2 in mm money h Pa % ratio supply extract living dining kitchen living-kitchen main-bedroom
  bedroom study bathroom wc utility store hall basement garage ask-open-flues look-for-suspect-board check-structure
  list-crossings keep-garage-closed check-unit-duty place-unit place-intake place-bedroom-valves place-extract-valves
  place-kitchen-valve place-manifolds drill-cores drill-tube-holes bend-wide pull-tubes support-tubes record-routes
  hang-unit fix-manifolds fix-silencers connect-tubes connect-mains seal-joints lay-cables leak-test
  insulate-cold-ducts fit-trap fall-drain close-up cap-ends dust-gone fit-filters fill-trap open-valves cut-undercut
  shut-house calm-weather fit-co-alarms wire-unit start-unit let-settle read-terminals compare-totals read-boost
  test-spillage lock-valves note-filter-dates hand-over-papers survey-old-fans survey-vents set-out-terminal
  slope-exhaust close-crossings outdoor-duct exhaust-duct floor boost-switch humidity-sensor panel isolator floor-area
  ceiling ach50 envelope-height weather-factor run-time people joist-depth joist-span joist-clear other-fans
  intake-ground intake-source intake-below intake-exhaust exhaust-above exhaust-opening exhaust-boundary exhaust-over
  exhaust-ground intake-boundary intake-street dryer-opening joist-notch joist-notch-at joist-notch-length stud-depth
  stud-notch largest-fans leak-pressure leak-supply leak-extract unit filters silencer trap drain tube supply-manifold
  extract-manifold port-cap seal-ring restrictor strap valve-box supply-valve extract-valve grease-filter main
  outside-duct bend insulation intake exhaust sleeve bracket joint setting-out pulling fixing hanging outside
  measuring fan valve adf-2021 ireland-tgd-f-2019 netherlands-2012 france-1982 din-1946-6-2019 din-1946-6-2009
  en-16798-1-2019 passive-house irc-2024 irc-2021 irc-2018 irc-2015 washington-irc-2021 imc-403 canada-room-count
  canada-nbc m3h ls continuous on-demand system hood table equation without claimed inch-pound si od63 od75 od90 oval
  new old solid engineered truss steel concrete bearing doubled partition nothing sealed gas apart combined sides
  not-known both-stop flow speed one storeys L/h cm2 mm2 in2 cm m3 ft3 m/s ft/min inwc degC degF 1/h ppm min s d deg
  cfm/ft2 W dBA dB ashrae-62.2-2016 ashrae-62.2-2013 ashrae-62.2-2010 step.m3h step.ls step.cfm house.ceiling
  sleepers.main sleepers.other level.boost ashrae.cap ashrae.aext din.2019.a2 din.2019.a1 din.2019.a0 din.2009.fl
  din.2019.fl din.rl din.il din.person din.kitchen din.bathroom din.wc din.utility weight.living weight.bedroom
  weight.other canada.low canada.kitchen canada.bathroom canada.kitchen.steady canada.bathroom.steady tube.bore.63
  tube.bore.75 tube.bore.90 tube.speed.normal tube.speed.bedroom tube.speed.boost tube.slack tube.kitchen tube.many
  manifold.spare cut.end cut.waste transfer.pressure transfer.discharge transfer.density door.width door.undercut.tall
  co2.sleeper co2.outdoor co2.night co2.noticeable co2.unacceptable site.bend.radius site.bends site.support
  site.support.us site.flexible site.manifold.clear site.hatch site.silencer site.silencer.lining site.service
  site.outdoor.duct site.unit.reserve site.main.speed site.flue.de site.flue.ca site.flue.kitchen site.hole.clearance
  site.hole.us site.hole site.core.insulation site.core.clearance site.main site.core.fall site.drain.fall
  site.drain.suction site.trap.extra site.leak.pressure site.leak.share site.settle site.wind site.filter.months
  site.intake.clear site.intake.clear.us site.intake.exhaust.us site.intake.exhaust.de site.intake.exhaust.ca
  site.face.speed site.hob site.extract.ceiling site.bed.head site.tolerance.terminal site.tolerance.total
  site.notice.days washington.quality en16798.category passive.person passive.kitchen passive.bathroom passive.other
  passive.standard passive.basic passive.changes nbc.1.least nbc.1.most nbc.2.least nbc.2.most nbc.3.least nbc.3.most
  nbc.4.least nbc.4.most nbc.5.least nbc.5.most site.intake.exhaust.f326 site.intake.ground.ca site.intake.clear.ca
  site.imbalance door.england door.england.bare door.germany door.germany.pressure door.america.pressure run.length
  run.bends tube.roughness valve.pressure main.length main.bends main.roughness outside.loss site.altitude
  indoor.temperature indoor.humidity outdoor.temperature run.pressure parts.coil parts.bracket parts.drain
  hours.set.out hours.tube hours.valve hours.unit hours.outside hours.measure parts.margin parts.tax sound.unit
  sound.inside sound.lining sound.box sound.tube valve.bore sound.room sound.ear sound.bedroom sound.living
  insulation.conductivity valve.area tube.oval.wide tube.oval.high tube.least main.storey filter.clean filter.dirty
  leak.factor door.crack fan.shut fan.efficiency sfp.england sfp.ireland sfp.passive sound.silencer sound.valve
  sound.voice m3/(h.m2) L/(s.m2)
`.trim().split(/\s+/);

/** The fields of what a house file holds, in their order: what a link leaves away. As unchanging as the words. */
export const SHAPES = [
  ["airtally", "house"],
  ["name", "choices", "entries", "rooms", "next_room", "settings", "ticks", "prices", "curves"],
  [
    "rules", "display", "wet", "kitchen", "table", "credit", "print", "tube", "building", "joist", "stud", "fuel",
    "outlets", "failing", "fans", "manifolds",
  ],
  ["id", "kind", "name", "storey", "open", "entries"],
  ["field", "text", "unit"],
  ["step"],
  ["step", "room", "air", "item", "storey"],
];

// Why: every rule, by name. A rule that is not listed here does not exist.

import type { Rule } from '../rule.ts';
import { acSplit } from './ac-split.ts';
import { airFilterRestriction } from './air-filter-restriction.ts';
import { airLossApplied } from './air-loss-applied.ts';
import { airLossReleased } from './air-loss-released.ts';
import { airRechargeTime } from './air-recharge-time.ts';
import { airTankOil } from './air-tank-oil.ts';
import { airbagLamp } from './airbag-lamp.ts';
import { awningTear } from './awning-tear.ts';
import { awningWorks } from './awning-works.ts';
import { basinDrain } from './basin-drain.ts';
import { batteryFusePresent } from './battery-fuse-present.ts';
import { bayDoorsLatch } from './bay-doors-latch.ts';
import { bayMoisture } from './bay-moisture.ts';
import { bedroomEgressOpens } from './bedroom-egress-opens.ts';
import { beltsAge } from './belts-age.ts';
import { brakeFluidMoisture } from './brake-fluid-moisture.ts';
import { brakeLiningAir } from './brake-lining-air.ts';
import { brakeLiningHydraulic } from './brake-lining-hydraulic.ts';
import { breakawayWorks } from './breakaway-works.ts';
import { cabOverMoisture } from './cab-over-moisture.ts';
import { cargoLeft } from './cargo-left.ts';
import { ceilingSag } from './ceiling-sag.ts';
import { chargeVolts } from './charge-volts.ts';
import { chassisCrankVolts } from './chassis-crank-volts.ts';
import { cityWaterLeak } from './city-water-leak.ts';
import { coAlarmAge } from './co-alarm-age.ts';
import { coAlarmWorks } from './co-alarm-works.ts';
import { coolantFreezePoint } from './coolant-freeze-point.ts';
import { differentialLeak } from './differential-leak.ts';
import { dumpValveLeak } from './dump-valve-leak.ts';
import { emergencyExitOpens } from './emergency-exit-opens.ts';
import { engineCodesActive } from './engine-codes-active.ts';
import { engineOilLevel } from './engine-oil-level.ts';
import { entryDoorLatch } from './entry-door-latch.ts';
import { entryStepSway } from './entry-step-sway.ts';
import { entryStepWorks } from './entry-step-works.ts';
import { exhaustLeak } from './exhaust-leak.ts';
import { extinguisherAge } from './extinguisher-age.ts';
import { extinguisherGauge } from './extinguisher-gauge.ts';
import { floorMoisture } from './floor-moisture.ts';
import { floorSoft } from './floor-soft.ts';
import { frameCracks } from './frame-cracks.ts';
import { fridgeAmmoniaSmell } from './fridge-ammonia-smell.ts';
import { fridgeOnGas } from './fridge-on-gas.ts';
import { fridgeOnShore } from './fridge-on-shore.ts';
import { fridgeYellowResidue } from './fridge-yellow-residue.ts';
import { fuelLineLeak } from './fuel-line-leak.ts';
import { fuelTankLeak } from './fuel-tank-leak.ts';
import { furnaceIgnites } from './furnace-ignites.ts';
import { furnaceRise } from './furnace-rise.ts';
import { furnaceSoot } from './furnace-soot.ts';
import { generatorCoRisk } from './generator-co-risk.ts';
import { generatorHertz } from './generator-hertz.ts';
import { generatorHertzAtSet } from './generator-hertz-at-set.ts';
import { generatorNoise } from './generator-noise.ts';
import { generatorVolts } from './generator-volts.ts';
import { generatorVoltsAtSet } from './generator-volts-at-set.ts';
import { gfciTrips } from './gfci-trips.ts';
import { governorCutIn } from './governor-cut-in.ts';
import { governorCutOut } from './governor-cut-out.ts';
import { headlampsWork } from './headlamps-work.ts';
import { hitchCracks } from './hitch-cracks.ts';
import { hornWorks } from './horn-works.ts';
import { hotWater } from './hot-water.ts';
import { houseBatteryChemistry } from './house-battery-chemistry.ts';
import { houseBatteryLoad } from './house-battery-load.ts';
import { houseBatteryRestLead } from './house-battery-rest-lead.ts';
import { houseBatteryRestLithium } from './house-battery-rest-lithium.ts';
import { houseBatterySwelling } from './house-battery-swelling.ts';
import { hydraulicLeak } from './hydraulic-leak.ts';
import { hydronicFluidAge } from './hydronic-fluid-age.ts';
import { jackDrop } from './jack-drop.ts';
import { jacksWork } from './jacks-work.ts';
import { ladderTight } from './ladder-tight.ts';
import { leafBroken } from './leaf-broken.ts';
import { lowAirWarning } from './low-air-warning.ts';
import { lpAlarmAge } from './lp-alarm-age.ts';
import { lpAlarmWorks } from './lp-alarm-works.ts';
import { lpCylinderDate } from './lp-cylinder-date.ts';
import { lpDropHeld } from './lp-drop-held.ts';
import { lpDropHeldValve } from './lp-drop-held-valve.ts';
import { lpLeak } from './lp-leak.ts';
import { lpLockUp } from './lp-lock-up.ts';
import { lpRegulatorAge } from './lp-regulator-age.ts';
import { lpRunning } from './lp-running.ts';
import { lpSmell } from './lp-smell.ts';
import { lugsMissing } from './lugs-missing.ts';
import { markerLampsOut } from './marker-lamps-out.ts';
import { parkingBrakeHolds } from './parking-brake-holds.ts';
import { radiatorBlocked } from './radiator-blocked.ts';
import { rearWallMoisture } from './rear-wall-moisture.ts';
import { recallChassisOpen } from './recall-chassis-open.ts';
import { recallCoachOpen } from './recall-coach-open.ts';
import { refrigeratorBox } from './refrigerator-box.ts';
import { refrigeratorFreezer } from './refrigerator-freezer.ts';
import { rideHeight } from './ride-height.ts';
import { roofPonding } from './roof-ponding.ts';
import { roofSealantCracked } from './roof-sealant-cracked.ts';
import { roofSealantVoids } from './roof-sealant-voids.ts';
import { roofSeamOpen } from './roof-seam-open.ts';
import { roofSoft } from './roof-soft.ts';
import { roofTears } from './roof-tears.ts';
import { safetyChainPoints } from './safety-chain-points.ts';
import { seatBeltsFrayed } from './seat-belts-frayed.ts';
import { shocksLeak } from './shocks-leak.ts';
import { shoreCordBurn } from './shore-cord-burn.ts';
import { shorePolarity } from './shore-polarity.ts';
import { shoreVoltsLeg1 } from './shore-volts-leg-1.ts';
import { shoreVoltsLeg2 } from './shore-volts-leg-2.ts';
import { showerPanSoft } from './shower-pan-soft.ts';
import { sideSealantVoids } from './side-sealant-voids.ts';
import { sidewallBubble } from './sidewall-bubble.ts';
import { skinVolts } from './skin-volts.ts';
import { skylightCracks } from './skylight-cracks.ts';
import { slideFloorMoisture } from './slide-floor-moisture.ts';
import { slideFloorSoft } from './slide-floor-soft.ts';
import { slideSealTorn } from './slide-seal-torn.ts';
import { slideWorks } from './slide-works.ts';
import { smokeAlarmAge } from './smoke-alarm-age.ts';
import { smokeAlarmWorks } from './smoke-alarm-works.ts';
import { steeringLash } from './steering-lash.ts';
import { stopDistanceHeavy } from './stop-distance-heavy.ts';
import { stopDistanceLight } from './stop-distance-light.ts';
import { tailLightsWork } from './tail-lights-work.ts';
import { tankFillLeak } from './tank-fill-leak.ts';
import { terminalHeat } from './terminal-heat.ts';
import { tireAge } from './tire-age.ts';
import { tireCrack } from './tire-crack.ts';
import { tirePressureLabel } from './tire-pressure-label.ts';
import { tireTreadOtherInner } from './tire-tread-other-inner.ts';
import { tireTreadOtherMid } from './tire-tread-other-mid.ts';
import { tireTreadOtherOuter } from './tire-tread-other-outer.ts';
import { tireTreadSteerInner } from './tire-tread-steer-inner.ts';
import { tireTreadSteerMid } from './tire-tread-steer-mid.ts';
import { tireTreadSteerOuter } from './tire-tread-steer-outer.ts';
import { tireWeatherCheck } from './tire-weather-check.ts';
import { titleInHand } from './title-in-hand.ts';
import { toiletSealHolds } from './toilet-seal-holds.ts';
import { towPlugWorks } from './tow-plug-works.ts';
import { transferSwitchBurn } from './transfer-switch-burn.ts';
import { turboExhaustLeak } from './turbo-exhaust-leak.ts';
import { valveStemLeak } from './valve-stem-leak.ts';
import { vinCheck } from './vin-check.ts';
import { wallMoisture } from './wall-moisture.ts';
import { wallSoft } from './wall-soft.ts';
import { waterBayLeak } from './water-bay-leak.ts';
import { waterHeaterElectric } from './water-heater-electric.ts';
import { waterHeaterGas } from './water-heater-gas.ts';
import { waterHeaterRelief } from './water-heater-relief.ts';
import { waterPumpHolds } from './water-pump-holds.ts';
import { wheelBearingLeak } from './wheel-bearing-leak.ts';
import { wheelCracks } from './wheel-cracks.ts';
import { windowsFogged } from './windows-fogged.ts';
import { windshieldCrack } from './windshield-crack.ts';
import { wipersWork } from './wipers-work.ts';

/** Every rule, once. */
export const rules: readonly Rule[] = [
  acSplit,
  airFilterRestriction,
  airLossApplied,
  airLossReleased,
  airRechargeTime,
  airTankOil,
  airbagLamp,
  awningTear,
  awningWorks,
  basinDrain,
  batteryFusePresent,
  bayDoorsLatch,
  bayMoisture,
  bedroomEgressOpens,
  beltsAge,
  brakeFluidMoisture,
  brakeLiningAir,
  brakeLiningHydraulic,
  breakawayWorks,
  cabOverMoisture,
  cargoLeft,
  ceilingSag,
  chargeVolts,
  chassisCrankVolts,
  cityWaterLeak,
  coAlarmAge,
  coAlarmWorks,
  coolantFreezePoint,
  differentialLeak,
  dumpValveLeak,
  emergencyExitOpens,
  engineCodesActive,
  engineOilLevel,
  entryDoorLatch,
  entryStepSway,
  entryStepWorks,
  exhaustLeak,
  extinguisherAge,
  extinguisherGauge,
  floorMoisture,
  floorSoft,
  frameCracks,
  fridgeAmmoniaSmell,
  fridgeOnGas,
  fridgeOnShore,
  fridgeYellowResidue,
  fuelLineLeak,
  fuelTankLeak,
  furnaceIgnites,
  furnaceRise,
  furnaceSoot,
  generatorCoRisk,
  generatorHertz,
  generatorHertzAtSet,
  generatorNoise,
  generatorVolts,
  generatorVoltsAtSet,
  gfciTrips,
  governorCutIn,
  governorCutOut,
  headlampsWork,
  hitchCracks,
  hornWorks,
  hotWater,
  houseBatteryChemistry,
  houseBatteryLoad,
  houseBatteryRestLead,
  houseBatteryRestLithium,
  houseBatterySwelling,
  hydraulicLeak,
  hydronicFluidAge,
  jackDrop,
  jacksWork,
  ladderTight,
  leafBroken,
  lowAirWarning,
  lpAlarmAge,
  lpAlarmWorks,
  lpCylinderDate,
  lpDropHeld,
  lpDropHeldValve,
  lpLeak,
  lpLockUp,
  lpRegulatorAge,
  lpRunning,
  lpSmell,
  lugsMissing,
  markerLampsOut,
  parkingBrakeHolds,
  radiatorBlocked,
  rearWallMoisture,
  recallChassisOpen,
  recallCoachOpen,
  refrigeratorBox,
  refrigeratorFreezer,
  rideHeight,
  roofPonding,
  roofSealantCracked,
  roofSealantVoids,
  roofSeamOpen,
  roofSoft,
  roofTears,
  safetyChainPoints,
  seatBeltsFrayed,
  shocksLeak,
  shoreCordBurn,
  shorePolarity,
  shoreVoltsLeg1,
  shoreVoltsLeg2,
  showerPanSoft,
  sideSealantVoids,
  sidewallBubble,
  skinVolts,
  skylightCracks,
  slideFloorMoisture,
  slideFloorSoft,
  slideSealTorn,
  slideWorks,
  smokeAlarmAge,
  smokeAlarmWorks,
  steeringLash,
  stopDistanceHeavy,
  stopDistanceLight,
  tailLightsWork,
  tankFillLeak,
  terminalHeat,
  tireAge,
  tireCrack,
  tirePressureLabel,
  tireTreadOtherInner,
  tireTreadOtherMid,
  tireTreadOtherOuter,
  tireTreadSteerInner,
  tireTreadSteerMid,
  tireTreadSteerOuter,
  tireWeatherCheck,
  titleInHand,
  toiletSealHolds,
  towPlugWorks,
  transferSwitchBurn,
  turboExhaustLeak,
  valveStemLeak,
  vinCheck,
  wallMoisture,
  wallSoft,
  waterBayLeak,
  waterHeaterElectric,
  waterHeaterGas,
  waterHeaterRelief,
  waterPumpHolds,
  wheelBearingLeak,
  wheelCracks,
  windowsFogged,
  windshieldCrack,
  wipersWork,
];

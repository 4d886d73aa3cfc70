// SPDX-License-Identifier: GPL-3.0-or-later
// X(field, default, lowest, highest, unit, meaning [source]). See parameters.h.
// C is the sonic conductance of ISO 6358 in dm3/(s bar); 1 dm3/(s bar) = 1e-8 m3/(s Pa).
#pragma once

// clang-format off

#define CABWRIGHT_ENGINE(X) \
  X(displacement_m3, 9.8e-3, 1e-3, 0.1, "m3", "swept volume of all cylinders") \
  X(stroke_m, 0.140, 0.05, 0.4, "m", "piston stroke") \
  X(compression_ratio, 16.0, 10.0, 24.0, "", "geometric compression ratio") \
  X(inertia_kg_m2, 4.0, 0.5, 40.0, "kg m2", "crank, flywheel and coupling pump") \
  X(brake_nm_420, 500.0, 50.0, 5000.0, "N m", "full-rack brake torque at 420 rpm, auxiliaries off") \
  X(brake_nm_600, 565.0, 50.0, 5000.0, "N m", "the same at 600 rpm") \
  X(brake_nm_800, 610.0, 50.0, 5000.0, "N m", "the same at 800 rpm") \
  X(brake_nm_1000, 638.0, 50.0, 5000.0, "N m", "the same at 1000 rpm") \
  X(brake_nm_1200, 645.0, 50.0, 5000.0, "N m", "the same at 1200 rpm") \
  X(brake_nm_1400, 635.0, 50.0, 5000.0, "N m", "the same at 1400 rpm") \
  X(brake_nm_1600, 617.0, 50.0, 5000.0, "N m", "the same at 1600 rpm") \
  X(brake_nm_1800, 594.0, 50.0, 5000.0, "N m", "the same at 1800 rpm") \
  X(efficiency_light, 0.43, 0.2, 0.55, "", "indicated efficiency at small delivery") \
  X(efficiency_full, 0.43, 0.2, 0.55, "", "indicated efficiency at full delivery") \
  X(wall_share_light, 0.20, 0.05, 0.4, "", "share of fuel heat into the walls at small delivery") \
  X(wall_share_full, 0.15, 0.05, 0.4, "", "share of fuel heat into the walls at full delivery") \
  X(fmep_viscous_bar, 0.50, 0.0, 3.0, "bar", "Chen-Flynn constant term, scaled by oil viscosity") \
  X(fmep_pressure, 0.005, 0.0, 0.02, "", "Chen-Flynn peak-pressure factor") \
  X(fmep_speed_bar, 0.11, 0.0, 0.5, "bar s/m", "Chen-Flynn mean piston speed factor, by the root of viscosity") \
  X(fmep_speed2_bar, 0.0009, 0.0, 0.01, "bar s2/m2", "Chen-Flynn mean piston speed squared factor") \
  X(viscosity_exponent, 0.35, 0.0, 1.0, "", "friction follows (viscosity ratio) to this power") \
  X(vogel_a_pa_s, 9.93e-6, 1e-8, 1e-2, "Pa s", "Vogel oil viscosity, factor (through 1.10/0.095/0.0105 Pa s at 0/40/100 C)") \
  X(vogel_b_c, 1739.0, 100.0, 5000.0, "C", "Vogel oil viscosity, exponent numerator") \
  X(vogel_c_c, 149.7, 60.0, 300.0, "C", "Vogel oil viscosity, temperature shift") \
  X(cranking_loss_nm, 30.0, 0.0, 500.0, "N m", "compression loss at rest") \
  X(cranking_loss_decay, 15.0, 1.0, 100.0, "rad/s", "speed by which that loss falls by e") \
  X(breakaway_nm, 15.0, 0.0, 500.0, "N m", "added to friction to turn a stopped engine") \
  X(delivery_leak, 6.0, 0.0, 50.0, "rad/s", "pump leakage: delivery lost is this over speed") \
  X(delivery_leak_speed, 40.0, 5.0, 200.0, "rad/s", "speed where the leakage no longer matters") \
  X(polytropic_hot, 1.36, 1.1, 1.4, "", "compression exponent at speed") \
  X(polytropic_drop, 0.17, 0.0, 0.3, "", "exponent lost at rest to leakage and heat") \
  X(polytropic_decay, 25.0, 1.0, 200.0, "rad/s", "speed by which that loss falls by e") \
  X(charge_factor, 0.97, 0.5, 1.1, "", "pressure at inlet closing over ambient") \
  X(intake_warming_k, 5.0, 0.0, 50.0, "K", "charge warming on the way in") \
  X(wall_warming, 0.6, 0.0, 1.0, "", "share of wall-over-ambient temperature taken up by the charge") \
  X(firing_ratio, 2.5, 0.1, 100.0, "", "ignition delay over time available at the reference state (Wolfer's form)") \
  X(firing_pressure_exponent, 1.19, 0.0, 3.0, "", "delay falls with pressure to this power (Wolfer 1938, from memory)") \
  X(firing_activation_k, 4650.0, 500.0, 20000.0, "K", "activation temperature of the delay (Wolfer 1938, from memory)") \
  X(firing_ref_bar, 32.0, 5.0, 100.0, "bar", "reference end-of-compression pressure") \
  X(firing_ref_k, 577.0, 400.0, 900.0, "K", "reference end-of-compression temperature") \
  X(firing_ref_speed, 13.6, 2.0, 100.0, "rad/s", "reference crank speed") \
  X(firing_speed_exponent, 0.6, 0.0, 2.0, "", "time available shrinks with speed to this power") \
  X(firing_steepness, 3.0, 1.0, 10.0, "", "how sharply cycles stop firing as the delay grows") \
  X(purge_revs, 7.0, 0.5, 500.0, "rev", "turns that clear trapped air by e") \
  X(air_ingress_per_s, 0.0, 0.0, 10.0, "1/s", "air drawn into the fuel system (a fault when not zero)") \
  X(fuel_leak_kg_s, 0.0, 0.0, 10.0, "kg/s", "fuel lost from the tank (a fault when not zero)") \
  X(cylinders_firing, 1.0, 0.0, 1.0, "", "share of injectors that work") \
  X(compression_sealing, 1.0, 0.3, 1.0, "", "share of compression pressure kept") \
  X(wall_capacity_j_k, 2500.0, 100.0, 1e5, "J/K", "combustion-chamber skin") \
  X(wall_coolant_w_k, 120.0, 1.0, 5000.0, "W/K", "wall to coolant at rest") \
  X(wall_coolant_speed_w_k, 1.6, 0.0, 50.0, "W s/(K rad)", "and its rise with speed") \
  X(coolant_capacity_j_k, 220e3, 1e4, 5e6, "J/K", "coolant and block, full") \
  X(oil_capacity_j_k, 45e3, 1e3, 1e6, "J/K", "engine oil") \
  X(oil_coolant_w_k, 150.0, 0.0, 5000.0, "W/K", "oil to coolant") \
  X(coolant_ambient_w_k, 20.0, 0.0, 500.0, "W/K", "block to air, standing") \
  X(oil_ambient_w_k, 3.0, 0.0, 200.0, "W/K", "sump to air, standing") \
  X(friction_to_oil, 0.5, 0.0, 1.0, "", "share of friction heat taken by the oil, the rest by the coolant") \
  X(thermostat_open_c, 74.0, 40.0, 100.0, "C", "thermostat begins to open") \
  X(thermostat_full_c, 84.0, 45.0, 110.0, "C", "thermostat fully open") \
  X(radiator_w_k, 2200.0, 0.0, 20000.0, "W/K", "radiator with the fan at governed speed") \
  X(fan_factor, 1.0, 0.0, 1.0, "", "share of the fan's air that comes (0: fan lost)") \
  X(radiator_still, 0.12, 0.0, 1.0, "", "share of the radiator that works without a fan") \
  X(thermostat_factor, 1.0, 0.0, 1.0, "", "share by which the thermostat opens (0: stuck shut)") \
  X(coolant_leak_per_s, 0.0, 0.0, 1.0, "1/s", "coolant lost, share of full per second") \
  X(trip_c, 97.0, 60.0, 130.0, "C", "protection stops the engine above this coolant temperature") \
  X(trip_level, 0.4, 0.0, 1.0, "", "and below this coolant level") \
  X(false_trip, 0.0, 0.0, 1.0, "", "protection trips without a cause above 0.5") \
  X(governor_idle_rpm, 420.0, 200.0, 1000.0, "rpm", "idle set speed") \
  X(governor_idle_rack, 0.17, 0.0, 1.0, "", "rack at the idle set speed") \
  X(governor_idle_gain, 0.03, 0.0, 1.0, "s/rad", "rack per rad/s below idle") \
  X(governor_idle_limit, 0.5, 0.05, 1.0, "", "most rack the idle spring can ask") \
  X(governor_rpm_1, 900.0, 300.0, 3000.0, "rpm", "unloaded speed in notch 1 (CP)") \
  X(governor_rpm_2, 1300.0, 300.0, 3000.0, "rpm", "unloaded speed in notch 2 (CP)") \
  X(governor_rpm_3, 1600.0, 300.0, 3000.0, "rpm", "unloaded speed in notch 3 (CP)") \
  X(governor_rpm_4, 1800.0, 300.0, 3000.0, "rpm", "unloaded speed in notch 4: governed maximum (CP)") \
  X(governor_rack_unloaded, 0.22, 0.0, 1.0, "", "rack at those speeds") \
  X(governor_gain, 0.10, 0.005, 2.0, "s/rad", "rack per rad/s below the set speed: droop") \
  X(governor_gain_factor, 1.0, 0.2, 10.0, "", "multiplies both gains (large: the governor hunts)") \
  X(rack_lag_s, 0.08, 0.01, 2.0, "s", "lag of the rack") \
  X(rack_stick, 0.0, 0.0, 1.0, "", "share of rack movement lost to sticking") \
  X(latch_reset_lever, 0.48, 0.0, 1.0, "", "throttle opening that resets the fuel latch: beyond notch 1") \
  X(oil_pressure_bar_s, 0.047, 0.001, 1.0, "bar s/rad", "oil pressure per rad/s with oil at its working viscosity") \
  X(oil_relief_bar, 4.5, 0.5, 10.0, "bar", "oil relief valve") \
  X(oil_pressure_exponent, 0.3, 0.0, 1.0, "", "oil pressure follows (viscosity ratio) to this power") \
  X(oil_level, 1.0, 0.0, 1.0, "", "share of full oil") \
  X(oil_covered, 0.40, 0.05, 1.0, "", "sump level, share of full, that covers the pump's inlet (CP: the lower mark and less)") \
  X(oil_bare, 0.10, 0.0, 0.9, "", "sump level at which it draws nothing but air") \
  X(oil_held_up, 0.25, 0.0, 0.9, "", "share of full oil that governed speed keeps in pipes and bearings, out of the sump") \
  X(fan_nm_s2, 2.0e-4, 0.0, 0.01, "N m s2", "fan torque over speed squared") \
  X(fuel_lhv_j_kg, 42.7e6, 40e6, 46e6, "J/kg", "lower heating value of gas oil (IPCC 2006: 43.0; 42.5-43.0 usual)")

#define CABWRIGHT_STARTER(X) \
  X(torque_constant, 0.12, 0.0, 2.0, "N m/A", "series motor: k = this I/(I + knee)") \
  X(knee_a, 150.0, 1.0, 2000.0, "A", "current at half of that constant") \
  X(resistance_ohm, 0.020, 0.001, 1.0, "ohm", "motor and cable") \
  X(brush_v, 1.5, 0.0, 5.0, "V", "brush drop") \
  X(ratio, 10.0, 2.0, 30.0, "", "ring gear to pinion") \
  X(efficiency, 0.85, 0.1, 1.0, "", "pinion to ring gear") \
  X(health, 1.0, 0.0, 1.0, "", "share of torque given (0: dead, no current)") \
  X(pinion_sticks, 0.0, 0.0, 1.0, "", "pinion does not leave the ring above 0.5") \
  X(drag_nm, 0.30, 0.0, 20.0, "N m", "bearings and brushes of an armature that is driven, not fed") \
  X(drag_nm_s, 2.0e-4, 0.0, 0.1, "N m s", "and its rise with armature speed") \
  X(safe_rpm, 9000.0, 1000.0, 50000.0, "rpm", "armature speed above which it suffers") \
  X(heat_j_k, 6000.0, 100.0, 1e5, "J/K", "winding heat capacity") \
  X(cooling_w_k, 12.0, 0.1, 500.0, "W/K", "winding to air") \
  X(limit_c, 180.0, 80.0, 300.0, "C", "winding suffers above this")

#define CABWRIGHT_GENERATOR(X) \
  X(set_v, 28.0, 24.0, 32.0, "V", "regulated voltage") \
  X(power_w, 1000.0, 0.0, 20000.0, "W", "rated output") \
  X(cut_in_rpm, 600.0, 200.0, 2000.0, "rpm", "engine speed where it begins to charge") \
  X(full_rpm, 750.0, 250.0, 3000.0, "rpm", "engine speed where it can give its rating") \
  X(regulator_ohm, 0.05, 0.001, 1.0, "ohm", "droop of the regulator") \
  X(efficiency, 0.70, 0.1, 1.0, "", "electrical over shaft power") \
  X(health, 1.0, 0.0, 1.0, "", "share of rating given (0: not charging)")

#define CABWRIGHT_COUPLING(X) \
  X(diameter_m, 0.42, 0.1, 2.0, "m", "profile diameter") \
  X(density_kg_m3, 860.0, 500.0, 1300.0, "kg/m3", "coupling oil") \
  X(lambda_flat, 5.289e-3, 1e-5, 0.1, "", "torque coefficient a of lambda = a s/(|s| + b)") \
  X(lambda_knee, 0.0815, 0.005, 1.0, "", "slip b of that law") \
  X(fill, 1.0, 0.0, 1.0, "", "oil filling, share of full") \
  X(turbine_kg_m2, 0.9, 0.05, 20.0, "kg m2", "turbine, its oil and shaft") \
  X(heat_j_k, 30e3, 1e3, 1e6, "J/K", "heat capacity of the coupling") \
  X(loss_w_k, 60.0, 1.0, 5000.0, "W/K", "coupling to air")

#define CABWRIGHT_FREEWHEEL(X) \
  X(drag_nm, 0.5, 0.0, 100.0, "N m", "over-running drag") \
  X(slip_nm, 1e6, 0.0, 1e6, "N m", "most torque it holds (small: worn, slips)") \
  X(seized, 0.0, 0.0, 1.0, "", "locked both ways above 0.5")

#define CABWRIGHT_BAND(X) \
  X(friction, 0.12, 0.02, 0.6, "", "lining on oily drum") \
  X(wrap_rad, 5.8, 1.0, 6.2, "rad", "angle of wrap") \
  X(drum_radius_m, 0.16, 0.03, 0.6, "m", "drum radius") \
  X(leverage, 1.0, 0.05, 30.0, "", "linkage ratio, piston to band end") \
  X(piston_m2, 80e-4, 1e-4, 0.1, "m2", "band piston area") \
  X(stroke_m, 0.045, 0.001, 0.3, "m", "take-up stroke") \
  X(dead_m3, 0.30e-3, 1e-6, 0.01, "m3", "clearance of cylinder and pipe") \
  X(spring_start_psi, 8.0, 0.5, 60.0, "psi", "air that begins to move the piston") \
  X(spring_end_psi, 14.0, 1.0, 90.0, "psi", "air that has closed the band") \
  X(fill_c, 0.25, 0.0, 10.0, "dm3/(s bar)", "gear valve, filling") \
  X(vent_c, 0.40, 0.0, 10.0, "dm3/(s bar)", "gear valve, venting") \
  X(leak_c, 0.0, 0.0, 10.0, "dm3/(s bar)", "cylinder leak (a fault when not zero)") \
  X(drum_kg_m2, 0.35, 0.01, 5.0, "kg m2", "drum with its annulus") \
  X(heat_j_k, 6000.0, 100.0, 1e5, "J/K", "drum and band") \
  X(cooling_w_k, 25.0, 0.1, 1000.0, "W/K", "drum to box oil") \
  X(fade_c, 200.0, 80.0, 500.0, "C", "lining fades above this") \
  X(fade_span_k, 200.0, 10.0, 1000.0, "K", "and has lost half at this much more") \
  X(seized, 0.0, 0.0, 1.0, "", "drum seized to the case above 0.5")

#define CABWRIGHT_CLUTCH(X) \
  X(capacity_nm_psi, 14.0, 0.1, 200.0, "N m/psi", "torque per psi above closing") \
  X(piston_m2, 80e-4, 1e-4, 0.1, "m2", "clutch piston area") \
  X(stroke_m, 0.045, 0.001, 0.3, "m", "take-up stroke") \
  X(dead_m3, 0.30e-3, 1e-6, 0.01, "m3", "clearance of cylinder and pipe") \
  X(spring_start_psi, 8.0, 0.5, 60.0, "psi", "air that begins to move the piston") \
  X(spring_end_psi, 14.0, 1.0, 90.0, "psi", "air that has closed the clutch") \
  X(fill_c, 0.25, 0.0, 10.0, "dm3/(s bar)", "gear valve, filling") \
  X(vent_c, 0.40, 0.0, 10.0, "dm3/(s bar)", "gear valve, venting") \
  X(leak_c, 0.0, 0.0, 10.0, "dm3/(s bar)", "cylinder leak (a fault when not zero)") \
  X(heat_j_k, 6000.0, 100.0, 1e5, "J/K", "plates") \
  X(cooling_w_k, 25.0, 0.1, 1000.0, "W/K", "plates to box oil") \
  X(fade_c, 200.0, 80.0, 500.0, "C", "plates fade above this") \
  X(fade_span_k, 200.0, 10.0, 1000.0, "K", "and have lost half at this much more")

#define CABWRIGHT_GEARBOX(X) \
  X(sun_1, 24.0, 10.0, 200.0, "teeth", "sun of set 1") \
  X(annulus_1, 78.0, 20.0, 400.0, "teeth", "annulus of set 1") \
  X(sun_2, 24.0, 10.0, 200.0, "teeth", "sun of set 2") \
  X(annulus_2, 78.0, 20.0, 400.0, "teeth", "annulus of set 2") \
  X(sun_3, 36.0, 10.0, 200.0, "teeth", "sun of set 3") \
  X(annulus_3, 72.0, 20.0, 400.0, "teeth", "annulus of set 3") \
  X(planets, 3.0, 2.0, 6.0, "", "planets of each set") \
  X(input_kg_m2, 0.25, 0.01, 5.0, "kg m2", "input shaft with suns") \
  X(output_kg_m2, 0.45, 0.01, 10.0, "kg m2", "output with carrier, propeller shaft and pinion") \
  X(drag_nm, 0.8, 0.0, 50.0, "N m", "oil drag between input and output at rest, warm") \
  X(drag_nm_s, 0.006, 0.0, 1.0, "N m s", "and its rise with speed difference") \
  X(drum_drag_nm, 0.3, 0.0, 50.0, "N m", "drag of each drum in the case") \
  X(viscosity_cap, 4.0, 1.0, 20.0, "", "most by which cold oil multiplies drag") \
  X(mesh_loss, 0.025, 0.0, 0.2, "", "share of torque lost in a loaded ratio (CP: 95-97 % a loaded epicyclic)") \
  X(safe_input_rpm, 2400.0, 500.0, 8000.0, "rpm", "box input speed above which it suffers") \
  X(oil_level, 1.0, 0.0, 1.0, "", "share of full oil") \
  X(oil_enough, 0.80, 0.05, 1.0, "", "oil level, share of full, whose splash still reaches everything") \
  X(dry_mesh_loss, 0.10, 0.0, 0.5, "", "share of torque lost in a loaded ratio beside that, bone dry") \
  X(dry_cooling, 0.10, 0.0, 1.0, "", "share of its cooling that a drum or plate keeps, bone dry") \
  X(dry_drag_nm, 4.0, 0.0, 100.0, "N m", "drag of input on output, and of each drum, beside that, bone dry") \
  X(heat_j_k, 60e3, 1e3, 1e6, "J/K", "box oil and case") \
  X(cooling_w_k, 40.0, 0.1, 2000.0, "W/K", "box to air")

#define CABWRIGHT_FINAL_DRIVE(X) \
  X(ratio, 2.75, 1.0, 8.0, "", "propeller shaft turns per wheel turn") \
  X(wheelset_kg_m2, 110.0, 5.0, 1000.0, "kg m2", "driven wheelset with crown wheel") \
  X(bearing_nm, 2.2, 0.0, 100.0, "N m", "shaft and bevel drag at rest, warm") \
  X(bearing_nm_s, 0.06, 0.0, 5.0, "N m s", "and its rise with speed") \
  X(teeth, 12.0, 3.0, 90.0, "teeth", "dog teeth, between crown wheel and axle") \
  X(window_deg, 8.0, 0.5, 60.0, "deg", "backlash window in which teeth face gaps") \
  X(overlap_m, 0.003, 0.0005, 0.02, "m", "travel into the gap before the dog drives") \
  X(travel_m, 0.030, 0.005, 0.2, "m", "middle to fully in, one side") \
  X(sleeve_mps, 0.15, 0.005, 2.0, "m/s", "speed of the sleeve under full air") \
  X(piston_m2, 1257e-6, 1e-5, 0.05, "m2", "shift piston, 40 mm bore") \
  X(dead_m3, 0.10e-3, 1e-6, 0.01, "m3", "clearance of each end and its pipe") \
  X(shift_c, 0.3, 0.0, 10.0, "dm3/(s bar)", "direction valve, filling and venting") \
  X(leak_c, 0.0, 0.0, 10.0, "dm3/(s bar)", "shift cylinder leak (a fault when not zero)") \
  X(move_psi, 35.0, 1.0, 120.0, "psi", "air that just moves the sleeve") \
  X(full_psi, 60.0, 2.0, 200.0, "psi", "air that moves it at full speed") \
  X(stick, 0.0, 0.0, 1.0, "", "sleeve sticks above 0.5") \
  X(pipes_crossed, 0.0, 0.0, 1.0, "", "pipes of the two direction valves changed over above 0.5") \
  X(push_n, 100.0, 1.0, 5000.0, "N", "push on a blocked tooth, limited by the fork spring") \
  X(tooth_radius_m, 0.060, 0.01, 0.5, "m", "radius of the tooth faces") \
  X(tooth_friction, 0.10, 0.0, 3.0, "", "tooth face on tooth face (large: burred)") \
  X(hold_nm, 1e6, 0.0, 1e6, "N m", "torque at the axle a worn dog holds before it jumps out") \
  X(unload_nm, 330.0, 0.0, 1e5, "N m", "most torque at the axle under which the sleeve can be drawn out") \
  X(efficiency, 0.98, 0.5, 1.0, "", "bevel pair")

#define CABWRIGHT_COMPRESSOR(X) \
  X(swept_l_rev, 0.40, 0.0, 10.0, "L/rev", "swept volume per engine turn") \
  X(clearance, 0.06, 0.0, 0.3, "", "clearance over swept volume") \
  X(polytropic, 1.30, 1.0, 1.45, "", "compression exponent") \
  X(efficiency, 0.85, 0.1, 1.0, "", "indicated over shaft work") \
  X(windage_nm, 1.0, 0.0, 50.0, "N m", "torque when unloaded") \
  X(belt, 1.0, 0.0, 1.0, "", "share of drive (0: belt gone)") \
  X(unloader_stuck, 0.0, -1.0, 1.0, "", "above 0.5 stuck loaded, below -0.5 stuck unloaded")

#define CABWRIGHT_EXHAUSTER(X) \
  X(swept_l_rev, 1.00, 0.0, 20.0, "L/rev", "swept volume per engine turn") \
  X(ultimate_pa, 5000.0, 100.0, 50000.0, "Pa", "pressure at which it draws no more") \
  X(efficiency, 0.5, 0.05, 1.0, "", "isothermal work over shaft work") \
  X(windage_nm, 1.5, 0.0, 50.0, "N m", "torque at no work") \
  X(belt, 1.0, 0.0, 1.0, "", "share of drive (0: belt gone)") \
  X(backflow_c, 0.0, 0.0, 50.0, "dm3/(s bar)", "leak through its non-return valve when stopped")

#define CABWRIGHT_THROTTLE_MOTOR(X) \
  X(volume_m3, 0.2e-3, 1e-6, 0.01, "m3", "cylinder and pipe") \
  X(fill_c, 0.3, 0.0, 10.0, "dm3/(s bar)", "air valve, filling") \
  X(vent_c, 0.3, 0.0, 10.0, "dm3/(s bar)", "air valve, venting") \
  X(leak_c, 0.0, 0.0, 10.0, "dm3/(s bar)", "leak (a fault when not zero)") \
  X(spring_start_psi, 25.0, 1.0, 100.0, "psi", "air that begins to move it") \
  X(spring_end_psi, 40.0, 2.0, 120.0, "psi", "air that moves it all the way") \
  X(lag_s, 0.5, 0.02, 5.0, "s", "lag of the piston") \
  X(opening_1, 0.42, 0.0, 1.0, "", "throttle opening in notch 1") \
  X(opening_2, 0.55, 0.0, 1.0, "", "throttle opening in notch 2") \
  X(opening_3, 0.75, 0.0, 1.0, "", "throttle opening in notch 3") \
  X(opening_4, 1.00, 0.0, 1.0, "", "throttle opening in notch 4")

#define CABWRIGHT_AIR(X) \
  X(main_m3, 0.32, 0.01, 5.0, "m3", "main reservoir with pipes") \
  X(control_m3, 0.06, 0.005, 5.0, "m3", "control reservoir") \
  X(check_c, 12.0, 0.0, 100.0, "dm3/(s bar)", "check valve, main to control") \
  X(check_back_c, 0.0, 0.0, 100.0, "dm3/(s bar)", "leak back through the check valve (a fault)") \
  X(cut_out_psi, 95.5, 20.0, 200.0, "psi", "compressors unload: the gauge behind the check valve then shows its 95 (CP)") \
  X(cut_in_psi, 82.0, 10.0, 190.0, "psi", "compressors load again (CP)") \
  X(main_leak_c, 0.024, 0.0, 20.0, "dm3/(s bar)", "leak of the main reservoir and pipes") \
  X(between_leak_c, 0.0, 0.0, 20.0, "dm3/(s bar)", "leak of the air hose between the cars, fed from the main reservoir (a fault)") \
  X(trailer1_leak_c, 0.0, 0.0, 20.0, "dm3/(s bar)", "leak of the same pipe under car 2, side 1 (a fault)") \
  X(trailer2_leak_c, 0.0, 0.0, 20.0, "dm3/(s bar)", "leak of the same pipe under car 2, side 2 (a fault)") \
  X(control_leak_c, 0.006, 0.0, 20.0, "dm3/(s bar)", "leak of the control reservoir and pipes") \
  X(drain_c, 12.0, 0.1, 100.0, "dm3/(s bar)", "an open drain cock") \
  X(horn_c, 3.15, 0.0, 50.0, "dm3/(s bar)", "what the horn blows off") \
  X(horn_valve_c, 8.0, 0.0, 50.0, "dm3/(s bar)", "horn valve") \
  X(horn_m3, 1.0e-3, 1e-5, 0.05, "m3", "horn and its pipe behind the valve, each cab") \
  X(horn_full_psi, 60.0, 1.0, 120.0, "psi", "air in the horn at which its note is full") \
  X(horn_speaks_psi, 5.0, 0.1, 60.0, "psi", "and below which it does not speak") \
  X(relief_psi, 115.0, 30.0, 250.0, "psi", "safety valve on the main reservoir begins to open") \
  X(relief_c, 10.0, 0.0, 100.0, "dm3/(s bar)", "safety valve, fully open") \
  X(relief_span_psi, 5.0, 0.1, 50.0, "psi", "and is fully open this much above that") \
  X(critical_ratio, 0.4, 0.0, 0.9, "", "ISO 6358 critical back-pressure ratio of valves and pipes")

#define CABWRIGHT_VACUUM(X) \
  X(release_m3, 0.30, 0.02, 5.0, "m3", "release pipe with its reservoir") \
  X(train_m3, 0.08, 0.005, 2.0, "m3", "train pipe, without the space below the pistons") \
  X(release_leak_c, 0.02, 0.0, 50.0, "dm3/(s bar)", "leak of the release pipe") \
  X(train_leak_c, 0.10, 0.0, 100.0, "dm3/(s bar)", "leak of the train pipe along its whole length (CP limit: 3 inHg/min in lap)") \
  X(end1_leak_c, 0.0, 0.0, 100.0, "dm3/(s bar)", "leak of the hoses at end 1 (a fault)") \
  X(end2_leak_c, 0.0, 0.0, 100.0, "dm3/(s bar)", "leak of the hoses at end 2 (a fault)") \
  X(between_leak_c, 0.0, 0.0, 100.0, "dm3/(s bar)", "leak of the hoses between the cars (a fault)") \
  X(side1_leak_c, 0.0, 0.0, 100.0, "dm3/(s bar)", "leak of the train pipe under car 1, side 1 (a fault)") \
  X(side2_leak_c, 0.0, 0.0, 100.0, "dm3/(s bar)", "leak of the train pipe under car 1, side 2 (a fault)") \
  X(trailer1_leak_c, 0.0, 0.0, 100.0, "dm3/(s bar)", "leak of the train pipe under car 2, side 1 (a fault)") \
  X(trailer2_leak_c, 0.0, 0.0, 100.0, "dm3/(s bar)", "leak of the train pipe under car 2, side 2 (a fault)") \
  X(hose_c, 120.0, 0.0, 200.0, "dm3/(s bar)", "a hose hanging open") \
  X(guards_c, 120.0, 1.0, 500.0, "dm3/(s bar)", "the guard's valve, open") \
  X(guards_leak_c, 0.0, 0.0, 50.0, "dm3/(s bar)", "the guard's valves passing when shut (a fault)") \
  X(alarm_c, 30.0, 0.5, 200.0, "dm3/(s bar)", "the passenger alarm's partial opening") \
  X(critical_ratio, 0.5, 0.0, 0.9, "", "ISO 6358 critical back-pressure ratio of the openings")

#define CABWRIGHT_DRIVERS_VALVE(X) \
  X(release_c, 50.0, 1.0, 300.0, "dm3/(s bar)", "release position: release pipe to train pipe") \
  X(full_c, 25.0, 1.0, 300.0, "dm3/(s bar)", "full application: train pipe to atmosphere") \
  X(feed_inhg, 21.25, 5.0, 29.0, "inHg", "feed valve shuts at this train-pipe vacuum") \
  X(feed_span_inhg, 1.7, 0.1, 20.0, "inHg", "and is fully open this much below it") \
  X(lap_to_air_c, 0.0, 0.0, 20.0, "dm3/(s bar)", "passes to atmosphere in lap (creeps on)") \
  X(lap_to_release_c, 0.0, 0.0, 20.0, "dm3/(s bar)", "passes from the release pipe in lap (creeps off)")

#define CABWRIGHT_SAFETY_DEVICE(X) \
  X(volume_m3, 1.5e-3, 1e-5, 0.05, "m3", "timing volume") \
  X(reduced_psi, 60.0, 10.0, 120.0, "psi", "reducing valve that charges it") \
  X(charge_c, 0.5, 0.01, 10.0, "dm3/(s bar)", "charging valve") \
  X(choke_c, 0.28, 0.0, 10.0, "dm3/(s bar)", "choke it bleeds through when let go (CP: about 5 s)") \
  X(threshold_psi, 15.0, 1.0, 80.0, "psi", "its valve opens the train pipe below this") \
  X(threshold_span_psi, 1.0, 0.05, 20.0, "psi", "and is fully open this much lower") \
  X(vent_c, 40.0, 0.5, 300.0, "dm3/(s bar)", "that opening") \
  X(valve_stuck, 0.0, 0.0, 1.0, "", "valve does not open above 0.5")

#define CABWRIGHT_CYLINDER(X) \
  X(bore_m, 0.4572, 0.1, 1.0, "m", "brake cylinder bore, 18 in") \
  X(upper_m3, 0.025, 0.002, 0.5, "m3", "chamber above the piston, piston down") \
  X(lower_m3, 0.004, 0.0005, 0.2, "m3", "space below the piston, piston down") \
  X(ball_c, 2.0, 0.0, 50.0, "dm3/(s bar)", "ball valve, chamber to train pipe") \
  X(ball_leak_c, 0.0, 0.0, 20.0, "dm3/(s bar)", "ball valve passing the wrong way (a fault)") \
  X(leak_c, 0.00125, 0.0, 20.0, "dm3/(s bar)", "leak into the chamber") \
  X(cord_c, 6.0, 0.0, 50.0, "dm3/(s bar)", "release cord pulled") \
  X(spring_n, 900.0, 0.0, 20000.0, "N", "return spring and seal") \
  X(take_up_m, 0.020, 0.005, 0.3, "m", "piston travel until the blocks touch") \
  X(rigging_n_m, 2.0e6, 1e4, 1e8, "N/m", "stiffness of the rigging at the piston") \
  X(damping_n_s_m, 1.3e5, 1e2, 1e7, "N s/m", "air and seal damping of the piston") \
  X(rigging_ratio, 9.0, 1.0, 20.0, "", "block force over piston force") \
  X(rigging_efficiency, 0.90, 0.3, 1.0, "", "rigging efficiency") \
  X(blocks, 8.0, 1.0, 32.0, "", "blocks worked by this cylinder") \
  X(blocks_missing, 0.0, 0.0, 32.0, "", "of these, missing (a fault)") \
  X(stick_n, 0.0, 0.0, 1e5, "N", "pull that keeps the brake on (a fault)") \
  X(driven_1, 0.0, 0.0, 1.0, "", "share of its blocks on driven wheelset 1") \
  X(driven_2, 0.0, 0.0, 1.0, "", "share of its blocks on driven wheelset 2")

#define CABWRIGHT_HANDBRAKE(X) \
  X(block_force_n, 35000.0, 0.0, 5e5, "N", "pressing force when hard on (350 N hand force, 132:1, efficiency 0.75)") \
  X(blocks, 8.0, 1.0, 32.0, "", "blocks worked") \
  X(linkage, 1.0, 0.0, 1.0, "", "share of force that arrives (small: slack)")

#define CABWRIGHT_BATTERY(X) \
  X(capacity_ah, 200.0, 10.0, 2000.0, "A h", "capacity") \
  X(full_v, 25.2, 12.0, 60.0, "V", "open circuit, full") \
  X(empty_v, 23.8, 10.0, 60.0, "V", "open circuit, empty (twice the six-cell table: 23.78)") \
  X(resistance_ohm, 0.010, 0.001, 1.0, "ohm", "internal at 25 C") \
  X(resistance_cold_per_k, 0.012, 0.0, 0.1, "1/K", "rise per K below 25 C") \
  X(polarisation_ohm, 0.004, 0.0, 1.0, "ohm", "polarisation branch") \
  X(polarisation_s, 20.0, 1.0, 600.0, "s", "its time constant") \
  X(acceptance_ohm, 0.12, 0.0, 5.0, "ohm", "added while charging a full battery: it gasses instead of taking charge") \
  X(acceptance_from, 0.80, 0.0, 0.99, "", "share of full from which that resistance grows") \
  X(dead_cells_v, 0.0, 0.0, 24.0, "V", "voltage lost to dead cells (a fault)") \
  X(lost_share, 0.0, 0.0, 1.0, "", "share of the charge that sulphated plates do not give (a fault)") \
  X(self_discharge_a, 0.006, 0.0, 5.0, "A", "self-discharge, inside the cells: the battery switch does not stop it") \
  X(earth_s, 0.0, 0.0, 5.0, "S", "leak to the frame behind the battery switch (a fault when not zero)")

#define CABWRIGHT_TRAIN(X) \
  X(mass_kg, 60000.0, 5000.0, 500000.0, "kg", "unit in working order") \
  X(driven_axle_kg, 9000.0, 1000.0, 30000.0, "kg", "load on each driven axle") \
  X(trailing_wheelsets_kg_m2, 420.0, 10.0, 5000.0, "kg m2", "the six trailing wheelsets together") \
  X(wheel_radius_m, 0.457, 0.2, 0.8, "m", "wheel radius") \
  X(resistance_a_n, 1200.0, 0.0, 50000.0, "N", "rolling resistance, constant") \
  X(resistance_b_n_s_m, 30.0, 0.0, 2000.0, "N s/m", "rolling resistance, linear") \
  X(resistance_c_n_s2_m2, 4.0, 0.0, 100.0, "N s2/m2", "air resistance") \
  X(stiction_n, 900.0, 0.0, 50000.0, "N", "added to break away from rest") \
  X(adhesion_factor, 1.0, 0.05, 1.3, "", "rail condition: multiplies Curtius-Kniffler") \
  X(block_friction_factor, 1.0, 0.2, 2.0, "", "multiplies Karwatzki's block friction") \
  X(scotch_n, 60000.0, 0.0, 1e6, "N", "what one scotch holds")

// clang-format on

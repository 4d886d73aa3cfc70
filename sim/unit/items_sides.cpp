// SPDX-License-Identifier: GPL-3.0-or-later
// Along the sides of both cars. All common practice of a walk-round, no published source.
#include "unit/item_tables.h"

namespace cabwright::unit {

std::vector<ItemRow> carItems() {
  return {
      {"protection",
       "no board, no flag, no lamp",
       {{"flag", kC, "a red flag hangs on this side"},
        {"board", kC, "a board hangs on this side: not to be moved"},
        {"lamp", kC, "a red hand lamp hangs on this side"}},
       Trait::kNotBooked,
       kAlongS},
      {"people",
       "nobody",
       {{"passing", kC, "somebody walks along the car"},
        {"feet", kC, "feet show beneath the skirt"}},
       Trait::kNotBooked,
       kAlongS},
      {"scotches",
       "none under the wheels",
       {{"scotch", kOdd, "a scotch under a wheel"},
        {"left_over", kS, "a second scotch, forgotten"}},
       Trait::kNotBooked,
       kAlongS},
      {"doors",
       "shut, flush, latched",
       {{"open", kC, "a door stands open", "set door# open", "door# > 0.5"},
        {"on_catch", kS, "a door is on its first catch only"},
        {"handle_out", kT, "a door handle stands out"}},
       Trait::kPlain,
       kAlongS},
      {"windows", "whole", {{"cracked", kT, "a saloon window is cracked"}}, Trait::kPlain, kAlongS},
      {"skirts",
       "latched",
       {{"hanging", kS, "a skirt panel hangs by one latch"}, {"dented", kOdd, "dented, latched"}},
       Trait::kPlain,
       kAlongS},
      {"wheels",
       "sound, no flats, no loose tyre",
       {{"flat", kS, "a flat as long as a thumb"},
        {"shiny_spot", kT, "a thick shiny spot on the tread"},
        {"blued", kS, "a tyre is blued"},
        {"lump", kS, "a lump of metal on the tread"},
        {"rust_film", kOdd, "a film of rust after the rain"}},
       Trait::kPlain,
       kAlongS},
      {"blocks",
       "thick, all hanging true",
       {{"thin", kS, "a block is worn thin"},
        {"missing", kS, "a block is missing", "fault brake_cylinder@.blocks_missing 1",
         "number brake_cylinder@.blocks_missing > 0.5"},
        {"hanging", kS, "a block hangs free", "fault brake_cylinder@.blocks_missing 1"},
        {"frozen", kS, "the blocks stay on the tyre, frozen or stiff",
         "fault brake_cylinder@.stick_n 4000", "number brake_cylinder@.stick_n > 400"},
        {"glazed", kS, "the blocks shine like glass", "fault train.block_friction_factor 0.6",
         "share train.block_friction_factor < 0.95"}},
       Trait::kPlain,
       kAlongS},
      {"rigging",
       "pins and cotters in, links straight",
       {{"cotter_gone", kS, "a cotter is gone"},
        {"pin_working_out", kC, "a pin is working out of its hanger"}},
       Trait::kPlain,
       kAlongS},
      {"brake_cylinder",
       "rod in its normal travel, bag dry",
       {{"rod_far_out", kS, "the rod stands far out", "fault brake_cylinder@.take_up_m 0.05",
         "share brake_cylinder@.take_up_m > 1.4"},
        {"bag_torn", kS, "the bag is torn, air draws in", "add brake_cylinder@.leak_c 0.5"},
        {"bag_split", kS, "the bag is split along its fold"}}},
      {"cord",
       "hung up",
       {{"caught", kS, "the cord is caught under a pipe, half pulled",
         "add brake_cylinder@.leak_c 2"},
        {"hanging", kT, "the cord hangs down"}}},
      {"springs",
       "level, leaves whole",
       {{"broken_leaf", kS, "the top leaf is broken"}, {"low", kS, "this corner sits low"}},
       Trait::kPlain,
       kAlongS},
      {"axleboxes",
       "grease dry, paint sound",
       {{"weeping", kT, "grease weeps from the cover"},
        {"blue", kC, "the paint is blue and flaking: it has run hot"}},
       Trait::kPlain,
       kAlongS},
  };
}

namespace {

ConditionRow chafedPipe() {
  return {"chafed", kS, "a vacuum pipe is chafed through", "add vacuum.&_leak_c 2",
          "added vacuum.&_leak_c > 0.1"};
}
ConditionRow missingClip() { return {"clip_gone", kT, "a clip is gone, the pipe rubs"}; }

}  // namespace

std::vector<ItemRow> motorCarItems() {
  return {
      {"pipes",
       "clipped, silent",
       {chafedPipe(),
        {"air_joint", kS, "an air pipe is cracked at its joint", "add air.%_leak_c 0.6",
         "added air.%_leak_c > 0.1"},
        missingClip()},
       Trait::kPlain,
       kAlongS},
      {"drains",
       "shut, silent",
       {{"open", kS, "a drain cock stands open and hisses low down", "set drain_% open",
         "drain_% > 0.5"},
        {"ice", kS, "a plug of ice in the drain", "fault final_drive#.shift_c 0.02",
         "share final_drive#.shift_c < 0.3"},
        {"dripping", kT, "a drain drips"}}},
      {"cardan",
       "guard whole, all bolts in",
       {{"bolt_gone", kS, "a bolt of the shaft's flange is gone"},
        {"bright", kC, "the shaft is bright where it rubs on its guard"},
        {"guard_loose", kS, "the guard hangs by one end"}}},
  };
}

std::vector<ItemRow> trailerItems() {
  return {
      {"pipes", "clipped, silent", {chafedPipe(), missingClip()}, Trait::kPlain, kAlongS},
      {"drains",
       "shut, silent",
       {{"dripping", kT, "a drain drips"},
        {"cracked", kS, "a drain cock is cracked", "add air.&_leak_c 1.2",
         "added air.&_leak_c > 0.1"}}},
      {"alarm_telltale",
       "flat",
       {{"standing_out", kS, "stands out from the car's end", "set alarm pulled", "alarm > 0.5"}}},
      {"underframe",
       "straps tight, dry",
       {{"strap_loose", kS, "a tank strap is loose"},
        {"drip", kT, "something drips"},
        {"seam", kS, "a seam of the release reservoir has opened", "add vacuum.release_leak_c 2",
         "added vacuum.release_leak_c > 0.1"}},
       Trait::kPlain,
       kAlongS},
      {"heater",
       "shut, no smell",
       {{"fumes", kS, "a smell of fumes"}, {"flap_open", kT, "the flap stands open"}}},
      {"batteries",
       "lid on, no smell",
       {{"lid_open", kS, "the lid stands open"},
        {"acid", kS, "white crust of acid on the terminals", "add battery.resistance_ohm 0.02"},
        {"crust", kS, "a white crust on both terminals"}}},
  };
}

}  // namespace cabwright::unit

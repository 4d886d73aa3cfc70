// SPDX-License-Identifier: GPL-3.0-or-later
#include "cab/plate_booking.h"
#include "cab/plate_between.h"
#include "cab/plate_cab.h"
#include "cab/plate_cab_round.h"
#include "cab/plate_engine.h"
#include "cab/plate_end.h"
#include "cab/plate_cupboard.h"
#include "cab/plate_lineside.h"
#include "cab/plate_saloon.h"
#include "cab/plate_side.h"

namespace cabwright::cab {

std::unique_ptr<Plate> makePlate(unit::Place place, const PlateContext& context, QWidget* parent) {
  switch (place) {
    case unit::Place::kCab1:
      return std::make_unique<CabPlate>(0, context, parent);
    case unit::Place::kCab2:
      return std::make_unique<CabPlate>(1, context, parent);
    case unit::Place::kEngine1:
      return std::make_unique<EnginePlate>(0, context, parent);
    case unit::Place::kEngine2:
      return std::make_unique<EnginePlate>(1, context, parent);
    case unit::Place::kEnd1:
      return std::make_unique<EndPlate>(0, context, parent);
    case unit::Place::kEnd2:
      return std::make_unique<EndPlate>(1, context, parent);
    case unit::Place::kCupboard:
      return std::make_unique<CupboardPlate>(context, parent);
    case unit::Place::kSaloon:
      return std::make_unique<SaloonPlate>(context, parent);
    case unit::Place::kBooking:
      return std::make_unique<BookingPlate>(context, parent);
    case unit::Place::kLineside:
      return std::make_unique<LinesidePlate>(context, parent);
    case unit::Place::kBetween:
      return std::make_unique<BetweenPlate>(context, parent);
    case unit::Place::kSide1:
      return std::make_unique<SidePlate>(true, 0, context, parent);
    case unit::Place::kSide2:
      return std::make_unique<SidePlate>(true, 1, context, parent);
    case unit::Place::kTrailer1:
      return std::make_unique<SidePlate>(false, 0, context, parent);
    case unit::Place::kTrailer2:
      return std::make_unique<SidePlate>(false, 1, context, parent);
    default:
      return nullptr;
  }
}

std::unique_ptr<Plate> makeSecondPlate(unit::Place place, const PlateContext& context,
                                       QWidget* parent) {
  const int cab = unit::cabOf(place);
  if (cab < 0) return nullptr;
  return std::make_unique<CabRoundPlate>(cab, context, parent);
}

}  // namespace cabwright::cab

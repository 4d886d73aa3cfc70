// SPDX-License-Identifier: GPL-3.0-or-later
#include "cab/accessible.h"

#include <QAccessibleWidget>
#include <cmath>

#include "cab/control_part.h"

namespace cabwright::cab {
namespace {

QAccessible::Role roleOf(PartRole::Kind kind) {
  switch (kind) {
    case PartRole::Kind::kGauge:
      return QAccessible::Indicator;
    case PartRole::Kind::kLamp:
      return QAccessible::Indicator;
    case PartRole::Kind::kLever:
      return QAccessible::Slider;
    case PartRole::Kind::kButton:
      return QAccessible::PushButton;
    case PartRole::Kind::kSwitch:
      return QAccessible::CheckBox;
    case PartRole::Kind::kThing:
      return QAccessible::ListItem;
    case PartRole::Kind::kText:
      return QAccessible::StaticText;
    case PartRole::Kind::kPicture:
      break;
  }
  return QAccessible::Graphic;
}

class AccessiblePart : public QAccessibleWidget, public QAccessibleValueInterface {
 public:
  // A part may be asked for while it is being made: its role is looked up when it is wanted.
  explicit AccessiblePart(Part* part) : QAccessibleWidget(part, QAccessible::Graphic) {}

  QAccessible::Role role() const override { return roleOf(part()->role().kind); }

  QString text(QAccessible::Text which) const override {
    const PartRole r = part()->role();
    switch (which) {
      case QAccessible::Name:
        return r.name;
      case QAccessible::Value:
        return r.value;
      case QAccessible::Description:
        return r.description;
      default:
        return QAccessibleWidget::text(which);
    }
  }

  QAccessible::State state() const override {
    QAccessible::State s = QAccessibleWidget::state();
    const PartRole r = part()->role();
    if (r.kind == PartRole::Kind::kSwitch) {
      s.checkable = true;
      s.checked = r.number > 0.5;
    }
    s.readOnly = r.kind == PartRole::Kind::kGauge || r.kind == PartRole::Kind::kLamp;
    return s;
  }

  void* interface_cast(QAccessible::InterfaceType type) override {
    const PartRole r = part()->role();
    if (type == QAccessible::ValueInterface && r.high > r.low)
      return static_cast<QAccessibleValueInterface*>(this);
    return QAccessibleWidget::interface_cast(type);
  }

  QStringList actionNames() const override {
    const PartRole r = part()->role();
    if (r.kind == PartRole::Kind::kLever)
      return {pressAction(), increaseAction(), decreaseAction()};
    if (r.kind == PartRole::Kind::kGauge || r.kind == PartRole::Kind::kText ||
        r.kind == PartRole::Kind::kPicture)
      return {};
    return {pressAction()};
  }

  void doAction(const QString& name) override {
    if (name == pressAction()) part()->activate();
    if (name == increaseAction()) part()->step(1);
    if (name == decreaseAction()) part()->step(-1);
  }

  QVariant currentValue() const override { return part()->role().number; }
  QVariant maximumValue() const override { return part()->role().high; }
  QVariant minimumValue() const override { return part()->role().low; }
  QVariant minimumStepSize() const override { return 0; }
  void setCurrentValue(const QVariant& value) override {
    const double wanted = value.toDouble();
    auto* control = qobject_cast<ControlPart*>(part());
    if (control != nullptr && control->put(wanted)) return;
    const double now = part()->role().number;
    if (std::abs(now - wanted) > 1e-6) part()->step(wanted > now ? 1 : -1);
  }

 private:
  [[nodiscard]] Part* part() const { return static_cast<Part*>(widget()); }
};

QAccessibleInterface* makeInterface(const QString& /*class_name*/, QObject* object) {
  auto* part = qobject_cast<Part*>(object);
  return part != nullptr ? new AccessiblePart(part) : nullptr;
}

}  // namespace

void installAccessibility() {
  static const bool once = [] {
    QAccessible::installFactory(makeInterface);
    return true;
  }();
  static_cast<void>(once);
}

}  // namespace cabwright::cab

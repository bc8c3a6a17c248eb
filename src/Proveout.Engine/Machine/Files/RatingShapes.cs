using UnitsNet;

namespace Proveout.Engine.Machine;

/// <summary>How what a part's data sheet says stands in a file.</summary>
internal static class RatingShapes
{
    public static readonly OptionalShape<ClampKind> Clamp = new(new WordShape<ClampKind>(
        "clamp",
        (ClampKind.Screw, "screw"),
        (ClampKind.Spring, "spring"),
        (ClampKind.Crimp, "crimp"),
        (ClampKind.Tab, "tab"),
        (ClampKind.Stud, "stud"),
        (ClampKind.Solder, "solder")));

    public static readonly ListShape<SensorKind> Sensors = new(new WordShape<SensorKind>(
        "kind of sensor",
        (SensorKind.Ntc, "ntc"),
        (SensorKind.Pt100, "pt100"),
        (SensorKind.Pt1000, "pt1000"),
        (SensorKind.Thermocouple, "thermocouple"),
        (SensorKind.Bridge, "bridge"),
        (SensorKind.Contact, "contact"),
        (SensorKind.Sinking, "sinking"),
        (SensorKind.Sourcing, "sourcing")));

    public static readonly RecordShape<PartRatings> Ratings = new(
        "list of ratings",
        [
            Key<PartRatings>.Optional("efficiency", "Share of what its sources take that they give.", Shapes.AnyShare, ratings => ratings.Efficiency),
            Key<PartRatings>.Optional("inrush", "Peak current when it is switched on cold.", Shapes.AnyCurrent, ratings => ratings.Inrush),
            Key<PartRatings>.Optional("breaking", "Largest fault current that it interrupts.", Shapes.AnyCurrent, ratings => ratings.Breaking),
            Key<PartRatings>.Optional("full-up-to", "Temperature around it up to which it gives its full current.", Shapes.AnyTemperature, ratings => ratings.FullUpTo),
            Key<PartRatings>.Optional("derating", "Share of its current that it loses with each kelvin above.", Shapes.AnyShare, ratings => ratings.Derating),
            Key<PartRatings>.Optional("drop", "Voltage across an electronic switch while it conducts.", Shapes.AnyVoltage, ratings => ratings.Drop),
            Key<PartRatings>.Optional("leakage", "Current through an electronic switch while it is off.", Shapes.AnyCurrent, ratings => ratings.Leakage),
            Key<PartRatings>.Optional("least-load", "Least load current with which an electronic switch works.", Shapes.AnyCurrent, ratings => ratings.LeastLoad),
            Key<PartRatings>.Optional("junction-to-base", "Thermal resistance from junction to base.", Shapes.AnyThermalResistance, ratings => ratings.JunctionToBase),
            Key<PartRatings>.Optional("junction", "Temperature that the junction may reach.", Shapes.AnyTemperature, ratings => ratings.Junction),
            Key<PartRatings>.Optional("to-air", "Thermal resistance from base or metal to the air.", Shapes.AnyThermalResistance, ratings => ratings.ToAir),
        ],
        fields => new()
        {
            Efficiency = fields.Get<Ratio?>("efficiency"),
            Inrush = fields.Get<ElectricCurrent?>("inrush"),
            Breaking = fields.Get<ElectricCurrent?>("breaking"),
            FullUpTo = fields.Get<Temperature?>("full-up-to"),
            Derating = fields.Get<Ratio?>("derating"),
            Drop = fields.Get<ElectricPotential?>("drop"),
            Leakage = fields.Get<ElectricCurrent?>("leakage"),
            LeastLoad = fields.Get<ElectricCurrent?>("least-load"),
            JunctionToBase = fields.Get<ThermalPath?>("junction-to-base"),
            Junction = fields.Get<Temperature?>("junction"),
            ToAir = fields.Get<ThermalPath?>("to-air"),
        });
}

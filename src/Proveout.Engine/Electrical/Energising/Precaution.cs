namespace Proveout.Engine.Electrical;

/// <summary>What keeps a mistake that no earlier check excludes from doing harm while a stage is first tried.</summary>
public enum Precaution
{
    /// <summary>Stand by with a hand on the main switch, and look at what should stay off or cold.</summary>
    HandOnSwitch,

    /// <summary>Feed the stage from a bench supply whose current is limited, instead of the machine's own supply.</summary>
    LimitedSupply,

    /// <summary>Put a filament lamp in series with the line, so that a short circuit only lights it.</summary>
    SeriesLamp,

    /// <summary>Feed the machine through a residual-current device of 30 mA that has been tried, and touch no metal.</summary>
    ResidualCurrentDevice,
}

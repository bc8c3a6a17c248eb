namespace Proveout.Workshop;

/// <summary>Brings 24 V to what needs it: fused branches behind a supply in the machine, or a star behind the fuse of an inlet; and the one star of 0 V.</summary>
internal sealed class StartingPower(StartingFile file, StartAnswers answers, string supply)
{
    private const string ZeroBar = "X5";

    private int _zeros;

    /// <summary>What feeds motors and heaters.</summary>
    public Branch Power => answers.HasMains ? new("F2.1", 10) : new("X2.2", 5);

    /// <summary>What feeds a plate.</summary>
    public Branch Plate => answers.HasMains ? new("F2.2", 7.5) : new("X2.4", 5);

    /// <summary>What feeds electronics that stay on when the emergency stop is pressed.</summary>
    public Branch Logic => answers.HasMains ? new(answers.Board.HasOwnDrivers ? "F2.4" : "F2.3", answers.Board.HasOwnDrivers ? 3 : 5)
        : new(answers.Board.HasOwnDrivers ? "X2.4" : "X2.5", 5);

    /// <summary>What feeds the emergency stop.</summary>
    public Branch Stop => answers.HasMains ? new("F2.5", 2) : new("X2.3", 5);

    /// <summary>What feeds fans that no output switches.</summary>
    public Branch Fans => answers.HasMains ? new("F2.6", 1) : new("X2.5", 5);

    /// <summary>A clamp of the 0 V star that nothing is on yet.</summary>
    public string Zero() => FormattableString.Invariant($"{ZeroBar}.{++_zeros}");

    public void Write()
    {
        file.Part(ZeroBar, "zero-volt-bar-16", "0 V star");
        if (answers.HasMains)
            WriteInside();
        else
            WriteOutside();
    }

    private void WriteInside()
    {
        file.Part("T1", $"supply-24-{supply}", "24 V supply", answers.Supply == "fitting" ? $"the smallest supply that bears what was described, {supply} W." : "");
        file.Part("F2", "fuse-block-6", "24 V branches", "six blade fuses, 10 A to 1 A; the sections behind them follow from them.");
        file.Group("24 V from the supply to the branches; 0 V is bonded to protective earth once, here", "0 V bonded to protective earth, at this place only (IEC 60204-1 clause 9.4.3.1).");
        file.Wire(Zero(), "X4.12", new("1.5", 250, ""), "green-yellow");
        // What carries everything lies in no duct, where others would warm it.
        file.Wire("T1.V+1", "F2.IN", new("4.0", 250, ""), "red");
        file.Wire("T1.V-1", Zero(), new("4.0", 250, ""), "black");
    }

    private void WriteOutside()
    {
        file.Part("T1", "external-supply-24", "External supply");
        file.Part("X1", "dc-inlet", "24 V inlet", "an inlet with a 5 A fuse in plus.");
        file.Part("X2", "lever-terminal-5", "24 V star");
        file.Group("24 V from the external supply to the stars; 0 V is not bonded to earth (SELV, IEC 60364-4-41 clause 414)");
        file.Wire("T1.V+", "X1.IN+", new("1.5", 1500, ""), "red");
        file.Wire("T1.V-", "X1.IN-", new("1.5", 1500, ""), "black");
        file.Wire("X1.OUT+", "X2.1", new("1.5", 150, StartingRoutes.Supply), "red");
        file.Wire("X1.OUT-", Zero(), new("1.5", 150, StartingRoutes.Supply), "black");
    }
}

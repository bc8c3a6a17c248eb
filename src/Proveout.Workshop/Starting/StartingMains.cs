namespace Proveout.Workshop;

/// <summary>Mains from the inlet over switch and fuse to the supply, with protective earth to all metal.</summary>
internal sealed class StartingMains(StartingFile file, StartAnswers answers)
{
    private static readonly Lead Line = new("1.5", 250, StartingRoutes.Mains, IsMains: true);

    private int _earths;

    public void Write()
    {
        Head();
        file.Part("X2", "lever-terminal-5", "Line behind the switch");
        file.Part("X3", "lever-terminal-5", "Neutral behind the switch");
        file.Part("X4", "earth-bar-12", "Protective earth bar");
        file.Group("Mains: isolate, lock off and prove dead before any work here; local rules on who may do it come first", "lengths of the conductors in the enclosure, and ferrules on all ends under screws.");
        Feed();
        file.Wire("X2.2", "T1.L", Line, "brown");
        file.Wire("X3.2", "T1.N", Line, "blue");
        file.Group("Protective earth, a star from X4");
        Earth("X1.PE");
        Earth("T1.PE");
        Metal();
    }

    private void Head()
    {
        var known = answers.Earthing != "unknown";
        var frequency = answers.MainsVolts == 120 ? 60 : 50;
        file.Mains(
            FormattableString.Invariant($"{{voltage: {answers.MainsVolts} V, frequency: {frequency} Hz, earthing: {(known ? Earthings[answers.Earthing] : "TN-S")}}}"),
            [.. known ? Array.Empty<string>() : ["earthing TN-S; the papers of the installation say which it is, and TT wants a residual-current device besides."]]);
    }

    private static readonly Dictionary<string, string> Earthings = new(StringComparer.Ordinal) { ["tn-s"] = "TN-S", ["tn-c-s"] = "TN-C-S", ["tt"] = "TT" };

    private void Feed()
    {
        if (answers.HasSwitchedInlet)
        {
            file.Part("X1", "mains-inlet-switched", "Mains inlet and switch", "10 A time-lag fuse in the inlet.");
            FromSwitch("X1.L-OUT", "X1.N-OUT");
            return;
        }

        file.Part("X1", "mains-inlet-fused", "Mains inlet", "8 A time-lag fuse in the inlet.");
        file.Part("S1", "rocker-switch-two-pole", "Mains switch");
        file.Wire("X1.L", "S1.1", Line, "brown");
        file.Wire("X1.N", "S1.3", Line, "blue");
        FromSwitch("S1.2", "S1.4");
    }

    private void FromSwitch(string line, string neutral)
    {
        if (answers.HasResidualDevice)
        {
            file.Part("F1", "residual-current-device-2", "Residual-current device", answers.HasSpindle
                ? "a device of 30 mA in the machine, because a tool is plugged in behind it."
                : "a device of 30 mA in the machine, because a fuse alone does not clear an earth fault in a TT system.");
            file.Wire(line, "F1.1", Line, "brown");
            file.Wire(neutral, "F1.N-IN", Line, "blue");
            (line, neutral) = ("F1.2", "F1.N-OUT");
        }

        file.Wire(line, "X2.1", Line, "brown");
        file.Wire(neutral, "X3.1", Line, "blue");
    }

    private void Metal()
    {
        if (answers.HasMetalFrame)
        {
            Bonded("U1", "metal-frame", "Machine frame", new("2.5", 800, ""));
            Bonded("U2", "metal-gantry", "Moving carriage", new("2.5", 1500, StartingRoutes.ToHead), "one moving metal part that carries electrical parts; each further one has its own conductor to X4.");
        }

        Bonded("U3", "metal-panel", "Mounting panel", new("2.5", 200, ""), "a metal mounting panel under the mains parts.");
        if (answers.HasResidualDevice || answers.HasMainsPlate)
            Bonded("U4", "din-rail-35", "Mounting rail", new("2.5", 200, ""));
        if (answers.HasMetalEnclosure)
        {
            Bonded("U5", "metal-enclosure", "Enclosure", new("2.5", 300, ""));
            Bonded("U6", "metal-door", "Door of the enclosure", new("2.5", 500, ""));
        }

        if (answers.HasSpindle)
            Earth("X17.PE");
        if (!answers.HasMainsPlate)
            return;
        Earth("E1.PE", new("1.5", 800, $"{StartingRoutes.Mains}, {StartingRoutes.PlateMains}", IsMains: true));
        Bonded("U7", "heat-sink", "Heat sink of the contactless relay", new("1.5", 250, ""));
        file.Wire("U7.METAL", "Q1.BASE", new("1.5", 100, ""), "green-yellow");
    }

    private void Bonded(string designation, string type, string name, Lead lead, string guess = "")
    {
        file.Part(designation, type, name, guess);
        Earth($"{designation}.PE", lead);
    }

    // The last clamp is that of 0 V.
    private void Earth(string to, Lead? lead = null) =>
        file.Wire(FormattableString.Invariant($"X4.{++_earths}"), to, lead ?? new("1.5", 250, StartingRoutes.Mains, IsMains: true), "green-yellow");
}

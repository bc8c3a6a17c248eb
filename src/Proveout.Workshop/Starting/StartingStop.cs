namespace Proveout.Workshop;

/// <summary>The emergency stop: one contact drops the relay that feeds what moves and heats, the other the contactor of a mains plate or of a spindle.</summary>
internal sealed class StartingStop(StartingFile file, StartAnswers answers, StartingPower power)
{
    /// <summary>What feeds motors and heaters behind it.</summary>
    public Branch Power => answers.HasStop ? power.Power with { Terminal = "K1.14" } : power.Power;

    /// <summary>What feeds a 24 V plate behind it.</summary>
    public string Plate => answers.HasStop ? "K1.24" : power.Plate.Terminal;

    public void Write()
    {
        if (!answers.HasStop)
            return;
        file.Part("S2", "emergency-stop-2", "Emergency stop");
        file.Part("K1", "relay-24v-two-changeover", "Power of motors and heaters, released by the emergency stop", "turning the button back gives power again; a start button that holds a relay in prevents that (ISO 13850).");
        file.Group("Emergency stop: drops K1, which cuts motors and heaters");
        file.Wire(power.Power.Terminal, "K1.11", power.Power.Lead(250), "red");
        if (answers.HasLowPlate)
            file.Wire(power.Plate.Terminal, "K1.21", power.Plate.Lead(250), "red");
        if (answers.HasMainsPlate || answers.HasSpindle)
            TwoContacts();
        else
            file.Wire(power.Stop.Terminal, "S2.11", Coil, "red");
        file.Wire("S2.12", "K1.A1", Coil, "orange");
        file.Wire(power.Zero(), "K1.A2", Coil, "black");
    }

    /// <summary>A lead behind the fuse of the emergency stop.</summary>
    public Lead Coil => power.Stop.Lead(800);

    private void TwoContacts()
    {
        file.Part("X6", "lever-terminal-3", "24 V to the emergency stop");
        file.Wire(power.Stop.Terminal, "X6.1", Coil, "red");
        file.Wire("X6.2", "S2.11", Coil, "red");
        file.Wire("X6.3", "S2.21", Coil, "red");
        if (!answers.HasMainsPlate)
            return;
        file.Wire("S2.22", "Q2.A1", Coil, "orange");
        file.Wire(power.Zero(), "Q2.A2", Coil, "black");
    }
}

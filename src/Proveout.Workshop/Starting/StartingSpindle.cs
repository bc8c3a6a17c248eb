namespace Proveout.Workshop;

/// <summary>
/// A socket for a mains tool: breaker and contactor in both poles behind the residual-current device. The start button holds a relay in, the emergency stop drops it,
/// so that turning the stop back starts nothing (ISO 13850, from memory); the controller commands the contactor behind that.
/// </summary>
internal sealed class StartingSpindle(StartingFile file, StartAnswers answers, StartingPower power, StartingStop stop)
{
    private static readonly Lead Branch = new("1.5", 250, StartingRoutes.Mains, IsMains: true);

    public void Write()
    {
        if (!answers.HasSpindle)
            return;
        Parts();
        file.Group("Spindle socket: breaker, contactor in both poles");
        file.Wire("X2.3", "F5.1", Branch, "brown");
        file.Wire("F5.2", "Q3.1", Branch, "brown");
        file.Wire("X3.3", "Q3.3", Branch, "blue");
        file.Wire("Q3.2", "X17.L", Branch, "brown");
        file.Wire("Q3.4", "X17.N", Branch, "blue");
        Start();
        Command();
    }

    private void Parts()
    {
        file.Part("F5", "circuit-breaker-10", "Spindle socket branch");
        file.Part("Q3", "contactor-24v-3", "Spindle contactor, released by the emergency stop");
        file.Part("X17", "mains-socket-outlet", "Spindle socket", "a mains tool in a socket; a spindle with a drive of its own is wired by the papers of the drive.");
        file.Part("S3", "push-button-closing", "Start");
        file.Part("K3", "relay-24v-two-changeover", "Run, holds itself until the emergency stop is pressed");
        file.Part("K2", "relay-24v-two-changeover", "Spindle, commanded by the controller", "before the start button is pressed, the controller's spindle output is off; see that it is so at every start of the controller.");
        file.Part("X18", "lever-terminal-3", "Behind the emergency stop");
        file.Part("X19", "lever-terminal-5", "Run line");
    }

    private void Start()
    {
        file.Group("Start and run: the start button pulls K3 in, which holds itself; the emergency stop drops it");
        file.Wire("S2.22", "X18.1", stop.Coil, "orange");
        file.Wire("X18.2", "S3.13", stop.Coil, "orange");
        file.Wire("X18.3", "K3.21", stop.Coil, "orange");
        file.Wire("S3.14", "X19.1", stop.Coil, "yellow");
        file.Wire("K3.24", "X19.2", stop.Coil, "yellow");
        file.Wire("X19.3", "K3.A1", stop.Coil, "yellow");
        file.Wire(power.Zero(), "K3.A2", stop.Coil, "black");
    }

    private void Command()
    {
        var (output, lead) = (answers.FreeOutputs[answers.Valves], StartingBoard.OutputLead(answers, 250, StartingRoutes.Low));
        file.Group("Spindle: run line, relay of the controller, contactor");
        file.Wire("X19.4", "K2.11", stop.Coil, "yellow");
        file.Wire("K2.14", "Q3.A1", stop.Coil, "violet");
        file.Wire(power.Zero(), "Q3.A2", stop.Coil, "black");
        file.Wire($"A1.{output}+", "K2.A1", lead, "red");
        file.Wire($"A1.{output}-", "K2.A2", lead, "white");
    }
}

using System.Globalization;
using Proveout.Engine.Machine;

namespace Proveout.Workshop;

/// <summary>Answers that cannot be true together, or for which no typical wiring is sound.</summary>
internal static class StartContradictions
{
    // What the heaters of the catalogue bear at their terminals, with a tenth more power than printed.
    private const double MostMainsPlateAmperes = 4;

    // A contactless relay needs some load to stay on; the review holds the plate against its relay.
    private const double LeastMainsPlateWatts = 50;
    private const double MostLowPlateWatts = 150;
    private const double PowerTolerance = 1.1;

    public static IEnumerable<Diagnostic> In(StartAnswers answers, string hotEndVolts) =>
        [.. Power(answers), .. Spindle(answers), .. Moves(answers), .. Valves(answers), .. Heats(answers, hotEndVolts), .. PlatePower(answers), .. Air(answers)];

    private static IEnumerable<Diagnostic> Power(StartAnswers answers)
    {
        if (!answers.HasMains && answers.Supply is "150" or "200" or "350")
            yield return Of(StartQuestions.Supply, "A supply in the machine takes mains, and no mains enters this machine.", "Choose the external supply, or say which mains enters.");
        if (answers.HasMains && answers.Supply == "external-120")
            yield return Of(StartQuestions.Supply, "An external supply brings 24 V only, and this machine has mains in it.", "Choose a supply in the machine, or answer that no mains enters it.");
        if (answers.HasMains && answers.Earthing == "it")
            yield return Of(StartQuestions.Earthing, "In an IT system both conductors are live, and the typical wiring has a fuse in one of them only.", "Let a person trained for it draw the mains side, and start from a file of your own.");
        if (!answers.HasMains && answers.HasMainsPlate)
            yield return Of(StartQuestions.Plate, "A mains plate needs mains, and no mains enters this machine.", "Choose a 24 V plate, or say which mains enters.");
        if (answers.HasMainsPlate && answers.MainsVolts == 120)
            yield return Of(StartQuestions.Plate, "The mains mat of the catalogue is made for 230 V and stays cold on 120 V.", "Choose another plate here, and write a 120 V mat as a part type of your own afterwards.");
        if (answers.HasMainsPlate && !answers.HasStop)
            yield return Of(StartQuestions.Stop, "A contactless relay fails closed, so a mains plate wants a contactor that an emergency stop releases.", "Fit an emergency stop, or choose another plate.");
    }

    private static IEnumerable<Diagnostic> Spindle(StartAnswers answers)
    {
        if (!answers.HasSpindle)
            yield break;
        if (!answers.HasMains)
            yield return Of(StartQuestions.Spindle, "A socket for a mains tool needs mains, and no mains enters this machine.", "Say which mains enters, or leave the spindle to the editor.");
        if (!answers.HasStop)
            yield return Of(StartQuestions.Stop, "A spindle has to stand still at once, by contacts, when somebody is caught.", "Fit an emergency stop, or choose no spindle.");
        if (answers.HasMainsPlate)
            yield return Of(StartQuestions.Spindle, "The inlet bears a mains tool or a mains plate, and not both.", "Choose another plate, or no spindle.");
    }

    private static IEnumerable<Diagnostic> Valves(StartAnswers answers)
    {
        if (answers.Valves > 0 && answers.Board.HasOwnDrivers)
            yield return Of(StartQuestions.Valves, "The outputs of this board stay on when the emergency stop is pressed, and a valve would stay open.", "Choose another board, or no valve.");
        if (answers.Valves + (answers.HasSpindle ? 1 : 0) is var wanted && wanted > answers.FreeOutputs.Count)
            yield return Of(
                answers.Valves > 0 ? StartQuestions.Valves.Label : StartQuestions.Spindle.Label,
                $"The board has {Wording(answers.FreeOutputs.Count, "output")} left beside plate and hot ends, and valves and spindle take {wanted}.",
                "Choose a board with more outputs, or fewer heaters and valves.");
    }

    private static IEnumerable<Diagnostic> Moves(StartAnswers answers)
    {
        if (answers.Motors > answers.Board.Motors)
            yield return Of(StartQuestions.Motors, $"The board moves {answers.Board.Motors} motors, and there are {answers.Motors}.", "Choose a board with more motor outputs, or fewer motors.");
        if (answers.Axes > answers.Motors)
            yield return Of(StartQuestions.Axes, $"There are {answers.Axes} axes and only {Wording(answers.Motors, "motor")}.", "Give each axis a motor.");
        if (answers.Axes > answers.Board.Stops)
            yield return Of(StartQuestions.Axes, $"The board reads {answers.Board.Stops} stops, and {answers.Axes} axes are to find one.", "Choose a board with more inputs, or fewer axes with a stop.");
    }

    private static IEnumerable<Diagnostic> Heats(StartAnswers answers, string hotEndVolts)
    {
        var heaters = answers.HotEnds + (answers.HasPlate ? 1 : 0);
        if (answers.HotEnds > 0 && hotEndVolts == "12")
            yield return Of(StartQuestions.HotEndVolts, "The machine has 24 V, on which a 12 V heater takes four times its power and burns.", "Take 24 V heaters.");
        if (heaters > 0 && answers.Board.Heaters == 0)
            yield return Of(StartQuestions.Board, "This board reads no temperature and switches no heater.", "Choose another board, or no plate and no hot end.");
        else if (heaters > answers.Board.Heaters)
            yield return Of(StartQuestions.HotEnds, $"The board switches {answers.Board.Heaters} heaters, and there are {heaters} with the plate.", "Choose a board with more outputs, or fewer heaters.");
    }

    private static IEnumerable<Diagnostic> PlatePower(StartAnswers answers)
    {
        var most = answers.HasMainsPlate && answers.HasMains ? Math.Floor(MostMainsPlateAmperes * answers.MainsVolts / PowerTolerance)
            : answers.HasLowPlate ? MostLowPlateWatts : double.PositiveInfinity;
        if (answers.HasMainsPlate && answers.PlateWatts < LeastMainsPlateWatts)
            yield return Of(
                StartQuestions.PlateWatts,
                string.Create(CultureInfo.InvariantCulture, $"A mains plate of {answers.PlateWatts} W takes less than a contactless relay needs to stay on."),
                $"Choose a plate of {LeastMainsPlateWatts} W or more, or one for 24 V.");
        if (answers.PlateWatts > most)
            yield return Of(
                StartQuestions.PlateWatts,
                string.Create(CultureInfo.InvariantCulture, $"A plate of {answers.PlateWatts} W takes more at this voltage than the plates of the catalogue bear, which is {most} W."),
                "Choose less power, or write the plate as a part type of your own afterwards.");
    }

    private static IEnumerable<Diagnostic> Air(StartAnswers answers)
    {
        if (answers.Fans > answers.Board.Fans)
            yield return Of(StartQuestions.Fans, $"The board takes {answers.Board.Fans} fans, and there are {answers.Fans}.", "Choose a board with more fan outputs, or add fans on a splitter in the editor.");
        if (answers.Fans > 0 && !answers.Board.FanVolts.Contains(answers.FanVolts))
            yield return Of(
                StartQuestions.FanVolts, $"Fans at this board have {string.Join(" or ", answers.Board.FanVolts)} V, not {answers.FanVolts} V.", "Choose other fans, or another board.");
    }

    private static Diagnostic Of(FigureField field, string message, string mend) => Of(field.Label, message, mend);

    private static Diagnostic Of(ChoiceField field, string message, string mend) => Of(field.Label, message, mend);

    private static Diagnostic Of(string question, string message, string mend) => new("answers-contradict", new SourcePlace(question, 0, 0), message, mend);

    private static string Wording(int count, string one) => count == 1 ? $"1 {one}" : $"{count} {one}s";
}

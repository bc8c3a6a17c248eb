namespace Proveout.Workshop;

/// <summary>What the guided start asks: only what a builder knows before anything is drawn.</summary>
public static class StartQuestions
{
    /// <summary>Name of the field of the machine's name.</summary>
    public const string Name = "name";

    internal static readonly ChoiceField Mains = new(
        "mains", "Mains in the machine", "An external supply with a 24 V lead keeps mains out of the machine.", "230",
        [("none", "None; 24 V from outside"), ("230", "230 V, 50 Hz"), ("120", "120 V, 60 Hz")]);

    internal static readonly ChoiceField Earthing = new(
        "earthing", "Earthing of the house (IEC 60364-1)", "It stands in the papers of the installation; an electrician knows it. Without mains it does not matter.", "unknown",
        [("unknown", "I do not know"), ("tn-s", "TN-S"), ("tn-c-s", "TN-C-S"), ("tt", "TT"), ("it", "IT")]);

    internal static readonly ChoiceField Inlet = new(
        "inlet", "Mains inlet", "The switch opens line and neutral. Without mains it does not matter.", "switched",
        [("switched", "Switch and fuse in one"), ("fused", "Fuse only, and a switch")]);

    internal static readonly ChoiceField Supply = new(
        "supply", "24 V supply", "What hangs on it is added up either way.", "fitting",
        [("fitting", "The smallest that does"), ("external-120", "External, 120 W"), ("150", "In the machine, 150 W"), ("200", "In the machine, 200 W"), ("350", "In the machine, 350 W")]);

    internal static readonly ChoiceField Stop = new(
        "emergency-stop", "Emergency stop", "It takes the energy from all that moves or heats, by contacts (ISO 13850).", "yes",
        [("yes", "Yes"), ("no", "No; the plug is within reach")]);

    internal static readonly ChoiceField Frame = new(
        "frame", "Frame and moving parts", "With mains in the machine, metal that can be touched is bonded to protective earth.", "metal",
        [("metal", "Metal"), ("other", "Wood, plastic or printed")]);

    internal static readonly ChoiceField Enclosure = new(
        "enclosure", "Enclosure of the electronics", "", "metal",
        [("metal", "Metal, with a door or cover"), ("other", "Plastic or wood"), ("none", "None yet")]);

    internal static readonly ChoiceField Board = new(
        "board", "Controller board", "Choose by its outputs; its own terminals are corrected later. The second kind reads 2 temperatures, the first 4, the third none.", "seven",
        [.. StartBoard.All.Select(board => (board.Answer, board.Words))]);

    internal static readonly FigureField Motors = new("motors", "Stepper motors", "", 1, 7, "All of them, with second motors of an axis and feeders.", "4", IsWhole: true);

    internal static readonly FigureField Axes = new("axes", "Axes that find a stop", "", 1, 6, "Each axis that is sent to a limit switch.", "3", IsWhole: true);

    internal static readonly ChoiceField Plate = new(
        "plate", "Heated plate", "A mains mat is switched by a contactless relay behind a contactor and a thermal cut-off.", "none",
        [("none", "None"), ("low", "24 V"), ("mains", "Mains, by a contactless relay")]);

    internal static readonly FigureField PlateWatts = new("plate-power", "Power of the plate", "W", 10, 1000, "As printed on it; 100 W at 24 V or 400 W on mains are taken when it is left empty.");

    internal static readonly FigureField HotEnds = new("hot-ends", "Hot end heaters", "", 0, 2, "Cartridges that melt, warm or cure: nozzle, paste, knife.", "0", IsWhole: true);

    internal static readonly FigureField HotEndWatts = new("hot-end-power", "Power of a hot end heater", "W", 5, 60, "As printed on it.", "40");

    internal static readonly ChoiceField HotEndVolts = new(
        "hot-end-voltage", "Voltage of the hot end heaters", "As printed on them; 12 V heaters on 24 V take four times their power.", "24",
        [("24", "24 V"), ("12", "12 V")]);

    internal static readonly ChoiceField Sensor = new(
        "sensor", "Temperature sensors", "A mains mat has its own thermistor.", "ntc",
        [("ntc", "NTC thermistor, 100 kΩ"), ("pt1000", "Platinum, 1000 Ω")]);

    internal static readonly FigureField Valves = new("valves", "Valves", "", 0, 2, "Solenoid valves of 24 V that dispense, spray or blow; each takes an output for a heater.", "0", IsWhole: true);

    internal static readonly ChoiceField Spindle = new(
        "spindle", "Spindle", "A mains tool is switched by a contactor behind a residual-current device, and starts only after the start button.", "none",
        [("none", "None"), ("socket", "A mains tool in a socket of the machine")]);

    internal static readonly FigureField Fans = new("fans", "Fans", "", 0, 5, "All of them.", "1", IsWhole: true);

    internal static readonly ChoiceField FanVolts = new("fan-voltage", "Voltage of the fans", "As printed on them.", "24", [("24", "24 V"), ("12", "12 V"), ("5", "5 V")]);

    /// <summary>The questions besides the name, by what they are about.</summary>
    public static IReadOnlyList<(string Title, IReadOnlyList<StartQuestion> Questions)> Groups { get; } =
    [
        ("Power", [StartQuestion.Of(Mains), StartQuestion.Of(Earthing), StartQuestion.Of(Inlet), StartQuestion.Of(Supply), StartQuestion.Of(Stop)]),
        ("Metal", [StartQuestion.Of(Frame), StartQuestion.Of(Enclosure)]),
        ("What moves", [StartQuestion.Of(Board), StartQuestion.Of(Motors), StartQuestion.Of(Axes), StartQuestion.Of(Spindle), StartQuestion.Of(Valves)]),
        ("What heats", [StartQuestion.Of(Plate), StartQuestion.Of(PlateWatts), StartQuestion.Of(HotEnds), StartQuestion.Of(HotEndWatts), StartQuestion.Of(HotEndVolts), StartQuestion.Of(Sensor)]),
        ("Air", [StartQuestion.Of(Fans), StartQuestion.Of(FanVolts)]),
    ];

    /// <summary>Names of all fields, the name of the machine first.</summary>
    public static IReadOnlyList<string> Names { get; } = [Name, .. Groups.SelectMany(group => group.Questions).Select(question => question.Name)];
}

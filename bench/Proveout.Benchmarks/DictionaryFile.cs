using System.Globalization;
using Proveout.Engine.Electrical;
using Proveout.Engine.Faults;
using Proveout.Engine.Machine;

namespace Proveout.Benchmarks;

/// <summary>Keeps what a campaign found in a file, and compares a later one with it, fault by fault and check by check, to the last bit.</summary>
internal static class DictionaryFile
{
    /// <summary>Writes the dictionary of a machine.</summary>
    public static void Keep(TextWriter output, string path, IReadOnlyList<string> terminals)
    {
        var dictionary = new WiringCampaign(Machine(terminals)).Run();
        using var file = new BinaryWriter(File.Create(path));
        file.Write(dictionary.Checks.Count);
        foreach (var check in dictionary.Checks)
        {
            file.Write(check.Id);
            Write(file, check.Expectation);
        }

        file.Write(dictionary.Faults.Count);
        for (var fault = 0; fault < dictionary.Faults.Count; fault++)
        {
            var response = dictionary.ResponseOf(fault);
            file.Write(dictionary.Faults[fault].Id);
            file.Write(response.Checks.Length);
            for (var place = 0; place < response.Checks.Length; place++)
            {
                file.Write(response.Checks[place]);
                Write(file, response.Intervals[place]);
            }
        }

        output.WriteLine(string.Create(CultureInfo.InvariantCulture, $"{dictionary.Faults.Count} faults at {dictionary.Checks.Count} checks kept in {path}"));
    }

    /// <summary>Compares the dictionary of a machine with a kept one.</summary>
    /// <returns>True when they are the same.</returns>
    public static bool Compare(TextWriter output, string path, IReadOnlyList<string> terminals)
    {
        var dictionary = new WiringCampaign(Machine(terminals)).Run();
        using var file = new BinaryReader(File.OpenRead(path));
        var difference = new Difference();
        if (file.ReadInt32() != dictionary.Checks.Count)
            return Refuse(output, "The number of checks differs.");
        foreach (var check in dictionary.Checks)
        {
            if (file.ReadString() != check.Id)
                return Refuse(output, $"{check.Id} stands where the kept dictionary has another check.");
            difference.Add(Read(file), check.Expectation);
        }

        if (file.ReadInt32() != dictionary.Faults.Count)
            return Refuse(output, "The number of faults differs.");
        for (var fault = 0; fault < dictionary.Faults.Count; fault++)
        {
            if (file.ReadString() != dictionary.Faults[fault].Id)
                return Refuse(output, $"{dictionary.Faults[fault].Id} stands where the kept dictionary has another fault.");
            CompareResponses(file, dictionary, fault, difference);
        }

        foreach (var note in difference.Notes)
            output.WriteLine(note);
        output.WriteLine(difference.ToString());
        return difference.IsNone;
    }

    private static void CompareResponses(BinaryReader file, FaultDictionary dictionary, int fault, Difference difference)
    {
        var kept = new SortedDictionary<int, ReadingInterval>();
        for (var left = file.ReadInt32(); left > 0; left--)
            kept.Add(file.ReadInt32(), Read(file));
        var response = dictionary.ResponseOf(fault);
        for (var place = 0; place < response.Checks.Length; place++)
        {
            var check = dictionary.Checks[response.Checks[place]];
            var isKept = kept.Remove(response.Checks[place], out var before);
            Compare(isKept ? before : check.Expectation, response.Intervals[place], check, isKept);
        }

        foreach (var (check, before) in kept)
            Compare(before, dictionary.Checks[check].Expectation, dictionary.Checks[check], isInBoth: false);

        // What one of the two does not list reads there as the sound machine does.
        void Compare(ReadingInterval before, ReadingInterval now, Check check, bool isInBoth)
        {
            if (!difference.Add(before, now, check.Expectation, isInBoth))
                difference.Note($"{dictionary.Faults[fault].Id} at {check.Id}: {before} before, {now} now");
        }
    }

    /// <summary>The flagship, or a generated machine of a number of terminals.</summary>
    private static MachineDesign Machine(IReadOnlyList<string> terminals) => terminals is [var count, ..]
        ? GeneratedMachine.Of(Flagship.Catalogue(), int.Parse(count, CultureInfo.InvariantCulture))
        : Flagship.Read();

    private static bool Refuse(TextWriter output, string why)
    {
        output.WriteLine(why);
        return false;
    }

    private static void Write(BinaryWriter file, ReadingInterval interval)
    {
        file.Write(interval.Low);
        file.Write(interval.High);
    }

    private static ReadingInterval Read(BinaryReader file) => new(file.ReadDouble(), file.ReadDouble());

    // Counts what is not the same.
    private sealed class Difference
    {
        private const int MostNotes = 12;

        private long _count;
        private long _unmatched;
        private long _unequal;
        private long _verdicts;
        private double _largest;

        public bool IsNone => _unequal == 0;

        public List<string> Notes { get; } = [];

        public void Note(string what)
        {
            if (Notes.Count < MostNotes)
                Notes.Add(what);
        }

        // False when the two are not the same.
        public bool Add(ReadingInterval before, ReadingInterval now, ReadingInterval? expectation = null, bool isInBoth = true)
        {
            _count++;
            if (!isInBoth)
                _unmatched++;
            if (before.Equals(now))
                return true;
            _unequal++;
            _largest = Math.Max(_largest, Math.Max(Relative(before.Low, now.Low), Relative(before.High, now.High)));
            if (expectation is { } expected && before.IsDisjointFrom(expected) != now.IsDisjointFrom(expected))
                _verdicts++;
            return false;
        }

        public override string ToString() => string.Create(
            CultureInfo.InvariantCulture,
            $"""
            {_count:N0} intervals compared: {_unequal:N0} differ, by {_largest:0.0e0} of their value at most
            {_verdicts} verdicts differ; {_unmatched:N0} intervals are listed in one dictionary only; in the other they are those of the sound machine
            """);

        private static double Relative(double before, double now) => before.Equals(now) ? 0 : Math.Abs(before - now) / Math.Max(Math.Abs(before), Math.Abs(now));
    }
}

using Proveout.Engine.Faults;
using Proveout.Engine.Machine;

namespace Proveout.Engine.Motion;

/// <summary>A plausible mistake with belts, pulleys or motor plugs, and what is then built.</summary>
/// <param name="Kind">Kind of mistake.</param>
/// <param name="Id">Identifier.</param>
/// <param name="Sentence">What is wrong.</param>
/// <param name="Subjects">Names of belts, pulleys and motors concerned.</param>
/// <param name="Built">What is built.</param>
internal sealed record DriveMistake(DriveMistakeKind Kind, string Id, string Sentence, ValueList<string> Subjects, BuiltDrives Built)
{
    /// <summary>The mistake as the engine of faults takes it.</summary>
    public Fault ToFault() => new(Id, Kind.Name, Sentence, Subjects, Kind.Severity, Kind.Consequence, Kind.Prior, Kind.OtherEvidence);
}

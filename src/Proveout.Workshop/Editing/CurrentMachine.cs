using Proveout.Engine.Machine;

namespace Proveout.Workshop;

/// <summary>A machine as it is now.</summary>
/// <param name="Revision">Number of its revision; 0 when it was never changed here.</param>
/// <param name="Texts">Its files, each by its bare name.</param>
/// <param name="Machine">The machine that they read as.</param>
internal sealed record CurrentMachine(int Revision, IReadOnlyList<SourceText> Texts, LoadedMachine Machine);

namespace Proveout.Engine.Motion;

/// <summary>A sound as one channel of samples.</summary>
/// <param name="Name">File name as the user gave it.</param>
/// <param name="Samples">The samples; full scale of the file is ±1.</param>
/// <param name="RateHertz">Samples a second.</param>
/// <param name="Form">How the file held it.</param>
/// <param name="Notes">What was noticed while reading that does not stop the work, a sentence each.</param>
public sealed record Recording(string Name, IReadOnlyList<double> Samples, double RateHertz, SampleForm Form, IReadOnlyList<string> Notes)
{
    /// <summary>How long it lasts.</summary>
    public double Seconds => Samples.Count / RateHertz;
}

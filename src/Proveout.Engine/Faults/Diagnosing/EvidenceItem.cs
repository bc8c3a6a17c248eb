namespace Proveout.Engine.Faults;

/// <summary>One reading, or one symptom, and how likely it is under what a check may show.</summary>
/// <param name="Check">Index of the check.</param>
/// <param name="Value">What was read.</param>
/// <param name="IsSymptom">True for a numbered outcome.</param>
/// <param name="Sound">What the sound machine shows.</param>
/// <param name="Rates">How often people are wrong.</param>
internal readonly record struct EvidenceItem(int Check, double Value, bool IsSymptom, ReadingInterval Sound, DiagnosisRates Rates)
{
    /// <summary>True when the sound machine cannot show it.</summary>
    public bool IsOff => !Sound.Contains(Value);

    /// <summary>Natural logarithm of the likelihood when it is wrong: set aside as misread or falsely reported.</summary>
    public double LogAside => Math.Log(IsSymptom ? Rates.FalseSymptom : Rates.Misread * ReadingLikelihood.OfAnything(Value));

    /// <summary>Natural logarithm of the likelihood when nothing is known of what the check shows.</summary>
    public double LogAnything => Math.Log(IsSymptom ? 0.5 : ReadingLikelihood.OfAnything(Value));

    /// <summary>Natural logarithm of the likelihood under an interval; set aside when it lies outside.</summary>
    public double LogLikelihood(ReadingInterval shown) =>
        !shown.Contains(Value) ? LogAside
        : IsSymptom ? Math.Log((1 - Rates.FalseSymptom) * ReadingLikelihood.OfSymptom(Value, shown))
        : Math.Log((1 - Rates.Misread) * ReadingLikelihood.Of(Value, shown));
}

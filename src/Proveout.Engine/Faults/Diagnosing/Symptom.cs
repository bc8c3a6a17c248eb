namespace Proveout.Engine.Faults;

/// <summary>Symptoms are checks whose readings are numbered outcomes that a person sees, hears or feels, such as 1 for "as it should be" and 0 for "not".</summary>
public static class Symptom
{
    /// <summary>The kind of such checks.</summary>
    public const string Kind = "symptom";

    /// <summary>True when a check asks for a symptom.</summary>
    public static bool Is(Check check) => check.Kind == Kind;
}

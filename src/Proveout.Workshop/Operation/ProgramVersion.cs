using System.Reflection;

namespace Proveout.Workshop;

/// <summary>Which Proveout this is. The number stands in one place, <c>Directory.Build.props</c>.</summary>
public static class ProgramVersion
{
    /// <summary>The number, as semver.org 2.0.0 has it.</summary>
    public static string Number { get; } =
        typeof(ProgramVersion).Assembly.GetCustomAttribute<AssemblyInformationalVersionAttribute>()?.InformationalVersion
        ?? throw new InvalidOperationException("The program was built without its version.");
}

using Proveout.Engine.Faults;
using Proveout.Engine.Machine;

namespace Proveout.Engine.Electrical;

/// <summary>Something that a person sees, hears or feels at work.</summary>
internal interface ILoad
{
    /// <summary>Its part.</summary>
    Part Part { get; }

    /// <summary>Which of several loads of the part; empty when it is the only one.</summary>
    string Name { get; }

    /// <summary>What it does when it works, such as <c>turns</c>.</summary>
    string AtWork { get; }

    /// <summary>What it does when it rests, such as <c>stands still</c>.</summary>
    string AtRest { get; }

    /// <summary>Whether it works; right when it does.</summary>
    ReadingInterval Works(LiveView view);

    /// <summary>Whether it rests; right when it does.</summary>
    ReadingInterval Rests(LiveView view);
}

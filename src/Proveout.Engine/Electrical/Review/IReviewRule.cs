namespace Proveout.Engine.Electrical;

/// <summary>Reviews a design for one thing.</summary>
public interface IReviewRule
{
    /// <summary>Identifier, lower case with hyphens.</summary>
    string Id { get; }

    /// <summary>What it looks at, in plain words.</summary>
    string Words { get; }

    /// <summary>What it finds.</summary>
    IEnumerable<Finding> Review(ReviewContext context);
}

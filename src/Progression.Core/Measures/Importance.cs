namespace Progression.Core.Measures;

/// <summary>Whether a change matters to the person. It never makes a change detectable.</summary>
public enum Importance
{
    /// <summary>No figure is published for the measure.</summary>
    NotKnown,

    /// <summary>Under the published figure.</summary>
    NotShown,

    /// <summary>Detectable, and at least the published figure.</summary>
    Important,

    /// <summary>At least the published figure, but error alone can make as much, or the error is not known: to be measured again.</summary>
    CouldBe,
}

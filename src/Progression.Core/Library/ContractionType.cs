namespace Progression.Core.Library;

/// <summary>How the target muscle works in an exercise.</summary>
public enum ContractionType
{
    /// <summary>Not at all, or only passively stretched.</summary>
    Passive,

    /// <summary>Without movement of the joint.</summary>
    Isometric,

    /// <summary>Shortening and lengthening under load.</summary>
    Dynamic,
}

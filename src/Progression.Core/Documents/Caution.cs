namespace Progression.Core.Documents;

/// <summary>What stands on every paper for clinicians.</summary>
public static class Caution
{
    /// <summary>Who decides, and what comes first.</summary>
    public const string Text =
        "It suggests; a licensed clinician decides. Follow the surgeon's and local protocols, the stimulator's own instructions and local law.";
}

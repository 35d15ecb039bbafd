namespace Progression.App.Plain;

/// <summary>The keys by which an answer gets into a field; every mode that takes text has both.</summary>
public static class PlainKeys
{
    /// <summary>Empties the field.</summary>
    public const string Empty = "Ctrl+U";

    /// <summary>Takes what stands in it.</summary>
    public const string Take = "Enter";
}

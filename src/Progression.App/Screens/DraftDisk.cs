namespace Progression.App.Screens;

/// <summary>Work with the disk that a person is told about when it fails.</summary>
internal static class DraftDisk
{
    /// <summary>Does it; gives null, or why it failed.</summary>
    public static string? Told(Action act)
    {
        try
        {
            act();
            return null;
        }
        catch (Exception fault) when (fault is IOException or UnauthorizedAccessException)
        {
            return fault.Message;
        }
    }
}

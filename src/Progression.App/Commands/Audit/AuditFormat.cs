namespace Progression.App.Commands.Audit;

/// <summary>How the answer of the search is printed.</summary>
internal enum AuditFormat
{
    /// <summary>A line for each event, to be read.</summary>
    Text,

    /// <summary>One JSON object.</summary>
    Json,

    /// <summary>Comma-separated values (RFC 4180), the head on the error stream.</summary>
    Csv,
}

using System.Collections.Concurrent;
using System.IO.Pipes;
using System.Runtime.InteropServices;
using System.Text;
using Microsoft.Win32.SafeHandles;
using Terminal.Gui.Drivers;

namespace Progression.App.Shell;

/// <summary>
/// What is typed, the moment it is typed. The library looks fifty times a second whether something was typed, which makes a key
/// wait and a session at rest cost two percent of a core; this sleeps until there is something. When the line is gone it waits
/// to be ended, where the library's reading would spin.
/// </summary>
/// <param name="arrived">Called on the reading thread after something was typed.</param>
internal sealed partial class WokenInput(Action arrived) : AnsiInput, IInput<char>
{
    private const int Keyboard = 0;
    private const short Readable = 1;
    private const int Forever = -1;

    // A terminal sends a paste in one go.
    private const int PastePatience = 1000;
    private ConcurrentQueue<char> _typed = new();

    /// <inheritdoc/>
    void IInput<char>.Initialize(ConcurrentQueue<char> inputQueue)
    {
        Initialize(inputQueue);
        _typed = inputQueue;
    }

    /// <inheritdoc/>
    void IInput<char>.Run(CancellationToken runCancellationToken)
    {
        if (IsAttachedToTerminal)
        {
            ReadUntil(runCancellationToken);
        }
        runCancellationToken.WaitHandle.WaitOne();
    }

    /// <summary>Reads until it is ended or the line is gone.</summary>
    private void ReadUntil(CancellationToken end)
    {
        using AnonymousPipeServerStream bell = new(PipeDirection.Out);
        using CancellationTokenRegistration ringing = end.Register(() => bell.WriteByte(0));
        using FileStream keyboard = new(new SafeFileHandle(Keyboard, ownsHandle: false), FileAccess.Read, bufferSize: 0);
        Watched[] watched = [new(Keyboard), new((int)bell.ClientSafePipeHandle.DangerousGetHandle())];
        Decoder decoder = Encoding.UTF8.GetDecoder();
        byte[] bytes = new byte[4096];
        char[] letters = new char[bytes.Length + 1];
        PasteWatch paste = new();
        // A poll that failed was interrupted by a signal: look again.
        while (!end.IsCancellationRequested)
        {
            int found = Poll(watched, (uint)watched.Length, paste.IsOpen ? PastePatience : Forever);
            if (found == 0)
            {
                EndPaste();
            }
            else if (found > 0 && watched[0].Found != 0 && !Typed())
            {
                return;
            }
        }

        void EndPaste()
        {
            paste.GiveUp();
            Enqueue(PasteWatch.End);
        }

        void Enqueue(ReadOnlySpan<char> text)
        {
            foreach (char letter in text)
            {
                _typed.Enqueue(letter);
            }

            arrived();
        }

        bool Typed()
        {
            int read = (watched[0].Found & Readable) != 0 ? ReadSome(keyboard, bytes) : 0;
            ReadOnlySpan<char> text = letters.AsSpan(0, decoder.GetChars(bytes, 0, read, letters, 0));
            paste.See(text);
            Enqueue(text);
            return read > 0;
        }
    }

    /// <summary>How many bytes were read; 0 when the line is gone.</summary>
    private static int ReadSome(FileStream keyboard, byte[] bytes)
    {
        try
        {
            return keyboard.Read(bytes, 0, bytes.Length);
        }
        catch (Exception error) when (error is IOException or UnauthorizedAccessException)
        {
            return 0;
        }
    }

    [LibraryImport("libc", EntryPoint = "poll")]
    private static partial int Poll([In, Out] Watched[] watched, nuint count, int milliseconds);

    /// <summary>struct pollfd of POSIX.</summary>
    private struct Watched(int file)
    {
        public int File = file;
        public short Wanted = Readable;
        public short Found;
    }
}

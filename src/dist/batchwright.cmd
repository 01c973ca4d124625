@echo off
rem Starts Batchwright on Windows: with the Java that came with it, else with that of JAVA_HOME or of the path (17 or newer).
setlocal
set "here=%~dp0.."
set "java=java"
if defined JAVA_HOME set "java=%JAVA_HOME%\bin\java.exe"
if exist "%here%\runtime\bin\java.exe" set "java=%here%\runtime\bin\java.exe"
set "kept=%LOCALAPPDATA%\batchwright\classes-0.1.0.jsa"
if not exist "%LOCALAPPDATA%\batchwright" mkdir "%LOCALAPPDATA%\batchwright" 2> nul
set "share=-XX:SharedArchiveFile=%kept%"
if not exist "%kept%" set "share=-XX:ArchiveClassesAtExit=%kept%"
"%java%" "%share%" -Xlog:disable -Dbatchwright.called=batchwright -XX:+UseSerialGC -Xms96m -Xmn64m -jar "%here%\lib\batchwright.jar" %*

@echo off
rem Starts Benchleaf with its class archive. Nothing but the program's own words is printed, also where the archive is
rem missing or was made by another Java.
setlocal
set "benchleaf_home=%~dp0.."
for %%j in (java.exe) do set "benchleaf_java=%%~$PATH:j"
if defined JAVA_HOME if exist "%JAVA_HOME%\bin\java.exe" set "benchleaf_java=%JAVA_HOME%\bin\java.exe"
if not defined benchleaf_java (
  echo benchleaf: error: there is no Java. Install Java 17 or later, or set JAVA_HOME to it. 1>&2
  exit /b 3
)
"%benchleaf_java%" "-XX:SharedArchiveFile=%benchleaf_home%\lib\benchleaf.jsa" -Xshare:auto -Xlog:disable -Xlog:all=off -XX:TieredStopAtLevel=1 -XX:+UseSerialGC -jar "%benchleaf_home%\lib\benchleaf.jar" %*
exit /b %errorlevel%
